import { entityKeys } from "./cues.ts";
import { isMark, isWord, type Token } from "./token.ts";

export interface Entity {
  readonly start: number;
  readonly key: string;
}

const keys = new Set(entityKeys);

/** Motors told apart by number or letter: "pump 1", "motor B". */
export function findEntities(tokens: readonly Token[]): Entity[] {
  const entities: Entity[] = [];
  for (let at = 0; at + 1 < tokens.length; at++) {
    const [noun, key, next] = [tokens[at], tokens[at + 1], tokens[at + 2]];
    const ordinal =
      isWord(noun, "first", "second", "third", "1st", "2nd", "3rd") &&
      isWord(key, "pump", "motor", "unit", "bomba");
    if (ordinal && noun)
      entities.push({ start: at, key: noun.norm.slice(0, 3).replace("1st", "fir").replace("2nd", "sec") });
    if (
      noun?.kind === "word" &&
      isWord(noun, "pump", "motor", "unit", "bomba") &&
      key &&
      (key.kind === "word" || key.kind === "number")
    ) {
      const plain = key.kind === "number" ? key.form !== "fraction" : key.norm !== "a" || key.upper;
      const figure =
        key.kind === "number" && next?.kind === "word" && /^(?:hp|horse|thp|phase|speed)$/.test(next.norm);
      if (plain && keys.has(key.norm) && !figure && !isMark(next, "/", "-"))
        entities.push({ start: at, key: key.norm });
    }
  }
  return entities;
}
