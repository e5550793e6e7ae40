import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { StockDraft, StockStore } from "../../src/store/stock.ts";
import type { Opened } from "./contract.ts";

const at = "2026-11-25T16:00:00.000Z";
const row = (key: string, price = 1) => ({ key, item: JSON.stringify({ sku: key, price }) });

/** What every store must do with what a shop imports. */
export function stockContract(name: string, open: () => Opened): void {
  describe(`${name}: stock`, () => {
    let opened: Opened;
    let stock: StockStore;
    beforeEach(() => {
      opened = open();
      stock = opened.store.stock;
    });
    afterEach(async () => {
      await opened.store.close();
      opened.cleanUp();
    });
    const from = (importedOn: string) => ({ source: "sheet.csv", at, importedOn });
    const begin = async (...rows: ReturnType<typeof row>[]): Promise<StockDraft> => {
      const draft = await stock.draft("motors");
      await draft.add(rows);
      return draft;
    };
    const imported = async (importedOn: string, ...rows: ReturnType<typeof row>[]) => {
      const draft = await begin(...rows);
      expect(await draft.write(from(importedOn))).toBe(true);
      await draft.discard();
    };
    const items = async () => {
      const all: string[] = [];
      for await (const portion of await stock.items("motors")) all.push(...portion);
      return all;
    };

    test("a table comes back in the order it was imported, with its day and where it came from", async () => {
      expect(await stock.current("motors")).toBeUndefined();
      await imported("2026-11-20", row("b"), row("a"));
      expect(await items()).toEqual([row("b").item, row("a").item]);
      expect(await stock.current("motors")).toEqual({ kind: "motors", ...from("2026-11-20"), rows: 2 });
      expect(await stock.current("spares")).toBeUndefined();
    });

    test("a table longer than a portion comes back whole", async () => {
      const many = Array.from({ length: 2500 }, (_, at) => row(`m${at}`));
      await imported("2026-11-20", ...many);
      expect(await items()).toEqual(many.map(({ item }) => item));
    });

    test("a draft tells what it replaces and what would go, and counts for nothing until it is written", async () => {
      await imported("2026-11-20", row("a"), row("b"), row("c"));
      const version = await stock.version();
      const draft = await stock.draft("motors");
      expect(await draft.add([row("b", 2), row("new")])).toEqual([row("b").item, undefined]);
      expect(await draft.gone(1)).toEqual({ count: 2, rows: [row("a")] });
      await draft.discard();
      expect(await items()).toHaveLength(3);
      expect(await stock.version()).toBe(version);
    });

    test("a key that comes twice is refused, and nothing has changed", async () => {
      await imported("2026-11-20", row("a"));
      const draft = await begin(row("b"));
      await expect(draft.add([row("c"), row("b")])).rejects.toThrow();
      await draft.discard();
      expect(await items()).toEqual([row("a").item]);
    });

    test("of two who import at once the second is told, and the first one's stock stands", async () => {
      await imported("2026-11-20", row("a"));
      const slow = await begin(row("slow"));
      await imported("2026-11-24", row("quick"));
      expect(await slow.write(from("2026-11-25"))).toBe(false);
      await slow.discard();
      expect(await items()).toEqual([row("quick").item]);
    });

    test("the version changes with an import and with its undoing", async () => {
      const versions = [await stock.version()];
      await imported("2026-11-20", row("a"));
      versions.push(await stock.version());
      await imported("2026-11-24", row("b"));
      versions.push(await stock.version());
      await stock.undo("motors");
      versions.push(await stock.version());
      expect(new Set(versions).size).toBe(4);
    });

    test("the last import can be taken back, its day with it; then there is no earlier one", async () => {
      expect(await stock.undo("motors")).toBeUndefined();
      await imported("2026-11-18", row("z"));
      await imported("2026-11-20", row("a"));
      await imported("2026-11-24", row("b"), row("c"));
      expect(await stock.undo("motors")).toMatchObject({
        taken: { importedOn: "2026-11-24", rows: 2 },
        now: { importedOn: "2026-11-20", rows: 1 },
      });
      expect(await items()).toEqual([row("a").item]);
      expect(await stock.current("motors")).toMatchObject({ importedOn: "2026-11-20" });
      expect(await stock.undo("motors")).toBeUndefined();
      expect(await items()).toEqual([row("a").item]);
    });

    test("what was imported is there after a restart, a draft is not", async () => {
      await imported("2026-11-20", row("a"));
      await begin(row("half"));
      await opened.store.close();
      const again = opened.reopen();
      stock = again.stock;
      expect(await items()).toEqual([row("a").item]);
      await again.close();
      opened = { ...opened, store: opened.reopen() };
    });
  });
}
