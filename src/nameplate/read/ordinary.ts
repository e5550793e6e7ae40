import { everydayWords } from "./everyday.ts";
import * as numberWords from "./numberWords.ts";
import * as words from "./words/index.ts";

/** Everyday words a letter or two away from a label word: never taken for a slip of the pen. */
const near = new Set(
  (
    "bumper numbers neighbors labels motors meters matter better letter breakers brother another moreover cannon rubber rubbing raided padded lately latter laser lower sounds around ground found bound keyed sorry story worry single signal singer doubled mother motion face faced case cases came come comes same fame flame false fast fact factory force name named tape taped type hype mode models modern module motel cost " +
    "post past port part party parts cast chart card cards cats later water serve serves server series several serious cereal boat vault vote voted camp camps damp lamp lamps cause close closed clause " +
    "claw copy core cord cold could coded care cars cart phrase phone phones place places path park pays spend speedy sped hours hour house horn hose hers here vols tips tire typed this that " +
    "them then there these thread trade fans fase from fried frame flood floor shut short shift shaft sharp share square squad cycle clean class glass grass label table motor motors water rate rated rating " +
    "voice value values total totals time times term terms model mold amped after about above again ahead also some sold serial single signal since will with were what when your yours have having having hold help " +
    "heat heats heat inch inside insult insulin island claim claims contact count counts cover covers cool code coded bride bridge break broke power powder flash flush range change charge large"
  ).split(" "),
);

for (const phrases of Object.values(words).flatMap(strings))
  for (const word of phrases.split(" ")) near.add(word);

/** Every phrase in a nested list of phrases. */
function strings(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(strings) : [];
}

/** Every longer word of the lists, as slips of one letter are mended towards them. */
export const knownWords: ReadonlySet<string> = new Set(
  [...Object.values(words).flatMap(strings), "degrees clearly definitely something horsepower"]
    .flatMap((phrase) => phrase.split(" "))
    .filter((word) => /^[a-z]{5,}$/.test(word)),
);

/** The longer words that tell whose figure is meant or that it cannot be read, as slips are mended towards them. */
export const tradeWords: ReadonlySet<string> = new Set(
  "breaker neighbor capacitor number cannot couldnt rubbed faded scratched missing illegible unreadable impeller measured clamp meter label sticker nameplate motor actually correction sorry double single threaded keyed square round flange".split(
    " ",
  ),
);

/** Words of the place, mended only from letters exchanged or written by ear. */
export const placeWords: ReadonlySet<string> = new Set(
  "empty blank hours hour daily pole poles double outlet panel circuit fuse horas voltage heater currents".split(
    " ",
  ),
);

export function isTradeWord(word: string): boolean {
  return near.has(word);
}

export function isOrdinary(word: string): boolean {
  return near.has(word) || everydayWords.has(word) || saidNumbers.has(word);
}

const saidNumbers = new Set(
  [numberWords.units, numberWords.tens, numberWords.hundreds, numberWords.parts].flatMap(Object.keys),
);
