/** The form in which two spellings of a number are equal: lower case, no spaces, no hyphens. */
export function plainNumber(number: string): string {
  return number.toLowerCase().replaceAll(/[\s\u2010-\u2015-]+/g, "");
}
