import { motorBySku } from "../../../catalogue/catalogue.ts";
import { plainNumber } from "../../../catalogue/numbers.ts";
import { assessThread } from "../../../conversation/assess.ts";
import { createSpeaker } from "../../../conversation/speaker.ts";
import { decisiveFinding } from "../../../matching/explain.ts";
import { judgeMotor } from "../../../matching/match.ts";
import type { KeptFinding } from "../../case.ts";
import type { Decision } from "../act.ts";
import { refuse } from "../answers.ts";
import type { CloseTurn, Closing } from "../close.ts";

/** A confirmed sale puts the label's numbers on record for the motor that was sold. */
export function sold(turn: CloseTurn): Closing | Extract<Decision, { kind: "refused" }> {
  const { knowledge, thread } = turn;
  const named = turn.act.sku ?? turn.case.offered;
  if (named === null) return refuse(turn, "whichSold");
  const motor = motorBySku(knowledge.catalogue, named);
  if (!motor) return refuse(turn, "noMotor", { sku: named });

  const { nameplate, site } = assessThread(thread, knowledge);
  const judged = judgeMotor({ nameplate, site, on: knowledge.on }, motor);
  const kept = judged.findings.map(
    ({ rule, outcome, reason, values }): KeptFinding => ({ rule, outcome, reason, values }),
  );
  const stated = thread.facts.modelNumbers;
  const typed = stated && stated.certainty !== "inferred" ? stated.value : [];
  const known = (number: string) =>
    turn.numbers.some((old) => old.sku === motor.sku && plainNumber(old.number) === plainNumber(number));
  const fresh = typed.filter((number) => plainNumber(number) !== "" && !known(number));
  const already = typed.filter(known);

  // Sold again as another motor: what this case had put on record before was a mistake.
  const mistaken = turn.numbers.filter((old) => old.caseId === turn.case.id && old.sku !== motor.sku);

  const say = (key: string, numbers: readonly string[]) =>
    knowledge.wording.say("desk", `answer.closed.${key}`, { numbers: numbers.join(", "), sku: motor.sku });
  const why = judged.verdict === "no-fit" ? decisiveFinding(judged) : undefined;
  const speaker = createSpeaker(knowledge.wording, []);
  return {
    sku: motor.sku,
    sale: { sku: motor.sku, findings: kept },
    numbers: [
      ...mistaken.map(({ id }) => ({ kind: "withdraw", id }) as const),
      ...fresh.map((number) => ({ kind: "add", number, sku: motor.sku }) as const),
    ],
    doubted: [],
    said: [
      ...mistaken.map((old) =>
        knowledge.wording.say("desk", "answer.closed.withdrawn", { numbers: old.number, sku: old.sku }),
      ),
      ...(fresh.length > 0 ? [say("recorded", fresh)] : []),
      ...(already.length > 0 ? [say("known", already)] : []),
      ...(typed.length === 0 ? [knowledge.wording.say("desk", "answer.closed.noNumber")] : []),
      ...(why
        ? [
            speaker.say("desk", "answer.closed.ruledOut", {
              sku: motor.sku,
              reason: speaker.say("reasons", why.reason, why.values),
            }),
          ]
        : []),
    ],
  };
}
