import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { ruleNames } from "../../src/matching/types.ts";
import { jsonLines, nameplate } from "./run.ts";

const folder = mkdtempSync(join(tmpdir(), "match-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const header =
  "sku,maker,description,hp,service_factor,total_hp,volts,amps,service_factor_amps,rpm,hz,phase,frame,flange,shaft,speed_kind,duty,ambient_c,efficiency_pct,power_factor,made_on,price_usd,in_stock,replaces";
const file = join(folder, "stock.csv");
writeFileSync(
  file,
  [
    header,
    "TUFFET-1,Fernwhistle,square,1.5,1.1,1.65,115/208-230,19.2/10.4/9.6,,3450,60,1,56Y,square,threaded,single,continuous,50,,,2024-05-01,199,3,OLD-7",
    "TUFFET-2,Fernwhistle,round,1.5,1.1,1.65,115/208-230,19.2/10.4/9.6,,3450,60,1,56J,round,threaded,single,continuous,50,,,2024-05-01,189,3,",
  ].join("\n"),
);

const label = {
  hp: 1.5,
  serviceFactor: 1.1,
  volts: [115, 230],
  amps: [19.2, 9.6],
  rpm: [3450],
  hz: [60],
  frame: "56Y",
  ambientC: 50,
};
const ran = nameplate(
  ["match", "--catalogue", file, "--on", "2026-11-25"],
  jsonLines(
    { id: 1, nameplate: label, site: { supplyVolts: 230 } },
    { id: 2, nameplate: { hp: 1.5 }, site: {} },
    { id: 3, nameplate: { frame: 56 }, site: {} },
    { id: 4, nameplate: { colour: "blue" }, site: {} },
  ),
);

describe("match", () => {
  test("gives the verdict, the fitting motors with a finding of every rule, and nothing to ask", () => {
    const [first] = ran.lines as unknown as [{ verdict: string; ask: string[]; motors: MotorLine[] }];
    expect(first.verdict).toBe("drop-in");
    expect(first.ask).toEqual([]);
    expect(first.motors.map(({ sku, verdict }) => [sku, verdict])).toEqual([["TUFFET-1", "drop-in"]]);
    expect(first.motors[0]?.findings.map(({ rule }) => rule).sort()).toEqual([...ruleNames].sort());
    for (const { reason } of first.motors[0]?.findings ?? []) expect(reason).toMatch(/^[A-Z].*\.$/);
  });

  test("asks for what would decide", () => {
    expect(ran.lines[1]).toMatchObject({ verdict: "undecided", ask: expect.arrayContaining(["frame"]) });
  });

  test("names the field of a bad line and goes on", () => {
    expect(ran.lines[2]).toEqual({ id: 3, error: expect.stringMatching(/nameplate\.frame/) });
    expect(ran.lines[3]).toEqual({ id: 4, error: expect.stringMatching(/colour/) });
    expect(ran.status).toBe(1);
  });

  test("--all adds the motors ruled out", () => {
    const all = nameplate(
      ["match", "--catalogue", file, "--all"],
      jsonLines({ id: 1, nameplate: label, site: { supplyVolts: 230 } }),
    );
    const [first] = all.lines as unknown as [{ motors: MotorLine[] }];
    expect(first.motors.map(({ sku, verdict }) => [sku, verdict])).toEqual([
      ["TUFFET-1", "drop-in"],
      ["TUFFET-2", "no-fit"],
    ]);
  });

  test("a bad catalogue row is told by line and column, and nothing is judged", () => {
    const bad = join(folder, "bad.csv");
    writeFileSync(bad, `${header}\nA,,,one,,,230,,,3450,60,1,56Y,,,,,,,,,,,\n`);
    const refused = nameplate(["match", "--catalogue", bad], jsonLines({ id: 1, nameplate: label }));
    expect(refused.stderr).toMatch(/bad\.csv/);
    expect(refused.stderr).toMatch(/Line 2, column hp/);
    expect(refused.stdout).toBe("");
    expect(refused.status).toBe(1);
  });

  test("a date that is none is refused in words", () => {
    const refused = nameplate(["match", "--catalogue", file, "--on", "tomorrow"], "");
    expect(refused.stderr).toMatch(/--on takes a date/);
    expect(refused.stderr).not.toMatch(/ at /);
    expect(refused.status).toBe(1);
  });
});

interface MotorLine {
  readonly sku: string;
  readonly verdict: string;
  readonly findings: readonly { rule: string; outcome: string; reason: string }[];
}
