import { isMark, isWord, type Token } from "./token.ts";
import { entityKeys } from "./words/motors.ts";

export interface Entity {
  readonly start: number;
  readonly end: number;
  readonly key: string;
}

const keys = new Set(entityKeys);
const nouns = ["pump", "motor", "unit", "bomba", "label", "plate", "tag"];
/** Where one of several motors stands, or which of them it is. */
const places =
  /^(?:left|right|top|bottom|upper|lower|north|south|east|west|front|rear|izquierda|izquierdo|derecha|derecho|first|second|third|1st|2nd|3rd|primera|primer|segunda|segundo)$/;
const articles = ["the", "my", "our", "a", "el", "la", "mi"];

/** Motors told apart by number, letter, place or task: "pump 1", "left motor", "the one for the slide". */
export function findEntities(tokens: readonly Token[]): Entity[] {
  const entities: Entity[] = [];
  for (let at = 0; at + 1 < tokens.length; at++) {
    const entity = placed(tokens, at) ?? numbered(tokens, at) ?? forTask(tokens, at);
    if (!entity) continue;
    entities.push(entity);
    at = entity.end - 1;
  }
  return entities;
}

function placed(tokens: readonly Token[], start: number): Entity | undefined {
  const word = tokens[start];
  if (word?.kind !== "word" || !places.test(word.norm)) return undefined;
  let at = start + 1;
  if (isWord(tokens[at], "side", "hand")) at += 1;
  const headed = isWord(tokens[at], ...nouns, "one");
  if (!headed && at === start + 1 && !isMark(tokens[at], ":", "=")) return undefined;
  const ordinal = /^(?:[fst1-3]|prim)/.test(word.norm);
  if (ordinal && !isWord(tokens[at], "pump", "motor", "unit", "bomba")) return undefined;
  const key = word.norm.slice(0, 3).replace("1st", "fir").replace("2nd", "sec").replace("3rd", "thi");
  return { start, end: headed ? at + 1 : at, key };
}

function numbered(tokens: readonly Token[], start: number): Entity | undefined {
  const [noun, key, next] = [tokens[start], tokens[start + 1], tokens[start + 2]];
  if (!isWord(noun, "pump", "motor", "unit", "bomba")) return undefined;
  if (key?.kind !== "word" && key?.kind !== "number") return undefined;
  const plain = key.kind === "number" ? key.form !== "fraction" : key.norm !== "a" || key.upper;
  const figure =
    key.kind === "number" && next?.kind === "word" && /^(?:hp|horse|thp|phase|speed)$/.test(next.norm);
  if (!plain || !keys.has(key.norm) || figure || isMark(next, "/", "-")) return undefined;
  return { start, end: start + 2, key: key.norm };
}

/** "the one for the slide", "pump on the spa". */
function forTask(tokens: readonly Token[], start: number): Entity | undefined {
  if (!isWord(tokens[start], "one", "pump", "motor")) return undefined;
  const tasked = isWord(tokens[start + 1], "for", "feeding", "running");
  const standing = isWord(tokens[start + 1], "on", "by") && !isWord(tokens[start], "one");
  if (!(tasked || standing) || !isWord(tokens[start + 2], ...articles)) return undefined;
  const task = tokens[start + 3];
  return task?.kind === "word" ? { start, end: start + 4, key: task.norm } : undefined;
}
