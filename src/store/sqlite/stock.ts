import type { StockMotor } from "../../matching/types.ts";
import type { Store } from "../store.ts";
import type { Db } from "./database.ts";

/** The imported stock. */
export function stockOf(db: Db): Pick<Store, "replaceStock" | "stock"> {
  const clear = db.prepare("DELETE FROM stock");
  const add = db.prepare("INSERT INTO stock (sku, motor) VALUES (?, ?)");
  const all = db.prepare("SELECT motor FROM stock ORDER BY position").pluck();
  const saveFact = db.prepare(
    "INSERT INTO facts (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value",
  );
  const findFact = db.prepare("SELECT value FROM facts WHERE name = ?").pluck();
  const replace = db.transaction((motors: readonly StockMotor[], importedOn: string) => {
    clear.run();
    for (const motor of motors) add.run(motor.sku, JSON.stringify(motor));
    saveFact.run("stock.importedOn", importedOn);
  });
  return {
    replaceStock: async (motors, importedOn) => replace.immediate(motors, importedOn),
    stock: async () => ({
      motors: (all.all() as string[]).map((motor) => JSON.parse(motor) as StockMotor),
      importedOn: (findFact.get("stock.importedOn") as string | undefined) ?? null,
    }),
  };
}
