import { readFileSync } from "node:fs";
import { isOrdinary, knownWords } from "../../../../src/nameplate/read/ordinary.ts";
import { editDistance } from "../../../../src/nameplate/read/spelling.ts";
import { fold } from "../../../../src/nameplate/read/token.ts";

/**
 * `npx tsx tests/nameplate/read/spelling/neighbours.ts LIST...` prints the words of general word lists (one a line, such
 * as those of Debian's `wamerican` and `wspanish`) that lie one letter from a word the reader knows: the content of
 * `src/nameplate/read/words/dictionary.ts`, from which names and the rarest words were left out by hand.
 */
const lists = process.argv.slice(2);
if (lists.length === 0) throw new Error("Name at least one word list.");

const byFirst = new Map<string, string[]>();
for (const word of knownWords) byFirst.set(word[0] ?? "", [...(byFirst.get(word[0] ?? "") ?? []), word]);

const isNear = (word: string) =>
  (byFirst.get(word[0] ?? "") ?? []).some((known) => editDistance(word, known, 1) === 1);

const words = lists.flatMap((path) => readFileSync(path, "utf8").split("\n")).map(fold);
const found = words.filter((word) => /^[a-z]{5,}$/.test(word) && !knownWords.has(word) && !isOrdinary(word));
console.log([...new Set(found.filter(isNear))].sort().join(" "));
