import type { DeskCase } from "../desk/case.ts";
import type { OutcomeName } from "../desk/outcomes.ts";
import type { AskedFor } from "../engine/verdict-record.ts";
import type { OverallVerdict } from "../matching/types.ts";
import type { GivenVerdict } from "../store/verdicts.ts";

/** One request that reached an answer: the last verdict of a case, and how the desk ended it. */
export interface ReportedRequest {
  /** ISO instant of the last verdict. */
  readonly at: string;
  /** Null once the customer's data was erased: how it ended is not known then. */
  readonly caseId: number | null;
  readonly askedFor: AskedFor;
  readonly verdict: OverallVerdict;
  /** The motor the rules put first. */
  readonly sku: string | null;
  /** Customer's messages until the first verdict. */
  readonly messages: number;
  readonly outcome: OutcomeName | "open" | "erased";
  /** The motor of the outcome, where it has one. */
  readonly outcomeSku: string | null;
  readonly agreement: Agreement;
}

/**
 * What the desk's outcome says of the rules' verdict. `overruled`: it sold another motor, sold where nothing
 * fitted, found nothing where something fitted, or the motor came back as wrong. `settled`: the rules had left it
 * open. `silent`: the outcome says nothing of it, or there is none yet.
 */
export type Agreement = "agreed" | "overruled" | "settled" | "silent";

/** One entry a request: later verdicts of a case replace earlier ones, the messages are counted to the first. */
export function requestsOf(
  verdicts: readonly GivenVerdict[],
  cases: readonly DeskCase[],
): readonly ReportedRequest[] {
  const caseOf = new Map(cases.map((one) => [one.id, one]));
  const requests = new Map<string, ReportedRequest>();
  for (const [place, { at, caseId, verdict, sku, request, messages }] of verdicts.entries()) {
    const key = caseId === null ? `erased ${place}` : `case ${caseId}`;
    const given = { verdict: verdict as OverallVerdict, sku };
    const ended = endOf(caseId, caseOf);
    requests.set(key, {
      at,
      caseId,
      askedFor: JSON.parse(request) as AskedFor,
      ...given,
      messages: requests.get(key)?.messages ?? messages,
      ...ended,
      agreement: agreementOf(given, ended),
    });
  }
  return [...requests.values()];
}

type Given = Pick<ReportedRequest, "verdict" | "sku">;
type Ended = Pick<ReportedRequest, "outcome" | "outcomeSku">;

function endOf(caseId: number | null, caseOf: ReadonlyMap<number, DeskCase>): Ended {
  if (caseId === null) return { outcome: "erased", outcomeSku: null };
  const standing = caseOf.get(caseId)?.standing;
  return standing?.state === "closed"
    ? { outcome: standing.outcome, outcomeSku: standing.sku }
    : { outcome: "open", outcomeSku: null };
}

function agreementOf({ verdict, sku }: Given, { outcome, outcomeSku }: Ended): Agreement {
  const fits = verdict === "drop-in" || verdict === "fits-with-work";
  switch (outcome) {
    case "sold":
      if (verdict === "undecided") return "settled";
      return fits && (outcomeSku === null || outcomeSku === sku) ? "agreed" : "overruled";
    case "not-stocked":
      if (verdict === "undecided") return "settled";
      return fits ? "overruled" : "agreed";
    case "wrong-part":
      return fits && (outcomeSku === null || outcomeSku === sku) ? "overruled" : "silent";
    default:
      return "silent";
  }
}
