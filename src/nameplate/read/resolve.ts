import type { MessageReading, Reading, Unreadable } from "../reading.ts";
import type { RatingName, RatingValue } from "../vocabulary.ts";
import { answers, type Missing, retitled, unanswered } from "./answers.ts";
import { backReferences } from "./backReference.ts";
import type { Candidate, Claim, Standing } from "./candidate.ts";
import { type Context, contextOf } from "./context.ts";
import { contrasted, quoted } from "./contrast.ts";
import { corrected } from "./corrections.ts";
import { counts, heard, outspoken } from "./counting.ts";
import { isDenied } from "./denial.ts";
import { decided } from "./dispute.ts";
import { elliptic } from "./ellipsis.ts";
import { halved } from "./halfRead.ts";
import { illegible } from "./illegible.ts";
import { quotedVolts } from "./labelSays.ts";
import type { Name } from "./naming.ts";
import { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { ratherThan, renamed, restated } from "./restated.ts";
import { retract } from "./retraction.ts";
import { ownersOf } from "./scope.ts";
import { openQuestions, selfEvident } from "./selfEvident.ts";
import { settle } from "./settle.ts";
import { supplyNow } from "./supplyNow.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { topics } from "./topics.ts";
import { isWondered } from "./wondering.ts";

/** All that the chosen readings state, whoever it is said of, and the message around it. */
export function statedBy(
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  chosen: readonly Candidate[],
): { readonly stated: readonly Standing[]; readonly context: Context } {
  const all = chosen.flatMap(({ claims, start, end }) =>
    claims.map((claim) => quotedVolts(tokens, ofPump(tokens, { ...claim, from: start, to: end }))),
  );
  const capacitors = all.filter(({ rating }) => rating === "capacitorUf").slice(0, 9);
  const stated = all.filter((claim) => !isCapacitorVoltage(claim, capacitors) && !numbersPart(tokens, claim));
  return { stated, context: contextOf(tokens, names, stated) };
}

/** What of the chosen readings counts, what was taken back, and what could not be read. */
export function resolve(
  text: string,
  tokens: readonly Token[],
  names: readonly (readonly Name[])[],
  chosen: readonly Candidate[],
  expecting: readonly RatingName[],
): MessageReading {
  const { stated, context } = statedBy(tokens, names, chosen);
  const owners = ownersOf(context);
  const ordered = new Ordered(stated);
  const explained = new Array<boolean>(tokens.length).fill(false);
  for (const candidate of chosen) explained.fill(true, candidate.start, candidate.end);

  const denied = stated.filter((claim) => isDenied(context, claim));
  const unheard = new Set(denied);
  const referred = backReferences(context, owners);
  for (const [{ start, end }, said] of referred)
    owners.fill(said === "theirs" ? "other" : "label", start, end);
  const isAsked = ({ rating }: Claim) => expecting.includes(rating);
  let standing = stated.filter(
    (claim) =>
      !unheard.has(claim) &&
      !isWondered(context, claim) &&
      (isAsked(claim) || referred.has(claim) ? counts(owners, claim) : heard(context, owners, claim)),
  );
  standing = standing.filter((claim) => !outspoken(owners, claim, standing));
  standing.push(...measuredSupply(owners, stated, standing));
  const short = elliptic(context, owners, explained, standing);
  for (const { start, end } of short) explained.fill(true, start, end);
  standing = [...standing, ...short];
  standing = decided(context, stated, standing);
  standing = renamed(context, restated(context, retract(context, owners, standing)));
  const add = (claims: readonly Claim[]) => {
    for (const claim of claims) {
      standing.push({ from: claim.start, to: claim.end, ...claim });
      explained.fill(true, claim.start, claim.end);
    }
  };
  const wired = supplyNow(context);
  const rewired = ({ start, end }: Claim) => wired.some((now) => start <= now.start && now.start < end);
  standing = standing.filter((claim) => claim.rating !== "volts" || !rewired(claim));
  add(wired);
  const ofLabel = (claim: Claim) => owners[claim.start] === "label";
  add(ratherThan(context, denied).filter(ofLabel));
  add(corrected(context, owners, explained, ordered));
  add(contrasted(context, owners, explained, ordered));
  add(quoted(context, owners, explained, ordered));
  add(openQuestions(context, explained, standing).filter(ofLabel));
  add(topics(context, explained, standing).filter(ofLabel));
  add(selfEvident(context, owners, explained, standing));
  standing = retitled(context, expecting, standing);
  add(answers(text, context, owners, explained, expecting, standing));
  standing.sort((a, b) => a.start - b.start);
  standing = halved(context, standing);
  const lastDenied = new Map(
    denied.map((claim) => [`${claim.rating} ${JSON.stringify(claim.value)}`, claim.start]),
  );
  const denialOf = (claim: Standing) =>
    lastDenied.get(`${claim.rating} ${JSON.stringify(claim.value)}`) ?? -1;
  standing = standing.filter((claim) => denialOf(claim) < claim.start);
  const missing = illegible(context, owners, ordered);
  return report(text, context, standing, [...missing, ...unanswered(context, expecting, standing, missing)]);
}

function report(
  text: string,
  context: Context,
  standing: readonly Standing[],
  missing: readonly Missing[],
): MessageReading {
  const { tokens } = context;
  const words = (from: number, to: number) => {
    const start = tokens[from]?.start ?? 0;
    const end = tokens[Math.max(from, to - 1)]?.end ?? start;
    return { words: text.slice(start, end), span: { start, end } };
  };
  const readings: Reading[] = [];
  const unreadable: Unreadable[] = [];
  for (const rating of new Set(standing.map((claim) => claim.rating))) {
    const settled = settle(
      context,
      rating,
      standing.filter((claim) => claim.rating === rating),
    );
    if (!settled) continue;
    const where = words(settled.from, settled.to);
    if (settled.value === undefined) unreadable.push({ rating, ...where });
    else {
      const value =
        rating === "pumpModel"
          ? words(settled.start, settled.end).words.replace(/[^\p{L}\p{N})]{1,40}$/u, "")
          : settled.value;
      readings.push({ rating, value: value as RatingValue<RatingName>, ...where });
    }
  }
  for (const { rating, start, end } of missing) {
    const known = [...readings, ...unreadable].some((other) => other.rating === rating);
    if (!known) unreadable.push({ rating, ...words(start, end) });
  }
  return { readings, unreadable };
}

/** Volts that somebody measured are those of the supply. */
function measuredSupply(
  owners: readonly Owner[],
  stated: readonly Standing[],
  standing: readonly Standing[],
): Standing[] {
  if (standing.some(({ rating }) => rating === "supplyVolts")) return [];
  const measured = stated.find(({ rating, start }) => rating === "volts" && owners[start] === "measured");
  const [volts, ...more] = Array.isArray(measured?.value) ? (measured.value as number[]) : [];
  if (!measured || volts === undefined || more.length > 0 || volts < 100 || volts > 500) return [];
  return [{ ...measured, rating: "supplyVolts", value: volts }];
}

const components =
  /^(?:seal|seals|impeller|gasket|basket|lid|oring|filter|heater|timer|relay|board|diffuser|bearing|bearings|switch|cell|cartridge|capacitor|sello|impulsor|filtro|empaque|balero|baleros|calentador)$/;

/** "The seal part number is 19-002": a number of something else. */
function numbersPart(tokens: readonly Token[], { rating, from }: Standing): boolean {
  const noun = tokens[from - 1];
  return (
    (rating === "modelNumbers" || rating === "serialNumber") &&
    noun?.kind === "word" &&
    !noun.wide &&
    components.test(noun.norm)
  );
}

/** "Model number on the pump is BR-400" is the pump's own name. */
function ofPump(tokens: readonly Token[], claim: Standing): Standing {
  if (claim.rating !== "modelNumbers") return claim;
  const around = tokens.slice(Math.max(0, claim.from - 4), claim.start);
  const pump = around.findLastIndex((token) => isWord(token, "pump", "pumps", "bomba"));
  const motor = around.findLastIndex(
    (token, at) =>
      isWord(token, "motor", "label", "plate") ||
      isMark(token, ".", ",", ";") ||
      (token.kind === "break" && at >= 0),
  );
  return pump >= 0 && pump > motor ? { ...claim, rating: "pumpModel" } : claim;
}

/** Voltages capacitors are made for (common practice, no source). */
const capacitorVolts = new Set([165, 250, 330, 370, 440, 450]);

/** A capacitor's own voltage stands beside its microfarads and is no rating of the motor. */
function isCapacitorVoltage(claim: Standing, capacitors: readonly Standing[]): boolean {
  if (claim.rating !== "volts" || !Array.isArray(claim.value) || claim.value.length !== 1) return false;
  const volts = Number(claim.value[0]);
  // "start capacitor 145 MFD 125V": nothing stands between.
  if (capacitors.some(({ to, from, start }) => claim.from === to && start > from)) return true;
  const beside = capacitors.some(
    ({ from, to }) =>
      claim.from >= to && claim.from - to <= (capacitorVolts.has(volts) ? 9 : 3) && from < claim.from,
  );
  return beside && volts >= 160 && volts !== 208 && volts !== 230;
}
