import type { MessageReading } from "../../nameplate/reading.ts";
import type { IntentMatch } from "../intents.ts";
import type { Likelihoods } from "./model.ts";
import { finerIntents, type IntentName } from "./names.ts";

/** What the patterns put first counts e times as likely; chosen on messages neither had been tuned to. */
const PATTERN_FIRST = 1;
/** So do `ratings` and `correction` when values were read; without any, `ratings` counts e times less. */
const READ = 1;
/** Below this nothing in the message speaks for anything in particular. */
const UNSURE = 0.25;
/** A further intent must be shown by a pattern and be likely in a part of the message, or it costs a stray reply. */
const FURTHER = 0.5;
/** Where a message falls into parts that may want different things. */
const PARTS = /[.,!?;:\n–—]+\s|\s(?:and|but|so|because|y|pero|porque)\s|(?=\p{Extended_Pictographic})/u;
const PARTS_AT_MOST = 12;

/** What comes first, from how likely the examples make it, what the patterns show and what was read. */
function firstOf(likely: Likelihoods, shown: readonly IntentMatch[], seen: MessageReading): IntentName {
  const [pattern] = shown;
  let first: IntentName = "other";
  let best = Number.NEGATIVE_INFINITY;
  for (const [intent, likelihood] of likely) {
    let score = Math.log(likelihood + 1e-6);
    if (intent === pattern?.intent && intent !== "other") score += PATTERN_FIRST;
    if (intent === "ratings" || (intent === "correction" && seen.readings.length > 0))
      score += seen.readings.length > 0 ? READ : -READ;
    if (score <= best) continue;
    first = intent;
    best = score;
  }
  return best < Math.log(UNSURE) ? "other" : first;
}

/**
 * Judges patterns, reader and examples together: the likeliest intent first, behind it those that a pattern shows
 * and the examples allow.
 */
export function weigh(
  likelihoods: (plain: string) => Likelihoods,
  shown: readonly IntentMatch[],
  seen: MessageReading,
  plain: string,
): readonly IntentMatch[] {
  const first = firstOf(likelihoods(plain), shown, seen);
  const rest = shown.filter(({ intent }) => intent !== first && intent !== "other");
  const parts = rest.length > 0 ? plain.split(PARTS).slice(0, PARTS_AT_MOST).map(likelihoods) : [];
  const further = rest.filter(({ intent, words }) => {
    // "SER. NO. 22" and "1 hp, no, 2" refuse nothing.
    if (intent === "no" && seen.readings.length > 0) return plain.startsWith(words);
    if (finerIntents.has(intent)) return true;
    if (intent === "ratings" && seen.readings.length > 0) return true;
    // "What is SF" is no complaint that the service factor cannot be read.
    if (intent === "unreadable" && seen.unreadable.length > 0)
      return first !== "explain" && first !== "dont-know";
    return parts.some((likely) => (likely.get(intent) ?? 0) >= FURTHER);
  });
  const words = first === "other" ? "" : plain;
  return [shown.find(({ intent }) => intent === first) ?? { intent: first, words }, ...further];
}
