import { type Nameplate, type NameplateRating, nameplateRatings } from "../../../src/nameplate/vocabulary.ts";
import type { Random } from "./random.ts";

export const slipKinds = ["decimal", "swap", "look-alike", "exchanged", "other-voltage"] as const;
export type SlipKind = (typeof slipKinds)[number];

/** A label with one slip in it, and the rating that is wrong. */
export interface SlippedLabel {
  /** What the customer would have typed without the slip. */
  readonly truth: Nameplate;
  readonly kind: SlipKind;
  readonly rating: NameplateRating;
  readonly nameplate: Nameplate;
}

/** Characters taken for each other on a worn label. Wider than what the audit itself tries. */
const lookAlikes: Readonly<Record<string, string>> = {
  "0": "68",
  "1": "74",
  "2": "7",
  "3": "85",
  "4": "91",
  "5": "63",
  "6": "580",
  "7": "12",
  "8": "360",
  "9": "4",
  Y: "VX",
  J: "IL",
  C: "GO",
  B: "8R",
  F: "EP",
  H: "NM",
};

const written = [
  "hp",
  "serviceFactor",
  "totalHp",
  "volts",
  "amps",
  "serviceFactorAmps",
  "rpm",
  "hz",
  "frame",
  "ambientC",
  "insulationClass",
  "kvaCode",
] as const;

function swap(random: Random, text: string): string {
  const places = [...text].flatMap((character, index) => (character === "." ? [] : [index]));
  const pairs = places.slice(1).map((second, n) => [places[n]!, second] as const);
  const different = pairs.filter(([a, b]) => text[a] !== text[b]);
  if (different.length === 0) return text;
  const [a, b] = random.pick(different);
  const characters = [...text];
  [characters[a], characters[b]] = [text[b]!, text[a]!];
  return characters.join("");
}

function lookAlike(random: Random, text: string): string {
  const places = [...text].flatMap((character, index) => (lookAlikes[character] ? [index] : []));
  if (places.length === 0) return text;
  const place = random.pick(places);
  return text.slice(0, place) + random.pick([...lookAlikes[text[place]!]!]) + text.slice(place + 1);
}

function decimal(random: Random, text: string): string {
  const value = Number(text);
  return String(Number((random.chance(0.7) ? value * 10 : value / 10).toPrecision(6)));
}

const writtenSlips = { decimal, swap, "look-alike": lookAlike } as const;

/** Amps written without their zeros lose them before the slip: 10 A is typed "10" or "10.0". */
function typed(random: Random, rating: NameplateRating, value: number | string): string {
  if (typeof value === "string") return value;
  const ampere = rating === "amps" || rating === "serviceFactorAmps";
  if (ampere && Number.isInteger(value) && random.chance(0.5)) return value.toFixed(1);
  return rating === "serviceFactor" && random.chance(0.5) ? value.toFixed(2) : String(value);
}

function slipInWriting(
  random: Random,
  kind: keyof typeof writtenSlips,
  label: Nameplate,
): SlippedLabel | undefined {
  const stated = written.filter(
    (rating) =>
      label[rating] !== undefined && (kind !== "decimal" || typeof [label[rating]].flat()[0] === "number"),
  );
  const rating = random.pick(stated);
  const before = label[rating]!;
  const entries: (number | string)[] = [before].flat();
  const index = Math.floor(random.next() * entries.length);
  const text = writtenSlips[kind](random, typed(random, rating, entries[index]!));
  const after = typeof entries[index] === "number" ? Number(text) : text;
  const value = Array.isArray(before) ? entries.with(index, after) : after;
  if (after === entries[index] || !nameplateRatings[rating].schema.safeParse(value).success) return undefined;
  return { truth: label, kind, rating, nameplate: { ...label, [rating]: value } };
}

/** Only one of the voltages is given, with the amps of the other. */
function ampsOfOtherVoltage(random: Random, label: Nameplate): SlippedLabel | undefined {
  const rating =
    label.serviceFactorAmps && (!label.amps || random.chance(0.5)) ? "serviceFactorAmps" : "amps";
  const amps = label[rating];
  const volts = label.volts;
  if (!volts || !amps || volts.length !== 2 || amps.length !== 2 || volts[1]! < 1.9 * volts[0]!)
    return undefined;
  const side = random.chance(0.5) ? 0 : 1;
  const { amps: _, serviceFactorAmps: __, ...rest } = label;
  const truth: Nameplate = { ...rest, volts: [volts[side]!], [rating]: [amps[side]!] };
  return { truth, kind: "other-voltage", rating, nameplate: { ...truth, [rating]: [amps[1 - side]!] } };
}

/** One slip of the kind in a true label, or undefined where the label offers none. */
export function slipOf(random: Random, kind: SlipKind, label: Nameplate): SlippedLabel | undefined {
  if (kind === "other-voltage") return ampsOfOtherVoltage(random, label);
  if (kind !== "exchanged") return slipInWriting(random, kind, label);
  const { hp, serviceFactor } = label;
  if (hp === undefined || serviceFactor === undefined || hp === serviceFactor) return undefined;
  const nameplate = { ...label, hp: serviceFactor, serviceFactor: hp };
  return { truth: label, kind, rating: "hp", nameplate };
}
