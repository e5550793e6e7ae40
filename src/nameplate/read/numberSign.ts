import { isMark, isWord, type Token } from "./token.ts";

const numbered = [
  "model",
  "mod",
  "part",
  "type",
  "frame",
  "cat",
  "catalog",
  "catalogue",
  "item",
  "stock",
  "order",
].concat(["serial", "ser", "id", "spec", "style", "modelo", "serie", "parte", "pieza", "tipo"]);

/** "Cat. no. 81PX4", "model no 7": short for number. */
export function isNumberSign(tokens: readonly Token[], at: number): boolean {
  if (!isWord(tokens[at], "no")) return false;
  return isWord(tokens[isMark(tokens[at - 1], ".") ? at - 2 : at - 1], ...numbered);
}
