import { isMark, isWord, type Token } from "./token.ts";
import { list } from "./wordlist.ts";

/** What of a motor is round or square. */
const faces = list(`
  flange, face, mount, mounting, plate, brida, cara, pattern, end, ears, motor, frente, montaje, placa
`);

/** What else of a pool and its place is. */
const surroundings = list(`
  pool, pools, spa, tub, tubs, jacuzzi, pad, pads, slab, patio, deck, yard, house, shed, table, box, lid, cover, basket,
  strainer, filter, tank, light, grate, skimmer, vault, hole, pipe, tile, tiles, window, room, concrete, brick, bricks,
  paver, pavers, stone, platform, plywood, patch, corner, building, fence, key, nut, alberca, piscina, losa, caja, tapa,
  filtro, tanque, base, foso, cuarto
`);

const shapes = /^(?:square|squared|squarish|round|circular|cuadrad[oa]|redond[oa])$/;
const articles = ["a", "an", "the", "our", "my", "this", "that", "un", "una", "el", "la"];
const sizes = ["big", "small", "large", "little", "old", "nice", "wide", "heavy", "regular"];
const joints =
  /^(?:and|y|or|with|con|is|es|are|not|but|about|of|at|where|which|so|i|it|for|on|type|kind|style|one|ones|shape|shaped|thing|de|a|bolt|bolts|frame|metal|front|nema)$/;

/** The nouns are at most this many words away. */
const reach = 4;

/** Whether a word such as "square" tells of the motor's face (`true`), of something else (`false`), or may be either. */
export function tellsOfFace(tokens: readonly Token[], start: number, end: number): boolean | undefined {
  if (end !== start + 1 || !shapes.test(tokens[start]?.norm ?? "")) return undefined;
  // "the flange is square with a hole in each corner"
  const told = isWord(tokens[start - 1], "is", "are", "es", "looks") && tokens[start - 2];
  if (told && isWord(told, ...faces)) return true;
  const after = wordsFrom(tokens, end, 1);
  const noun = after.find((token) => isWord(token, ...faces, ...surroundings));
  // "a square concrete pad", "the round face"
  if (noun && after.indexOf(noun) < 3) return isWord(noun, ...faces);
  let lead = start - 1;
  while (isWord(tokens[lead], ...sizes)) lead -= 1;
  // "on a round patch": some other thing.
  const next = tokens[end];
  if (isWord(tokens[lead], ...articles) && next?.kind === "word" && !joints.test(next.norm)) return false;
  // "the flange is square", "our pool is square", "alberca redonda"
  const before = wordsFrom(tokens, start - 1, -1).find((token) => isWord(token, ...faces, ...surroundings));
  return before && isWord(before, ...faces);
}

/** The words up to the next mark or figure, this way or that. */
function wordsFrom(tokens: readonly Token[], from: number, step: 1 | -1): Token[] {
  const words: Token[] = [];
  for (let at = from; words.length < reach; at += step) {
    const token = tokens[at];
    if (token?.kind !== "word" && !isMark(token, "-")) break;
    words.push(token as Token);
  }
  return words;
}
