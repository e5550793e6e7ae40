import { editDistance, swapped } from "../../nameplate/read/spelling.ts";
import { isKnown } from "./lexicon.ts";

/** Danger words worth repairing: a thumb on a phone must not hide them. */
const vocabulary =
  "breaker breakers tripping tripped trips shocked shocking shocks shock electrocuted electrocuting electricity zapped zapping tingle tingles tingling jolted smoke smoking smoked smells smell burning burnt burned sparks sparking spark arcing flames melted melting scorched flooded flooding leaking dripping submerged soaked puddle electrical wires wiring panel outlet junction ladder motor touch touched touching getting popping keeps resetting circuit chispas quemado humo corriente calambre toques hormigueo water pastilla mojado inundado gotea electrocute"
    .split(" ")
    .sort();

/** Everyday words that lie one slip away from a danger word and mean themselves. */
const protectedWords = new Set(
  "stock stocks stocked stocking block blocks clock clocks chock sock socks shack shook shop shops shopped short shorted shots show shows shower shore share sharp shark stark spare spares park parks spank speak speaks spoke spoken spokes smile smiling smock spell spells spelling small smaller smart swell shell shelf sells sell stroke stoke broke broken break breaks breaking brake brakes bread broader beaker baker barker banker bracket burner turning turned turn learning leading looking licking loading melting belting meeting matted malted boring bring boning buying bunting born barn barns bun buns burger bumps tripod triple triples tripled trim trims trimmed trimming trap traps trapped tapping tipping tipped type typed types tips tip strip strips stripped stripping trial tries tree troop drop drops dripping gripping ripping shipping zipped zipping capped tapped mapped napping wrapped tangle tangled tangles single singled jingle mingle title tile tiles tinge tight jointed jolly joined bolted salted flames frames frame flies flags flame blames flooring floored floor floors food flow flowed blood floated lacking leaning lending licking lasting leaving leaping seeking peaking speaking locked soaped stacked socked sparse park sports sport spa spar panels pane panes panic pencil pants planet plane plan outlets outlets outer outlook outfit outlined wire wired wider wipes wines wives tires writes writing waiting wining wishing firing hiring motion moto motorola mortar monitor tough torch couch ouch latch lather lander bladder leader later letter lady adder getting letting setting betting popping hopping shopping mopping topping pumping keep keeps jeeps kept kegs resting testing circus circle electrical electric electronic electron electrician electricians electricista electricistas electricity marking marched arching aching acting racing arctic icing humor humo hugo hum hums hummo mojave mojito corrientes correcto corriendo corrigiendo colambre alambre alambres fiambre toque tocas tomes tonos gorra goma gota gotas pastillas pantalla parrilla castilla cuando quedado quemar quedaron chistes chica chispa smoked smokers smoker smokey touchy pouch stamped storms touches poached coached match matched matching patching bathing catching teaching watching function functions functional auction suction sanction burst bursts bursting burt patel torques chiapas buried burying greeting greetings reheating resisting reverting shooting starting starving staring submerge sticking stacking stalking shouting shacked snaked soared wiping acing arming dipping drifting drilling drinking floating flocking leasing leaching repeating reserving respecting resulting regretting searched stroking tangling trapping tricking swells tippings wirings shorting slicking stockings burping sparky sparkling sparkles sparkle sparing propping flakes flares flamed keels staked stoked meetings waiter waiters wafer wader wager waters watered watery warer winter whiter puedo pueda tingling".split(
    " ",
  ),
);

const byFirstLetter = new Map<string, string[]>();
for (const word of vocabulary) {
  const first = word.charAt(0);
  byFirstLetter.set(first, [...(byFirstLetter.get(first) ?? []), word]);
}

function alike(a: string, b: string): number {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length += 1;
  return length;
}

/** Little words with two letters exchanged: "teh", "gto", "agian". */
const exchanged = new Map<string, string>();
for (const word of [
  "the",
  "got",
  "and",
  "again",
  "that",
  "with",
  "when",
  "there",
  "every",
  "time",
  "from",
  "keeps",
])
  for (const slip of swapped(word))
    if (!["form", "emit", "item", "three"].includes(slip)) exchanged.set(slip, word);

/** The danger word this word most likely is a slip of, or the word itself. */
export function respell(word: string): string {
  const little = exchanged.get(word);
  if (little !== undefined) return little;
  if (word.length < 4 || word.length > 14 || isKnown(word) || protectedWords.has(word)) return word;
  if (/\d/.test(word)) return word;
  // Two slips only where the word is long and starts right.
  const most = word.length >= 9 ? 2 : 1;
  let best = word;
  let bestEdits = most + 1;
  for (const candidate of byFirstLetter.get(word.charAt(0)) ?? []) {
    if (Math.abs(candidate.length - word.length) > most) continue;
    if (most === 2 && candidate.charAt(1) !== word.charAt(1)) continue;
    const distance = editDistance(word, candidate, most);
    if (distance < bestEdits || (distance === bestEdits && alike(word, candidate) > alike(word, best))) {
      best = candidate;
      bestEdits = distance;
    }
  }
  return best;
}
