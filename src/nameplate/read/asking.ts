import type { Clause } from "./clauses.ts";
import { type Context, cuesIn, isQuestion } from "./context.ts";
import { statesInAsking } from "./statedInAsking.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Home words that say only what is spoken of, not whose it is. */
export const plainNouns: ReadonlySet<string> = new Set([
  ...["motor", "the motor", "el motor", "pump motor", "este"],
  ...[
    "label",
    "plate",
    "tag",
    "sticker",
    "nameplate",
    "name plate",
    "motor plate",
    "data plate",
    "rating plate",
  ],
  ...["etiqueta", "placa"],
]);

const stockWords = [
  ...["have", "carry", "stock", "sell", "got", "replaces", "replace", "match", "replacement", "need"],
  ...["tienes", "tienen", "venden", "hay"],
];

/** A clause that asks about the trade, not about this label: "is 56Y the same as 48Y?". */
export function asksGenerally(context: Context, clause: Clause): boolean {
  const { tokens, stated } = context;
  if (clause.opener && pointsOut(context, clause)) return false;
  if (!clause.opener && !goesOnAsking(context, clause) && !opensWithIf(context, clause)) return false;
  const pointed = cuesIn(context, clause.start, clause.end, "home").some(
    ({ phrase, start }) =>
      !plainNouns.has(phrase) &&
      !isWord(tokens[start - 1], "a", "an", "any", "most", "all", "un", "una", "unos"),
  );
  if (pointed) return false;
  const words = tokens.slice(clause.start, clause.end);
  if (outOfPatience(words) || recallsOwnWords(words)) return false;
  // "Will you have something for this: 1.65 THP, …" announces a label.
  const announced = words.some(
    (token, at) =>
      isMark(token, ":") &&
      isWord(words[at - 1], "this", "these", "mine", "following", "motor", "one", "este"),
  );
  if (announced) return false;
  const indirect = words.some((token) => isWord(token, "whether"));
  if (!indirect && words.some((token) => isWord(token, "my", "mi", "our"))) return false;
  // "If slip is 5 %, a motor would turn at …" reckons; it states nothing.
  const sentence = context.sentences[clause.sentence] ?? [];
  const supposes =
    isWord(tokens[sentence[0]?.start ?? 0], "if", "si") &&
    tokens.slice(sentence[0]?.start, sentence.at(-1)?.end).some((token) => isWord(token, "would", "seria"));
  if (supposes) return true;
  const general = cuesIn(context, clause.start, clause.end, "general").length > 0;
  // "Do you guys carry 2.5 hp motors with a C flange": many motors are no motor in question.
  const many = words.findIndex((token) => isWord(token, "motors", "motores"));
  if (many > 0 && isWord(words[0], "do", "does", "can", "tienen", "venden", "got", "any") && clause.opener)
    return words.slice(0, many).some((token) => isWord(token, ...stockWords));
  const wished = cuesIn(context, clause.start, clause.end, "wish").length > 0;
  const ratings = new Set(stated.within(clause.start, clause.end).map(({ rating }) => rating));
  // Who gives several ratings and asks for a match is describing a label.
  if (ratings.size >= 3 && !wished) return false;
  if (ratings.size >= 2 && !general && words.some((token) => isWord(token, ...stockWords))) return false;
  // "Is it bad that the sticker says 60 Hz?" states it all the same.
  const states = words.some(
    (token, at) =>
      isWord(
        token,
        "sticker",
        "label",
        "plate",
        "tag",
        "nameplate",
        "placa",
        "etiqueta",
        "it",
        "mine",
        "motor",
        "this",
      ) && isWord(words[at + 1], "says", "reads", "shows", "dice", "lists"),
  );
  if (states && ratings.size > 0) return false;
  // "Could it be 2.2? That's what it says."
  if (statesInAsking(context, clause)) return false;
  return isQuestion(context, clause.sentence) || general;
}

/** "Did I write 8.2 amps?" is about what was said, and a correction follows. */
function recallsOwnWords(words: readonly Token[]): boolean {
  return words.some((token, at) => isWord(token, "did") && isWord(words[at + 1], "i"));
}

/** "How many times do I have to say it", "why do you keep asking": no question, and the answer follows. */
function outOfPatience(words: readonly Token[]): boolean {
  return words.some(
    (token, at) =>
      (isWord(token, "keep") && isWord(words[at + 1], "asking")) ||
      (isWord(token, "many") && isWord(words[at + 1], "times")) ||
      (isWord(token, "asking", "ask") && isWord(words[at + 1], "again", "me")) ||
      (isWord(token, "cuantas") && isWord(words[at + 1], "veces")),
  );
}

/** "What's on there now is a 1.5 hp": no question, though it opens as one. */
function pointsOut(context: Context, clause: Clause): boolean {
  const joined = isWord(context.tokens[clause.start], "but", "and", "so", "now", "well");
  const words = context.tokens.slice(joined ? clause.start + 1 : clause.start, clause.end);
  if (isQuestion(context, clause.sentence) || !isWord(words[0], "what", "whats", "which")) return false;
  return words.slice(2).some((token) => isWord(token, "is", "are", "says", "reads"));
}

function opensWithIf({ tokens, sentences }: Context, clause: Clause): boolean {
  return isWord(tokens[sentences[clause.sentence]?.[0]?.start ?? 0], "if", "si");
}

/** The second half of a question that a turning word parts: "is 56J the same and 56Y the other?". */
function goesOnAsking(context: Context, clause: Clause): boolean {
  const [first, second] = context.sentences[clause.sentence] ?? [];
  return Boolean(first?.opener && second === clause && clause.closing === "?" && first.closing !== ",");
}
