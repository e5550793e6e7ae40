import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { textOf } from "../../src/catalogue/import-text.ts";
import { formatMotors, motorSheet, parseMotors, showRowError } from "../../src/catalogue/motors-csv.ts";

const utf8 = (text: string) => new TextEncoder().encode(text);

/** Bytes in pieces of a size, as a disk or a pipe hands them over. */
async function* inPieces(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

async function streamed(bytes: Uint8Array, size = 7) {
  const motors = [];
  const complaints: string[] = [];
  let broken = false;
  for await (const event of motorSheet.read(textOf(inPieces(bytes, size)))) {
    if (event.kind === "row") motors.push(event.item);
    else {
      complaints.push(...event.errors.map(showRowError));
      broken ||= event.kind === "broken";
    }
  }
  return { motors, complaints, broken };
}

const header = "sku,volts,phase,frame,description";

describe("a table read piece by piece", () => {
  it("is the same as one read at once, wherever the pieces end", async () => {
    const cell = fc.constantFrom(
      "PIE-1",
      "PIE-2",
      "230",
      "115/230",
      "1",
      "56Y",
      '"a ""b"',
      '"x\r\ny"',
      "µ°½",
      "23O",
      "",
      "é",
    );
    const row = fc.array(cell, { minLength: 4, maxLength: 6 });
    const ending = fc.constantFrom("\n", "\r\n", "\r");
    const mark = fc.constantFrom(",", ";", "\t");
    await fc.assert(
      fc.asyncProperty(
        fc.array(row, { maxLength: 6 }),
        ending,
        mark,
        fc.integer({ min: 1, max: 40 }),
        async (rows, end, by, size) => {
          const text = [header.split(","), ...rows].map((cells) => cells.join(by)).join(end);
          const whole = parseMotors(text);
          const { motors, complaints, broken } = await streamed(utf8(text), size);
          expect(broken).toBe(false);
          expect(motors).toEqual(whole.motors);
          expect(complaints).toEqual(whole.errors.map(showRowError));
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });

  it("keeps characters whole that a piece cuts in two", async () => {
    const { motors } = await streamed(utf8(`${header}\nPIE-1,230,1,56Y,½ hp µF 🐟\n`), 1);
    expect(motors[0]?.description).toBe("½ hp µF 🐟");
  });

  it("drops a byte-order mark", async () =>
    expect((await streamed(utf8(`\uFEFF${header}\nPIE-1,230,1,56Y,x\n`))).motors).toHaveLength(1));

  // What a spreadsheet saves as "Unicode text": UTF-16 with its mark (Unicode Standard, section 23.8), and tabs.
  it("reads UTF-16 with tabs", async () => {
    const bytes = Buffer.from(
      `\uFEFF${header.replaceAll(",", "\t")}\r\nPIE-1\t230\t1\t56Y\té\r\n`,
      "utf16le",
    );
    expect((await streamed(bytes)).motors).toMatchObject([{ sku: "PIE-1", description: "é" }]);
  });

  it("says on which line the text is not UTF-8", async () => {
    const bytes = Buffer.concat([
      utf8(`${header}\r\nPIE-1,230,1,56Y,x\r\nPIE-2,230,1,56Y,`),
      Buffer.from([0xe9]),
      utf8("t\r\n"),
    ]);
    const { complaints, broken } = await streamed(bytes, 1000);
    expect(complaints).toEqual([
      'Line 3: "PIE-2,230,1,56Y,\ufffd" found, expected UTF-8 text; save the sheet as "CSV UTF-8".',
    ]);
    expect(broken).toBe(true);
  });

  it("says where a quoted cell never ends, however much follows", async () => {
    const swallowed = "PIE-3,230,1,56Y,x\n".repeat(80_000);
    const { complaints, broken } = await streamed(
      utf8(`${header}\nPIE-1,230,1,56Y,x\nPIE-2,"230,1,56Y,x\n${swallowed}`),
      65_536,
    );
    expect(complaints).toEqual([
      'Line 3: "PIE-2,"230,1,56Y,x" found, expected each quoted cell to end with a double quote before the separator.',
    ]);
    expect(broken).toBe(true);
  });

  it.each([
    ["an empty file", "", "Line 1: nothing found, expected a header row."],
    [
      "a file without the columns",
      "sku,phase\nPIE-1,1\n",
      "Line 1, column volts: nothing found, expected a column named volts.",
    ],
  ])("takes nothing from %s", async (_, text, first) => {
    const { motors, complaints, broken } = await streamed(utf8(text));
    expect({ motors, broken }).toEqual({ motors: [], broken: true });
    expect(complaints[0]).toBe(first);
  });
});

describe("horsepower with endless decimals", () => {
  it.each(["1/3", "2/3", "1-1/3", "5/6"])("%s is written so that it is read back the same", (cell) => {
    const text = `sku,volts,phase,frame,hp\nPIE-1,230,1,56Y,${cell}\n`;
    const { motors } = parseMotors(text);
    expect(parseMotors(formatMotors(motors))).toEqual({ motors, errors: [] });
    expect(formatMotors(motors)).toContain(`,${cell},`);
  });
});
