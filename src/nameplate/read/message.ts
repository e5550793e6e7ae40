import type { MessageReading, Reading, Unreadable } from "../reading.ts";
import {
  isNameplateRating,
  type Nameplate,
  type RatingName,
  type RatingValue,
  type Site,
} from "../vocabulary.ts";
import { bare } from "./bare.ts";
import type { Candidate } from "./candidate.ts";
import { columns } from "./columns.ts";
import { grid } from "./grid.ts";
import { judge } from "./judge.ts";
import { listNumbers } from "./listNumbers.ts";
import { moreNumbers } from "./moreNumbers.ts";
import { findNames, mendSpelling } from "./naming.ts";
import { otherFigures } from "./otherFigures.ts";
import { currentsByVoltage } from "./pairing.ts";
import { plainSpeech } from "./plainSpeech.ts";
import { atMost, namedAfter, namedBefore } from "./propose.ts";
import { resolve, statedBy } from "./resolve.ts";
import { rows } from "./rows.ts";
import { selfNaming } from "./selfNaming.ts";
import { site } from "./site.ts";
import { drawTogether, restoreOffsets } from "./spaced.ts";
import { hearNumbers } from "./spoken.ts";
import { tokenize } from "./tokenize.ts";

export interface ReadingOptions {
  /** Ratings that were just asked for: a bare answer is read as one of them when it suits. */
  readonly expecting?: readonly RatingName[];
}

/**
 * Reads the ratings a message states. Candidate readings are proposed with their evidence, then judged
 * together; what belongs to another motor, is asked, denied or taken back does not count. Never throws.
 */
export function readMessage(text: string, options: ReadingOptions = {}): MessageReading {
  const { tokens, names, chosen } = explained(text);
  return resolve(text, tokens, names, chosen, options.expecting ?? []);
}

/**
 * The values a message names for one rating, in text order, whether or not they are the label's: of a wished-for motor
 * too. They are no readings. Never throws.
 */
export function mentioned<K extends RatingName>(text: string, rating: K): readonly RatingValue<K>[] {
  return explained(text)
    .chosen.flatMap(({ claims }) => claims)
    .filter((claim) => claim.rating === rating && claim.value !== undefined)
    .map(({ value }) => value as RatingValue<K>);
}

/** All figures a message states for any rating, whoever they are said of: what the vote on their owner learns from. */
export function statedIn(text: string): ReturnType<typeof statedBy> {
  const { tokens, names, chosen } = explained(text);
  return statedBy(tokens, names, chosen);
}

/** The candidates that together explain the text best. */
function explained(text: string) {
  const plain = withoutMarkup(text);
  const spaced = drawTogether(plain);
  const pieces = spaced ? restoreOffsets(tokenize(spaced.text), spaced) : tokenize(plain);
  const tokens = plainSpeech(mendSpelling(hearNumbers(pieces)));
  const names = findNames(tokens);
  const candidates: Candidate[] = [
    ...namedBefore(tokens, names),
    ...namedAfter(tokens, names),
    ...columns(tokens, names),
    ...grid(tokens, names),
    ...rows(tokens, names),
    ...currentsByVoltage(tokens, names),
    ...selfNaming(tokens),
    ...site(tokens),
    ...otherFigures(tokens),
    ...listNumbers(tokens),
    ...bare(tokens),
  ];
  const chosen = judge(tokens, names, [
    ...candidates,
    ...atMost(tokens, names, candidates),
    ...moreNumbers(tokens, candidates),
  ]);
  return { tokens, names, chosen };
}

/** Tags and entities of a copied web page as blanks, so that offsets stay true. */
function withoutMarkup(text: string): string {
  return text.replace(/<\/?[a-z][^<>\n]{0,60}>|&[a-z]{2,6};/gi, (found) => " ".repeat(found.length));
}

/** The plain values of a reading, as the surfaces print them. */
export function valuesOf(reading: MessageReading): {
  nameplate: Nameplate;
  site: Site;
  unreadable: RatingName[];
} {
  const nameplate: Record<string, unknown> = {};
  const place: Record<string, unknown> = {};
  for (const { rating, value } of reading.readings as readonly Reading[]) {
    if (isNameplateRating(rating)) nameplate[rating] = value;
    else place[rating] = value;
  }
  const unreadable = [...new Set(reading.unreadable.map(({ rating }: Unreadable) => rating))];
  return { nameplate: nameplate as Nameplate, site: place as Site, unreadable };
}
