import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { evening, LABEL } from "../desk/evening.ts";
import { nameplate } from "./run.ts";

const folder = mkdtempSync(join(tmpdir(), "backup-"));
const file = join(folder, "desk.sqlite");
const copy = join(folder, "copy.sqlite");
const run = (...args: readonly string[]) => nameplate([...args, "--store", file]);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

beforeAll(async () => {
  const store = openSqliteStore(file);
  const shop = evening({ store });
  await shop.says("ana", LABEL);
  await shop.says("ben", "hello, 48Y here");
  await store.close();
});

test("backup, a mishap, restore: the customers are back, and doctor finds nothing wrong", () => {
  expect(run("backup", copy)).toMatchObject({
    status: 0,
    stderr: "",
    stdout: expect.stringMatching(/copied and checked, 2 customers, 1 cases/),
  });
  writeFileSync(file, "a cup of tea ".repeat(1000));
  const sick = run("doctor");
  expect(sick.status).toBe(1);
  expect(sick.stdout).toMatch(/WRONG store: .*damaged/);
  expect(sick.stdout).toMatch(/^1 of \d+ need mending\.$/m);
  expect(run("restore", copy, "--stopped").stdout).toMatch(/restored from .*copy\.sqlite and checked/);
  const well = run("doctor");
  expect(well.stdout).toMatch(/ok {4}store: .*whole; 2 customers, 1 open cases/);
  expect(well.stdout).toMatch(/Nothing is wrong\.$/m);
  expect(well.status).toBe(0);
});
