import { isWord, type Token } from "./token.ts";

/** Who is said to have the figures before: the writer, somebody else, or, after them, the writer as well. */
export type Said = "mine" | "mine too" | "theirs";

/** Where "what …", "the one …", "lo que …" begins; after it comes who has it. */
export function relativeIn(words: readonly Token[]): number | undefined {
  for (let at = 0; at < Math.min(words.length, 7); at++) {
    if (isWord(words[at], "what", "whats", "whatever")) return at + 1;
    if (isWord(words[at], "lo", "el", "la") && isWord(words[at + 1], "que")) return at + 2;
    if (isWord(words[at], "one", "motor") && isWord(words[at - 1], "the")) return at + 1;
  }
  return undefined;
}

const self = /^(?:i|we|im|ive|weve|id|yo|my|our|mine|ours|mi|nuestr[oa]|mi[oa])$/;
const ofOthers =
  /^(?:he|hes|she|shes|they|theyre|theyve|you|youve|your|his|her|hers|their|theirs|guy|store|neighbou?rs?|ustedes|vecin[oa]|me)$/;
const paper =
  /^(?:label|plate|tag|sticker|nameplate|motor|placa|etiqueta|there|here|now|ahora|ahi|alli|puesto|puesta|dead|broken|burnt|burned|bad|old|current|existing|unit|pad|pump|bomba)$/;
const possesses =
  /^(?:tengo|traigo|tenemos|traemos|dice|dicen|trae|tenia|leo|veo|quite|saque|murio|quemo|trono|died|quit|broke|burned|burnt|failed|seized)$/;
const determiner = /^(?:my|our|mi|nuestr[oa])$/;
/** Who fitted a motor left it there. */
const fitting = /^(?:put|installed|fitted|left|uses?|puso|pusieron|instalo|instalaron|dejo)$/;
const wishing =
  /^(?:want|wanted|need|needed|would|id|like|saw|found|heard|told|thought|thinking|ordered|looking|buy|quiero|queria|necesito|busco|ocupo|vi|pido|used|had)$/;

/** Who is the subject of the relative clause that begins with these words. */
export function saysWho(words: readonly Token[]): Said | undefined {
  const rest = words.findIndex((token, at) => at > 1 && isWord(token, "and", "but", "y", "pero"));
  const norms = (rest < 0 ? words : words.slice(0, rest)).flatMap(({ kind, norm }) =>
    kind === "word" ? [norm] : [],
  );
  if (norms.some((norm) => wishing.test(norm))) return undefined;
  const subject = norms.findIndex((norm) => self.test(norm) || ofOthers.test(norm));
  const told = norms.some((norm) => paper.test(norm) || possesses.test(norm));
  const who = norms[subject] ?? "";
  // "that is what my wife reads to me"
  const reads = norms.some((norm) =>
    /^(?:reads?|says|said|yells?|yelled|sees|saw|calls?|called|dicta|lee)$/.test(norm),
  );
  if (determiner.test(who) && reads && !norms.some((norm) => /^(?:has|have|had|got|uses|runs)$/.test(norm)))
    return "mine";
  // "what my pool man has"
  const somebody = determiner.test(who) && !told;
  if (ofOthers.test(who) || somebody) return norms.some((norm) => fitting.test(norm)) ? undefined : "theirs";
  return subject >= 0 || told ? "mine" : undefined;
}
