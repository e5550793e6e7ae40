import type { ReadingMessage } from "../score/messages.ts";

/** Numbers from 0 to 1, the same on every run. */
export type Roll = () => number;

/** The message said otherwise, so that a careful reader notes the same; undefined where the way does not apply. */
export type Way = (message: ReadingMessage, roll: Roll) => string | undefined;

const pick = <T>(list: readonly [T, ...T[]], roll: Roll): T =>
  list[Math.floor(roll() * list.length)] ?? list[0];
const changed = (text: string, before: string) => (text === before ? undefined : text);

/** A number of a maker is copied as it stands: no spelling, no case may change in it. */
const hasNumbersOfMakers = ({ nameplate, site }: ReadingMessage) =>
  nameplate.modelNumbers !== undefined ||
  nameplate.serialNumber !== undefined ||
  site.pumpModel !== undefined;

/** One of the places a pattern is found at, cut there. */
function cutAt(text: string, pattern: RegExp, roll: Roll): readonly [string, string] | undefined {
  const found = [...text.matchAll(pattern)];
  const match = found[Math.floor(roll() * found.length)];
  if (match === undefined) return undefined;
  const at = match.index + match[0].length;
  return [text.slice(0, at), text.slice(at)];
}

const longForms: readonly (readonly [RegExp, string])[] = [
  [/\bit's\b/gi, "it is"],
  [/\bthat's\b/gi, "that is"],
  [/\bcan't\b/gi, "can not"],
  [/\bdon't\b/gi, "do not"],
  [/\bisn't\b/gi, "is not"],
  [/\bdoesn't\b/gi, "does not"],
  [/\bthere's\b/gi, "there is"],
];

const filler: Way = ({ text }, roll) => {
  const parts = cutAt(text, /\b(?:is|says|reads|it's|its|dice|es|are)\s+(?=\d)/gi, roll);
  return parts && `${parts[0]}${pick(["clearly", "definitely", "um", "exactly", "just"], roll)} ${parts[1]}`;
};

const inFull: Way = ({ text }) =>
  changed(
    longForms.reduce((whole, [short, long]) => whole.replace(short, long), text),
    text,
  );

const greeted: Way = ({ text }, roll) =>
  pick(
    [
      "Hi there. ",
      "Good evening! ",
      "Sorry to bother you so late. ",
      "Buenas noches. ",
      "My pool motor quit. ",
    ],
    roll,
  ) + text;

const saidOn: Way = ({ text }, roll) =>
  text.replace(/[.\s]+$/, "") +
  pick(
    [". Thanks so much.", "\nThanks!", " 🙏", ". I'm half asleep.", ". The pool holds 15,000 gallons."],
    roll,
  );

const otherPaper: Way = ({ text }, roll) =>
  changed(
    text.replace(/\b(?:label|plate|sticker|tag|nameplate)\b/g, () =>
      pick(["label", "plate", "sticker", "tag", "nameplate"], roll),
    ),
    text,
  );

const otherVerb: Way = ({ text }, roll) =>
  changed(
    text.replace(/\b(?:says|reads|shows)\b/g, () => pick(["says", "reads", "shows", "states"], roll)),
    text,
  );

const inQuotes: Way = ({ text }) =>
  changed(text.replace(/(?<=\b(?:says|reads|dice) )(\d+(?:\.\d+)?)(?=(?: hp| volts|\.?$|, ))/, '"$1"'), text);

const slip: Way = (message, roll) => {
  const { text } = message;
  if (hasNumbersOfMakers(message)) return undefined;
  const parts = cutAt(text, /\b[a-z]{2}(?=[a-z]{4})/g, roll);
  if (!parts) return undefined;
  const [before, after] = parts;
  return `${before}${after.charAt(1)}${after.charAt(0)}${after.slice(2)}`;
};

const decimalComma: Way = (message) => {
  if (hasNumbersOfMakers(message) || /,\d|\d,|\$/.test(message.text)) return undefined;
  return changed(message.text.replace(/(?<![\d.$])(\d{1,2})\.(\d{1,2})(?![\d.])/g, "$1,$2"), message.text);
};

const otherSeparator: Way = (message, roll) => {
  const items = message.text.split(", ");
  const dump = items.length > 3 && items.every((item) => /\d/.test(item) && item.length < 18);
  if (!dump || /\n/.test(message.text) || hasNumbersOfMakers(message)) return undefined;
  return items.join(pick([" - ", " / ", " | ", "; ", "\n"], roll));
};

const believed: Way = ({ text }, roll) => {
  const parts = cutAt(text, /\d ?(?:hp|HP|volts|amps|rpm)(?=[.,]|$)/g, roll);
  return parts?.join(pick([" i think", " I believe", ", pretty sure"], roll));
};

/** Every way, by the name it is reported under. */
export const ways: Readonly<Record<string, Way>> = {
  filler,
  "in full": inFull,
  greeted,
  "said on": saidOn,
  "other paper": otherPaper,
  "other verb": otherVerb,
  "in quotes": inQuotes,
  slip,
  "decimal comma": decimalComma,
  "other separator": otherSeparator,
  believed,
};
