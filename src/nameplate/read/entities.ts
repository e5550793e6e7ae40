import { isMark, isWord, type Token } from "./token.ts";
import { entityKeys, taskWords } from "./words/motors.ts";

export interface Entity {
  readonly start: number;
  readonly end: number;
  readonly key: string;
}

const keys = new Set(entityKeys);
const tasks = new Set(taskWords);
const nouns = ["pump", "motor", "unit", "bomba", "label", "plate", "tag"];
/** Where one of several motors stands, or which of them it is. */
const places =
  /^(?:left|right|top|bottom|upper|lower|north|south|east|west|front|rear|izquierda|izquierdo|derecha|derecho|first|second|third|1st|2nd|3rd|primera|primer|segunda|segundo)$/;
const articles = ["the", "my", "our", "a", "el", "la", "mi"];

/** Motors told apart by number, letter, place or task: "pump 1", "left motor", "the one for the slide", "spa pump". */
export function findEntities(tokens: readonly Token[]): Entity[] {
  const entities: Entity[] = [];
  const several = countsPumps(tokens);
  for (let at = 0; at + 1 < tokens.length; at++) {
    const entity =
      placed(tokens, at) ??
      numbered(tokens, at) ??
      forTask(tokens, at) ??
      tasked(tokens, at) ??
      (several ? oneOrOther(tokens, at, entities) : undefined);
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

/** "the one for the slide", "pump on the spa", "the one on the left". */
function forTask(tokens: readonly Token[], start: number): Entity | undefined {
  if (!isWord(tokens[start], "one", "pump", "motor", "bomba")) return undefined;
  const tasked = isWord(tokens[start + 1], "for", "feeding", "running", "de", "del");
  const side = tokens[start + 3];
  const known = side?.kind === "word" && tasks.has(side.norm);
  const beside = side?.kind === "word" && places.test(side.norm);
  const standing =
    isWord(tokens[start + 1], "on", "by") && (beside || known || !isWord(tokens[start], "one"));
  if (!(tasked || standing)) return undefined;
  const bare = isWord(tokens[start + 1], "del");
  if (!bare && !isWord(tokens[start + 2], ...articles)) return undefined;
  const at = start + (bare ? 2 : 3);
  const task = tokens[at];
  if (task?.kind !== "word" || (isWord(tokens[start + 1], "de", "del") && !tasks.has(task.norm)))
    return undefined;
  return { start, end: at + 1, key: beside ? task.norm.slice(0, 3) : task.norm };
}

/** "spa pump", "the waterfall one": a motor named by its task. */
function tasked(tokens: readonly Token[], start: number): Entity | undefined {
  const task = tokens[start];
  if (task?.kind !== "word" || !tasks.has(task.norm)) return undefined;
  let at = task.norm === "hot" && isWord(tokens[start + 1], "tub") ? start + 2 : start + 1;
  // "the spa booster", "pool cleaner motor"
  const second = tokens[at];
  const double = second?.kind === "word" && /^(?:booster|cleaner|jet|jets|filter|feature)$/.test(second.norm);
  if (double) at += 1;
  if (double && !isWord(tokens[at], "pump", "motor", "one", "unit"))
    return isWord(tokens[start - 1], ...articles) ? { start, end: at, key: task.norm } : undefined;
  if (!isWord(tokens[at], "pump", "motor", "one", "unit")) return undefined;
  return { start, end: at + 1, key: task.norm };
}

/** "two pumps", "tenemos dos bombas": several are spoken of. */
function countsPumps(tokens: readonly Token[]): boolean {
  return tokens.some(
    (token, at) =>
      token.kind === "number" &&
      (token.value === 2 || token.value === 3) &&
      (isWord(tokens[at + 1], ...plurals) || isWord(tokens[at + 2], ...plurals)),
  );
}

const plurals = ["pumps", "motors", "bombas", "motores"];

/** "one runs the waterfall and one is dead", "one … the other": told apart by nothing but their order. */
function oneOrOther(tokens: readonly Token[], start: number, before: readonly Entity[]): Entity | undefined {
  const next = tokens[start + 1];
  if (isWord(tokens[start], "other", "otro", "otra") && isWord(tokens[start - 1], "the", "el", "la"))
    return { start, end: isWord(next, "one", "pump", "motor") ? start + 2 : start + 1, key: "other" };
  const opens =
    start === 0 ||
    tokens[start - 1]?.kind !== "word" ||
    isWord(tokens[start - 1], "and", "y", "but", "pero", "so");
  const verb =
    next?.kind === "word" && /^(?:is|was|runs|works|still|just|quit|died|es|esta|of|has|ya)$/.test(next.norm);
  if (!opens || !verb || !isWord(tokens[start], "one", "una", "uno")) return undefined;
  return { start, end: start + 1, key: before.some(({ key }) => key === "one") ? "other" : "one" };
}
