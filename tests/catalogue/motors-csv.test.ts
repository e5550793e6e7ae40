import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatMotors, parseMotors, showRowError } from "../../src/catalogue/motors-csv.ts";
import type { StockMotor } from "../../src/matching/types.ts";

const fullHeader =
  "sku,maker,description,hp,service_factor,total_hp,volts,amps,service_factor_amps,rpm,hz,phase,frame,flange," +
  "shaft,speed_kind,duty,ambient_c,efficiency_pct,power_factor,made_on,price_usd,in_stock,replaces";

/** One motor from a sheet with the few columns every sheet needs and the cells under test. */
function motorWith(cells: Record<string, string>): StockMotor {
  const all = { sku: "PIE-1", volts: "230", phase: "1", frame: "56Y", ...cells };
  const text = `${Object.keys(all).join("\t")}\n${Object.values(all).join("\t")}\n`;
  const { motors, errors } = parseMotors(text);
  expect(errors.map(showRowError)).toEqual([]);
  expect(motors).toHaveLength(1);
  return motors[0]!;
}

function complaints(text: string): string[] {
  return parseMotors(text).errors.map(showRowError);
}

/** The complaints about one cell, without the line and column they all share. */
function complaintAbout(column: string, cell: string): string[] {
  const required: Record<string, string> = { sku: "PIE-1", volts: "230", phase: "1", frame: "56Y" };
  const all = { ...required, [column]: cell };
  return complaints(`${Object.keys(all).join("\t")}\n${Object.values(all).join("\t")}\n`);
}

describe("reading the stock table", () => {
  it("reads every column of a complete row", () => {
    const row =
      'PIE-1,Wobbleton Windings,"Up-rated, square face",1-1/2,1.1,1.65,115/230,19.2/9.6,20.4/10.2,3450,60,1,56Y,square,' +
      "threaded,single,CONT,50,70.5,0.74,2025-05-21,248.50,6,MOSS-415 QUILL-2|TRIVET-9";
    expect(parseMotors(`${fullHeader}\n${row}\n`)).toEqual({
      errors: [],
      motors: [
        {
          sku: "PIE-1",
          maker: "Wobbleton Windings",
          description: "Up-rated, square face",
          label: {
            hp: 1.5,
            serviceFactor: 1.1,
            totalHp: 1.65,
            volts: [115, 230],
            amps: [19.2, 9.6],
            serviceFactorAmps: [20.4, 10.2],
            rpm: [3450],
            hz: [60],
            phase: 1,
            frame: "56Y",
            flange: "square",
            shaft: "threaded",
            speedKind: "single",
            duty: "continuous",
            ambientC: 50,
          },
          efficiencyPct: 70.5,
          powerFactor: 0.74,
          madeOn: "2025-05-21",
          priceUsd: 248.5,
          inStock: 6,
          replaces: ["MOSS-415", "QUILL-2", "TRIVET-9"],
        },
      ],
    });
  });

  it("takes an empty cell as not stated, not as zero", () => {
    const [motor] = parseMotors(`${fullHeader}\nPIE-1${",".repeat(23)}\n`).motors;
    expect(motor?.label).toEqual({});
    expect(motor).not.toHaveProperty("madeOn");
    expect(motor).toMatchObject({ maker: "", inStock: 0, replaces: [] });
  });

  it.each([
    ["semicolons and decimal commas", "sku;volts;phase;frame;amps\nPIE-1;115/230;1;56Y;19,2/9,6\n"],
    ["tabs", "sku\tvolts\tphase\tframe\tamps\nPIE-1\t115/230\t1\t56Y\t19.2/9.6\n"],
    ["a byte-order mark and CR LF", "\uFEFFsku,volts,phase,frame,amps\r\nPIE-1,115/230,1,56Y,19.2/9.6\r\n"],
    ["another order and case of headers", "Frame,AMPS,Phase,SKU,Volts\n56Y,19.2/9.6,1,PIE-1,115/230\n"],
    ["blank lines between rows", "sku,volts,phase,frame,amps\n\n,,,,\nPIE-1,115/230,1,56Y,19.2/9.6\n\n"],
    ["spaces around cells", "sku , volts , phase , frame , amps\n PIE-1 , 115/230 , 1 , 56Y , 19.2/9.6 \n"],
  ])("accepts %s", (_, text) => {
    const { motors, errors } = parseMotors(text);
    expect(errors).toEqual([]);
    expect(motors.map(({ sku, label }) => ({ sku, label }))).toEqual([
      { sku: "PIE-1", label: { volts: [115, 230], amps: [19.2, 9.6], phase: 1, frame: "56Y" } },
    ]);
  });

  it("keeps tab-separated empty cells in their columns", () => {
    const { motors } = parseMotors("sku\tvolts\tphase\tframe\tamps\thz\nPIE-1\t\t\t\t\t60\n");
    expect(motors[0]?.label).toEqual({ hz: [60] });
  });

  it.each([
    ["1-1/2", 1.5],
    ["1 1/2", 1.5],
    ["3/4", 0.75],
    ["2.5", 2.5],
    ["2,5", 2.5],
  ])("reads %s as horsepower", (cell, hp) => expect(motorWith({ hp: cell }).label.hp).toBe(hp));

  it.each([
    ["208-230", [208, 230]],
    ["208/230", [208, 230]],
    ["115/208-230", [115, 208, 230]],
    ["208-230/460", [208, 230, 460]],
  ])("reads %s as rated volts", (cell, volts) =>
    expect(motorWith({ volts: cell }).label.volts).toEqual(volts),
  );

  it.each([
    ["3450/1725", [3450, 1725]],
    ["3,450", [3450]],
    ["3.450/1.725", [3450, 1725]],
  ])("reads %s as speeds", (cell, rpm) => expect(motorWith({ rpm: cell }).label.rpm).toEqual(rpm));

  it.each([
    ["two", "two"],
    ["Two-Speed", "two"],
    ["2 speed", "two"],
    ["dual", "two"],
    ["SINGLE", "single"],
    ["variable speed", "variable"],
  ])("reads %s as a kind of speed", (cell, kind) =>
    expect(motorWith({ speed_kind: cell }).label.speedKind).toBe(kind),
  );

  it.each([
    ["continuous", "continuous"],
    ["CONT", "continuous"],
    ["Cont.", "continuous"],
    ["60", 60],
    ["30 min", 30],
  ])("reads %s as duty", (cell, duty) => expect(motorWith({ duty: cell }).label.duty).toBe(duty));

  it("writes a frame closed up and in capitals", () =>
    expect(motorWith({ frame: "56 y" }).label.frame).toBe("56Y"));
  it("reads a through-bolt mount", () =>
    expect(motorWith({ flange: "Through Bolt" }).label.flange).toBe("through-bolt"));
  it.each(["$1,249.50", "1.249,50", "1249,50", "$ 1249.50"])("reads %s as a price", (cell) =>
    expect(motorWith({ price_usd: cell }).priceUsd).toBe(1249.5),
  );
  it("keeps an inch mark inside an unquoted cell", () =>
    expect(motorWith({ description: 'fits 5/8" shafts' }).description).toBe('fits 5/8" shafts'));
});

describe("faults in the stock table", () => {
  it("names line, column, what was found and what was expected", () => {
    const text =
      "sku,volts,phase,frame,hp\nPIE-1,23O,1,56Y,1.5\nPIE-2,230,2,56Y,1.5\nPIE-3,230,1,Y56,one\nPIE-4,230,1,56Y,1\n";
    expect(complaints(text)).toEqual([
      'Line 2, column volts: "23O" found, expected numbers separated by /, such as 115/230 or 208-230.',
      'Line 3, column phase: "2" found, expected 1 or 3.',
      'Line 4, column frame: "Y56" found, expected digits and letters, such as 56Y.',
      'Line 4, column hp: "one" found, expected horsepower above zero, such as 1.5, 3/4 or 1-1/2.',
    ]);
    expect(parseMotors(text).motors.map(({ sku }) => sku)).toEqual(["PIE-4"]);
  });

  it.each([
    ["hp", "-1.5", "horsepower above zero, such as 1.5, 3/4 or 1-1/2"],
    ["hp", "1/0", "horsepower above zero, such as 1.5, 3/4 or 1-1/2"],
    ["service_factor", "0", "a number above zero, such as 1.65"],
    ["amps", "19.2/", "numbers separated by /, such as 115/230 or 208-230"],
    ["flange", "oval", "one of: square, round, through-bolt"],
    ["shaft", "splined", "one of: threaded, keyed"],
    ["speed_kind", "three", "one of: single, two, variable"],
    ["duty", "sometimes", "continuous, or minutes such as 60"],
    ["ambient_c", "hot", "degrees Celsius, such as 50"],
    ["efficiency_pct", "170", "a number above 0 and not above 100"],
    ["power_factor", "74", "a number above 0 and not above 1"],
    ["made_on", "06/30/2025", "a date written YYYY-MM-DD, such as 2025-06-30"],
    ["made_on", "2025-02-29", "a date written YYYY-MM-DD, such as 2025-06-30"],
    ["price_usd", "call us", "a price in dollars, such as 249.50"],
    ["in_stock", "-2", "a whole number, 0 or more"],
    ["in_stock", "1.5", "a whole number, 0 or more"],
  ])("refuses %s = %s", (column, cell, expected) => {
    expect(complaintAbout(column, cell)).toEqual([
      `Line 2, column ${column}: "${cell}" found, expected ${expected}.`,
    ]);
  });

  it("refuses the same stock number twice, whatever its case, and says where the first one stands", () => {
    const text = "sku,volts,phase,frame\nPIE-1,230,1,56Y\nPIE-2,230,1,56Y\npie-1,115,1,56J\n";
    expect(complaints(text)).toEqual([
      'Line 4, column sku: "pie-1" found, expected a value not used before (line 2 has it).',
    ]);
    expect(parseMotors(text).motors).toHaveLength(2);
  });

  it("refuses a row without a stock number", () =>
    expect(complaints("sku,volts,phase,frame\n,230,1,56Y\n")).toEqual([
      "Line 2, column sku: nothing found, expected a stock number.",
    ]));

  it("names every missing required column and reads nothing", () => {
    expect(parseMotors("sku,phase\nPIE-1,1\n").motors).toEqual([]);
    expect(complaints("sku,phase\nPIE-1,1\n")).toEqual([
      "Line 1, column volts: nothing found, expected a column named volts.",
      "Line 1, column frame: nothing found, expected a column named frame.",
    ]);
  });

  it("reports an unknown column and a column given twice, and reads the rest", () => {
    const { motors, errors } = parseMotors("sku,volts,phase,frame,colour,volts\nPIE-1,230,1,56Y,red,115\n");
    expect(motors[0]?.label.volts).toEqual([230]);
    expect(errors.map(({ line, column, value }) => ({ line, column, value }))).toEqual([
      { line: 1, column: "colour", value: "colour" },
      { line: 1, column: "volts", value: "volts" },
    ]);
    expect(errors[0]?.expected).toContain("one of the columns sku, maker, description");
    expect(errors[1]?.expected).toBe("each column once");
  });

  it("counts lines as an editor does, past quoted cells over several lines", () => {
    for (const ending of ["\n", "\r\n", "\r"]) {
      const lines = [
        "sku,volts,phase,frame,description",
        'PIE-1,230,1,56Y,"first',
        'second"',
        "",
        "PIE-2,230,9,56Y,x",
      ];
      expect(parseMotors(lines.join(ending)).errors.map(({ line }) => line)).toEqual([5]);
    }
  });

  it("reports a row with too few or too many cells", () =>
    expect(complaints("sku,volts,phase,frame\nPIE-1,230,1\nPIE-2,230,1,56Y,extra\n")).toEqual([
      'Line 2: "3 cells" found, expected 4 cells, as in the header row.',
      'Line 3: "5 cells" found, expected 4 cells, as in the header row.',
    ]));

  it("says where a quoted cell never ends", () =>
    expect(complaints('sku,volts,phase,frame\nPIE-1,230,1,56Y\nPIE-2,"230,1,56Y\nPIE-3,230,1,56Y\n')).toEqual(
      [
        'Line 3: "PIE-2,"230,1,56Y" found, expected each quoted cell to end with a double quote before the separator.',
      ],
    ));

  it.each(["", "\n\n", "\uFEFF"])("asks for a header row when there is none (%j)", (text) =>
    expect(complaints(text)).toEqual(["Line 1: nothing found, expected a header row."]),
  );

  it("never throws, whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."sku,volts;\t\"'\n\r 1/-Y\uFEFF") }), (text) => {
        const { motors, errors } = parseMotors(text);
        expect(motors.length + errors.length).toBeGreaterThan(0);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});

describe("writing the stock table", () => {
  const wording = fc
    .string({ unit: fc.constantFrom(..."ab ,;\t\"'/|\nµé1"), maxLength: 20 })
    .map((text) => text.trim());
  const code = fc.stringMatching(/^[A-Z]{1,6}-[0-9]{1,4}$/);
  const rating = (min: number, max: number) =>
    fc.integer({ min: min * 100, max: max * 100 }).map((hundredths) => hundredths / 100);
  const list = (min: number, max: number) => fc.array(rating(min, max), { minLength: 1, maxLength: 3 });
  const someOf = <T extends Record<string, fc.Arbitrary<unknown>>>(values: T) =>
    fc.record(values, { requiredKeys: [] });
  const label = someOf({
    hp: rating(0.25, 5),
    serviceFactor: rating(1, 2),
    totalHp: rating(0.25, 5.5),
    volts: list(100, 480),
    amps: list(1, 40),
    serviceFactorAmps: list(1, 45),
    rpm: fc.array(fc.integer({ min: 300, max: 3600 }), { minLength: 1, maxLength: 2 }),
    hz: fc.constantFrom([50], [60], [50, 60]),
    phase: fc.constantFrom(1 as const, 3 as const),
    frame: fc.constantFrom("48Y", "56Y", "56J", "56C", "143TC"),
    flange: fc.constantFrom("square" as const, "round" as const, "through-bolt" as const),
    shaft: fc.constantFrom("threaded" as const, "keyed" as const),
    speedKind: fc.constantFrom("single" as const, "two" as const, "variable" as const),
    duty: fc.oneof(fc.constant("continuous" as const), fc.integer({ min: 5, max: 60 })),
    ambientC: fc.integer({ min: 0, max: 60 }),
  });
  const shop = someOf({
    efficiencyPct: rating(1, 100),
    powerFactor: rating(0.01, 1),
    madeOn: fc
      .date({ min: new Date("2015-01-01"), max: new Date("2030-12-31"), noInvalidDate: true })
      .map((day) => day.toISOString().slice(0, 10)),
    priceUsd: rating(1, 2000),
  });
  const motors = fc.uniqueArray(
    fc
      .tuple(code, wording, wording, label, shop, fc.nat(99), fc.array(code, { maxLength: 3 }))
      .map(([sku, maker, description, stated, known, inStock, replaces]) => {
        return { sku, maker, description, label: stated, ...known, inStock, replaces } as StockMotor;
      }),
    { selector: ({ sku }) => sku, maxLength: 6 },
  );

  it("is read back to the same motors", () => {
    fc.assert(
      fc.property(motors, (stock) => {
        expect(parseMotors(formatMotors(stock))).toEqual({ motors: stock, errors: [] });
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  it("writes the columns in their fixed order", () => {
    expect(formatMotors([])).toBe(`${fullHeader}\n`);
  });
});
