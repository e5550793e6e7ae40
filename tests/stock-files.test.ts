import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { afterAll, afterEach, beforeEach, describe, expect, test } from "vitest";
import type { ImportFindings } from "../src/catalogue/import.ts";
import { formatMotors } from "../src/catalogue/motors-csv.ts";
import type { StockMotor } from "../src/matching/types.ts";
import { exportLines, importFile, readMotorsFile, storedItems, takeDemoStock } from "../src/stock-files.ts";
import { openSqliteStore } from "../src/store/sqlite.ts";
import { type StockKind, stockKinds } from "../src/store/stock.ts";
import type { Store } from "../src/store/store.ts";
import { storedCatalogue } from "../src/stored-catalogue.ts";
import { evening } from "./desk/evening.ts";

const folder = mkdtempSync(join(tmpdir(), "import-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const data = fileURLToPath(new URL("../data/", import.meta.url));
const at = "2026-11-25T16:00:00.000Z";

let store: Store;
beforeEach(() => {
  store = openSqliteStore(":memory:");
});
afterEach(() => store.close());

const header = "sku,hp,volts,phase,frame,price_usd,in_stock";
const sheet = (...rows: string[]): string => {
  const file = join(folder, "sheet.csv");
  writeFileSync(file, [header, ...rows, ""].join("\n"));
  return file;
};
const take = async (
  file: string,
  { write = true, kind = "motors" as StockKind, day = at } = {},
): Promise<ImportFindings> =>
  (await importFile(store, kind, file, { write: () => write, at: day, source: "sheet.csv", listed: 20 }))
    .findings;
const exported = async (kind: StockKind): Promise<string> => {
  let text = "";
  for await (const lines of exportLines(store, kind)) text += lines;
  return text;
};

describe("what an import changes", () => {
  beforeEach(async () => {
    await take(sheet("PIE-1,1,230,1,56Y,199,3", "PIE-2,1,230,1,56Y,205,1", "PIE-3,1,230,1,56J,189,2"));
  });

  test("added, changed with the columns, gone; what stays the same is not told", async () => {
    const found = await take(
      sheet("pie-2,1,230,1,56Y,215,", "PIE-4,1,230,1,56Y,1,1", "PIE-1,1,230,1,56Y,199,3"),
      { write: false },
    );
    expect(found).toMatchObject({
      rows: 3,
      added: { count: 1, first: ["PIE-4"] },
      changedColumns: { sku: 1, price_usd: 1, in_stock: 1 },
      gone: { count: 1, first: [{ name: "PIE-3", bad: false }] },
    });
    expect(found.changed.first).toEqual([
      {
        name: "pie-2",
        columns: [
          { column: "sku", was: "PIE-2", is: "pie-2" },
          { column: "price_usd", was: "205", is: "215" },
          { column: "in_stock", was: "1", is: "0" },
        ],
      },
    ]);
  });

  test("a number written another way is no change", async () => {
    const file = sheet(
      'PIE-1,1,230,1ph,56 y,"$199.00",3',
      "PIE-2,1.0,230,1,56Y,205,1",
      "PIE-3,1,230,1,56J,189,2",
    );
    expect(await take(file, { write: false })).toMatchObject({
      changed: { count: 0 },
      added: { count: 0 },
      gone: { count: 0 },
    });
  });

  test("a row whose figures contradict each other is told by line and number", async () => {
    const { doubtful } = await take(sheet("PIE-1,1,230,1,56Y,199,3", "PIE-2,15,230,1,56Y,205,1"), {
      write: false,
    });
    expect(doubtful.first).toMatchObject([
      {
        line: 3,
        name: "PIE-2",
        cells: { hp: "15" },
        doubts: [{ ratings: ["hp"], proposal: { rating: "hp", value: 1.5 } }],
      },
    ]);
  });

  test("a bad row is told apart from one that is gone", async () => {
    const { faults, gone } = await take(sheet("PIE-1,1,23O,1,56Y,199,3", "PIE-2,1,230,1,56Y,205,1"), {
      write: false,
    });
    expect(faults.first).toEqual([
      {
        line: 2,
        column: "volts",
        value: "23O",
        expected: "numbers separated by /, such as 115/230 or 208-230",
      },
    ]);
    expect(gone.first).toEqual([
      { name: "PIE-1", bad: true },
      { name: "PIE-3", bad: false },
    ]);
  });

  test("a dry run changes nothing", async () => {
    const before = [await exported("motors"), await store.stock.version()];
    await take(sheet("PIE-9,1,230,1,56Y,1,1"), { write: false });
    expect([await exported("motors"), await store.stock.version()]).toEqual(before);
  });
});

describe("export", () => {
  test.each(stockKinds)("the demo's %s come back as the same table", async (kind) => {
    await takeDemoStock(store, data, at);
    const once = await exported(kind);
    const file = join(folder, `${kind}.csv`);
    writeFileSync(file, once);
    const again = await take(file, { kind });
    expect(again).toMatchObject({
      added: { count: 0 },
      changed: { count: 0 },
      gone: { count: 0 },
      faults: { count: 0 },
    });
    expect(again.rows).toBe(
      readFileSync(join(data, `${kind}.csv`), "utf8")
        .trimEnd()
        .split("\n").length - 1,
    );
    expect(await exported(kind)).toBe(once);
  });

  test("whatever stood in the rows, exporting and importing changes nothing", async () => {
    const words = fc
      .string({ unit: fc.constantFrom(..."ab ,;\t\"'/|\nµ=@1"), maxLength: 12 })
      .map((text) => text.trim());
    const number = fc.oneof(
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 1, max: 60 }).map((thirds) => thirds / 3),
    );
    const motor = fc.record({
      sku: fc.stringMatching(/^[A-Z]{2}-[0-9]{1,3}$/),
      maker: words,
      description: words,
      label: fc.record(
        { hp: number, phase: fc.constantFrom(1 as const, 3 as const), frame: fc.constantFrom("56Y", "48J") },
        { requiredKeys: [] },
      ),
      inStock: fc.nat(99),
      replaces: fc.array(fc.stringMatching(/^[A-Z]{2}[0-9]{1,3}$/), { maxLength: 3 }),
    });
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(motor, { selector: ({ sku }) => sku, minLength: 1, maxLength: 8 }),
        async (motors) => {
          const file = join(folder, "random.csv");
          writeFileSync(file, formatMotors(motors as StockMotor[]));
          await take(file);
          expect(await storedItems(store, "motors")).toEqual(motors);
          expect(await exported("motors")).toBe(readFileSync(file, "utf8"));
        },
      ),
      { seed: 20261125, numRuns: 60 },
    );
  });
});

describe("a running desk", () => {
  const asks = "1 hp, SF 1.65, 230V, frame 56Y, single phase, 3450 rpm, wired for 240 volts";
  const openShop = () =>
    evening({ store, catalogue: storedCatalogue({ store, numberFormats: [], today: "2026-11-25" }) });

  test("offers what was imported a moment ago, and no more what was taken back", async () => {
    await takeDemoStock(store, data, at);
    const shop = openShop();
    expect((await shop.says("ana", asks)).join("\n")).toContain("BAKLAVA-498");

    const cheaper = readMotorsFile(join(data, "motors.csv")).filter(({ sku }) => sku === "BAKLAVA-809");
    const file = join(folder, "few.csv");
    writeFileSync(file, formatMotors(cheaper));
    await take(file);
    const after = (await shop.says("ben", asks)).join("\n");
    expect(after).toContain("BAKLAVA-809");
    expect(after).not.toContain("BAKLAVA-498");

    await store.stock.undo("motors");
    expect((await shop.says("cleo", asks)).join("\n")).toContain("BAKLAVA-498");
  });

  test("prepares a stock once, and anew only when it has changed", async () => {
    await takeDemoStock(store, data, at);
    const catalogue = storedCatalogue({ store, numberFormats: [], today: "2026-11-25" });
    const [first, second] = await Promise.all([catalogue(), catalogue()]);
    expect(second).toBe(first);
    await take(join(data, "spares.csv"), { kind: "spares", day: "2026-11-28T09:00:00.000Z" });
    const third = await catalogue();
    expect(third).not.toBe(first);
    expect(third).toMatchObject({ importedOn: "2026-11-25", sparesImportedOn: "2026-11-28" });
  });

  test("never takes half of one stock and half of another", async () => {
    await take(sheet("PIE-1,1,230,1,56Y,199,3"));
    await take(sheet("PIE-2,1,230,1,56Y,199,3"));
    let undone = false;
    const stock: Store["stock"] = {
      ...store.stock,
      // Somebody takes the import back between the motors and the pumps.
      items: async (kind) => {
        if (kind === "pumps" && !undone) {
          undone = true;
          await store.stock.undo("motors");
        }
        return store.stock.items(kind);
      },
    };
    const catalogue = storedCatalogue({ store: { ...store, stock }, numberFormats: [], today: "2026-11-25" });
    expect((await catalogue()).motors.map(({ sku }) => sku)).toEqual(["PIE-1"]);
  });

  test("a fresh store takes the demo's tables, a store that has them keeps its own", async () => {
    await take(sheet("PIE-1,1,230,1,56Y,199,3"));
    await takeDemoStock(store, data, at);
    expect(await storedItems(store, "motors")).toHaveLength(1);
    expect((await storedItems(store, "pumps")).length).toBeGreaterThan(10);
  });
});
