import { type Context, hasWord, sentenceEnd, words } from "../mention.ts";
import { findFirst, patterns } from "../pattern.ts";
import type { Token } from "../tokens.ts";

/** Words a negation reaches through on its way to the danger: "no sign of any burning smell". */
const transparent = words(
  "the a an any of or nor either ever even really actually been be being is was are were has have had get gets got getting yet me my your us it its there that longer once like visto sentido notado saca echado sacado think believe do does did see seen saw smell smells smelled smelling feel felt feeling notice noticed hear heard find found show showing burning burnt electrical electric weird visible sign signs hint trace whiff hot plastic strange funny actual real obvious noticeable single bad coming come comes anything someone anyone anybody on in to at from ni o y se le les nos ha han he hay sale salen sali echa da dan dio dado de el la los las un una unos huele a que y esta estan bota botan cae entra cayo entro moja hubo going more noise",
);
const carriers = [
  "shock",
  "zap",
  "tingle",
  "smoke",
  "spark",
  "arc",
  "flames",
  "burn",
  "smell",
  "trip",
  "device",
  "machine",
  "melt",
  "wet",
  "wetNoun",
] as const;
/** Heads that are refusals themselves ("won't stay on", "couldn't let go"). */
const refusals = words(
  "stay stays staying hold holds holding reset resets set on stick latch stand couldnt cant cannot unable move moving swim refuses impossible queda sube sostiene mantiene resetea aguanta levanta deja prende quiere subir levantar resetear mantener",
);
const finite = words(
  "trips tripped shocks shocked zaps zapped smokes smoked smells smelled smell burns leaks sparked",
);
const answers = words("no nope nah none zero negative nada ninguno ninguna never");
/** "No" before these is an answer, not a negation: "no it shocks me". */
const afterAnswer = words("it its the i we my he she they this that there a se me el la");
const doubled = words(
  "cant cannot wont dont doesnt never not no couldnt impossible barely hardly isnt nunca puedo puede hasnt havent didnt isnt wasnt aint",
);

function isTransparent(token: Token): boolean {
  return transparent.has(token.word) || carriers.some((concept) => token.concepts.has(concept));
}

function negates(tokens: readonly Token[], at: number): boolean {
  const word = tokens[at]?.word ?? "";
  const next = tokens[at + 1];
  // Spanish "no he visto", not English "no he ...".
  const perfect = next?.word === "he" && /[dt]o$/.test(tokens[at + 2]?.word ?? "");
  if ((word === "no" || word === "nope") && !perfect) {
    const english = next !== undefined && !["se", "me", "le", "da", "hay", "huele"].includes(next.word);
    if (next?.gap !== "none" || (english && afterAnswer.has(next.word))) return false;
  }
  if (word === "nothing" && (next?.gap !== "none" || next.concepts.has("device"))) return false;
  // "Can't touch it without getting zapped", "won't quit tripping", "hasn't stopped".
  if (word === "without" || word === "sin" || word === "stopped" || word === "quit") {
    return !hasWord(tokens, at - 9, at, doubled);
  }
  return true;
}

function answeredNo(tokens: readonly Token[], last: number): boolean {
  const answer = tokens[last + 1];
  if (!answer || !answers.has(answer.word)) return false;
  const follower = tokens[last + 2];
  return /[?:=-]/.test(tokens[last]?.after ?? "") && (follower === undefined || follower.gap !== "none");
}

/** "Has it ever sparked? It has not." */
const afterwards = patterns(
  "(it|they) (has|have|did|does|is) not",
  "(it|they) (hasnt|havent|didnt|doesnt|isnt|never)",
);
const none = patterns("there (is|was|are|were) (none|no|not|nothing)", "there (isnt|wasnt|arent)");
const sought = patterns("(looked|checked|looking|checking|inspected|searched|look|check) for");
const turnedUp = patterns(
  "(found|saw|see|there) (some|a|it|them|was|were|is|are|burn|signs|one|two)",
  "and ~1 yes",
);

/** "Checked for water in the box": looking for a danger is not finding it. */
function soughtInVain(tokens: readonly Token[], from: number): boolean {
  const search = findFirst(sought, tokens, Math.max(0, from - 6), from);
  return search !== undefined && findFirst(turnedUp, tokens, from, from + 10) === undefined;
}

/** "No smoke or burning smell", "the breaker has never tripped", "any sparks? no". */
export const denied: Context = (tokens, { from, head, to }) => {
  const headWord = tokens[head]?.word ?? "";
  if (refusals.has(headWord)) return false;
  if (answeredNo(tokens, to - 1)) return true;
  const end = sentenceEnd(tokens, head);
  if (findFirst(none, tokens, to, to + 2)) return true;
  if (findFirst(afterwards, tokens, end, end + 1)) return true;
  if (soughtInVain(tokens, from)) return true;
  let subjectSeen = false;
  for (let at = head - 1; at >= 0 && head - at <= 12; at -= 1) {
    const token = tokens[at];
    const next = tokens[at + 1];
    if (!token || !next || next.gap === "sentence") return false;
    if (token.concepts.has("negator")) {
      if (next.gap === "none" && negates(tokens, at)) return true;
      if (next.gap === "comma") return false;
    }
    // A list goes on over a comma ("no smoke, sparks or smell"); a new statement does not.
    if (next.gap === "comma" && (subjectSeen || finite.has(headWord))) return false;
    const joined = token.word === "and" || token.word === "y";
    if (joined && finite.has(headWord)) return false;
    if (!joined && !isTransparent(token)) return false;
    if (token.concepts.has("device") || token.concepts.has("machine") || token.word === "it") {
      subjectSeen = true;
    }
  }
  return false;
};
