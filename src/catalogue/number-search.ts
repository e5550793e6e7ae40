import type { StockMotor } from "../matching/types.ts";
import { type Candidates, NumberIndex, type Ranked } from "./number-search/candidates.ts";
import {
  createFormatReader,
  type FormatReader,
  type FormattedNumber,
  type NumberFormat,
} from "./number-search/formats.ts";
import type { NumberResult } from "./number-search/result.ts";
import { separate } from "./number-search/separate.ts";
import type { NumberEntry } from "./number-search/table.ts";
import { type TypedNumber, typedNumber, withoutWords } from "./number-search/typed.ts";

export { type FormattedNumber, type NumberFormat, numberFormatsSchema } from "./number-search/formats.ts";
export type { Candidate, FoundHow, NumberResult } from "./number-search/result.ts";
export { narrow, type Place, type Separation } from "./number-search/separate.ts";
export type { NumberEntry } from "./number-search/table.ts";

/** Finds the motors a typed number leads to, though it was typed from a worn plate. */
export interface NumberSearch {
  /** Never throws, whatever was typed. What it finds is still to be checked against the ratings given. */
  search(typed: string): NumberResult;
  /** The number taken apart by its maker's format; undefined when it follows none. */
  explain(typed: string): FormattedNumber | undefined;
}

/** What one search goes by. */
interface Query {
  readonly whole: TypedNumber;
  /** What identifies the motor by the maker's format; undefined when that is all of it, or no format fits. */
  readonly core: TypedNumber | undefined;
  readonly formatted: FormattedNumber | undefined;
}

type Rung = (query: Query, index: NumberIndex) => NumberResult | undefined;

/** The ways a number is found, the surest first: the first that finds anything decides. */
const rungs: readonly Rung[] = [exact, exactByFormat, lookAlike, serialByFormat, near];

/** More numbers than this are not asked about one against the other. */
const mostAsked = 8;
const mostLikely = 3;
/** A text of more words is not taken apart into a number and the serial behind it. */
const mostWords = 12;

/**
 * Indexes numbers for `search`. Memory is about 150 bytes a number of ten characters beside its own text.
 * Numbers of more than 64 letters and digits are found only when typed exactly. Throws a RangeError above
 * 16.7 million numbers.
 */
export function createNumberSearch(
  entries: Iterable<NumberEntry>,
  formats: readonly NumberFormat[] = [],
): NumberSearch {
  const index = new NumberIndex(entries);
  const explain = createFormatReader(formats);
  return {
    explain: (typed) => (typedNumber(typed) ? explain(typed) : undefined),
    search(typed) {
      const asTyped = typedNumber(typed);
      if (!asTyped) return { kind: "none" };
      const known = exact({ whole: asTyped, core: undefined, formatted: undefined }, index);
      if (known) return known;
      const bare = withoutWords(typed);
      if (bare.kind === "serial") return { kind: "serial", by: "word" };
      const text = formats.length === 0 ? bare.text : withoutSerialBehind(bare.text, explain);
      const whole = text === typed ? asTyped : typedNumber(text);
      if (!whole) return { kind: "none" };
      const formatted = explain(text);
      const query = { whole, core: coreOf(formatted), formatted };
      for (const rung of rungs) {
        const result = rung(query, index);
        if (result) return result;
      }
      return { kind: "none" };
    },
  };
}

/** Every number that leads to a stocked motor: its stock number, and the old numbers it replaces. */
export function* stockNumbers(motors: Iterable<StockMotor>): Generator<NumberEntry> {
  for (const { sku, replaces } of motors) {
    yield { number: sku, sku };
    for (const number of replaces) yield { number, sku };
  }
}

function exact({ whole }: Query, index: NumberIndex): NumberResult | undefined {
  const id = index.exact(whole);
  return id === undefined ? undefined : found(index, { id, how: "exact", tier: 0, cost: 0 });
}

function exactByFormat({ core }: Query, index: NumberIndex): NumberResult | undefined {
  const id = core && index.exact(core);
  return id === undefined ? undefined : found(index, { id, how: "format", tier: 0, cost: 0 });
}

function lookAlike({ whole, core }: Query, index: NumberIndex): NumberResult | undefined {
  return decide(index, index.lookAlikes(whole), core && index.lookAlikes(core));
}

function serialByFormat({ formatted }: Query): NumberResult | undefined {
  if (!formatted || formatted.format.kind === "model") return undefined;
  const { maker, name, means } = formatted.format;
  return { kind: "serial", by: "format", maker, format: name, means };
}

function near({ whole, core }: Query, index: NumberIndex): NumberResult | undefined {
  return decide(index, index.near(whole), core && index.near(core));
}

/** What stands before a serial number or date code, known by its maker's format and by its place behind another. */
function withoutSerialBehind(text: string, explain: FormatReader): string {
  const words = text.trim().split(/\s+/);
  if (words.length > mostWords) return text;
  for (let before = 1; before < words.length; before++) {
    const kind = explain(words.slice(before).join(" "))?.format.kind;
    if (kind === "serial" || kind === "date-code") return words.slice(0, before).join(" ");
  }
  return text;
}

/** The parts that identify the motor, where others stand beside them. */
function coreOf(formatted: FormattedNumber | undefined): TypedNumber | undefined {
  if (formatted?.format.kind !== "model" || formatted.parts.every(({ identifies }) => identifies))
    return undefined;
  return typedNumber(formatted.parts.flatMap(({ text, identifies }) => (identifies ? [text] : [])).join(""));
}

/** One motor is found, several are asked about, too many are only counted. Only the lowest tier counts. */
function decide(index: NumberIndex, ofWhole: Candidates, ofCore?: Candidates): NumberResult | undefined {
  const all = ofCore ? byId([...ofWhole.ranked, ...ofCore.ranked]) : ofWhole.ranked;
  const unlisted = ofWhole.unlisted + (ofCore?.unlisted ?? 0);
  const [only] = all;
  if (!only) return undefined;
  if (all.length === 1 && unlisted === 0) return found(index, only);
  const tier = Math.min(...all.map((one) => one.tier));
  const ranked = all.filter((one) => one.tier === tier).sort((a, b) => a.cost - b.cost || a.id - b.id);
  const [best] = ranked;
  if (!best) return undefined;
  if (unlisted > 0 || ranked.length > mostAsked) {
    const likeliest = ranked.slice(0, mostLikely).map((one) => index.candidate(one));
    return { kind: "many", count: ranked.length + unlisted, likeliest };
  }
  const candidates = ranked.map((one) => index.candidate(one));
  const motors = new Set(candidates.map(({ skus }) => skus.join("\n")));
  if (motors.size === 1) return found(index, best);
  return { kind: "choose", candidates, separates: separate(candidates) };
}

/** Each number once, by its best rank. */
function byId(ranked: readonly Ranked[]): readonly Ranked[] {
  const best = new Map<number, Ranked>();
  for (const one of ranked) {
    const known = best.get(one.id);
    if (!known || one.tier < known.tier || (one.tier === known.tier && one.cost < known.cost))
      best.set(one.id, one);
  }
  return [...best.values()];
}

function found(index: NumberIndex, ranked: Ranked): NumberResult {
  const { number, skus, how } = index.candidate(ranked);
  return { kind: "found", number, skus, how };
}
