/** Characters that a slip or a look-alike is searched for in; longer numbers are found only when typed exactly. */
export const longestSearched = 64;

/** Code of every letter or digit that is neither A-Z nor 0-9. */
export const otherCode = 37;

const digitCode = 1;
const letterCode = 11;

/** The form in which two spellings of a number are equal: letters and digits only, upper case, full-width folded. */
export function plainText(number: string): string {
  // Nearly every number is plain ASCII, which needs no folding.
  if (/^[ -~]*$/.test(number)) return number.toUpperCase().replaceAll(/[^A-Z0-9]/g, "");
  return number
    .normalize("NFKC")
    .toUpperCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, "");
}

/**
 * Writes the plain form of a number into `out` from `at` on, one small code for a character (digits 1 to 10,
 * letters 11 to 36, anything else 37), and gives the position after the last. Writing past the end of `out` is
 * cut off: compare the returned position with its length.
 */
export function encode(number: string, out: Uint8Array, at = 0): number {
  let position = at;
  for (let index = 0; index < number.length; index++) {
    const unit = number.charCodeAt(index);
    if (unit > 127) return encodePlain(plainText(number), out, at);
    const code = asciiCode(unit);
    if (code > 0) out[position++] = code;
  }
  return position;
}

function encodePlain(plain: string, out: Uint8Array, at: number): number {
  let position = at;
  for (let index = 0; index < plain.length; index++) {
    out[position++] = asciiCode(plain.charCodeAt(index)) || otherCode;
  }
  return position;
}

/** Code of an ASCII letter or digit, either case; 0 for everything else. */
function asciiCode(unit: number): number {
  if (unit >= 48 && unit <= 57) return unit - 48 + digitCode;
  if (unit >= 65 && unit <= 90) return unit - 65 + letterCode;
  if (unit >= 97 && unit <= 122) return unit - 97 + letterCode;
  return 0;
}

/** Code of one upper-case letter or digit, for tables written with characters. */
export function codeOf(character: string): number {
  return asciiCode(character.charCodeAt(0)) || otherCode;
}

/** Whether a code stands for a digit. */
export function isDigit(code: number): boolean {
  return code >= digitCode && code < letterCode;
}
