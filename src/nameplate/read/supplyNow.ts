import { arriving, voltageIn, withCircuit } from "./arriving.ts";
import type { Claim } from "./candidate.ts";
import { type Context, isQuestion } from "./context.ts";
import { isMark, isWord } from "./token.ts";

const nowWords = ["now", "ahora", "today", "nowadays", "hoy", "since"];
const feeding = [
  ...[
    "ran",
    "run",
    "runs",
    "gave",
    "give",
    "fed",
    "feed",
    "feeds",
    "wired",
    "rewired",
    "pulled",
    "brought",
    "put",
  ],
  ...[
    "have",
    "got",
    "get",
    "getting",
    "changed",
    "switched",
    "converted",
    "upgraded",
    "tengo",
    "hay",
    "pusieron",
    "llega",
  ],
];

/** How many tokens back the former voltage may be told. */
const reach = 30;

/**
 * "Used to be 120, now they ran 240": of two voltages of the wiring told one after the other, the one there is now.
 * Only where people are said to have changed it; a label's volts do not change.
 */
export function supplyNow(context: Context): Claim[] {
  const { tokens, sentences, clauses } = context;
  const found: Claim[] = [...changedTo(context), ...arriving(context), ...withCircuit(context)];
  for (const [index, clause] of clauses.entries()) {
    const words = tokens.slice(clause.start, clause.end);
    if (
      !words.some((token) => isWord(token, ...nowWords)) ||
      !words.some((token) => isWord(token, ...feeding))
    )
      continue;
    const own = voltageIn(tokens, clause.start, clause.end);
    const from = sentences[clause.sentence]?.[0]?.start ?? clause.start;
    const earliest = Math.max(clause.start - reach, Math.min(from, clauses[index - 1]?.start ?? from));
    const before = voltageIn(tokens, earliest, clause.start);
    if (own === undefined || before === undefined || isQuestion(context, clause.sentence)) continue;
    const past = tokens
      .slice(Math.max(0, before - 8), clause.start)
      .some((token) =>
        isWord(token, "used", "was", "were", "had", "before", "previously", "originally", "era", "antes"),
      );
    const value = tokens[own];
    if (!past || value?.kind !== "number") continue;
    found.push({ rating: "supplyVolts", value: value.value, start: own, end: own + 1, score: 1 });
  }
  return found;
}

const changing = /^(?:rewired|changed|switched|converted|went|moved|upgraded|cambiaron|cambio|pasaron)$/;

/** "rewired it from 230 to 115", "the electrician changed it to 230": what the wiring was changed to. */
function changedTo({ tokens, sentenceAt }: Context): Claim[] {
  const found: Claim[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const verb = tokens[at];
    if (verb?.kind !== "word" || !changing.test(verb.norm)) continue;
    for (let next = at + 1; next < at + 8 && sentenceAt[next] === sentenceAt[at]; next++) {
      const figure = tokens[next];
      if (figure?.kind !== "number" || !isWord(tokens[next - 1], "to", "a")) continue;
      const pair = isMark(tokens[next + 1], "/", "-");
      // "went to 230" alone may be anything; "from 208" or "changed it" tells of the wiring.
      const wiring =
        tokens.slice(at, next).some((token) => isWord(token, "from", "de")) ||
        isWord(tokens[at + 1], "it", "lo", "la");
      if (!pair && wiring && houseVolts.has(figure.value))
        found.push({ rating: "supplyVolts", value: figure.value, start: next, end: next + 1, score: 1 });
      break;
    }
  }
  return found;
}

/** Voltages houses are wired for, as people say them (common practice, no source). */
const houseVolts = new Set([110, 115, 120, 208, 220, 230, 240]);
