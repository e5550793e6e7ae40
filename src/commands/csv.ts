type Cell = string | number | null | undefined;

/**
 * A table as CSV (RFC 4180). A text that a spreadsheet would run as a formula gets an apostrophe before it
 * (OWASP, "CSV Injection"): customers choose what stands in these cells.
 */
export function csvOf(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [header, ...rows].map((row) => `${row.map(showCell).join(",")}\r\n`).join("");
}

const RUNS = /^[\s]*[=+\-@\t\r]/;

function showCell(cell: Cell): string {
  if (cell === null || cell === undefined) return "";
  if (typeof cell === "number") return String(cell);
  const text = RUNS.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
