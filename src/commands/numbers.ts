import { StoreError } from "../store/store.ts";
import { csvOf } from "./csv.ts";
import { withStore } from "./with-store.ts";

export interface NumbersOptions {
  readonly csv?: boolean;
  readonly cameBack?: boolean;
  readonly store?: string;
}

/** Lists the numbers on record, or the findings that parts which came back speak against. */
export function runNumbers({ csv = false, cameBack = false, store: file }: NumbersOptions): Promise<void> {
  return withStore(file, async (store) => {
    const rows = cameBack
      ? (await store.doubted()).map(({ sku, finding, caseId, by, at }) => {
          const { rule, outcome, reason } = JSON.parse(finding) as Record<string, string>;
          return { sku, rule, outcome, reason, case: caseId, by: by.name, at };
        })
      : (await store.numbers()).map(({ id, number, sku, standing, caseId, by, at, ended }) => ({
          id,
          number,
          sku,
          standing,
          case: caseId,
          by: by.name,
          at,
          endedBy: ended?.by.name ?? null,
          endedAt: ended?.at ?? null,
        }));
    const [first] = rows;
    if (first === undefined) {
      const none = cameBack ? "No part has come back as wrong." : "No number is on record yet.";
      if (!csv) process.stdout.write(`${none}\n`);
      return;
    }
    if (csv) process.stdout.write(csvOf(Object.keys(first), rows.map(Object.values)));
    else
      for (const row of rows)
        process.stdout.write(
          `${Object.values(row)
            .map((cell) => cell ?? "-")
            .join("  ")}\n`,
        );
  });
}

/** Takes a number off the list, by its place in `numbers`. Throws `StoreError` when it is not in use. */
export function runStrike(
  number: string,
  { as, store: file }: { readonly as: string; readonly store?: string },
): Promise<void> {
  return withStore(file, async (store) => {
    const found = (await store.numbers()).find(({ id }) => String(id) === number);
    if (!found)
      throw new StoreError(`There is no number ${number} on record. The command "numbers" lists them.`);
    if (found.standing !== "used") {
      throw new StoreError(`Number ${number} is ${found.standing} already; nothing to do.`);
    }
    const by = { id: `terminal:${as}`, name: as };
    await store.commit({
      at: new Date().toISOString(),
      numbers: { by, edits: [{ kind: "strike", id: found.id }] },
      outgoing: [],
    });
    process.stdout.write(`Struck: ${found.number} → ${found.sku}. It is no longer used.\n`);
  });
}
