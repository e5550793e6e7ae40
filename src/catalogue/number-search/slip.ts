import { folded, likeness, likenessBetween, sameKind } from "./look-alikes.ts";

/** How two texts of equal length look alike. */
export interface Alike {
  /** The least alike of the characters taken for each other, one of `likeness`. */
  readonly worst: number;
  /** How many characters are taken for one that only wear makes alike. */
  readonly worn: number;
  /** Orders slips of one sort, the likeliest lowest. Common practice, no source. */
  readonly cost: number;
}

/** One edit, and how alike the rest is. */
type Edited = Pick<Alike, "worst" | "cost">;

/** What turned a number into what was typed: look-alikes only, or one edit with or without look-alikes around it. */
export type Slip = ({ readonly edits: 0 } & Alike) | ({ readonly edits: 1 } & Edited);

/** A stretch of codes: from `start` up to `end` in `codes`. */
export interface Stretch {
  readonly codes: Uint8Array;
  readonly start: number;
  readonly end: number;
}

const asIs = Uint8Array.from(folded, (_, code) => code);

/** The slip that explains the typed stretch as the number, undefined when it takes more than one edit. */
export function slipBetween(typed: Stretch, number: Stretch): Slip | undefined {
  const longer = typed.end - typed.start - (number.end - number.start);
  if (longer < -1 || longer > 1) return undefined;
  const lookAlike = longer === 0 ? alike(typed, number) : undefined;
  if (lookAlike) return { edits: 0, ...lookAlike };
  // The plain view first: folded, a run such as O0 hides which of its characters was the extra one.
  return oneEdit(typed, number, asIs) ?? oneEdit(typed, number, folded);
}

/** How two stretches of equal length look alike; undefined when some pair does not. */
export function alike(typed: Stretch, number: Stretch): Alike | undefined {
  let worst: number = likeness.same;
  let worn = 0;
  let cost = 0;
  for (let n = 0; n < typed.end - typed.start; n++) {
    const level = likenessBetween(typed.codes[typed.start + n] ?? 0, number.codes[number.start + n] ?? 0);
    if (level > likeness.far) return undefined;
    worst = Math.max(worst, level);
    worn += Number(level >= likeness.worn);
    cost += level;
  }
  return { worst, worn, cost };
}

function oneEdit(typed: Stretch, number: Stretch, view: Uint8Array): Slip | undefined {
  const typedLength = typed.end - typed.start;
  const numberLength = number.end - number.start;
  const shorter = Math.min(typedLength, numberLength);
  let head = 0;
  while (head < shorter && codeIn(view, typed, head) === codeIn(view, number, head)) head++;
  let tail = 0;
  while (
    tail < shorter - head &&
    codeIn(view, typed, typedLength - 1 - tail) === codeIn(view, number, numberLength - 1 - tail)
  ) {
    tail++;
  }
  const edit = editOf(typed, number, head, shorter - head - tail, view);
  if (!edit) return undefined;
  const before = alike(part(typed, 0, head), part(number, 0, head));
  const after = alike(part(typed, typedLength - tail), part(number, numberLength - tail));
  if (!before || !after) return undefined;
  const worst = Math.max(before.worst, edit.worst, after.worst);
  return { edits: 1, worst, cost: before.cost + edit.cost + after.cost };
}

/** The one edit behind a head that is alike, `between` it and the tail; undefined when it takes more. */
function editOf(
  typed: Stretch,
  number: Stretch,
  head: number,
  between: number,
  view: Uint8Array,
): Edited | undefined {
  const longer = typed.end - typed.start - (number.end - number.start);
  if (longer !== 0) return between === 0 ? oddOne(longer > 0 ? typed : number, head) : undefined;
  if (between === 1) {
    return { worst: likeness.same, cost: wrongCost(codeAt(typed, head), codeAt(number, head)) };
  }
  const swapped =
    between === 2 &&
    codeIn(view, typed, head) === codeIn(view, number, head + 1) &&
    codeIn(view, typed, head + 1) === codeIn(view, number, head);
  if (!swapped) return undefined;
  const first = alike(part(typed, head, head + 1), part(number, head + 1, head + 2));
  const second = alike(part(typed, head + 1, head + 2), part(number, head, head + 1));
  if (!first || !second) return undefined;
  const worst = Math.max(first.worst, second.worst);
  return { worst, cost: 1 + first.cost + second.cost };
}

function codeAt({ codes, start }: Stretch, n: number): number {
  return codes[start + n] ?? 0;
}

function codeIn(view: Uint8Array, { codes, start }: Stretch, n: number): number {
  return view[codes[start + n] ?? 0] ?? 0;
}

/** A character that only one of the two has: likelier where it stands doubled. */
function oddOne({ codes, start }: Stretch, head: number): Edited {
  const at = start + head;
  const doubled = codes[at] === codes[at + 1] || (head > 0 && codes[at] === codes[at - 1]);
  return { worst: likeness.same, cost: doubled ? 1 : 2 };
}

function wrongCost(typed: number, meant: number): number {
  if (likenessBetween(typed, meant) === likeness.similar) return 1;
  return sameKind(typed, meant) ? 2 : 3;
}

/** The characters of a stretch from `from` on, up to `to`. */
export function part({ codes, start, end }: Stretch, from: number, to = end - start): Stretch {
  return { codes, start: start + from, end: start + to };
}
