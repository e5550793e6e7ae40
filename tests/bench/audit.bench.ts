import { bench, describe } from "vitest";
import { auditNameplate } from "../../src/nameplate/audit.ts";
import { Random } from "../nameplate/audit/random.ts";
import { slipKinds, slipOf } from "../nameplate/audit/seeded-slips.ts";
import { drawTrueLabel } from "../nameplate/audit/true-labels.ts";

const random = new Random(3);
const truths = Array.from({ length: 200 }, () => drawTrueLabel(random).nameplate);
const slipped = truths.flatMap((truth) =>
  slipKinds.flatMap((kind) => slipOf(random, kind, truth)?.nameplate ?? []),
);

describe("audit", () => {
  bench("200 true labels", () => {
    for (const label of truths) auditNameplate(label);
  });

  bench(`${slipped.length} labels with a slip, proposals included`, () => {
    for (const label of slipped) auditNameplate(label);
  });
});
