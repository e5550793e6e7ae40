import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { pumpByModel, sparesFor } from "../../src/catalogue/catalogue.ts";
import { parseMotors, showRowError } from "../../src/catalogue/motors-csv.ts";
import { plainNumber } from "../../src/catalogue/numbers.ts";
import { parsePumps } from "../../src/catalogue/pumps-csv.ts";
import { parseSpares } from "../../src/catalogue/spares-csv.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import { deskHoursSchema } from "../../src/desk/hours.ts";
import { labelTotalHp } from "../../src/engineering/power.ts";
import { matchStock } from "../../src/matching/match.ts";
import type { StockMotor } from "../../src/matching/types.ts";
import { auditNameplate } from "../../src/nameplate/audit.ts";
import type { Nameplate, Site } from "../../src/nameplate/vocabulary.ts";

const demoFile = (name: string) => readFileSync(new URL(`../../data/${name}`, import.meta.url), "utf8");

const readMotors = parseMotors(demoFile("motors.csv"));
const readPumps = parsePumps(demoFile("pumps.csv"));
const readSpares = parseSpares(demoFile("spares.csv"));
const { motors } = readMotors;
const { pumps } = readPumps;
const { spares } = readSpares;
const today = "2026-11-25";
const catalogue: Catalogue = { motors, pumps, spares, importedOn: today };

const totalHp = ({ label }: StockMotor) => labelTotalHp(label) ?? 0;
const voltsOf = ({ label }: StockMotor) => label.volts?.join("/") ?? "";
const count = (holds: (motor: StockMotor) => boolean) => motors.filter(holds).length;

describe("the demo stock", () => {
  it("is read without a fault", () => {
    expect([...readMotors.errors, ...readPumps.errors, ...readSpares.errors].map(showRowError)).toEqual([]);
    expect(motors.length).toBeGreaterThanOrEqual(130);
    expect(pumps.length).toBeGreaterThanOrEqual(30);
    expect(spares.length).toBeGreaterThanOrEqual(60);
  });

  it("has only labels that the audit believes", () => {
    const doubted = motors
      .map(({ sku, label }) => ({ sku, doubts: auditNameplate(label) }))
      .filter(({ doubts }) => doubts.length > 0);
    expect(doubted).toEqual([]);
  });

  // Handbook identity: watts out / (V x A x sqrt(phases)) = efficiency x power factor; 1 hp = 746 W (U.S. motor practice).
  it.each(
    motors
      .filter(({ efficiencyPct, powerFactor }) => efficiencyPct !== undefined && powerFactor !== undefined)
      .map((motor) => [motor.sku, motor] as const),
  )("%s: volts, amps and horsepower agree with efficiency and power factor", (_, motor) => {
    const { label, efficiencyPct = 0, powerFactor = 0 } = motor;
    const shaftHp = label.amps ? (label.hp ?? 0) : totalHp(motor);
    const amps = label.amps ?? label.serviceFactorAmps ?? [];
    expect(amps).toHaveLength(label.volts?.length ?? 0);
    for (const [index, volts] of (label.volts ?? []).entries()) {
      const exact =
        (shaftHp * 746) /
        (volts * (label.phase === 3 ? Math.sqrt(3) : 1) * (efficiencyPct / 100) * powerFactor);
      // Labels round to a tenth of an ampere; the low side of a dual-voltage label is the rounded one doubled.
      expect(Math.abs((amps[index] ?? 0) - exact)).toBeLessThanOrEqual(volts === 115 ? 0.12 : 0.06);
    }
  });

  it("draws more at total horsepower than at its rated one", () => {
    const both = motors.filter(({ label }) => label.amps && label.serviceFactorAmps);
    expect(both.length).toBeGreaterThan(50);
    for (const { label } of both) {
      for (const [index, amps] of (label.amps ?? []).entries())
        expect(label.serviceFactorAmps?.[index]).toBeGreaterThan(amps);
    }
  });

  // Common practice, no source: Y threaded; J round and threaded; C round and keyed.
  it("has the face and shaft its frame letter means", () => {
    const meant: Record<string, string[]> = {
      Y: ["square threaded", "through-bolt threaded"],
      J: ["round threaded"],
      C: ["round keyed"],
    };
    for (const { sku, label } of motors) {
      if (!label.flange) continue;
      expect(meant[label.frame?.at(-1) ?? ""], sku).toContain(`${label.flange} ${label.shaft}`);
    }
  });

  it.each<[string, number, (motor: StockMotor) => boolean]>([
    ["square face", 50, ({ label }) => label.flange === "square"],
    ["round face, threaded shaft", 30, ({ label }) => label.flange === "round" && label.shaft === "threaded"],
    ["round face, keyed shaft", 15, ({ label }) => label.flange === "round" && label.shaft === "keyed"],
    ["through-bolt mount", 4, ({ label }) => label.flange === "through-bolt"],
    ["face left to the frame letter", 2, ({ label }) => label.flange === undefined],
    ["48 body", 15, ({ label }) => label.frame?.startsWith("48") === true],
    ["half a horsepower", 5, ({ label }) => label.hp === 0.5],
    ["three horsepower or more", 8, ({ label }) => (label.hp ?? 0) >= 3],
    ["full-rated, service factor above 1.27", 40, ({ label }) => (label.serviceFactor ?? 0) > 1.27],
    ["up-rated", 40, ({ label }) => label.speedKind === "single" && (label.serviceFactor ?? 2) <= 1.27],
    ["two-speed", 10, ({ label }) => label.speedKind === "two"],
    ["variable-speed", 10, ({ label }) => label.speedKind === "variable"],
    ["115 V only", 5, (motor) => voltsOf(motor) === "115"],
    ["230 V only", 15, (motor) => voltsOf(motor) === "230"],
    ["115/230 V", 30, (motor) => voltsOf(motor) === "115/230"],
    ["208-230 V", 20, (motor) => voltsOf(motor) === "208/230"],
    ["115/208-230 V", 10, (motor) => voltsOf(motor) === "115/208/230"],
    ["three-phase", 10, ({ label }) => label.phase === 3],
    ["energy-efficient", 30, ({ description }) => description.includes("energy-efficient")],
    ["50 Hz at 2850 rpm", 5, ({ label }) => label.hz?.[0] === 50 && label.rpm?.[0] === 2850],
    ["service-factor amps only", 10, ({ label }) => !label.amps && label.serviceFactorAmps !== undefined],
    ["out of stock", 10, ({ inStock }) => inStock === 0],
    ["an old number on record", 80, ({ replaces }) => replaces.length > 0],
    ["no date of manufacture", 5, ({ madeOn }) => madeOn === undefined],
  ])("has motors with: %s (at least %i)", (_, least, holds) =>
    expect(count(holds)).toBeGreaterThanOrEqual(least),
  );

  // 10 CFR 431.485: from 1.15 total hp, made from 2025-09-29 on: variable-speed control.
  it("has motors that may be sold, may not, and leave it open", () => {
    const bound = motors.filter((motor) => totalHp(motor) >= 1.15 && motor.label.phase === 1);
    const fixed = bound.filter(({ label }) => label.speedKind !== "variable");
    expect(fixed.filter(({ madeOn }) => madeOn && madeOn < "2025-09-29").length).toBeGreaterThan(50);
    expect(fixed.filter(({ madeOn }) => madeOn && madeOn >= "2025-09-29").length).toBeGreaterThanOrEqual(5);
    expect(fixed.filter(({ madeOn }) => !madeOn).length).toBeGreaterThanOrEqual(5);
    const variable = bound.filter(({ label }) => label.speedKind === "variable");
    expect(variable.filter(({ madeOn }) => madeOn && madeOn >= "2025-09-29").length).toBeGreaterThanOrEqual(
      3,
    );
  });

  it("holds nothing that is not made yet and no number twice", () => {
    for (const { madeOn } of motors) expect(madeOn === undefined || madeOn < today).toBe(true);
    const numbers = [...motors, ...spares].map(({ sku }) => plainNumber(sku));
    expect(new Set(numbers).size).toBe(numbers.length);
  });
});

describe("the usual dead motor against the demo stock", () => {
  const plate: Nameplate = {
    hp: 1.5,
    serviceFactor: 1.1,
    volts: [115, 230],
    amps: [19.2, 9.6],
    rpm: [3450],
    frame: "56Y",
  };
  const answer = (site: Site, label: Nameplate = plate) =>
    matchStock({ nameplate: label, site, on: today }, motors, { all: true });
  const with165 = ({ motor }: { motor: StockMotor }) => totalHp(motor) === 1.65;

  it.each<Site>([{ supplyVolts: 230 }, { supplyVolts: 115 }, {}])("finds drop-ins on %j", (site) => {
    const { verdict, motors: found } = answer(site);
    expect(verdict).toBe("drop-in");
    const dropIns = found
      .filter((judged) => judged.verdict === "drop-in" && judged.motor.inStock > 0)
      .filter(with165);
    const kinds = dropIns.map(({ motor }) => motor);
    expect(kinds.length).toBeGreaterThanOrEqual(3);
    expect(
      kinds.some(({ label }) => label.hp === 1.5),
      "the same hp and service factor",
    ).toBe(true);
    expect(
      kinds.some(({ label }) => label.hp === 1),
      "1.0 hp full-rated",
    ).toBe(true);
    // Common practice, no source: an energy-efficient motor draws a quarter to a third less.
    expect(
      kinds.some(({ label }) => (label.amps?.at(-1) ?? 99) <= 9.6 * 0.75),
      "a quarter less current",
    ).toBe(true);
  });

  it("has near misses for every reason", () => {
    const answers = [115, 230].map((supplyVolts) => answer({ supplyVolts }));
    const ruledOut = answers.flatMap((result) => result.ruledOut);
    const found = answers.flatMap((result) => result.motors);
    const blockers = new Set(
      ruledOut.flatMap(({ findings }) => {
        const broken = findings.filter(({ outcome }) => outcome === "rules-out");
        return broken.length === 1 && broken[0] ? [broken[0].rule] : [];
      }),
    );
    expect([...blockers]).toEqual(expect.arrayContaining(["mount", "total-horsepower", "supply", "sale"]));
    const works = new Set(
      found.flatMap(({ findings }) =>
        findings.filter(({ outcome }) => outcome === "needs-work").map(({ rule }) => rule),
      ),
    );
    expect([...works]).toEqual(
      expect.arrayContaining(["mount", "total-horsepower", "speed", "sale", "current"]),
    );
  });
});

describe("the demo pumps and spares", () => {
  it.each(pumps.map((pump) => [pump.model, pump] as const))("%s: a stocked motor fits it", (_, pump) => {
    const letter = pump.shaft === "keyed" ? "C" : pump.flange === "round" ? "J" : "Y";
    const nameplate: Nameplate = {
      flange: pump.flange,
      shaft: pump.shaft,
      frame: `${pump.frameBody}${letter}`,
      totalHp: pump.totalHp,
      speedKind: "single",
      rpm: [3450],
    };
    const usable = [115, 208, 230].flatMap((supplyVolts) =>
      ([1, 3] as const).flatMap((phase) =>
        matchStock(
          { nameplate: { ...nameplate, phase }, site: { supplyVolts }, on: today },
          motors,
        ).motors.filter(({ verdict, motor }) => verdict !== "undecided" && motor.inStock > 0),
      ),
    );
    expect(usable.length).toBeGreaterThan(0);
  });

  it("names only spares that are listed, of the right kind, and that fit", () => {
    for (const pump of pumps) {
      const named = [
        ["shaft-seal", pump.sealSku],
        ["gasket", pump.gasketSku],
        ["impeller", pump.impellerSku],
        ["diffuser", pump.diffuserSku],
      ] as const;
      for (const [kind, sku] of named) {
        if (sku === undefined) continue;
        const spare = spares.find((candidate) => candidate.sku === sku);
        expect(spare, `${pump.model} ${kind}`).toMatchObject({ kind });
        expect(spare?.fits).toContain(pump.model);
        if (kind === "impeller" || kind === "diffuser") expect(spare?.totalHp).toBe(pump.totalHp);
      }
    }
  });

  it("fits spares only to pumps that exist, and lists every kind", () => {
    const models = pumps.map(({ model }) => model);
    for (const { fits } of spares) for (const model of fits) expect(models).toContain(model);
    expect([...new Set(spares.map(({ kind }) => kind))].sort()).toEqual([
      "base",
      "capacitor",
      "diffuser",
      "gasket",
      "impeller",
      "shaft-seal",
    ]);
  });

  it("has a seal and a gasket for every pump, found by its model or any alias", () => {
    for (const pump of pumps) {
      for (const name of [pump.model, ...pump.aliases]) expect(pumpByModel(catalogue, name)).toBe(pump);
      const lines = sparesFor(catalogue, pump, [{ key: "seal-and-gasket" }]);
      expect(lines.map(({ spare }) => spare?.sku)).toEqual([pump.sealSku, pump.gasketSku]);
      expect(lines.every(({ spare }) => spare !== undefined)).toBe(true);
    }
  });
});

describe("the demo shop and its desk", () => {
  it("keeps valid desk hours", () => {
    const hours = deskHoursSchema.parse(JSON.parse(demoFile("desk-hours.json")));
    expect(hours.timeZone).toBe("America/Chicago");
  });

  // 5 U.S.C. 6103(a): fourth Thursday in November, first Monday in September, last Monday in May.
  it.each([
    ["Thanksgiving Day", "11", 4, 22, 28],
    ["Labor Day", "09", 1, 1, 7],
    ["Memorial Day", "05", 1, 25, 31],
  ])("dates %s by the law in both years", (name, month, weekday, from, to) => {
    const { holidays } = deskHoursSchema.parse(JSON.parse(demoFile("desk-hours.json")));
    const dates = holidays.filter((holiday) => holiday.name === name).map(({ date }) => date);
    expect(dates.map((date) => date.slice(0, 4))).toEqual(["2026", "2027"]);
    for (const date of dates) {
      expect(date.slice(5, 7)).toBe(month);
      expect(new Date(`${date}T00:00:00Z`).getUTCDay()).toBe(weekday);
      expect(Number(date.slice(8))).toBeGreaterThanOrEqual(from);
      expect(Number(date.slice(8))).toBeLessThanOrEqual(to);
    }
  });

  it("states the price of electricity with its year and source", () => {
    // U.S. EIA, Short-Term Energy Outlook of December 2025: 17.29 cents per kWh in 2025, an estimate.
    expect(JSON.parse(demoFile("shop.json"))).toMatchObject({
      mainsHz: 60,
      emergencyNumber: "911",
      currency: "USD",
      pricePerKwh: 0.1729,
      priceYear: 2025,
      priceSource: expect.stringContaining("EIA"),
    });
  });
});
