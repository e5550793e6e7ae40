import { chance } from "../channels/telegram/kill/script.ts";
import { loadHostile } from "../corpus/score/messages.ts";

/** A made-up message, and whether it is nothing but noise: then no reading, no danger may come of it. */
export interface MadeUp {
  readonly text: string;
  readonly noise: boolean;
}

type Chance = ReturnType<typeof chance>;

const pick = <T>(random: Chance, list: readonly T[]): T => list[random.below(list.length)] as T;
const times = <T>(count: number, make: () => T): readonly T[] => Array.from({ length: count }, make);

/** Letters of which no word of the trade is made; no digits. */
const noiseWord = (random: Chance) => times(3 + random.below(9), () => pick(random, [..."bgjkqxz"])).join("");
const scripts = [
  "привет как дела",
  "你好朋友",
  "مرحبا صديقي",
  "שלום חבר",
  "こんにちは",
  "γεια σου φίλε",
  "🎉🐬🌵",
  "नमस्ते दोस्त",
];
const marks = [
  "...",
  "???",
  "!!!",
  "((",
  "]]",
  "~~~",
  "…",
  "—",
  "\u0000",
  "\u200d\u200d",
  "\ufeff",
  "\u202e",
  "\t",
  "\r\n",
  "�",
  "\ud800",
];

const words =
  "hp sf hertz volts amps rpm frame 56Y 48J 56C 1.5 1½ 3/4 115/230 208-230 3450 19.2 9.6 phase single duty code ambient 40C model serial QX-4471 smoke shock tripped breaker no not never dead pump motor yes no thanks price person delete data start over what is the it says can't read worn i think maybe 60 hz sfa thp kw total ' \" / \\ - , . : ; ( ) \n".split(
    " ",
  );
const attacks = [
  "'; DROP TABLE threads; --",
  '<b onload="x">&lt;</b>',
  "{when} {toString}",
  '{"__proto__": {"x": 1}}',
  "=cmd|' /C calc'!A0",
  "../../etc/passwd",
  "%s%n%x",
  "#{7*7}",
  "\\u0000",
  "A".repeat(300),
  "1".repeat(300),
  "1/".repeat(150),
  "9,999.99".repeat(40),
  "not ".repeat(60),
  "hp 1e308 volts 1e-400 amps -0 rpm NaN sf Infinity",
  "99999999999999999999 hp",
];

function noise(random: Chance): string {
  const parts = times(1 + random.below(12), () => {
    const kind = random.below(10);
    return kind < 6 ? noiseWord(random) : kind < 8 ? pick(random, marks) : pick(random, scripts);
  });
  return parts.join(" ");
}

const salad = (random: Chance): string => times(1 + random.below(25), () => pick(random, words)).join(" ");

/** A text with some characters dropped, doubled, exchanged or put in. */
function damaged(random: Chance, text: string): string {
  let now = text;
  for (let left = random.below(8); left > 0; left -= 1) {
    const at = random.below(now.length + 1);
    const added = pick(random, ["", "", now.slice(at, at + 2), "\u0000", "9", "/", " ", "l", "O", "\n"]);
    now = now.slice(0, at) + added + now.slice(at + random.below(3));
  }
  return now;
}

/**
 * Endless messages of at most `longest` characters, the same for the same seed: noise, trade words in any order, attacks,
 * and damaged ones of all.
 */
export function madeUp(seed: number, longest: number): () => MadeUp {
  const random = chance(seed);
  // Names every object has are a test of their own (tests/security/words-as-data.test.ts).
  const hostile = loadHostile()
    .map(({ text }) => text)
    .filter((text) => !text.includes("constructor"));
  return () => {
    const kind = random.below(10);
    if (kind < 5) return { text: noise(random), noise: true };
    const text =
      kind < 7
        ? salad(random)
        : kind < 8
          ? pick(random, hostile)
          : kind < 9
            ? pick(random, attacks)
            : `${pick(random, attacks)} ${salad(random)}`;
    const cut = text.slice(0, longest);
    return { text: random.below(3) === 0 ? damaged(random, cut) : cut, noise: false };
  };
}
