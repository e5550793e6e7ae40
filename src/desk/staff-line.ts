import { isUrgency, type Urgency } from "../conversation/thread.ts";
import type { Act } from "./acts/act.ts";
import { isOutcome } from "./outcomes.ts";

/** What staff typed, in a case's topic or at the terminal. */
export type StaffLine =
  | { readonly kind: "act"; readonly act: Act }
  | { readonly kind: "list" }
  | { readonly kind: "show"; readonly caseId: number }
  | { readonly kind: "help" }
  /** Nothing is done; `problem` follows "unclear." in `intents/answers/desk.json`. */
  | { readonly kind: "unclear"; readonly problem: string; readonly words: string };

/**
 * Reads what staff typed. Text is a note unless it starts with `>` and then a space, a letter or an opening
 * mark; `>1.1` could be a remark on a figure, so it is neither sent nor kept.
 */
export function readStaffLine(typed: string): StaffLine {
  const text = typed.trim();
  if (text.startsWith(">")) return told(text);
  if (!text.startsWith("/")) return act({ kind: "note", text });
  const [, word = "", rest = ""] = /^\/([\p{L}-]{0,20})(?:@\w{1,40})?(?:\s+([\s\S]*))?$/u.exec(text) ?? [];
  const command = commands[word.toLowerCase()];
  return command ? command(rest.trim()) : unclear("command", text.slice(1, 41));
}

const MARKED = /^>(?=[\s\p{L}"'“‘«¿¡(])/u;

function told(text: string): StaffLine {
  if (text === ">") return unclear("tell", text);
  if (!MARKED.test(text)) return unclear("mark", text.slice(0, 60));
  return act({ kind: "tell", text: text.slice(1).trim() });
}

const act = (made: Act): StaffLine => ({ kind: "act", act: made });
const unclear = (problem: string, words = ""): StaffLine => ({ kind: "unclear", problem, words });
const bare = (made: Act) => () => act(made);

/** The acts in words; there is no command that writes to the customer except offering. */
const commands: Readonly<Record<string, ((rest: string) => StaffLine) | undefined>> = Object.assign(
  Object.create(null) as Record<string, (rest: string) => StaffLine>,
  {
    take: bare({ kind: "take" }),
    takeover: bare({ kind: "take-over" }),
    back: bare({ kind: "hand-back" }),
    allclear: bare({ kind: "all-clear" }),
    reopen: bare({ kind: "reopen" }),
    note: (rest: string) => (rest === "" ? unclear("note") : act({ kind: "note", text: rest })),
    fix: (rest: string) => (rest === "" ? unclear("fix") : act({ kind: "correct", text: rest })),
    offer: (rest: string) => {
      const [sku, why] = firstWord(rest);
      return sku === "" || why === "" ? unclear("offer") : act({ kind: "offer", sku, why });
    },
    parts: bare({ kind: "show-parts" }),
    part: (rest: string) => {
      const [how, what] = firstWord(rest);
      return what === "" ? unclear("part") : partLine(how.toLowerCase(), what);
    },
    confirm: bare({ kind: "confirm" }),
    close: (rest: string) => {
      const [word, sku] = firstWord(rest);
      const outcome = word.toLowerCase();
      return isOutcome(outcome)
        ? act({ kind: "close", outcome, sku: sku === "" ? null : sku })
        : unclear("close", word);
    },
    urgency: (rest: string) => {
      const urgency = rest.toLowerCase();
      return isUrgency(urgency) ? act({ kind: "rank", urgency }) : unclear("rank", rest);
    },
    waiting: (): StaffLine => ({ kind: "list" }),
    help: (): StaffLine => ({ kind: "help" }),
    case: (rest: string): StaffLine =>
      /^\d{1,9}$/.test(rest) ? { kind: "show", caseId: Number(rest) } : unclear("show"),
  },
);

const partWords = {
  needed: "needed",
  optional: "optional",
  drop: "dropped",
  undo: "as-ruled",
} as const;

function partLine(how: string, what: string): StaffLine {
  if (how === "add") {
    const [sku, note] = firstWord(what);
    return act({ kind: "add-part", part: { sku }, note });
  }
  if (how === "other") {
    const colon = what.indexOf(": ");
    const words = (colon < 0 ? what : what.slice(0, colon)).trim();
    const note = colon < 0 ? "" : what.slice(colon + 1).trim();
    return words === "" ? unclear("part") : act({ kind: "add-part", part: { words }, note });
  }
  const to = Object.entries(partWords).find(([word]) => word === how)?.[1];
  return to === undefined ? unclear("part") : act({ kind: "edit-part", part: what, to });
}

function firstWord(text: string): readonly [string, string] {
  const [, first = "", rest = ""] = /^(\S*)\s*([\s\S]*)$/.exec(text) ?? [];
  return [first, rest.trim()];
}

/** An act without free text, in the words of a button. */
export type ButtonAct = Exclude<Act, { kind: "tell" | "note" | "correct" | "offer" | "add-part" }>;

/** A button's id: the case's number and the act as staff would type it. */
export function choiceIdOf(caseId: number, made: ButtonAct): string {
  return `${caseId}/${wordsOf(made)}`;
}

function wordsOf(made: ButtonAct): string {
  switch (made.kind) {
    case "take":
    case "reopen":
    case "confirm":
      return made.kind;
    case "show-parts":
      return "parts";
    case "edit-part": {
      const word = Object.entries(partWords).find(([, to]) => to === made.to)?.[0] ?? "";
      return `part ${word} ${made.part}`;
    }
    case "take-over":
      return "takeover";
    case "hand-back":
      return "back";
    case "all-clear":
      return "allclear";
    case "rank":
      return `urgency ${made.urgency satisfies Urgency}`;
    case "close":
      return made.sku === null ? `close ${made.outcome}` : `close ${made.outcome} ${made.sku}`;
  }
}

/** What a pressed button asks for; null for anything that no button of ours carries. */
export function actOfChoice(id: string): { readonly caseId: number; readonly act: ButtonAct } | null {
  const [, number = "", words = ""] = /^(\d{1,9})\/([ -~]{1,56})$/.exec(id) ?? [];
  if (number === "") return null;
  const line = readStaffLine(`/${words}`);
  if (line.kind !== "act") return null;
  const { act: made } = line;
  switch (made.kind) {
    case "tell":
    case "note":
    case "correct":
    case "offer":
    case "add-part":
      return null;
    default:
      return { caseId: Number(number), act: made };
  }
}
