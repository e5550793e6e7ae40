import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { nameplate } from "./run.ts";

const folder = mkdtempSync(join(tmpdir(), "import-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const store = join(folder, "desk.sqlite");
const run = (...args: string[]) => nameplate([...args, "--store", store]);
const sheet = (name: string, ...rows: string[]): string => {
  const file = join(folder, name);
  writeFileSync(file, ["sku;hp;volts;phase;frame;price_usd;in_stock", ...rows, ""].join("\n"));
  return file;
};

describe("a shop brings its own stock", () => {
  const first = sheet("first.csv", "PIE-1;1-1/2;115/230;1;56Y;call us;3", "PIE-2;3/4;115;1;48Y;205,50;1");
  const mended = sheet("mended.csv", "PIE-1;1-1/2;115/230;1;56Y;1.249,00;3", "PIE-2;3/4;115;1;48Y;205,50;1");
  const next = sheet("next.csv", "PIE-1;15;115/230;1;56Y;1199;3", "PIE-3;1;230;1;56Y;199;two");

  test("a row that cannot be used is told by line and column, and nothing is written", () => {
    const { status, stderr } = run("import", first, "--write");
    expect(status).toBe(1);
    expect(stderr).toContain('Line 2, column price_usd: "call us" found, expected a price in dollars');
    expect(stderr).toContain("--skip-bad");
    expect(run("export").stderr).toMatch(/No motors are in this store yet/);
  });

  test("mended it is shown first, then written, then exported", () => {
    const dry = run("import", mended);
    expect(dry.stdout).toMatch(/^2 motors read\.\nAdded: 2\n {2}PIE-1\n {2}PIE-2\n/);
    expect(dry.stdout).toMatch(/Nothing written\. Add --write/);
    expect(dry.stderr).toBe("");
    expect(run("import", mended, "--write").stdout).toMatch(/Written\./);
    const { stdout } = run("export");
    expect(stdout.split("\n")).toHaveLength(4);
    expect(stdout).toContain("PIE-1,,,1.5,,,115/230,");
  });

  test("the next sheet: what changes, what is doubtful, and on with the bad row left out", () => {
    const { stdout, status } = run("import", next, "--write", "--skip-bad");
    expect(status).toBe(0);
    expect(stdout).toContain("2 motors read".replace("2", "1"));
    expect(stdout).toContain("PIE-1: hp 1.5 → 15, price_usd 1249 → 1199");
    expect(stdout).toMatch(/Gone: 1\n {2}PIE-2\n/);
    expect(stdout).toMatch(/Line 2, PIE-1: hp 15 .*perhaps hp 1\.5/);
    expect(stdout).toContain('Line 3, column in_stock: "two" found');
  });

  test("and taken back, once", () => {
    expect(run("import", "--undo").stdout).toMatch(
      /Taken back: next\.csv of .*, 1 rows\.\nThe motors are again mended\.csv of .*, 2 rows\./,
    );
    const again = run("import", "--undo");
    expect([again.status, again.stderr]).toEqual([1, expect.stringMatching(/no earlier import/)]);
  });
});

describe("mistakes on the command line are told in words", () => {
  beforeAll(() => writeFileSync(join(folder, "header-only.csv"), "sku,volts,phase,frame\n"));
  test.each([
    [["import"], /Which file\?/],
    [["import", "nowhere.csv"], /nowhere\.csv: this file cannot be read/],
    [["import", folder], /this file cannot be read/],
    [["import", join(folder, "header-only.csv"), "--write"], /no row can be used/],
    [["import", "x.csv", "--undo"], /--undo takes no file/],
    [["export", "--pumps", "--spares"], /not both/],
    [["report", "--days", "many"], /--days takes a whole number/],
  ])("%j", (args, message) => {
    const { status, stderr } = run(...args);
    expect(status).toBe(1);
    expect(stderr).toMatch(message);
    expect(stderr).not.toMatch(/\n\s+at /);
  });
});

test("report --csv and --svg on the same store", () => {
  const svg = join(folder, "report.svg");
  const { status, stdout } = run("report", "--csv", "--svg", svg);
  expect(status).toBe(0);
  expect(stdout).toMatch(/^at,case,face,total_hp,volts,/);
  expect(readFileSync(svg, "utf8")).toMatch(/^<svg [^>]*role="img"/);
});
