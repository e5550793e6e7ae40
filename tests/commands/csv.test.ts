import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { csvOf } from "../../src/commands/csv.ts";

// Quoting: RFC 4180 section 2, rules 5 to 7; read back with csv-parse as an independent reader.
test("a table comes back as it was, quotes, commas and line breaks included", () => {
  const rows = [
    ['He said "1.5"', "a,b", "two\nlines"],
    ["", "plain", "ü"],
  ];
  expect(parse(csvOf(["a", "b", "c"], rows))).toEqual([["a", "b", "c"], ...rows]);
});

// Characters after which a spreadsheet runs a cell: OWASP, "CSV Injection".
test.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =HYPERLINK()"])(
  "%j is not run as a formula",
  (cell) => {
    const [[read] = []] = parse(csvOf([], [[cell]]).slice(2)) as string[][];
    expect(read).toBe(`'${cell}`);
  },
);

test("numbers stay numbers and nothing is an empty cell", () => {
  expect(csvOf(["id", "case"], [[-1, null]])).toBe("id,case\r\n-1,\r\n");
});
