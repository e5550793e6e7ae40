import type { Standing } from "./candidate.ts";
import { type Context, cuesOf } from "./context.ts";
import { isNegated } from "./denial.ts";
import type { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { revalue } from "./revalue.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

/** A figure without a name after words of correction is a new value for what was said before. */
export function corrected(
  context: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  stated: Ordered<Standing>,
): Standing[] {
  const { tokens } = context;
  const found: Standing[] = [];
  const used = new Set<number>();
  for (const cue of cuesOf(context, "correction", "retraction", "negator")) {
    const denial = cue.kind === "negator";
    const figure = ({ kind }: Token) => kind === "number" || kind === "code";
    if (denial && !tokens.slice(cue.end, cue.end + 4).some(figure)) continue;
    const ahead =
      denial && !explained[cue.start - 1] && tokens[cue.start - 1]?.kind === "number"
        ? cue.start - 1
        : undefined;
    if (ahead !== undefined && owners[ahead] === "label") {
      const volts = instead(tokens, cue.end, ahead);
      if (volts) found.push(volts);
    }
    const letter = denial ? undefined : otherLetter(tokens, cue.end, stated);
    if (letter && owners[letter.start] === "label") found.push(letter);
    for (let at = cue.end; at < Math.min(tokens.length, cue.end + (denial ? 9 : 12)); at++) {
      const token = tokens[at];
      if (!token || !figure(token)) continue;
      if (explained[at] || used.has(at)) {
        if (denial) continue;
        break;
      }
      // The rest of a fraction goes with its beginning: "not 1/2".
      const rest = isMark(tokens[at - 1], "/") && tokens[at - 2]?.kind === "number";
      if (rest || isNegated(context, at) || owners[at] !== "label") continue;
      const before = stated.before(at, 12).filter((claim) => owners[claim.start] !== "asked");
      const fitting = firstFit(tokens, at, before) ?? (denial ? instead(tokens, cue.end, at) : undefined);
      if (fitting) {
        used.add(at);
        found.push(fitting);
      }
      break;
    }
  }
  return found;
}

/** "it's not 230, it's 115": the figure denied tells what the other one is. */
function instead(tokens: readonly Token[], from: number, at: number): Standing | undefined {
  const denied = tokens.slice(from, at < from ? from + 3 : at).find(({ kind }) => kind === "number");
  if (denied?.kind !== "number" || ![115, 208, 230, 240].includes(denied.value)) return undefined;
  const volts = parseValue("volts", tokens, at).at(-1);
  if (!volts || volts.fit < 2) return undefined;
  return {
    rating: "volts",
    value: volts.value,
    start: at,
    end: volts.end,
    from: at,
    to: volts.end,
    score: 1,
  };
}

/** "56J, I mean Y": only the letter of the frame is corrected. */
function otherLetter(tokens: readonly Token[], at: number, stated: Ordered<Standing>): Standing | undefined {
  const letter = tokens[isWord(tokens[at], "a", "an", "its", "the", "una") ? at + 1 : at];
  const frame = stated.before(at, 1)[0];
  if (letter?.kind !== "word" || !letter.upper || !/^[yjcz]$/.test(letter.norm)) return undefined;
  const number = frame?.rating === "frame" ? /^\d+/.exec(String(frame.value))?.[0] : undefined;
  if (!frame || number === undefined) return undefined;
  const start = tokens.indexOf(letter, at);
  return {
    ...frame,
    value: `${number}${letter.norm.toUpperCase()}`,
    start,
    end: start + 1,
    from: start,
    to: start + 1,
  };
}

function firstFit(tokens: readonly Token[], at: number, claims: readonly Standing[]): Standing | undefined {
  for (const claim of claims) {
    const value = revalue(tokens, at, claim);
    if (value) return value;
  }
  return undefined;
}
