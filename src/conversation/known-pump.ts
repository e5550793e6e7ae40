import { plainNumber } from "../catalogue/numbers.ts";
import type { Pump } from "../catalogue/types.ts";
import type { MessageReading, Reading } from "../nameplate/reading.ts";

/** Pump names have at most this many words. */
const LONGEST_NAME_WORDS = 4;
/** Shorter names would turn up in ordinary words. */
const SHORTEST_NAME = 4;

/**
 * The reading with the pump that the message names, if it is one of the shop's and the label grammar did not
 * see it: "it's a marmalade f5" needs no word like "model" to be understood.
 */
export function withKnownPump(text: string, reading: MessageReading, pumps: readonly Pump[]): MessageReading {
  if (reading.readings.some(({ rating }) => rating === "pumpModel")) return reading;
  const found = knownPump(text, pumps);
  return found ? { ...reading, readings: [...reading.readings, found] } : reading;
}

function knownPump(text: string, pumps: readonly Pump[]): Reading<"pumpModel"> | undefined {
  const names = new Map(
    pumps.flatMap(({ model, aliases }) => [model, ...aliases].map((name) => [plainNumber(name), model])),
  );
  const words = [...text.matchAll(/[\p{L}\p{N}][\p{L}\p{N}/.-]*/gu)];
  for (let size = LONGEST_NAME_WORDS; size > 0; size--) {
    for (let at = 0; at + size <= words.length; at++) {
      const first = words[at];
      const last = words[at + size - 1];
      if (!first || !last) continue;
      const start = first.index;
      const end = last.index + last[0].length;
      const plain = plainNumber(text.slice(start, end));
      const model = plain.length >= SHORTEST_NAME ? names.get(plain) : undefined;
      if (model)
        return { rating: "pumpModel", value: model, words: text.slice(start, end), span: { start, end } };
    }
  }
  return undefined;
}
