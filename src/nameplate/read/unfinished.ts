/** A number of which a character is missing (`1.?`, `2_0`, `34??`, `1.x`), and the unit glued to it. */
const partial =
  /^((?=\D{0,3}\d|\?)[0-9.,/-]{0,12}(?:_+|\?{2,6}|\?(?=[\d/.,-]|[YJC]$)|(?<=[.,/-])\?|(?<=\d)\*+|(?<=\d[.,])[xX]{1,2}(?![a-z])|(?<=\d)[xX]{2})[0-9.,/?_*-]{0,12})(\p{L}{0,8})$/u;

interface Unfinished {
  readonly start: number;
  readonly end: number;
  /** Where the figure ends with the unit glued to it. */
  readonly shownEnd: number;
}

const longest = 32;

/** The figure in this run of characters that lacks some of its own: `2_0`, `34xx`, "volts 2??", "115/2--". */
export function unfinishedFigure(text: string, from: number, to: number): Unfinished | undefined {
  if (to - from > longest + 6) return undefined;
  const written = text.slice(from, to);
  if (!/\d/.test(written)) return undefined;
  const trailing = /^\d{1,2}\.{2,3}$/.test(written) && namesLongFigure(text, from);
  const shown = trailing ? written : written.replace(/^["'“”(:]{1,3}|["'“”),;:!.]{1,3}$/g, "");
  // Volts have three figures: "23? V" lacks one, "230? V" is doubted.
  const short =
    trailing ||
    (/^\d{2}\?$/.test(shown) && /^ ?v(?:olts?)?\b/i.test(text.slice(to, to + 7))) ||
    lacksDigits(text, from, shown);
  const asked = /^[\d.,/-]*\d\?+$/.test(shown) && !/^\d{2}\?\?$|^\d{3}\?$/.test(shown);
  const unread = short ? shown : shown.length <= longest && !asked ? partial.exec(shown)?.[1] : undefined;
  if (unread === undefined) return undefined;
  const start = text.indexOf(shown, from);
  // The frame letter after a missing figure belongs to it: "5?J".
  const whole = /[?_][YJC]$/.test(shown) ? shown : unread;
  return { start, end: start + whole.length, shownEnd: start + shown.length };
}

/** "volts 2??", "115/2--", "RPM 34__": volts and rpm have more figures than stand here. */
function lacksDigits(text: string, from: number, shown: string): boolean {
  if (!/^(?:\d{3}\/)?\d{1,2}(?:\?{1,2}|[-_*]{2,3})$/.test(shown)) return false;
  return shown.includes("/") || namesLongFigure(text, from);
}

/** Right before stands the name of a rating that has three or four figures. */
function namesLongFigure(text: string, from: number): boolean {
  return /(?:\bv|volts?|voltage|voltios|voltaje|rpm)[\s:=.]{0,4}$/i.test(
    text.slice(Math.max(0, from - 14), from),
  );
}
