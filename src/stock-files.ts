import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseMotors, type RowError, showRowError } from "./catalogue/motors-csv.ts";
import { parsePumps } from "./catalogue/pumps-csv.ts";
import { parseSpares } from "./catalogue/spares-csv.ts";
import type { Pump, Spare } from "./catalogue/types.ts";
import { ContentError } from "./content.ts";
import type { StockMotor } from "./matching/types.ts";

/** Of many bad rows these are enough to see what is wrong. */
const SHOWN_ERRORS = 10;

/** Reads a table file, all or nothing. Throws {@link ContentError} listing the rows that cannot be used. */
function readRows<T extends { readonly errors: readonly RowError[] }>(
  file: string,
  parse: (csv: string) => T,
): T {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (cause) {
    throw new ContentError(`${file}: this file cannot be read. Check the path.`, { cause });
  }
  const table = parse(text);
  if (table.errors.length === 0) return table;
  const shown = table.errors.slice(0, SHOWN_ERRORS).map((error) => `  ${showRowError(error)}`);
  const more =
    table.errors.length > SHOWN_ERRORS ? [`  … and ${table.errors.length - SHOWN_ERRORS} more`] : [];
  throw new ContentError(
    [`${file}: nothing was read, these rows need mending:`, ...shown, ...more].join("\n"),
  );
}

/** The motors of a catalogue CSV. Throws {@link ContentError}. */
export function readMotorsFile(file: string): readonly StockMotor[] {
  return readRows(file, parseMotors).motors;
}

/** Wet ends and spares from the data folder. Throws {@link ContentError}. */
export function readPumpsAndSpares(folder: string): { pumps: readonly Pump[]; spares: readonly Spare[] } {
  return {
    pumps: readRows(join(folder, "pumps.csv"), parsePumps).pumps,
    spares: readRows(join(folder, "spares.csv"), parseSpares).spares,
  };
}
