import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { migrations } from "../../src/store/migrations.ts";
import { openDatabase } from "../../src/store/sqlite/database.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { stockContract } from "./stock-contract.ts";

stockContract("the SQLite store", () => {
  const folder = mkdtempSync(join(tmpdir(), "stock-"));
  const reopen = () => openSqliteStore(join(folder, "desk.sqlite"));
  return { store: reopen(), reopen, cleanUp: () => rmSync(folder, { recursive: true, force: true }) };
});

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "stock-"));
  file = join(folder, "desk.sqlite");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test("the stock of an earlier version is kept, with the day it was imported on", async () => {
  const old = openDatabase(file, migrations.slice(0, 4));
  old.exec(`
    INSERT INTO stock (sku, motor) VALUES ('PIE-2', '{"sku":"PIE-2"}'), ('PIE-1', '{"sku":"PIE-1"}');
    INSERT INTO facts VALUES ('stock.importedOn', '2026-11-20');
  `);
  old.close();
  const store = openSqliteStore(file);
  expect(await store.stock.current("motors")).toMatchObject({ importedOn: "2026-11-20", rows: 2 });
  const portions: string[] = [];
  for await (const portion of await store.stock.items("motors")) portions.push(...portion);
  expect(portions).toEqual(['{"sku":"PIE-2"}', '{"sku":"PIE-1"}']);
  // Known again by the same key.
  const draft = await store.stock.draft("motors");
  expect(await draft.add([{ key: "pie-1", item: "{}" }])).toEqual(['{"sku":"PIE-1"}']);
  await store.close();
});

test("an import under way keeps nobody else from the file", async () => {
  const importing = openSqliteStore(file);
  const bot = openSqliteStore(file);
  const draft = await importing.stock.draft("motors");
  await draft.add([{ key: "a", item: "{}" }]);
  const began = performance.now();
  expect(await bot.receive({ id: "u1", threadId: "ana", text: "56Y", at: "2026-11-25T16:00:00.000Z" })).toBe(
    true,
  );
  // A held lock would have taken the five seconds others wait.
  expect(performance.now() - began).toBeLessThan(4000);
  expect(
    await draft.write({ source: "s.csv", at: "2026-11-25T16:00:00.000Z", importedOn: "2026-11-25" }),
  ).toBe(true);
  expect(await bot.stock.current("motors")).toMatchObject({ rows: 1 });
  await importing.close();
  await bot.close();
});

const keyed = (count: number) =>
  Array.from({ length: count }, (_, at) => ({ key: `m${at}`, item: JSON.stringify({ sku: `m${at}` }) }));
const day = { source: "s.csv", at: "2026-11-25T16:00:00.000Z", importedOn: "2026-11-25" };

test("while a long import is written others write too, and see the old table until it is whole", async () => {
  const importing = openSqliteStore(file);
  const bot = openSqliteStore(file);
  const draft = await importing.stock.draft("motors");
  await draft.add(keyed(2500));
  let done = false;
  const written = draft.write(day).finally(() => {
    done = true;
  });
  let meanwhile = 0;
  while (!done) {
    const id = `u${meanwhile}`;
    expect(await bot.receive({ id, threadId: "ana", text: "56Y", at: day.at })).toBe(true);
    if (!done) {
      meanwhile++;
      expect([undefined, 2500]).toContain((await bot.stock.current("motors"))?.rows);
    }
    await new Promise((resolve) => setTimeout(resolve, 1));
  }
  expect(await written).toBe(true);
  expect(meanwhile).toBeGreaterThan(1);
  expect(await bot.stock.current("motors")).toMatchObject({ rows: 2500 });
  await importing.close();
  await bot.close();
});

test("what a killed import left half written counts for nothing, and the next import clears it away", async () => {
  const store = openSqliteStore(file);
  const first = await store.stock.draft("motors");
  await first.add(keyed(1));
  await first.write(day);
  await store.close();
  const db = openDatabase(file);
  db.exec(`
    INSERT INTO stock_imports (kind, source, at, imported_on, rows, state) VALUES ('motors', 'half.csv', '', '', 9, 'coming');
    INSERT INTO stock_rows SELECT max(id), 1, 'half', '{}' FROM stock_imports;
  `);
  const left = () => db.prepare("SELECT source FROM stock_imports ORDER BY id").pluck().all();
  const again = openSqliteStore(file);
  expect(await again.stock.current("motors")).toMatchObject({ source: "s.csv" });
  const next = await again.stock.draft("motors");
  expect(await next.add(keyed(1))).toEqual([keyed(1)[0]?.item]);
  expect(left()).toEqual(["s.csv", "half.csv"]);
  expect(await next.write({ ...day, source: "next.csv" })).toBe(true);
  expect(left()).toEqual(["s.csv", "next.csv"]);
  expect(db.prepare("SELECT count(*) FROM stock_rows WHERE key = 'half'").pluck().get()).toBe(0);
  await again.close();
  db.close();
});
