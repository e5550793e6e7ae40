import { centsFromUsd } from "../engineering/units.ts";
import { type RatingName, ratings, showRating } from "../nameplate/vocabulary.ts";
import { factEntries } from "./facts.ts";
import type { Facts } from "./thread.ts";
import { fillBlanks, type Values, type Wording, WordingError, type WordingGroup } from "./wording.ts";

/** Trade words that texts may use as blanks; each is explained in brackets the first time a thread meets it. */
export const terms = ["serviceFactor", "totalHp", "frame", "dropIn", "shaftSeal"] as const;

/** Says texts for one turn and remembers which trade words have been explained. */
export interface Speaker {
  readonly say: (group: WordingGroup, key: string, values?: Values) => string;
  readonly has: Wording["has"];
  /** Trade words explained so far, this turn's included. */
  readonly explained: () => readonly string[];
}

export function createSpeaker(wording: Wording, explainedBefore: readonly string[]): Speaker {
  const explained = new Set(explainedBefore);
  const introduce = (term: string): string => {
    const name = wording.say("explain", `${term}.name`);
    if (explained.has(term)) return name;
    explained.add(term);
    return `${name} (${wording.say("explain", `${term}.short`)})`;
  };
  return {
    say: (group, key, values = {}) =>
      fillBlanks(wording.text(group, key), (blank) => {
        if (Object.hasOwn(values, blank)) return values[blank];
        if (isTerm(blank)) return introduce(blank);
        throw new WordingError(group, key, `nothing fills the blank {${blank}}`);
      }),
    has: wording.has,
    explained: () => [...explained],
  };
}

const isTerm = (blank: string): boolean => (terms as readonly string[]).includes(blank);

/** Known facts in one line, `?` behind what was deduced: `1.5 hp, 230 V, frame 56Y`. */
export function showFacts(facts: Facts, only?: readonly RatingName[]): string {
  return factEntries(facts)
    .filter(([rating]) => only === undefined || only.includes(rating))
    .map(([rating, fact]) => `${showFact(rating, fact.value)}${fact.certainty === "inferred" ? "?" : ""}`)
    .join(", ");
}

/** One value the way a tradesperson would say it: with its unit, or its name where the unit does not tell. */
export function showFact<K extends RatingName>(
  rating: K,
  value: Parameters<typeof showRating<K>>[1],
): string {
  const text = showRating(rating, value);
  switch (rating) {
    case "hp":
    case "volts":
    case "amps":
    case "rpm":
    case "hz":
    case "kw":
    case "flange":
    case "capacitorUf":
      return rating === "flange" ? `${text} face` : text;
    case "serviceFactor":
      return `SF ${text}`;
    case "serviceFactorAmps":
      return `${text} max`;
    case "totalHp":
      return `${text} total`;
    case "phase":
      return text === "1" ? "single-phase" : "three-phase";
    case "shaft":
      return `${text} shaft`;
    case "pricePerKwh":
      return `${centsFromUsd(Number(value))} ¢/kWh`;
    case "hoursPerDay":
      return `${text} a day`;
    case "supplyVolts":
      return `${text} supply`;
    case "breakerAmps":
      return `${text} breaker`;
    case "breakerPoles":
      return `${text}-pole breaker`;
    case "pumpModel":
      return `pump ${text}`;
    case "modelNumbers":
      return `number ${text}`;
    case "speedKind":
      return text === "variable" ? "variable speed" : `${text}-speed`;
    default:
      return `${ratings[rating].title} ${text}`;
  }
}
