import type { Assessment } from "../conversation/assess.ts";
import type { Thread } from "../conversation/thread.ts";
import { faceOf, phaseOf, speedKindOf, totalHpOf } from "../matching/deduced.ts";
import type { OverallVerdict } from "../matching/types.ts";
import type { VerdictRow } from "../store/verdicts.ts";

/** What a customer asked for, as far as the stock is concerned; what was not told is absent. */
export interface AskedFor {
  readonly face?: "square" | "round" | "through-bolt" | undefined;
  readonly totalHp?: number | undefined;
  /** Of the label. */
  readonly volts?: readonly number[] | undefined;
  /** Wired at the place. */
  readonly supplyVolts?: number | undefined;
  readonly phase?: 1 | 3 | undefined;
  readonly speedKind?: "single" | "two" | "variable" | undefined;
}

/** What is kept of an answer that was just given, for the report; undefined when this turn gave none. */
export function verdictGiven(
  before: Thread,
  after: Thread,
  { match, nameplate, site }: Assessment,
  caseId: number | null,
): VerdictRow | undefined {
  const { answered } = after;
  if (answered === null || answered === before.answered) return undefined;
  // "desk:..." hands the thread over because the words alone do not settle it.
  const verdict: OverallVerdict = answered.startsWith("desk:") || !match ? "undecided" : match.verdict;
  const fits = verdict === "drop-in" || verdict === "fits-with-work";
  const askedFor: AskedFor = {
    face: faceOf(nameplate)?.value,
    totalHp: totalHpOf(nameplate)?.value,
    volts: nameplate.volts,
    supplyVolts: site.supplyVolts,
    phase: phaseOf(nameplate),
    speedKind: speedKindOf(nameplate),
  };
  return {
    caseId,
    verdict,
    sku: fits ? (match?.motors[0]?.motor.sku ?? null) : null,
    request: JSON.stringify(askedFor),
  };
}
