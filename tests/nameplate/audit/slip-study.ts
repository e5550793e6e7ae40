import { matchStock } from "../../../src/matching/match.ts";
import type { StockMotor } from "../../../src/matching/types.ts";
import { auditNameplate } from "../../../src/nameplate/audit.ts";
import type { Nameplate, Site } from "../../../src/nameplate/vocabulary.ts";
import { Random } from "./random.ts";
import { type SlipKind, slipKinds, slipOf } from "./seeded-slips.ts";
import { drawTrueLabel } from "./true-labels.ts";

export interface SlipTally {
  slips: number;
  /** A doubt names the rating that is wrong. */
  caught: number;
  /** Among these, a doubt names it first: it is the one asked about. */
  caughtFirst: number;
  /** The value proposed is the true one. */
  proposedRight: number;
  /** Slips that, unnoticed, would change the overall verdict or the motor offered first. */
  changing: number;
  changingCaught: number;
  /** Changing, not caught, but the verdict is "undecided": nothing is promised yet. */
  changingUndecided: number;
  /** Changing for the worse: a drop-in promised that the true label does not give, not caught. */
  falseDropIns: number;
}

export interface SlipStudy {
  readonly labels: number;
  readonly falseAlarms: readonly Nameplate[];
  readonly byKind: Readonly<Record<SlipKind, SlipTally>>;
  readonly total: SlipTally;
  /** Changing slips that nobody noticed. */
  readonly missed: readonly {
    truth: Nameplate;
    slipped: Nameplate;
    rating: string;
    from: string;
    to: string;
  }[];
}

const empty = (): SlipTally => ({
  slips: 0,
  caught: 0,
  caughtFirst: 0,
  proposedRight: 0,
  changing: 0,
  changingCaught: 0,
  changingUndecided: 0,
  falseDropIns: 0,
});

function outcome(nameplate: Nameplate, site: Site, stock: readonly StockMotor[]) {
  const result = matchStock({ nameplate, site, on: "2026-12-01" }, stock);
  const first = result.motors[0];
  return { verdict: result.verdict, offer: `${result.verdict}:${first?.verdict}:${first?.motor.sku}`, first };
}

/** The very value, or a current within 3 %: half of the rounded amps at 115 V is not always what is printed. */
function isTrueValue(proposed: unknown, truth: unknown): boolean {
  if (JSON.stringify(proposed) === JSON.stringify(truth)) return true;
  if (!Array.isArray(proposed) || !Array.isArray(truth) || truth.length !== 1) return false;
  return Math.abs(proposed[0] / truth[0] - 1) <= 0.03;
}

/** Half of the customers know their supply; it suits the true label. */
function drawSite(random: Random, { volts }: Nameplate): Site {
  if (!volts || random.chance(0.5)) return {};
  const rated = random.pick(volts);
  return { supplyVolts: rated <= 120 ? 120 : rated === 208 ? 208 : rated > 250 ? 480 : 240 };
}

/** Seeds one slip of every kind into `labels` true labels and looks what the audit and the verdict make of it. */
export function studySlips(labels: number, stock: readonly StockMotor[], seed = 20_261): SlipStudy {
  const random = new Random(seed);
  const falseAlarms: Nameplate[] = [];
  const missed: SlipStudy["missed"][number][] = [];
  const byKind = Object.fromEntries(slipKinds.map((kind) => [kind, empty()])) as Record<SlipKind, SlipTally>;
  for (let n = 0; n < labels; n++) {
    const truth = drawTrueLabel(random, n % 3 === 0).nameplate;
    const site = drawSite(random, truth);
    if (auditNameplate(truth, site).length > 0) falseAlarms.push(truth);
    const outcomeOfTruth = outcome(truth, site, stock);
    for (const kind of slipKinds) {
      const slip = slipOf(random, kind, truth);
      if (!slip) continue;
      const tally = byKind[kind];
      tally.slips++;
      const doubts = auditNameplate(slip.nameplate, site);
      const doubt = doubts.find(({ ratings }) => ratings.includes(slip.rating));
      if (doubt) tally.caught++;
      if (doubts.some(({ ratings }) => ratings[0] === slip.rating)) tally.caughtFirst++;
      if (doubt?.proposal && isTrueValue(doubt.proposal.value, slip.truth[slip.rating]))
        tally.proposedRight++;
      const wrong = outcome(slip.nameplate, site, stock);
      const right = slip.truth === truth ? outcomeOfTruth : outcome(slip.truth, site, stock);
      if (wrong.offer === right.offer) continue;
      tally.changing++;
      if (doubt) tally.changingCaught++;
      else if (wrong.verdict === "undecided") tally.changingUndecided++;
      else {
        if (wrong.verdict === "drop-in") tally.falseDropIns++;
        missed.push({
          truth: slip.truth,
          slipped: slip.nameplate,
          rating: slip.rating,
          from: right.offer,
          to: wrong.offer,
        });
      }
    }
  }
  const total = empty();
  for (const tally of Object.values(byKind)) {
    for (const key of Object.keys(total) as (keyof SlipTally)[]) total[key] += tally[key];
  }
  return { labels, falseAlarms, byKind, total, missed };
}

/** Share of the verdict-changing slips that are caught or leave the verdict undecided. */
export function heldShare({ changing, changingCaught, changingUndecided }: SlipTally): number {
  return (changingCaught + changingUndecided) / changing;
}
