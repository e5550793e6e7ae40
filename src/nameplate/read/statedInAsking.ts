import type { Clause } from "./clauses.ts";
import type { Context } from "./context.ts";
import { isWord } from "./token.ts";

/** A question that states the label's entries all the same: a confirmed one, or one for a match to a number. */
export function statesInAsking(context: Context, clause: Clause): boolean {
  return isConfirmed(context, clause) || seeksMatch(context, clause);
}

const papers = ["label", "plate", "tag", "sticker", "nameplate", "motor", "placa", "etiqueta"];

/** "What does code K mean? It's on my label." */
function isConfirmed({ tokens, sentences }: Context, clause: Clause): boolean {
  if (sentences[clause.sentence]?.at(-1)?.closing !== "?") return false;
  const next = sentences[clause.sentence + 1]?.[0];
  if (!next || !isWord(tokens[next.start], "thats", "that", "its", "it", "eso", "asi", "esta", "viene"))
    return false;
  if (isWord(tokens[next.start], "thats") && isWord(tokens[next.start + 1], "what")) return true;
  const words = tokens.slice(next.start + 1, Math.min(next.end, next.start + 8));
  const placed = words.findIndex((token) => isWord(token, "on", "en"));
  const denied = words.some((token) => isWord(token, "not", "no", "isnt", "never"));
  return !denied && placed >= 0 && words.slice(placed).some((token) => isWord(token, ...papers));
}

const looking = [
  "crosses",
  "crossing",
  "matches",
  "interchange",
  "interchanges",
  "match",
  "cross",
  "reference",
  "lookup",
  "look",
  "identify",
  "decode",
  "identificar",
  "buscar",
  "busca",
];
const replacing = ["replace", "replaces", "reemplaza", "sustituye", "equivale", "reemplazar", "sustituir"];
const replacements = [
  "replacement",
  "substitute",
  "equivalent",
  "reemplazo",
  "repuesto",
  "sustituto",
  "equivalente",
];

/** "Do you have a replacement for part number 9920-4?", "can you cross model QX-22?": it is the number in hand. */
function seeksMatch({ tokens, stated }: Context, clause: Clause): boolean {
  const named = stated.within(clause.start, clause.end);
  const [number] = named;
  if ((number?.rating !== "modelNumbers" && number?.rating !== "serialNumber") || named.length > 1)
    return false;
  const before = tokens.slice(clause.start, number.start);
  if (tokens.slice(clause.start, clause.end).some((token) => isWord(token, ...looking))) return true;
  if (before.some((token) => isWord(token, ...replacing))) return true;
  return before.some(
    (token, at) =>
      isWord(token, ...replacements) &&
      before
        .slice(at + 1, at + 4)
        .some((joint) => isWord(joint, "for", "to", "of", "para", "de", "del", "a", "al")),
  );
}
