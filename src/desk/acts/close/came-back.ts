import { motorBySku } from "../../../catalogue/catalogue.ts";
import { plainNumber } from "../../../catalogue/numbers.ts";
import { assessThread } from "../../../conversation/assess.ts";
import { judgeMotor } from "../../../matching/match.ts";
import type { KeptFinding } from "../../case.ts";
import type { Decision, DoubtedFinding, NumberChange } from "../act.ts";
import { refuse } from "../answers.ts";
import type { CloseTurn, Closing } from "../close.ts";

/**
 * The part was wrong: its numbers are no longer on record, whoever put them there, and the findings that had
 * spoken for it are kept for checking.
 */
export function cameBack(turn: CloseTurn): Closing | Extract<Decision, { kind: "refused" }> {
  const { knowledge, thread } = turn;
  const { wording } = knowledge;
  const named = turn.act.sku ?? turn.case.sale?.sku ?? turn.case.offered;
  if (named === null) return refuse(turn, "whichBack");
  const motor = motorBySku(knowledge.catalogue, named);
  const sale = turn.case.sale;
  const ofSale = sale !== null && plainNumber(sale.sku) === plainNumber(named);
  if (!motor && !ofSale) return refuse(turn, "noMotor", { sku: named });
  const sku = motor?.sku ?? named;

  const typed = thread.facts.modelNumbers?.value ?? [];
  const plainTyped = new Set(typed.map(plainNumber));
  const withdrawn = turn.numbers.filter(
    (old) => old.sku === sku && (old.caseId === turn.case.id || plainTyped.has(plainNumber(old.number))),
  );
  const recorded = new Set(
    turn.numbers.filter((old) => old.sku === sku).map(({ number }) => plainNumber(number)),
  );
  const inStockList = (motor?.replaces ?? []).filter(
    (number) => plainTyped.has(plainNumber(number)) && !recorded.has(plainNumber(number)),
  );
  const findings = ofSale ? sale.findings : motor ? judgedNow(turn, motor) : [];
  const doubted = findings
    .filter(({ outcome }) => outcome === "holds" || outcome === "needs-work")
    .map((finding): DoubtedFinding => ({ sku, finding }));

  const say = (key: string, values: Record<string, string>) =>
    wording.say("desk", `answer.closed.${key}`, { sku, ...values });
  const list = (numbers: readonly { readonly number: string }[]) =>
    [...new Set(numbers.map(({ number }) => number))].join(", ");
  return {
    sku,
    sale,
    numbers: withdrawn.map(({ id }): NumberChange => ({ kind: "withdraw", id })),
    doubted,
    said: [
      ...(withdrawn.length > 0 ? [say("withdrawn", { numbers: list(withdrawn) })] : []),
      ...(inStockList.length > 0 ? [say("inStockList", { numbers: inStockList.join(", ") })] : []),
      ...(doubted.length > 0
        ? [say("doubted", { rules: doubted.map(({ finding }) => finding.rule).join(", ") })]
        : []),
    ],
  };
}

/** For a part sold before this case: what the rules say of it today. */
function judgedNow(
  { thread, knowledge }: CloseTurn,
  motor: Parameters<typeof judgeMotor>[1],
): readonly KeptFinding[] {
  const { nameplate, site } = assessThread(thread, knowledge);
  return judgeMotor({ nameplate, site, on: knowledge.on }, motor).findings;
}
