import type { Doubt } from "../reading.ts";
import { isNameplateRating, type RatingName, type RatingValue, ratings, showRating } from "../vocabulary.ts";
import type { Finding, Proposal, Subject } from "./check.ts";
import { ratingValue } from "./check.ts";
import { slipsOf } from "./slips.ts";

/** A finding together with the check that raised it. */
export type NamedFinding = Finding & { readonly check: string };
/** All findings on a subject, without proposals. */
export type Examine = (subject: Subject) => readonly NamedFinding[];

/** The subject with one rating changed. */
export function withValue(subject: Subject, rating: RatingName, value: RatingValue<RatingName>): Subject {
  return isNameplateRating(rating)
    ? { ...subject, nameplate: { ...subject.nameplate, [rating]: value } }
    : { ...subject, site: { ...subject.site, [rating]: value } };
}

const identity = ({ check, reason, ratings: doubted }: NamedFinding): string =>
  `${check}/${reason}/${[...doubted].sort()}`;

/**
 * True when the changed subject no longer raises `finding`, raises nothing that was not raised before, and
 * nothing is left that doubts the changed ratings.
 */
function clears(
  finding: NamedFinding,
  before: readonly NamedFinding[],
  after: readonly NamedFinding[],
  changed: readonly RatingName[],
): boolean {
  const known = new Set(before.map(identity));
  return after.every(
    (left) =>
      known.has(identity(left)) &&
      identity(left) !== identity(finding) &&
      !changed.some((rating) => left.ratings.includes(rating)),
  );
}

/** Horsepower and service factor, one typed for the other. */
function exchanged(subject: Subject, rating: RatingName): Proposal[] {
  const { hp, serviceFactor } = subject.nameplate;
  if (rating !== "hp" || hp === undefined || serviceFactor === undefined || hp === serviceFactor) return [];
  return [{ rating: "hp", value: serviceFactor, also: { rating: "serviceFactor", value: hp } }];
}

function candidates(subject: Subject, rating: RatingName): Proposal[] {
  const value = ratingValue(subject, rating);
  if (value === undefined) return [];
  return [
    ...exchanged(subject, rating),
    ...slipsOf(rating, value).map((slip): Proposal => ({ rating, value: slip })),
  ];
}

/** The subject as a proposal would have it. */
export function applied(subject: Subject, { rating, value, also }: Proposal): Subject {
  const changed = withValue(subject, rating, value);
  return also ? withValue(changed, also.rating, also.value) : changed;
}

/** The first candidate that clears the finding: the check's own suggestions, then slips, most suspicious rating first. */
function propose(
  subject: Subject,
  finding: NamedFinding,
  before: readonly NamedFinding[],
  examine: Examine,
): Proposal | undefined {
  const possible = [
    ...(finding.suggestions ?? []),
    ...finding.ratings.flatMap((rating) => candidates(subject, rating)),
  ];
  return possible.find((proposal) => {
    const changed = [proposal.rating, ...(proposal.also ? [proposal.also.rating] : [])];
    return clears(finding, before, examine(applied(subject, proposal)), changed);
  });
}

function doubtFrom(finding: NamedFinding, severity: Doubt["severity"], proposal?: Proposal): Doubt {
  const { suggestions: _, ...doubt } = finding;
  if (!proposal) return doubt;
  const { rating, value } = proposal;
  return {
    ...doubt,
    severity,
    ratings: [rating, ...doubt.ratings.filter((other) => other !== rating)],
    reason: `${doubt.reason}-proposed`,
    values: {
      ...doubt.values,
      proposedRating: ratings[rating].title,
      proposed: showRating(rating, value),
    },
    proposal,
  };
}

/**
 * Turns findings into doubts: each with the value a slip of the pen would explain, where that value clears
 * the audit. A later finding that the earlier proposal settles too is left out: one slip, one question.
 */
export function doubtsFrom(subject: Subject, examine: Examine): readonly Doubt[] {
  const found = examine(subject);
  const doubts: Doubt[] = [];
  const settled = new Set<NamedFinding>();
  for (const finding of found) {
    if (settled.has(finding)) continue;
    const proposal = propose(subject, finding, found, examine);
    let severity = finding.severity;
    if (proposal) {
      const left = new Set(examine(applied(subject, proposal)).map(identity));
      for (const other of found.filter((candidate) => !left.has(identity(candidate)))) {
        settled.add(other);
        if (other.severity === "impossible") severity = "impossible";
      }
    }
    doubts.push(doubtFrom(finding, severity, proposal));
  }
  return doubts;
}
