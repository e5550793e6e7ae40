import type { RatingName, RatingValue } from "../vocabulary.ts";
import type { Candidate } from "./candidate.ts";
import { linksAfter } from "./connect.ts";
import type { Name } from "./naming.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";

interface Pair {
  readonly amps: number;
  readonly volts: number;
  readonly end: number;
  readonly unit: boolean;
}

const ampWords = ["a", "amp", "amps", "amperes", "amperios"];
const voltWords = ["v", "volt", "volts", "vac", "voltios"];

/** "19.2 A at 115 V": a current and the voltage it belongs to. */
function currentAtVoltage(tokens: readonly Token[], at: number): Pair | undefined {
  const amps = tokens[at];
  if (amps?.kind !== "number" || suits("amps", amps.value) < 1) return undefined;
  let next = at + 1;
  const unit = isWord(tokens[next], ...ampWords);
  if (unit) next += 1;
  if (!isMark(tokens[next], "@") && !isWord(tokens[next], "at", "on", "a", "en")) return undefined;
  return voltsAt(tokens, next + 1, (volts, end, voltUnit) => ({
    amps: amps.value,
    volts,
    end,
    unit: unit || voltUnit,
  }));
}

/** "at 115 V it is 19.2 A", "115 V: 19.2 A". */
function voltageThenCurrent(tokens: readonly Token[], at: number): Pair | undefined {
  const led = isMark(tokens[at], "@") || isWord(tokens[at], "at", "on", "for", "a", "en");
  return voltsAt(tokens, led ? at + 1 : at, (volts, end, voltUnit) => {
    let next = end;
    const named = voltUnit && isMark(tokens[next], ":", "=", "-");
    if (!led && !named) return undefined;
    while (isMark(tokens[next], ":", "=", "-", ",") || isWord(tokens[next], ...between)) next += 1;
    const amps = tokens[next];
    if (amps?.kind !== "number" || suits("amps", amps.value) < 1) return undefined;
    const unit = isWord(tokens[next + 1], ...ampWords);
    return { amps: amps.value, volts, end: unit ? next + 2 : next + 1, unit };
  });
}

const between = [
  "it",
  "its",
  "is",
  "draws",
  "pulls",
  "says",
  "es",
  "son",
  "would",
  "be",
  "uses",
  "takes",
  "thats",
  "then",
  "shows",
];

function voltsAt(
  tokens: readonly Token[],
  at: number,
  use: (volts: number, end: number, unit: boolean) => Pair | undefined,
): Pair | undefined {
  const volts = tokens[at];
  if (volts?.kind !== "number" || suits("volts", volts.value) < 2) return undefined;
  const unit = isWord(tokens[at + 1], ...voltWords);
  return use(volts.value, unit ? at + 2 : at + 1, unit);
}

/** Currents given voltage by voltage become two lists in the order written. */
export function currentsByVoltage(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
): Candidate[] {
  const candidates: Candidate[] = [];
  for (let at = 0; at < tokens.length; at++) {
    for (const read of [currentAtVoltage, voltageThenCurrent]) {
      const pairs = run(tokens, at, read);
      const last = pairs.at(-1);
      if (!last) continue;
      if (pairs.length > 1 || (read === currentAtVoltage && last.unit))
        candidates.push(listed("amps", at, at, pairs, 4.2));
    }
  }
  for (const starting of names)
    for (const name of starting) {
      if (name.rating !== "amps" && name.rating !== "serviceFactorAmps") continue;
      for (const link of linksAfter(tokens, names, name))
        for (const read of [currentAtVoltage, voltageThenCurrent]) {
          const pairs = run(tokens, link.at, read);
          if (pairs.length > 0)
            candidates.push(listed(name.rating, name.start, link.at, pairs, 5.2 - link.cost));
        }
    }
  return candidates;
}

function run(tokens: readonly Token[], from: number, read: typeof currentAtVoltage): Pair[] {
  const pairs: Pair[] = [];
  for (let at = from; pairs.length < 4; ) {
    const pair = read(tokens, at);
    if (!pair) break;
    pairs.push(pair);
    at = pair.end;
    while (
      isMark(tokens[at], ",", ";", "/", "&", "(", ")", ".") ||
      isWord(tokens[at], "and", "or", "y", "o") ||
      (tokens[at]?.kind === "break" && at === pair.end)
    )
      at += 1;
  }
  return pairs;
}

function listed(
  rating: RatingName,
  start: number,
  from: number,
  pairs: readonly Pair[],
  score: number,
): Candidate {
  const end = pairs.at(-1)?.end ?? from;
  const list = (values: number[]) => [...new Set(values)] as RatingValue<RatingName>;
  return {
    start,
    end,
    score: score + 9.2 * pairs.length - 4.6,
    claims: [
      { rating, value: list(pairs.map(({ amps }) => amps)), start: from, end, score },
      { rating: "volts", value: list(pairs.map(({ volts }) => volts)), start: from, end, score },
    ],
  };
}
