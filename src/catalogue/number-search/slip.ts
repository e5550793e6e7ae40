import { folded, likeness, likenessBetween, sameKind } from "./look-alikes.ts";

/** What turned a number into what was typed: look-alikes only, or one edit with or without look-alikes around it. */
export interface Slip {
  readonly edits: 0 | 1;
  /** The least alike of the characters taken for each other outside the edit, one of `likeness`. */
  readonly worst: number;
  /** Orders slips of one sort, the likeliest lowest. Common practice, no source. */
  readonly cost: number;
}

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
export function alike(typed: Stretch, number: Stretch): { worst: number; cost: number } | undefined {
  let worst: number = likeness.same;
  let cost = 0;
  for (let n = 0; n < typed.end - typed.start; n++) {
    const level = likenessBetween(typed.codes[typed.start + n] ?? 0, number.codes[number.start + n] ?? 0);
    if (level > likeness.far) return undefined;
    worst = Math.max(worst, level);
    cost += level;
  }
  return { worst, cost };
}

function oneEdit(typed: Stretch, number: Stretch, view: Uint8Array): Slip | undefined {
  const typedLength = typed.end - typed.start;
  const numberLength = number.end - number.start;
  const shorter = Math.min(typedLength, numberLength);
  const at = (n: number) => typed.codes[typed.start + n] ?? 0;
  const of = (n: number) => number.codes[number.start + n] ?? 0;
  const equal = (n: number, m: number) => view[at(n)] === view[of(m)];

  let head = 0;
  while (head < shorter && equal(head, head)) head++;
  let tail = 0;
  while (tail < shorter - head && equal(typedLength - 1 - tail, numberLength - 1 - tail)) tail++;

  const editCost = (): number | undefined => {
    if (typedLength > numberLength) return head + tail === numberLength ? oddOneCost(at, head) : undefined;
    if (typedLength < numberLength) return head + tail === typedLength ? oddOneCost(of, head) : undefined;
    const between = shorter - head - tail;
    if (between === 1) return wrongCost(at(head), of(head));
    return between === 2 && equal(head, head + 1) && equal(head + 1, head) ? 1 : undefined;
  };
  const cost = editCost();
  if (cost === undefined) return undefined;
  const before = alike(part(typed, 0, head), part(number, 0, head));
  const after = alike(part(typed, typedLength - tail), part(number, numberLength - tail));
  if (!before || !after) return undefined;
  const worst = Math.max(before.worst, after.worst);
  return { edits: 1, worst, cost: cost + before.cost + after.cost };
}

/** A character missing or extra: likelier where it stands doubled. */
function oddOneCost(code: (n: number) => number, n: number): number {
  return code(n) === code(n - 1) || code(n) === code(n + 1) ? 1 : 2;
}

function wrongCost(typed: number, meant: number): number {
  if (likenessBetween(typed, meant) === likeness.similar) return 1;
  return sameKind(typed, meant) ? 2 : 3;
}

/** The characters of a stretch from `from` on, up to `to`. */
export function part({ codes, start, end }: Stretch, from: number, to = end - start): Stretch {
  return { codes, start: start + from, end: start + to };
}
