/**
 * Distance of two texts in wrong, missing, extra and swapped characters, each place edited once ("optimal string
 * alignment"): the recurrence of R. A. Wagner and M. J. Fischer, J. ACM 21 (1974), with the swap of R. Lowrance and
 * R. A. Wagner, J. ACM 22 (1975); from memory. Slow and plain: the reference that the search is held against.
 */
export function editDistance(a: string, b: string): number {
  const rows: number[][] = Array.from({ length: a.length + 1 }, (_, i) => [i]);
  for (let j = 0; j <= b.length; j++) rows[0]![j] = j;
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const wrong = rows[i - 1]![j - 1]! + Number(a[i - 1] !== b[j - 1]);
      let least = Math.min(wrong, rows[i - 1]![j]! + 1, rows[i]![j - 1]! + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      }
      rows[i]![j] = least;
    }
  }
  return rows[a.length]![b.length]!;
}

const classes = ["0O", "17IL", "2Z", "5S", "68BG"];

/** The text with each look-alike replaced by the first of its class. */
export function foldedText(text: string): string {
  return [...text].map((one) => classes.find((alike) => alike.includes(one))?.[0] ?? one).join("");
}

const alphabet = [..."0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"];

/**
 * Every text one wrong, missing, extra or swapped character away: the four kinds that F. J. Damerau found to make
 * up some 80 % of typing errors, Comm. ACM 7 (1964); from memory.
 */
export function corruptions(text: string, characters: readonly string[] = alphabet): Set<string> {
  const all = new Set<string>();
  for (let at = 0; at <= text.length; at++) {
    const [head, tail] = [text.slice(0, at), text.slice(at)];
    for (const other of characters) {
      all.add(head + other + tail);
      if (tail !== "") all.add(head + other + tail.slice(1));
    }
    if (tail !== "") all.add(head + tail.slice(1));
    if (tail.length > 1) all.add(head + tail[1] + tail[0] + tail.slice(2));
  }
  all.delete(text);
  return all;
}
