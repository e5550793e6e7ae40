import type { Standing } from "./candidate.ts";
import type { Clause } from "./clauses.ts";
import { type Context, cuesIn, isQuestion } from "./context.ts";
import type { Owner } from "./owner.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** So many sentences back the figures may stand. */
const SENTENCES = 2;

/** Who is said to have the figures before: the writer, somebody else, or, after them, the writer as well. */
type Said = "mine" | "mine too" | "theirs";

/**
 * Words behind figures that tell whose they were: "… That is what's on mine now", "copied straight off my label",
 * "… and so does mine", "… is what they tried to sell me". Gives the owner of those figures.
 */
export function backReferences(context: Context, owners: readonly Owner[]): ReadonlyMap<Standing, Said> {
  const found = new Map<Standing, Said>();
  for (const [index, clauses] of context.sentences.entries()) {
    if (isQuestion(context, index)) continue;
    for (const clause of clauses ?? []) {
      const claims = context.stated.within(clause.start, clause.end);
      const from = Math.max(clause.start, ...claims.map(({ to }) => to));
      const said = saidOf(context, from, clause.end, claims.length > 0);
      if (!said || announces(context, from, clause)) continue;
      for (const claim of figuresBefore(context, owners, clause, from))
        if (said !== "mine" || (owners[claim.start] !== "neighbour" && !isOfThing(context, claim)))
          found.set(claim, said);
    }
  }
  for (const clause of context.clauses)
    for (const claim of alikeNext(context, owners, clause)) found.set(claim, "mine");
  for (const claim of context.stated.all)
    if ((owners[claim.start] === "other" || owners[claim.start] === "asked") && isPointedAt(context, claim))
      found.set(claim, "mine");
  return found;
}

const alike = [
  "same",
  "igual",
  "identical",
  "identico",
  "identica",
  "like",
  "match",
  "matches",
  "mismo",
  "misma",
];

/** "I want the exact same as before: 1 HP, …", "uno igual al que traigo: …": the figures told next are the present ones. */
function alikeNext(context: Context, owners: readonly Owner[], clause: Clause): readonly Standing[] {
  const { tokens, stated, sentences } = context;
  const words = tokens.slice(clause.start, clause.end);
  const at = words.findIndex((token) => isWord(token, ...alike));
  const colon = words.findIndex((token) => isMark(token, ":"));
  if (at < 0 || colon <= at || words.slice(0, colon).some((token) => isWord(token, ...denying))) return [];
  const end = clause.start + colon;
  if (
    stated.within(clause.start, end).length > 0 ||
    cuesIn(context, clause.start, end, "person", "thing").length > 0
  )
    return [];
  const rest = words.slice(at + 1, colon);
  const relative = relativeIn(rest);
  const present =
    rest.some((token) =>
      isWord(token, "mine", "ours", "before", "mio", "mia", "now", "existing", "old", "current", "this"),
    ) ||
    (relative !== undefined && saysWho(rest.slice(relative)) === "mine") ||
    (isWord(rest[0], "al") && saysWho(rest) === "mine");
  if (!present) return [];
  const until = sentences[clause.sentence]?.at(-1)?.end ?? clause.end;
  return stated
    .within(end, until)
    .filter(({ start }) => owners[start] === "label" || owners[start] === "other");
}

/** Figures of a compressor stay its own, also when "that's the one that quit"; those of a listing may be the label's too. */
function isOfThing(context: Context, { from, start }: Standing): boolean {
  const clause = context.clauses[context.clauseAt[start] ?? 0];
  const sentence = context.sentences[clause?.sentence ?? 0];
  return cuesIn(context, sentence?.[0]?.start ?? from, start, "thing").some(
    ({ phrase }) => !offering.test(phrase),
  );
}

const offering = /site|listing|catalog|website|brochure|flyer|quote|estimate|ad\b|ad says/;

/** "rather 2 hp than the 1 hp I have now", "from the 115 V that's on there": an article, the figure, and whose it is. */
function isPointedAt({ tokens }: Context, { from, to }: Standing): boolean {
  const article = ["the", "my", "our", "this", "el", "la", "los", "mi"];
  if (!isWord(tokens[from - 1], ...article) && !isWord(tokens[from], ...article)) return false;
  const at = isWord(tokens[to], "that", "which", "que", "motor", "one") ? to + 1 : to;
  if (isWord(tokens[at], "tengo", "traigo", "tenemos", "traemos", "died", "quit", "failed")) return true;
  if (isWord(tokens[at], "i", "we") && isWord(tokens[at + 1], "have", "got", "own")) return true;
  if (isWord(tokens[at], "ive", "weve") && isWord(tokens[at + 1], "got")) return true;
  const now = tokens.slice(at + 1, at + 4).some((token) => isWord(token, "now", "there", "ahora", "puesto"));
  return now && isWord(tokens[at], "it", "thats", "is", "its", "tiene", "trae", "hay", "esta");
}

/** "This is what I have: 1.5 hp" tells of the figures to come. */
function announces({ tokens, stated, sentences }: Context, from: number, clause: Clause): boolean {
  if (tokens.slice(from, clause.end).some((token) => isMark(token, ":", "="))) return true;
  const opening = tokens
    .slice(from, from + 2)
    .some((token) => isWord(token, "this", "these", "esto", "este"));
  if (
    !opening &&
    tokens.slice(clause.end, clause.end + 3).some((token) => isWord(token, "along", "plus", "also", "with"))
  )
    return false;
  const end = opening ? tokens.length : (sentences[clause.sentence]?.at(-1)?.end ?? clause.end);
  return stated.within(clause.end, end).length > 0;
}

/** The figures last told before a place, in its sentence or one shortly before, of one owner. */
function figuresBefore(
  context: Context,
  owners: readonly Owner[],
  clause: Clause,
  at: number,
): readonly Standing[] {
  const { stated, sentences, sentenceAt } = context;
  const first = sentences[Math.max(0, clause.sentence - SENTENCES)]?.[0]?.start ?? 0;
  const before = stated.within(first, at).filter(({ end }) => end <= at);
  const last = before.at(-1);
  if (!last) return [];
  const owner = owners[last.start];
  if (owner === "measured" || owner === "part" || owner === "place") return [];
  const behind = last.start >= clause.start;
  // "Would 1.5 hp, 230 volts be too much? Those are the numbers on my motor."
  const inQuestion = (at: number) => isQuestion(context, sentenceAt[at] ?? 0) && owners[at] !== "neighbour";
  const earliest = behind ? listStart(context, clause) : 0;
  return before.filter(
    ({ start }) =>
      sentenceAt[start] === sentenceAt[last.start] &&
      (owners[start] === owner || inQuestion(start)) &&
      start >= earliest,
  );
}

/** Where the list ends in this clause that its words are about: "1.5 hp, 230 V, 56Y is …". */
function listStart(context: Context, clause: Clause): number {
  const { clauses, clauseAt, stated } = context;
  let start = clause.start;
  for (
    let index = (clauseAt[clause.start] ?? 0) - 1;
    clauses[index]?.sentence === clause.sentence;
    index -= 1
  ) {
    const before = clauses[index] as Clause;
    const last = stated.within(before.start, before.end).at(-1);
    const subject = cuesIn(context, before.start, before.end, "home", "person").length > 0;
    if (!last || last.to < before.end || subject) break;
    start = before.start;
  }
  return start;
}

function saidOf(context: Context, from: number, to: number, behind: boolean): Said | undefined {
  const { tokens } = context;
  let at = from;
  while (at < to && (isMark(tokens[at], "-", "(") || isWord(tokens[at], ...joining))) {
    if (isWord(tokens[at], "so") && isWord(tokens[at + 1], "does", "is", "do", "are")) break;
    at += 1;
  }
  const words = tokens.slice(at, to);
  if (words.length === 0 || words.length > longest || words.some(({ kind }) => kind === "number"))
    return undefined;
  if (words.some((token) => isWord(token, ...denying))) return undefined;
  if (cuesIn(context, at, to, "illegible", "partial").length > 0) return undefined;
  if (behind && isOthers(context, at, to)) return "theirs";
  const pronoun = words.findIndex((token) => !isWord(token, "exactly", "just", "exactamente"));
  const opens = isWord(words[pronoun], ...pronouns) || (behind && isWord(words[0], ...copulas));
  const relative = opens ? relativeIn(words) : undefined;
  if (relative !== undefined) return saysWho(words.slice(relative));
  if (isCopied(words) || (opens && (isOnPaper(words.slice(pronoun + 1)) || isOurs(words.slice(pronoun + 1)))))
    return "mine";
  return isSame(words) || isThat(words) ? "mine too" : undefined;
}

/** "the 2 hp belongs to the tenant", "… is hers" */
function isOthers(context: Context, at: number, to: number): boolean {
  const { tokens } = context;
  const person = cuesIn(context, at, to, "person")[0];
  if (isWord(tokens[at], "belongs", "belong", "pertenece")) return person !== undefined;
  const from = isWord(tokens[at + 1], "the", "my", "la", "el", "de") ? at + 2 : at + 1;
  return isWord(tokens[at], ...copulas) && person?.start === from && person.end === to;
}

const longest = 14;
const joining = ["and", "y", "so", "because", "cuz", "cause", "porque", "since", "as", "ya", "pues", "which"];
const denying = ["not", "isnt", "aint", "wasnt", "doesnt", "dont", "no", "ni", "nor", "never", "different"];
const pronouns = [
  ...["that", "thats", "thatd", "this", "it", "its", "those", "these", "which"],
  ...["eso", "ese", "esa", "esos", "es", "son", "asi", "esto"],
];
const copulas = ["is", "are", "was", "es", "son", "era"];

/** Where "what …", "the one …", "lo que …" begins; after it comes who has it. */
function relativeIn(words: readonly Token[]): number | undefined {
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
  /^(?:label|plate|tag|sticker|nameplate|motor|placa|etiqueta|there|here|now|ahora|ahi|alli|puesto|puesta)$/;
const possesses =
  /^(?:tengo|traigo|tenemos|traemos|dice|dicen|trae|tenia|leo|veo|quite|saque|murio|quemo|trono|died|quit|broke|burned|burnt|failed|seized)$/;
const determiner = /^(?:my|our|mi|nuestr[oa])$/;
/** Who fitted a motor left it there. */
const fitting = /^(?:put|installed|fitted|left|uses?|puso|pusieron|instalo|instalaron|dejo)$/;
const wishing =
  /^(?:want|wanted|need|needed|would|id|like|saw|found|heard|told|thought|thinking|ordered|looking|buy|quiero|queria|necesito|busco|ocupo|vi|pido|used|had)$/;

function saysWho(words: readonly Token[]): Said | undefined {
  const norms = words.flatMap(({ kind, norm }) => (kind === "word" ? [norm] : []));
  if (norms.some((norm) => wishing.test(norm))) return undefined;
  const subject = norms.findIndex((norm) => self.test(norm) || ofOthers.test(norm));
  const told = norms.some((norm) => paper.test(norm) || possesses.test(norm));
  const who = norms[subject] ?? "";
  // "what my pool man has"
  const somebody = determiner.test(who) && !told;
  if (ofOthers.test(who) || somebody) return norms.some((norm) => fitting.test(norm)) ? undefined : "theirs";
  return subject >= 0 || told ? "mine" : undefined;
}

/** "That's our setup", "eso es lo mío": nothing but a possessive and what is owned. */
function isOurs(words: readonly Token[]): boolean {
  const at = words.findIndex((token) => !isWord(token, ...copulas, "exactly", "lo", "el", "la"));
  if (isWord(words[at], "mine", "ours", "mio", "mia", "nuestro", "nuestra") && words.length <= at + 2)
    return true;
  const owned = isWord(
    words[at + 1],
    "setup",
    "motor",
    "pump",
    "one",
    "situation",
    "case",
    "bomba",
    "equipo",
    "caso",
  );
  return (
    isWord(words[at], "my", "our", "mi") &&
    owned &&
    words.slice(at + 2).every((token) => isWord(token, "now", "here", "exactly", "ahora"))
  );
}

/** "Those are the numbers on my motor", "that's off the tag". */
function isOnPaper(words: readonly Token[]): boolean {
  const at = words.findIndex((token) => isWord(token, "on", "off", "from", "of", "en", "de"));
  if (at < 0 || at > 5) return false;
  let next = at + 1;
  while (isWord(words[next], ...ownArticles)) next += 1;
  if (isWord(words[next], "pump", "bomba") && isWord(words[next + 1], ...ownPapers)) return true;
  return isWord(words[next], ...ownPapers, "motor", "mine", "ours", "mia", "mio");
}

const ownArticles = ["the", "my", "our", "of", "old", "dead", "la", "el", "mi", "nuestro", "nuestra"];
const ownPapers = ["label", "plate", "tag", "sticker", "nameplate", "placa", "etiqueta"];

/** "copied that straight off my label", "taken from the plate", "según la placa": where the figures were read. */
function isCopied(words: readonly Token[]): boolean {
  // "así dice la placa"
  if (isWord(words[0], "asi") && words.some((token) => isWord(token, "placa", "etiqueta", "motor")))
    return true;
  return words.some((token, at) => {
    if (!isWord(token, "off", "from", "per", "segun", "de")) return false;
    const copied = words.slice(0, at).some((before) => isWord(before, ...copying));
    const per = isWord(token, "per", "segun") && at <= 1;
    let next = at + 1;
    const owned = isWord(words[next], "my", "our", "mi");
    while (isWord(words[next], ...ownArticles, "motor")) next += 1;
    const isPaper =
      isWord(words[next], ...ownPapers) ||
      (isWord(words[next], "one") && isWord(words[next - 1], "old", "dead"));
    return (copied || per) && (isPaper || (owned && next > at + 1) || isWord(words[next], "mine"));
  });
}

const copying = [
  ...["copied", "copying", "taken", "took", "read", "reading", "straight", "right", "directly", "came"],
  ...["got", "thats", "copie", "copiado", "saque", "sacado", "lei", "leido", "tomado"],
];

/** "The one I took off is exactly that": the subject is the writer's own, the rest a pronoun for the figures. */
function isThat(words: readonly Token[]): boolean {
  const relative = relativeIn(words);
  const pointing = isWord(
    words.at(-1),
    "that",
    "this",
    "those",
    "it",
    "same",
    "eso",
    "igual",
    "mismo",
    "asi",
  );
  return pointing && relative !== undefined && relative <= 2 && saysWho(words.slice(relative)) === "mine";
}

/** "and so does mine", "mine has the same label", "same as mine", "la mía es igual". */
function isSame(words: readonly Token[]): boolean {
  const own = words.findIndex((token) => isWord(token, "mine", "ours", "mio", "mia", "nuestro", "nuestra"));
  if (own < 0) return false;
  if (
    words.slice(0, own).some((token, at) => isWord(token, "so") && isWord(words[at + 1], "does", "is", "do"))
  )
    return true;
  return words.some((token, at) => {
    if (
      isWord(
        token,
        "too",
        "tambien",
        "identical",
        "igual",
        "igualito",
        "igualita",
        "iguales",
        "likewise",
        "identica",
        "identico",
      )
    )
      return (
        at >= words.length - 2 ||
        isWord(token, "igual", "igualito", "igualita", "identical", "identico", "identica")
      );
    if (!isWord(token, "same", "mismo", "misma", "exactly")) return false;
    const next = words[at + 1];
    return (
      next?.kind !== "word" ||
      isWord(next, "as", "one", "label", "motor", "thing", "numbers", "specs", "figures", "plate", "word") ||
      isWord(next, "that", "here", "que", "deal", "way", "exact")
    );
  });
}
