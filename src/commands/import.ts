import { statSync } from "node:fs";
import { basename } from "node:path";
import type { DoubtfulRow, ImportFindings, Listed } from "../catalogue/import.ts";
import { showRowError } from "../catalogue/motors-csv.ts";
import { ConfigError } from "../config.ts";
import { ContentError } from "../content.ts";
import type { Doubt } from "../nameplate/reading.ts";
import { badRows, importFile } from "../stock-files.ts";
import type { StockImport, StockKind } from "../store/stock.ts";
import { StoreError } from "../store/store.ts";
import { withStore } from "./with-store.ts";

export interface KindOptions {
  readonly pumps?: boolean;
  readonly spares?: boolean;
}

export interface ImportOptions extends KindOptions {
  readonly write?: boolean;
  readonly skipBad?: boolean;
  readonly undo?: boolean;
  readonly all?: boolean;
  readonly store?: string;
}

/** Of each finding so many are shown; `--all` shows every one. */
const SHOWN = 20;

/** Which table is meant. Throws `ConfigError` when two are. */
export function kindOf({ pumps = false, spares = false }: KindOptions): StockKind {
  if (pumps && spares) throw new ConfigError("One table at a time: --pumps or --spares, not both.");
  return pumps ? "pumps" : spares ? "spares" : "motors";
}

/** Shows what a CSV would change and, with `write`, makes it the table: all or nothing. With `undo`, takes that back. */
export async function runImport(file: string | undefined, options: ImportOptions): Promise<void> {
  const kind = kindOf(options);
  if (options.undo) {
    if (file !== undefined) throw new ConfigError("--undo takes no file: it takes back the last import.");
    return undo(kind, options.store);
  }
  if (file === undefined) throw new ConfigError("Which file? Give a CSV, or --undo.");
  const { write = false, skipBad = false, all = false } = options;
  await withStore(options.store, async (store) => {
    const before = await store.stock.current(kind);
    const progress = progressOn(process.stderr, file);
    const { findings, written } = await importFile(store, kind, file, {
      write: (found) => write && usable(found, skipBad),
      at: new Date().toISOString(),
      source: basename(file),
      listed: all ? Number.POSITIVE_INFINITY : SHOWN,
      ...(progress ? { onProgress: progress.show } : {}),
    }).finally(() => progress?.clear());

    const { faults, rows, broken } = findings;
    if (broken || (faults.count > 0 && !skipBad)) {
      if (!broken) process.stdout.write(showFindings(findings, kind, before));
      throw unusable(file, findings);
    }
    process.stdout.write(showFindings(findings, kind, before));
    if (rows === 0) throw new ContentError(`${file}: no row can be used. Nothing was written.`);
    process.stdout.write(
      written
        ? "Written. A running desk uses it from its next message on. To take it back: import --undo.\n"
        : `Nothing written. Add --write to make this the ${kind}.\n`,
    );
  });
}

const usable = ({ rows, faults, broken }: ImportFindings, skipBad: boolean) =>
  rows > 0 && !broken && (faults.count === 0 || skipBad);

function unusable(file: string, { faults, broken }: ImportFindings): ContentError {
  const error = badRows(file, faults.first, faults.count);
  const way = broken ? "" : "\nOr add --skip-bad to leave them out.";
  return new ContentError(`${error.message}${way}`);
}

async function undo(kind: StockKind, storeFile: string | undefined): Promise<void> {
  await withStore(storeFile, async (store) => {
    const undone = await store.stock.undo(kind);
    if (!undone)
      throw new StoreError(`There is no earlier import of ${kind} to go back to. Nothing was changed.`);
    process.stdout.write(
      `Taken back: ${showImport(undone.taken)}.\nThe ${kind} are again ${showImport(undone.now)}.\n`,
    );
  });
}

const showImport = ({ source, importedOn, rows }: StockImport): string =>
  `${source === "" ? "those" : source} of ${importedOn}, ${rows} rows`;

function showFindings(findings: ImportFindings, kind: StockKind, before: StockImport | undefined): string {
  const { rows, added, changed, changedColumns, gone, doubtful, faults } = findings;
  const columns = Object.entries(changedColumns).map(([column, count]) => `${column} ${count}`);
  const against = before ? `, against ${showImport(before)}` : "";
  return [
    `${rows} ${kind} read${against}.`,
    ...list("Added", added, (name) => name),
    ...list(`Changed${columns.length > 0 ? ` (${columns.join(", ")})` : ""}`, changed, (row) => {
      const cells = row.columns.map(
        ({ column, was, is }) => `${column} ${orNothing(was)} → ${orNothing(is)}`,
      );
      return `${row.name}: ${cells.join(", ")}`;
    }),
    ...list("Gone", gone, ({ name, bad }) => (bad ? `${name} (its row is bad)` : name)),
    ...(rows > 0 ? [`Unchanged: ${rows - added.count - changed.count}`] : []),
    ...list("Doubtful, look at the label again", doubtful, showDoubtful),
    ...list("Bad rows, left out", faults, showRowError),
    "",
  ].join("\n");
}

function list<T>(head: string, { count, first }: Listed<T>, show: (one: T) => string): readonly string[] {
  if (count === 0) return [];
  const more = count > first.length ? [`  … and ${count - first.length} more; --all shows every one`] : [];
  return [`${head}: ${count}`, ...first.map((one) => `  ${show(one)}`), ...more];
}

const orNothing = (cell: string) => (cell === "" ? "(nothing)" : cell);

function showDoubtful({ line, name, doubts, cells }: DoubtfulRow): string {
  return `Line ${line}, ${name}: ${doubts.map((doubt) => showDoubt(doubt, cells)).join("; ")}`;
}

function showDoubt({ ratings, severity, check, proposal }: Doubt, cells: DoubtfulRow["cells"]): string {
  const named = ratings.map((rating) => `${columnOf(rating)} ${cells[columnOf(rating)] ?? ""}`).join(", ");
  const word = severity === "impossible" ? "cannot be true" : "can hardly be true";
  const parts = proposal ? [proposal, ...(proposal.also ? [proposal.also] : [])] : [];
  const shown = parts.map(({ rating, value }) => `${columnOf(rating)} ${[value].flat().join("/")}`);
  return `${named} ${word} (${check})${shown.length > 0 ? `, perhaps ${shown.join(" and ")}` : ""}`;
}

/** The column a rating stands in. */
const columnOf = (rating: string) => rating.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

/** A line that counts up while somebody watches; null where nobody does. */
function progressOn(output: NodeJS.WriteStream, file: string) {
  if (!output.isTTY) return null;
  const size = statSync(file, { throwIfNoEntry: false })?.size ?? 0;
  return {
    show: (rows: number, bytes: number) => {
      const part = size > 0 ? `, ${Math.min(100, Math.round((100 * bytes) / size))} %` : "";
      output.write(`\r${rows} rows read${part}`);
    },
    clear: () => output.write("\r\u001b[K"),
  };
}
