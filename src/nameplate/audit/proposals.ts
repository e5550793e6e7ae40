import type { Doubt } from "../reading.ts";
import { isNameplateRating, type RatingName, type RatingValue, ratings, showRating } from "../vocabulary.ts";
import type { Check, Finding, Proposal, Subject } from "./check.ts";
import { ratingValue } from "./check.ts";
import { slipsOf } from "./slips.ts";

/** A finding together with the check that raised it. */
type NamedFinding = Finding & { readonly check: string };

function withValue(subject: Subject, rating: RatingName, value: RatingValue<RatingName>): Subject {
  return isNameplateRating(rating)
    ? { ...subject, nameplate: { ...subject.nameplate, [rating]: value } }
    : { ...subject, site: { ...subject.site, [rating]: value } };
}

const identity = ({ check, reason, ratings: doubted }: NamedFinding): string =>
  `${check}/${reason}/${[...doubted].sort()}`;

function examine(subject: Subject, checks: readonly Check[]): readonly NamedFinding[] {
  return checks.flatMap((check) => check.find(subject).map((finding) => ({ ...finding, check: check.name })));
}

const doubtsOnly = ({ ratings: doubted }: NamedFinding, rating: RatingName): boolean =>
  doubted.length === 1 && doubted[0] === rating;

/** Ratings that are impossible by themselves: what else they upset is no news. */
function impossibleAlone(findings: readonly NamedFinding[]): ReadonlySet<RatingName> {
  const alone = findings.filter(
    ({ severity, ratings: doubted }) => severity === "impossible" && doubted.length === 1,
  );
  return new Set(alone.flatMap(({ ratings: doubted }) => doubted));
}

/**
 * What the changed subject still raises, when it no longer raises `finding`, nor any other that doubts one of its ratings
 * alone; raises nothing that was not raised before; and nothing is left that doubts the changed ratings.
 * Other ratings that are impossible by themselves are left out of account: a second slip elsewhere must not
 * hide the first. The finding's own check comes first: it turns most candidates down.
 */
function clears(
  changed: Subject,
  finding: NamedFinding,
  found: readonly NamedFinding[],
  changedRatings: readonly RatingName[],
  checks: readonly Check[],
): readonly NamedFinding[] | undefined {
  const own = checks.filter(({ name }) => name === finding.check);
  if (examine(changed, own).some((left) => identity(left) === identity(finding))) return undefined;
  const left = examine(changed, checks);
  const toSettle = found.filter((other) => finding.ratings.some((rating) => doubtsOnly(other, rating)));
  if (toSettle.some((other) => left.some((still) => identity(still) === identity(other)))) return undefined;
  const known = new Set(found.map(identity));
  const aside = impossibleAlone(found);
  const clean = left
    .filter((other) => !other.ratings.some((rating) => aside.has(rating) && !changedRatings.includes(rating)))
    .every(
      (other) =>
        known.has(identity(other)) && !changedRatings.some((rating) => other.ratings.includes(rating)),
    );
  return clean ? left : undefined;
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
function applied(subject: Subject, { rating, value, also }: Proposal): Subject {
  const changed = withValue(subject, rating, value);
  return also ? withValue(changed, also.rating, also.value) : changed;
}

/**
 * The first candidate that clears the finding: the check's own suggestions, then slips, most suspicious rating
 * first. A doubted fact of the place is not explained by a slip on the label, and where one of the ratings is
 * doubted by itself too, only what settles both counts.
 */
function propose(
  subject: Subject,
  finding: NamedFinding,
  found: readonly NamedFinding[],
  checks: readonly Check[],
): Cleared | undefined {
  const onLabel = finding.ratings[0] !== undefined && isNameplateRating(finding.ratings[0]);
  const possible = [
    ...(finding.suggestions ?? []),
    ...finding.ratings
      .filter((rating) => isNameplateRating(rating) === onLabel)
      .flatMap((rating) => candidates(subject, rating)),
  ];
  for (const proposal of possible) {
    const changedRatings = [proposal.rating, ...(proposal.also ? [proposal.also.rating] : [])];
    const left = clears(applied(subject, proposal), finding, found, changedRatings, checks);
    if (left) return { proposal, left };
  }
  return undefined;
}

/** A value that clears a finding, and what is still raised with it. */
interface Cleared {
  readonly proposal: Proposal;
  readonly left: readonly NamedFinding[];
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
export function doubtsFrom(subject: Subject, checks: readonly Check[]): readonly Doubt[] {
  const found = examine(subject, checks);
  const doubts: Doubt[] = [];
  const settled = new Set<NamedFinding>();
  for (const finding of found) {
    if (settled.has(finding)) continue;
    const cleared = propose(subject, finding, found, checks);
    let severity = finding.severity;
    if (cleared) {
      const left = new Set(cleared.left.map(identity));
      for (const other of found.filter((candidate) => !left.has(identity(candidate)))) {
        settled.add(other);
        if (other.severity === "impossible") severity = "impossible";
      }
    }
    doubts.push(doubtFrom(finding, severity, cleared?.proposal));
  }
  return doubts;
}
