/** Phrases written one after the other, separated by commas; line ends do not matter. */
export function list(phrases: string): readonly string[] {
  return phrases
    .split(",")
    .map((phrase) => phrase.trim().replace(/\s+/g, " "))
    .filter((phrase) => phrase !== "");
}
