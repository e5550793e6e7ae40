import type { MessageReading } from "../../nameplate/reading.ts";
import type { Evidence, IntentMatch } from "../intents.ts";
import { finerIntents, type IntentName, intentNames } from "./names.ts";

type Shown = Map<IntentName, Evidence>;

const questions: readonly IntentName[] = ["hours", "savings", "price", "bigger", "explain"];
const aboutEverything =
  /\b(everything|nothing|none|all|rest|any|whole|label|sticker|plate|tag|todo|nada|etiqueta|placa)\b/;
const acknowledged =
  /^(ok|okay|great|perfect|cool|alright|good|awesome|nice|got it|sounds good|excelente|bueno|perfecto)\b/;
const thanksFor =
  /\b(thanks?|thank you|thx|ty|gracias|appreciate)( you)?( so much| again| a lot| anyway)? (for|por) (the |your |all the |el |la |su )?[a-z ]{0,40}/;

const asks = /\?|^(what|do|does|can|could|is|are|should|how|would|y|hay|tienen|conviene)\b/;

/** Earliest sign of each intent, a whole part of the message before a pattern in the middle of one. */
function earliest(found: readonly Evidence[]): Shown {
  const shown: Shown = new Map();
  for (const one of found) {
    const known = shown.get(one.intent);
    if (!known || one.at < known.at) shown.set(one.intent, one);
  }
  return shown;
}

function standsBefore(shown: Shown, a: IntentName, b: IntentName): boolean {
  const [first, second] = [shown.get(a), shown.get(b)];
  return first !== undefined && second !== undefined && first.at < second.at;
}

/** One neighbourly agreement: when it applies, what it takes away. All of them in one place. */
const agreements: readonly ((shown: Shown, plain: string) => readonly IntentName[])[] = [
  // "I don't know what THP means" asks for an explanation.
  (shown) => {
    const how =
      /^how /.test(shown.get("explain")?.words ?? "") && standsBefore(shown, "dont-know", "explain");
    if (how) return ["explain"];
    return shown.has("explain") ? ["dont-know"] : [];
  },
  // "Square flange" tells, "square flange?" asks.
  (shown, plain) => {
    const bare = (shown.get("explain")?.words.split(" ").length ?? 9) <= 2;
    return bare && shown.has("ratings") && !plain.includes("?") ? ["explain"] : [];
  },
  // "Couldn't tell you" is not about what the label shows.
  (shown) => {
    const [unknown, unread] = [shown.get("dont-know"), shown.get("unreadable")];
    return unknown && unread && unknown.at === unread.at ? ["unreadable"] : [];
  },
  // "How much would it save" asks for no price.
  (shown) => {
    const [savings, price] = [shown.get("savings"), shown.get("price")];
    return savings && price && Math.abs(savings.at - price.at) <= 1 ? ["price"] : [];
  },
  // "Thanks for the price" asks nothing.
  (_, plain) => (thanksFor.test(plain) && !plain.includes("?") ? questions : []),
];

/** Pairs whose order is not that of the list of names: (message) -> the first goes before the second. */
const exceptions: readonly (readonly [
  first: IntentName,
  second: IntentName,
  when: (shown: Shown, plain: string) => boolean,
])[] = [
  ["hours", "person", (shown) => !standsBefore(shown, "person", "hours")],
  // "Hello? anybody there?" knocks at the door.
  ["greeting", "person", (shown) => /^(is )?any(body|one) /.test(shown.get("person")?.words ?? "")],
  ["bigger", "savings", (shown) => standsBefore(shown, "bigger", "savings")],
  // "It is 230 V but everything else is gone" is about the label, "... can't read the frame" about 230 V.
  ["unreadable", "ratings", (shown) => aboutEverything.test(shown.get("unreadable")?.words ?? "")],
  // The reader's own note that a rating is unknown is weaker than the words "I don't know".
  ["dont-know", "unreadable", (shown) => shown.get("unreadable")?.at === Number.POSITIVE_INFINITY],
  // "I don't know if it's 115 or 230" states neither.
  [
    "dont-know",
    "ratings",
    (shown, plain) => (shown.get("dont-know")?.at ?? 9) <= 2 && /\b(or|maybe|if|whether)\b/.test(plain),
  ],
  ["no", "correction", (shown, plain) => shown.get("no")?.at === 0 && !/\d/.test(plain)],
  ["no", "ratings", (shown) => shown.get("no")?.at === 0],
  ["thanks", "yes", (shown, plain) => acknowledged.test(plain) || standsBefore(shown, "thanks", "yes")],
];

function before(shown: Shown, plain: string, a: IntentName, b: IntentName): boolean {
  for (const [first, second, when] of exceptions) {
    if (first === a && second === b && when(shown, plain)) return true;
    if (first === b && second === a && when(shown, plain)) return false;
  }
  return intentNames.indexOf(a) < intentNames.indexOf(b);
}

/** Orders what a message shows, most likely first; `other` when it shows nothing of the main kinds. */
export function rank(
  found: readonly Evidence[],
  plain: string,
  seen: MessageReading,
): readonly IntentMatch[] {
  const shown = earliest(found);
  const [reading] = seen.readings;
  // "Do you have two speed motors?" states nothing of the customer's own label.
  const wished = seen.readings.every(({ rating }) => rating === "speedKind") && shown.has("two-speed");
  if (reading && !(wished && asks.test(plain)))
    shown.set("ratings", { intent: "ratings", words: reading.words, at: 0, whole: false });
  const [unread] = seen.unreadable;
  if (unread && !shown.has("unreadable")) {
    const at = Number.POSITIVE_INFINITY;
    shown.set("unreadable", { intent: "unreadable", words: unread.words, at, whole: false });
  }
  for (const agreement of agreements) {
    for (const name of agreement(shown, plain)) shown.delete(name);
  }
  const finer = intentNames.filter((name) => finerIntents.has(name) && shown.has(name));
  const main: IntentName[] = [];
  for (const name of intentNames) {
    if (finerIntents.has(name) || name === "other" || !shown.has(name)) continue;
    const place = main.findIndex((placed) => before(shown, plain, name, placed));
    main.splice(place === -1 ? main.length : place, 0, name);
  }
  const ordered: readonly IntentName[] = main.length > 0 ? [...main, ...finer] : ["other", ...finer];
  return ordered.map((intent) => ({ intent, words: shown.get(intent)?.words ?? "" }));
}
