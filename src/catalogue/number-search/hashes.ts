import { folded } from "./look-alikes.ts";

const base = 0x9e3779b1;

/** Powers of the base, modulo 2^32, for numbers of up to 255 characters. */
const powers = new Int32Array(256);
powers[0] = 1;
for (let n = 1; n < powers.length; n++) powers[n] = Math.imul(powers[n - 1] ?? 0, base);

/** Spreads the bits of a 32-bit sum, so that its low bits choose a bucket and its high bits tell buckets apart. */
function spread(sum: number): number {
  let bits = sum ^ (sum >>> 16);
  bits = Math.imul(bits, 0x85ebca6b);
  bits ^= bits >>> 13;
  bits = Math.imul(bits, 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}

/** Hash of the codes as they are, look-alikes apart. */
export function exactHash(codes: Uint8Array, start: number, end: number): number {
  let sum = 0;
  for (let at = start; at < end; at++) sum = (Math.imul(sum, base) + (codes[at] ?? 0)) | 0;
  return spread(sum);
}

/** Hash of the codes with look-alikes folded into one. */
export function foldedHash(codes: Uint8Array, start: number, end: number): number {
  let sum = 0;
  for (let at = start; at < end; at++) sum = (Math.imul(sum, base) + (folded[codes[at] ?? 0] ?? 0)) | 0;
  return spread(sum);
}

/**
 * Writes the folded hash of the codes, then of the codes with each one character left out, and gives how many
 * were written (at most length + 1). The sum is a polynomial in `base`, so each of them takes one step: leaving
 * out a character takes its term away and lowers the power of those before it.
 */
export function deletionHashes(codes: Uint8Array, start: number, end: number, out: Uint32Array): number {
  const length = end - start;
  out[0] = foldedHash(codes, start, end);
  let behind = 0;
  for (let at = start; at < end; at++) behind = (Math.imul(behind, base) + (folded[codes[at] ?? 0] ?? 0)) | 0;
  let before = 0;
  let previous = 0;
  let count = 1;
  for (let index = 0; index < length; index++) {
    const code = folded[codes[start + index] ?? 0] ?? 0;
    const power = powers[length - 1 - index] ?? 0;
    behind = (behind - Math.imul(code, power)) | 0;
    // Of a run of equal characters any one left out gives the same text.
    if (code !== previous) out[count++] = spread((Math.imul(before, power) + behind) | 0);
    before = (Math.imul(before, base) + code) | 0;
    previous = code;
  }
  return count;
}
