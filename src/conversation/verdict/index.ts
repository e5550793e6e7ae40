import { decisiveFinding } from "../../matching/explain.ts";
import type { Finding, JudgedMotor, MatchResult } from "../../matching/types.ts";
import { type RatingName, ratings } from "../../nameplate/vocabulary.ts";
import type { Assessment } from "../assess.ts";
import type { Reply } from "../reply.ts";
import { showFact } from "../speaker.ts";
import type { TalkTurn } from "../turn.ts";
import { cautionText } from "./cautions.ts";
import { costReplies } from "./cost.ts";
import { asOfText, motorName, priceText, stockText } from "./motor.ts";
import { partsOf, partsText, workText } from "./parts.ts";

/** Changes when the customer should hear a new verdict, and only then. */
export function verdictSignature({ match, contradictions, facts }: Assessment): string {
  const best = match?.motors[0];
  const inferred = Object.entries(facts).flatMap(([rating, fact]) =>
    fact?.certainty === "inferred" ? rating : [],
  );
  return [match?.verdict, best?.motor.sku, best?.verdict, contradictions.length, ...inferred].join(":");
}

/** The verdict in messages of at most a phone screen each: what and why, money, cautions and who confirms. */
export function verdictReplies(turn: TalkTurn): readonly Reply[] {
  const { match } = turn.assessment;
  if (match === null) return [];
  const best = match.motors[0];
  const closing = (confirm: string) =>
    [
      ...contradictionText(turn),
      cautionText(turn.speaker),
      turn.speaker.say("replies", confirm, { when: turn.when }),
    ].join("\n");
  if (best === undefined) return [nothingFits(turn), closing("confirm.none")];
  if (match.verdict === "undecided") return [notSettled(turn, match), closing("confirm.none")];
  const asOf = asOfText(turn.knowledge.catalogue, turn.speaker);
  return [offer(turn, best, match), ...costReplies(turn, best.motor), `${closing("confirm")}\n${asOf}`];
}

function offer(turn: TalkTurn, best: JudgedMotor, match: MatchResult): string {
  const { speaker } = turn;
  const values = {
    motor: motorName(best.motor),
    price: priceText(best.motor, speaker),
    stock: stockText(best.motor, speaker),
  };
  const parts = partsOf(turn, best);
  const because = inferredFrom(turn);
  const key =
    match.verdict === "drop-in" && because ? "verdict.drop-in.inferred" : `verdict.${match.verdict}`;
  const others = match.motors
    .slice(1)
    .filter(({ verdict }) => verdict === best.verdict)
    .slice(0, 2)
    .map(({ motor }) => `${motorName(motor)}, ${priceText(motor, speaker)}, ${stockText(motor, speaker)}`);
  return [
    speaker.say("replies", key, { ...values, because: because ?? "" }),
    speaker.say("replies", "why", { reasons: whyTexts(turn, best).join(" ") }),
    speaker.say("replies", "needs", { parts: partsText(parts, speaker) }),
    ...workText(parts, speaker),
    ...unchecked(turn, best),
    ...(others.length > 0 ? [speaker.say("replies", "also", { motors: others.join("; ") })] : []),
  ].join("\n");
}

/** The reason that carries the verdict, then the mount, which the customer can look at. */
function whyTexts({ speaker }: TalkTurn, judged: JudgedMotor): readonly string[] {
  const decisive = decisiveFinding(judged);
  const mount = judged.findings.find(({ rule }) => rule === "mount");
  const record = judged.findings.find(({ rule, outcome }) => rule === "record" && outcome === "holds");
  const chosen = [record, decisive, mount].filter((finding): finding is Finding => finding !== undefined);
  return [...new Set(chosen)].map(({ reason, values }) => speaker.say("reasons", reason, values));
}

function nothingFits({ speaker, assessment: { nearest } }: TalkTurn): string {
  const none = speaker.say("replies", "verdict.none-fits");
  if (nearest === null) return none;
  const { judged, why } = nearest;
  const reason = speaker.say("reasons", why.reason, why.values);
  return `${none}\n${speaker.say("replies", "nearest", { motor: motorName(judged.motor), reason })}`;
}

/** Until the total is known, the motors with the printed horsepower of the old one are the likelier ones. */
function likeliest(motors: readonly JudgedMotor[], hp: number | undefined): readonly JudgedMotor[] {
  if (hp === undefined) return motors;
  const apart = ({ motor }: JudgedMotor) => Math.abs(Math.log((motor.label.hp ?? hp) / hp));
  return motors.toSorted((a, b) => apart(a) - apart(b));
}

function notSettled({ speaker, assessment }: TalkTurn, match: MatchResult): string {
  const running = likeliest(match.motors, assessment.nameplate.hp)
    .slice(0, 2)
    .map((judged) => {
      const open = decisiveFinding(judged);
      const reason = open ? speaker.say("reasons", open.reason, open.values) : "";
      return `• ${motorName(judged.motor)}: ${reason}`;
    });
  return [
    speaker.say("replies", "verdict.undecided"),
    speaker.say("replies", "inTheRunning"),
    ...running,
    speaker.say("replies", "photo"),
  ].join("\n");
}

/** Supporting rules that could not be checked, by the ratings that would have told. */
function unchecked({ speaker }: TalkTurn, judged: JudgedMotor): readonly string[] {
  const missing = judged.findings.flatMap(({ outcome, needs }) => (outcome === "not-known" ? needs : []));
  const names = [...new Set(missing)].map((rating: RatingName) => ratings[rating].title);
  return names.length > 0 ? [speaker.say("replies", "unchecked", { ratings: names.join(", ") })] : [];
}

/** What the offer rests on beyond the label's own words; a breaker that leaves no other choice is no doubt. */
function inferredFrom({ assessment, speaker }: TalkTurn): string | undefined {
  const grounds = new Set(Object.values(assessment.facts).map((fact) => fact?.because));
  if (grounds.has("pump")) {
    return speaker.say("replies", "inferred.pump", { pump: assessment.site.pumpModel ?? "" });
  }
  if (!grounds.has("number")) return undefined;
  return speaker.say("replies", "inferred.number", { number: assessment.nameplate.modelNumbers?.[0] ?? "" });
}

function contradictionText({ assessment, speaker }: TalkTurn): readonly string[] {
  const [first] = assessment.contradictions;
  if (!first) return [];
  const rating = `${ratings[first.rating].title} (${showFact(first.rating, first.label)} / ${showFact(first.rating, first.pump)})`;
  return [speaker.say("replies", "contradiction", { pump: assessment.site.pumpModel ?? "", rating })];
}
