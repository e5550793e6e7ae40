/** How a case can end, in the words staff type and see. */
export const outcomes = [
  "sold",
  "answered",
  "not-stocked",
  "went-elsewhere",
  "no-reply",
  "wrong-part",
] as const;
export type OutcomeName = (typeof outcomes)[number];

/** True for a word of {@link outcomes}, wherever it came from. */
export function isOutcome(word: string): word is OutcomeName {
  return (outcomes as readonly string[]).includes(word);
}
