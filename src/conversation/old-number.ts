import {
  type Candidate,
  createNumberSearch,
  type NumberResult,
  type NumberSearch,
  narrow,
  type Place,
  stockNumbers,
} from "../catalogue/number-search.ts";
import type { Catalogue } from "../catalogue/types.ts";
import { setFact } from "./facts.ts";
import type { Speaker } from "./speaker.ts";
import type { Thread } from "./thread.ts";
import type { Response, TalkTurn } from "./turn.ts";

const searches = new WeakMap<Catalogue, NumberSearch>();

/** What a number typed from a worn plate may be among the shop's; each stock is indexed once. */
export function searchNumber(catalogue: Catalogue, typed: string): NumberResult {
  const ready =
    searches.get(catalogue) ?? createNumberSearch(stockNumbers(catalogue.motors), catalogue.numberFormats);
  searches.set(catalogue, ready);
  return ready.search(typed);
}

/**
 * Asks about a number of this message that is nearly, not exactly, one on record: read back where one fits,
 * told apart by one character where several do. Nothing is guessed; null when there is nothing to ask.
 */
export function askNumber({ thread, absorbed, speaker, knowledge }: TalkTurn): Response | null {
  if (!absorbed.news.includes("modelNumbers")) return null;
  for (const typed of thread.facts.modelNumbers?.value ?? []) {
    const result = searchNumber(knowledge.catalogue, String(typed));
    if (result.kind === "found" && result.how !== "exact" && result.how !== "format") {
      const { number } = result;
      return {
        thread: {
          ...thread,
          pending: { kind: "number", typed: String(typed), candidates: [number], at: null },
        },
        replies: [speaker.say("replies", "number.one", { typed, number })],
      };
    }
    if (result.kind === "choose") {
      const { at, options } = result.separates;
      const candidates = result.candidates.map(({ number }) => number);
      const place = speaker.say("replies", placeKey(at), { position: at.position });
      const characters = options.map(
        ({ character }) => character || speaker.say("replies", "number.nothing"),
      );
      return {
        thread: { ...thread, pending: { kind: "number", typed: String(typed), candidates, at } },
        replies: [speaker.say("replies", "number.which", { place, characters: characters.join(" or ") })],
      };
    }
  }
  return null;
}

function placeKey({ from, position }: Place): string {
  if (position === 1) return from === "end" ? "number.last" : "number.first";
  return from === "end" ? "number.fromEnd" : "number.fromStart";
}

/** The thread after an answer about a number: settled where the answer leaves one, dropped otherwise. */
export function resolveNumber(thread: Thread, text: string, wants: TalkTurn["wants"]): Thread {
  const { pending } = thread;
  if (pending.kind !== "number") return thread;
  const left = leftAfter(pending, text, wants);
  const cleared: Thread = { ...thread, pending: { kind: "nothing" } };
  const [number] = left;
  if (number === undefined || left.length > 1) return cleared;
  const numbers = (thread.facts.modelNumbers?.value ?? []) as readonly string[];
  return setFact(
    cleared,
    "modelNumbers",
    numbers.map((typed) => (typed === pending.typed ? number : typed)),
    "confirmed",
  );
}

function leftAfter(
  { candidates, at }: Extract<Thread["pending"], { kind: "number" }>,
  text: string,
  wants: TalkTurn["wants"],
): readonly string[] {
  if (at === null) return wants("yes") ? candidates : [];
  const named: readonly Candidate[] = candidates.map((number) => ({ number, skus: [], how: "near" }));
  const words = text.toUpperCase().match(/[A-Z0-9]+/g) ?? [];
  const fitting = words
    .filter((word) => word.length === 1)
    .map((character) => narrow(named, at, character))
    .find((found) => found.length > 0);
  return (fitting ?? []).map(({ number }) => number);
}

/** A line for a number that is on record: what it is known to be replaced by, still to be checked. */
export function recordLine(
  { absorbed, thread, knowledge, assessment }: TalkTurn,
  speaker: Speaker,
): readonly string[] {
  const settled =
    absorbed.thread.pending.kind === "number" && thread.facts.modelNumbers?.certainty === "confirmed";
  const isNew = absorbed.news.includes("modelNumbers") || settled;
  if (!isNew || assessment.match?.verdict !== "undecided") return [];
  const listed = (thread.facts.modelNumbers?.value ?? []).flatMap((typed) => {
    const result = searchNumber(knowledge.catalogue, String(typed));
    return result.kind === "found" && result.how === "exact"
      ? [{ number: result.number, sku: result.skus[0] ?? "" }]
      : [];
  });
  const [first] = listed;
  return first ? [speaker.say("replies", "number.record", first)] : [];
}
