import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { auditNameplate } from "../../../src/nameplate/audit.ts";
import type { Doubt } from "../../../src/nameplate/reading.ts";
import {
  isNameplateRating,
  type Nameplate,
  nameplateSchema,
  type Site,
  siteSchema,
} from "../../../src/nameplate/vocabulary.ts";
import { Random } from "./random.ts";
import { slipKinds, slipOf } from "./seeded-slips.ts";
import { drawTrueLabel } from "./true-labels.ts";

const number = fc.oneof(
  fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
  fc.integer({ min: 1, max: 5000 }),
  fc.constantFrom(0.75, 1, 1.5, 1.65, 9.6, 19.2, 115, 230, 3450),
);
const list = fc.array(number, { minLength: 1, maxLength: 4 });
const letter = fc.constantFrom(..."ABCDEFGHIJKLMNOPQRSTUVWXYZ");
const nameplate = fc.record(
  {
    hp: number,
    serviceFactor: number,
    totalHp: number,
    kw: number,
    volts: list,
    amps: list,
    serviceFactorAmps: list,
    rpm: list,
    hz: list,
    phase: fc.constantFrom(1 as const, 3 as const),
    frame: fc.stringMatching(/^[0-9]{2,3}[A-Z]{0,3}$/),
    speedKind: fc.constantFrom("single" as const, "two" as const, "variable" as const),
    ambientC: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
    duty: fc.oneof(fc.constant("continuous" as const), number),
    insulationClass: letter,
    kvaCode: letter,
    capacitorUf: number,
  },
  { requiredKeys: [] },
);
const site = fc.record(
  {
    supplyVolts: number,
    breakerAmps: number,
    breakerPoles: fc.constantFrom(1 as const, 2 as const, 3 as const),
    pricePerKwh: number,
    hoursPerDay: number,
  },
  { requiredKeys: [] },
);

function applied(label: Nameplate, place: Site, { proposal }: Doubt): { label: Nameplate; place: Site } {
  const changed = { label: { ...label }, place: { ...place } };
  for (const change of [proposal, proposal?.also]) {
    if (!change) continue;
    const target = isNameplateRating(change.rating) ? changed.label : changed.place;
    Object.assign(target, { [change.rating]: change.value });
  }
  return changed;
}

describe("the audit, whatever it is given", () => {
  test("answers, leaves its input alone, and proposes only values of the vocabulary", () => {
    fc.assert(
      fc.property(nameplate, site, (label, place) => {
        const before = JSON.stringify([label, place]);
        const doubts = auditNameplate(label, place);
        expect(JSON.stringify([label, place])).toBe(before);
        for (const doubt of doubts) {
          const changed = applied(label, place, doubt);
          expect(nameplateSchema.safeParse(changed.label).success).toBe(true);
          expect(siteSchema.safeParse(changed.place).success).toBe(true);
        }
      }),
      { seed: 48, numRuns: 300 },
    );
  });

  test("in a label with one slip, a proposal clears its doubt and brings no new one", () => {
    const random = new Random(56);
    let proposals = 0;
    for (let n = 0; n < 200; n++) {
      const truth = drawTrueLabel(random).nameplate;
      if (auditNameplate(truth).length > 0) continue;
      for (const kind of slipKinds) {
        const slipped = slipOf(random, kind, truth)?.nameplate ?? truth;
        const doubts = auditNameplate(slipped);
        for (const doubt of doubts.filter(({ proposal }) => proposal)) {
          proposals++;
          const after = auditNameplate(applied(slipped, {}, doubt).label);
          const rating = doubt.proposal!.rating;
          expect(after.filter(({ ratings }) => ratings.includes(rating))).toEqual([]);
          expect(after.length).toBeLessThan(doubts.length);
        }
      }
    }
    expect(proposals).toBeGreaterThan(300);
  });

  test("the same label gives the same doubts, a label without the doubted rating does not give them", () => {
    const label: Nameplate = { hp: 15, serviceFactor: 1.1, ambientC: 122 };
    expect(auditNameplate(label)).toEqual(auditNameplate({ ...label }));
    const { hp: _, ...rest } = label;
    expect(auditNameplate(rest).flatMap(({ ratings }) => ratings)).toEqual(["ambientC"]);
  });
});
