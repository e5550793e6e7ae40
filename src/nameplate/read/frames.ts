import type { Parsed } from "./parsed.ts";
import { isMark, isWord, type Token } from "./token.ts";

const towardsLetter = ["frame", "with", "and", "then", "a", "the", "letter", "is", "con", "y", "la", "letra"];

/** "48 frame with a Y", "56 and the letter is J": the letter a few words after the number. */
function laterLetter(tokens: readonly Token[], at: number): Parsed | undefined {
  const number = tokens[at];
  for (let next = at + 1; number && next < at + 7; next++) {
    const token = tokens[next];
    const letter = token?.kind === "word" && token.upper && /^[yjcz]$/.test(token.norm);
    const loose = tokens[next + 1]?.kind === "mark" || !tokens[next + 1]?.glued;
    if (letter && next > at + 1 && loose)
      return { end: next + 1, value: `${number.norm}${token.norm.toUpperCase()}`, fit: 1.6, united: true };
    if (!isWord(token, ...towardsLetter) && !isMark(token, ",")) return undefined;
  }
  return undefined;
}

/** "FRAME 56" at the end of a line, "Y" alone on the next. */
function letterBelow(tokens: readonly Token[], at: number): boolean {
  const [broken, letter, after] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (broken?.kind !== "break" || broken.blank || letter?.kind !== "word" || !letter.upper) return false;
  return after === undefined || after.kind === "break";
}

const frameEndings = /^(?:y|yz|yn|j|jm|jp|c|cz|z|h|hc|hz|n|r|t|tc|ty)$/;

const spokenLetters: Readonly<Record<string, string>> = {
  wye: "y",
  ye: "y",
  jay: "j",
  jey: "j",
  jota: "j",
  cee: "c",
};

/** "fifty six wye": a letter as it is spoken; after spoken figures a telephone writes "why". */
function spelledOut(token: Token | undefined, spoken: boolean): Token | undefined {
  if (token?.kind !== "word") return token;
  const letter = spoken && token.norm === "why" ? "y" : spokenLetters[token.norm];
  return letter === undefined ? token : { ...token, norm: letter, upper: true };
}

const customaryFrames = new Set(["48", "56"]);

/** 56Y, 56-Y, 56 Y, Y56; the number alone where it is called a frame. */
export function parseFrame(tokens: readonly Token[], at: number): Parsed[] {
  const first = tokens[at];
  if (first?.kind === "partial") return [{ end: at + 1, value: undefined, fit: 1, half: true }];
  // "S56Y": makers put a letter of their own before the number.
  if (first?.kind === "code")
    return /^[a-z](?:48|56)[yjcz]$/i.test(first.chunk.text)
      ? [{ end: at + 1, value: first.chunk.text.toUpperCase(), fit: 1.8 }]
      : [];
  if (first?.kind === "word" && /^[yjc]$/.test(first.norm)) {
    const number = tokens[isMark(tokens[at + 1], "-") ? at + 2 : at + 1];
    // "Y56Y": a maker's letter before the number and the frame's own behind it.
    const letter = tokens[at + 2];
    const whole = letter?.kind === "word" && letter.glued && /^[yjcz]$/.test(letter.norm);
    if (
      number?.kind === "number" &&
      number === tokens[at + 1] &&
      number.glued &&
      whole &&
      customaryFrames.has(number.norm)
    )
      return [{ end: at + 3, value: `${first.norm}${number.norm}${letter.norm}`.toUpperCase(), fit: 2.6 }];
    if (number?.kind === "number" && number.glued && customaryFrames.has(number.norm))
      return [
        { end: tokens.indexOf(number, at) + 1, value: `${number.norm}${first.norm.toUpperCase()}`, fit: 1.5 },
      ];
    return [];
  }
  if (first?.kind !== "number" || first.form === "fraction" || !/^\d{2,3}$/.test(first.norm)) return [];
  const known = customaryFrames.has(first.norm);
  const found: Parsed[] = [
    { end: at + 1, value: first.norm, fit: known ? 1 : first.norm.length === 3 ? -1 : 0 },
  ];
  const later = known ? laterLetter(tokens, at) : undefined;
  if (later) found.push(later);
  let next = at + 1;
  if (isMark(tokens[next], "-", "/", ".", "'", '"') || letterBelow(tokens, next)) next += 1;
  const letter = spelledOut(tokens[next], first.form === "words" && known);
  const follower = tokens[next + 1];
  if (letter?.kind !== "word" || !frameEndings.test(letter.norm)) return found;
  // Spanish "y" between two figures is no frame letter.
  if (letter.norm === "y" && !letter.glued && !letter.upper && follower?.kind === "number") return found;
  if (letter.norm.length > 1 && !letter.glued && !letter.upper) return found;
  const close = letter.glued && next === at + 1;
  found.push({
    end: next + 1,
    value: `${first.norm}${letter.norm.toUpperCase()}`,
    fit: (known ? 2 : 0.5) + (close ? 0.5 : 0),
  });
  return found;
}
