import { type Context, cuesIn } from "./context.ts";
import { relativeIn, type Said, saysWho } from "./relativeClause.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** What the words between two tokens say of the owner of the figures before them. */
export function saidOf(context: Context, from: number, to: number, behind: boolean): Said | undefined {
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
export const denying = [
  "not",
  "isnt",
  "aint",
  "wasnt",
  "doesnt",
  "dont",
  "no",
  "ni",
  "nor",
  "never",
  "different",
];
const pronouns = [
  ...["that", "thats", "thatd", "this", "it", "its", "those", "these", "which"],
  ...["eso", "ese", "esa", "esos", "es", "son", "asi", "esto"],
];
const copulas = ["is", "are", "was", "es", "son", "era"];

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
