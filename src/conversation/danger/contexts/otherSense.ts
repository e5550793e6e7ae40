import type { Mention } from "../mention.ts";
import { findAll, patterns } from "../pattern.ts";
import type { Token } from "../tokens.ts";

/** Pool chemistry: shocking the water, burning eyes. */
const chemical = patterns(
  "^@shock (the|my|our|your|his|her|their|a|this)? (green|whole|dirty|entire|damn)? (pool|spa|tub|hot tub|jacuzzi) !(guy|man|cleaner|boy|tech|service|people)",
  "^shocked (vacuumed|brushed|backwashed|cleaned)",
  "(i|we|just|and|husband|guy|to|already|after|you|of|he|she) (just|already|also|even|have|had|double|triple)? ^@shock (it|everything|again|with|twice|last|yesterday|weekly)",
  "(pool|chlorine|super|liquid|granular|non chlorine|oxidizing|weekly|lb|lbs|pound) ^(shock|shocks)",
  "(bag|bags|lb|lbs|pounds|gallon|gallons|bucket|jug|dose|cup|cups|tub) ~2 ^shock",
  "^(shock|shocking) (treatment|treat|treated|treatments|level|levels|dose|chlorine|bag|bags|powder|product|chemical|chemicals|bucket|cycle|mode|tablets|it)",
  "(add|added|adding|dump|dumped|pour|poured|use|used|using|bought|buy|threw|mixed|opened|need|needs) ~2 ^shock ~~6 (pool|water|chlorine|algae|bucket|bag|bags)",
  "(add|added|adding|dumped|poured) ~2 ^shock",
  "^(shock|shocked|shocking) !@victim ~~8 (chlorine|algae|bags|bag|lbs|pounds|gallons|cal|hypo|bleach|chemicals|alkalinity|ppm|cloudy|bucket)",
  "(after|before|since|while|stop|start|stopped|started|am|im|been) ^(shock|shocking) !@victim",
  // A person who "shocks" without naming a victim doses the pool.
  "(i|we|you|to|they|should|must|gotta|dont|please|just|and) ^shock !@victim",
  "(need|needs|buy|sell|carry|some|more|cheap|want|for|enough|much|many|with|extra|weekly) ^shock !(@victim|when|from|hazard)",
  "^(choque|shock) (a|de|para) ~1 (alberca|piscina|cloro|agua)",
  "(cloro|tratamiento|dosis) ~1 ^(choque|shock)",
  "(chlorine|acid|cloro|chemical|chemicals|fumes|shock|muriatic|ammonia|acido) ~4 ^(@burn|@smoke)",
  "(just|already|also|then) ^shocked !@victim",
  "^shocking (weekly|daily|monthly|once|twice|every)",
  "^shock (and|or) (algaecide|chlorine|acid|algae|clarifier|stabilizer)",
  "^@burn ~3 (eyes|eye|nose|lungs|skin|throat|ojos|nariz|nostrils|grass|lawn|garganta)",
  "(eyes|ojos|skin|nose|throat) ~2 ^@burn",
  "^@burn through !(fuses|breakers|3|2|three|two|the|wires)",
  "^@smell ~3 (chlorine|cloro|bleach|algae|fishy|rotten|eggs|musty|moldy|mildew|sewage|swampy|fine|good|ok|okay|great|normal|nice|scam|money|bromine)",
);

/** Ways of speaking and namesakes. */
const figurative = patterns(
  "^@shock ~1 (by|at|with|from|over) ~3 (price|prices|cost|costs|quote|bill|how|number|total|estimate|amount)",
  "(price|prices|quote|bill|bills|cost|costs|precio|precios|total|recibo|estimate|invoice) ~5 ^@shock",
  "(sticker|price|culture|bill|rate) ^(shock|shocks)",
  "^(shocked|shocking) (to|that|how|you|nobody)",
  "^shocked (me|us) (how|that|to|when i saw)",
  "(price|bill|quote|bills|cost|estimate) ~~6 ^shocking !@victim",
  "^shocking (price|bill|quote|amount|number|how|news)",
  "^shock to (the|my) system",
  "^(calambre|calambres) en (la|el|las|una) (pierna|pantorrilla|espalda|cuello)",
  "^(shock|choque|toque|descarga|calambre) (el|la|ver)? ~1 (precio|recibo|cuenta)",
  "^shock (absorber|absorbers|mount|mounts|proof|resistant|wave|value|me with)",
  "^@zap ~2 (algae|bugs|mosquitoes|energy|battery|batteries|budget|wallet)",
  "(lightning|surge|storm|rayo) ~3 ^@zap !@victim",
  "^@tingle ~3 (excitement|anticipation)",
  "^(buzz|buzzes|buzzing) (noise|sound|cut|word|lightyear)",
  "^@bite (the|a) (bullet|dust|lot|little)",
  "(a|little|tiny|wee) ^bit !(me|him|her|us|my)",
  "(dog|dogs|cat|bee|bees|wasp|wasps|ant|ants|spider|snake|mosquito|hornet|bug|bugs|scorpion) ~~4 ^@bite",
  "^@bite ~~4 (dog|cat|bee|bees|wasp|wasps|ant|ants|spider|snake|mosquito|mosquitoes|hornet|bug|scorpion|raccoon|squirrel)",
  "^@smoke (deal|price|deals|break|breaks|detector|detectors|alarm|alarms|gray|grey|color|colored|test|screen|em|free|stained|weed|cigarettes|cigars|meat|brisket|ribs|salmon|house|fast)",
  "^smoking hot (deal|price|offer)",
  "(price|deal|prices|offer) ~2 ^@smoke",
  "^(smoked|smokin|smoking) (the|a|my) (bearings|bearing|competition)",
  "(i|we|he) ^smoked (the|a|my) (motor|pump|bearings)",
  "^burning hot ~2 (outside|here|today|summer|day)",
  "(holy|where|blowing|wildfire|cigarette|cigar|campfire|echale) ^@smoke",
  "(wheres|where) ~2 ^smoke",
  "(is|are|got|its|be) ^smoked !(for|a|when|today|again|last|this|out)",
  "^smokes the (competition|others|rest)",
  "(i|he|she|we|they|dont|quit) ^(smoke|smoking) !(from|coming|out|and)",
  "^@spark ~2 (interest|curiosity|idea|joy|plug|plugs|conversation|debate|imagination|attention|memory)",
  "(ando|estoy|andaba|estaba yo) ~1 ^chispas",
  "^fire (sale|pit|place|extinguisher|department|dept|truck|alarm|marshal|code|rated|resistant|retardant|ant|ants|stick|drill|insurance|station|escape|door|inspector|up|away|off)",
  "(you|guys|team|yall|u|youre) ~3 on ^fire",
  "^fire (sale|drill|hose|lane)",
  "(bright|brightest) ^spark",
  "que ^fuego de",
  "(price|prices|quote|bill|precio|cuenta|recibo|cotizacion|deal) ~4 ^(@spark|@smoke|@electrocute|@flames|@burning|@zap|@tingle|@melt)",
  "^(@spark|@smoke|@electrocute|@flames|@zap) (el|la|con el|con la|by the|at the) ~1 (price|precio|cuenta|recibo|cotizacion|quote|bill)",
  "(snow|ice|butter|heart|brain|label|sticker|im|we|chocolate) ~3 ^@melt",
  "^@burn (the|my|up the)? (label|sticker|decal|tag|print|ink|letters)",
  "on ^fire (with|today|lately)",
  "^(burning|burn) (question|questions|desire|man|daylight|calories|rubber|bridges)",
  "^@burn through (motors|pumps|money|electricity|chlorine|a lot)",
  "^@burn ~2 (hole|money|cash|wallet|pocket|dollars)",
  "^@burn (up|through)? (a lot of|more|less|so much|too much)? (electricity|kwh|watts|energy|gas|juice)",
  "(sun|uv|rays) ~3 ^@burn",
  "^@burn ~4 sun",
  "^burning (out|up|through) ~1 (motors|pumps|seals|bearings)",
  "^(stinking|stinkin) hot",
  "^@smell ~1 fishy (to me|price|deal|offer)",
  "(road|business|camping|fishing|day|round|family|vacation|boat|beach|store|shopping|work|several|multiple|many|few|more|long|short|our|my|extra|field|return|two|2|3|three|of) ^trips",
  "^trips (to|from) (the|your|town|store|town|home|a|and)",
  "@person (almost|nearly|just|must be|am|are|was|be|might be|totally|must)? ^@trip !(@device|the|my|it|a|our|that|this|its|both|everything)",
  "^@trip (over|balls|me up|up by|up on)",
  "^tripped and (broke|fell|hurt|dropped|spilled|twisted|landed)",
  "(0|zero) ^trips",
  "^spark up",
  "(he|she|wife|neighbor|husband|boss|dad|mom|hubby|almost|nearly|gonna|dont) ~3 ^(blow|blew|blown|blows|blowing|pop|popped) ~1 (fuse|fuses|gasket|top)",
  "(i|we|he|she|husband|wife|guy|electrician|you|already|please|just) ~1 ^(throw|threw|flip|flipped|flipping|kicked|knocked|snapped|jumped|jump|kick|knock) ~3 @device",
  "^@popOff ~3 @device (panel|box|cover|door|cover)",
  "^(pop|popped|popping) open ~2 @device",
  "^@wetNoun ~2 (away|far|nowhere) ~2 (from|near)",
  "wet ~1 ^end",
  "^wet (end|ends|side)",
  "^flooded (suction|with)",
);

/** Words whose danger reading is taken away because they mean something else here: token indices. */
export function wordsInAnotherSense(tokens: readonly Token[]): ReadonlySet<number> {
  return new Set([...findAll(chemical, tokens), ...findAll(figurative, tokens)].map(({ head }) => head));
}

/** True when the mention's own word means something else here. */
export function inAnotherSense(others: ReadonlySet<number>, { head }: Mention): boolean {
  return others.has(head);
}
