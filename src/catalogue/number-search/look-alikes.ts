import { codeOf, isDigit, otherCode } from "./plain.ts";

/** Characters that one hand types for the other, whatever the plate looks like. Common practice, no source. */
const typedAlike: readonly string[] = ["O0", "I1", "L1", "IL", "S5", "B8", "Z2", "G6"];

/** Figures that worn print turns into each other. Common practice, no source. */
const wornAlike: readonly string[] = ["68", "17"];

/** Characters of similar shape: they order near candidates and decide nothing. Common practice, no source. */
const similarShape: readonly string[] = [
  ...[
    "38",
    "56",
    "08",
    "49",
    "35",
    "09",
    "0D",
    "0Q",
    "OQ",
    "OD",
    "OC",
    "4A",
    "7T",
    "2S",
    "9P",
    "3E",
    "UV",
    "VY",
  ],
  ...["EF", "PR", "BR", "CG", "HN", "MN", "KX", "XY", "IJ", "IT", "DQ", "FP", "BE", "VW", "68", "BG", "7Z"],
];

/** How two characters look to the eye, the closest first. */
export const likeness = { same: 0, typed: 1, worn: 2, far: 3, similar: 4, none: 5 } as const;

const width = otherCode + 1;
const likenessOf = new Uint8Array(width * width).fill(likeness.none);

/** Code -> the class of look-alikes it stands in, so that worn and typed look-alikes have equal folded codes. */
export const folded = Uint8Array.from({ length: width }, (_, code) => code);

function join(a: number, b: number): void {
  const kept = folded[a] ?? a;
  const lost = folded[b] ?? b;
  for (let code = 0; code < width; code++) if (folded[code] === lost) folded[code] = kept;
}

function mark(pairs: readonly string[], level: number): void {
  for (const pair of pairs) {
    const a = codeOf(pair.charAt(0));
    const b = codeOf(pair.charAt(1));
    likenessOf[a * width + b] = Math.min(level, likenessOf[a * width + b] ?? level);
    likenessOf[b * width + a] = Math.min(level, likenessOf[b * width + a] ?? level);
  }
}

for (const pair of [...typedAlike, ...wornAlike]) join(codeOf(pair.charAt(0)), codeOf(pair.charAt(1)));
for (let a = 0; a < width; a++) {
  for (let b = 0; b < width; b++) {
    // Two steps apart (G to 8 by way of 6): still one class, since a worn 6 is typed as either.
    if (folded[a] === folded[b]) likenessOf[a * width + b] = a === b ? likeness.same : likeness.far;
  }
}
mark(typedAlike, likeness.typed);
mark(wornAlike, likeness.worn);
mark(similarShape, likeness.similar);

/** How alike two codes look: one of `likeness`. */
export function likenessBetween(a: number, b: number): number {
  return likenessOf[a * width + b] ?? likeness.none;
}

/** Whether two characters are hard to tell apart on a worn plate. */
export function looksAlike(a: string, b: string): boolean {
  return a !== "" && b !== "" && likenessBetween(codeOf(a), codeOf(b)) <= likeness.far;
}

/** Whether both codes are digits or both letters. */
export function sameKind(a: number, b: number): boolean {
  return isDigit(a) === isDigit(b);
}
