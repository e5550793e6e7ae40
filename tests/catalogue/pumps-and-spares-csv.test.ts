import { describe, expect, it } from "vitest";
import { formatPumps, parsePumps } from "../../src/catalogue/pumps-csv.ts";
import { formatSpares, parseSpares } from "../../src/catalogue/spares-csv.ts";
import { showRowError } from "../../src/catalogue/table.ts";

const pumpsText = `model,maker,description,flange,shaft,total_hp,frame_body,seal_sku,gasket_sku,impeller_sku,diffuser_sku,aliases
Marmalade F5,Bumbleford Pumpworks,"In-ground pump, strainer pot",square,threaded,1.65,56,SIMMER-1,HOOP-2,TWIRL-3,BONNET-4,MARMALADE-F5/N | Marmalade 1.65
Doorstop B7,,,round,keyed,1.25,,,,,,
`;

const sparesText = `sku,kind,description,fits,total_hp,capacitor_uf,price_usd,in_stock
SIMMER-1,shaft-seal,"Shaft seal set, 5/8 in shaft",Marmalade F5 | Marmalade H4,,,18.75,10
TWIRL-3,impeller,,Marmalade F5,1.65,,,0
JAR-8,capacitor,,,,25,16.2,4
`;

describe("the table of pumps", () => {
  it("says which motor a pump needs and which parts belong to it", () => {
    const { pumps, errors } = parsePumps(pumpsText);
    expect(errors).toEqual([]);
    expect(pumps).toHaveLength(2);
    expect(pumps[0]).toEqual({
      model: "Marmalade F5",
      maker: "Bumbleford Pumpworks",
      description: "In-ground pump, strainer pot",
      flange: "square",
      shaft: "threaded",
      totalHp: 1.65,
      frameBody: 56,
      sealSku: "SIMMER-1",
      gasketSku: "HOOP-2",
      impellerSku: "TWIRL-3",
      diffuserSku: "BONNET-4",
      aliases: ["MARMALADE-F5/N", "Marmalade 1.65"],
    });
    expect(pumps[1]).toMatchObject({ model: "Doorstop B7", shaft: "keyed", aliases: [] });
    expect(pumps[1]?.frameBody).toBeUndefined();
  });

  it("is written back as it was read", () =>
    expect(formatPumps(parsePumps(pumpsText).pumps)).toBe(pumpsText));

  it("refuses a pump that does not say what it needs", () => {
    const { pumps, errors } = parsePumps(
      "model,flange,shaft,total_hp,frame_body\nA,,keyed,1,56\nB,round,keyed,1,65\nC,round,keyed,,56\nD,round,keyed,1,56\nd,round,keyed,1,\n",
    );
    expect(pumps.map(({ model }) => model)).toEqual(["D"]);
    expect(errors.map(showRowError)).toEqual([
      "Line 2, column flange: nothing found, expected one of: square, round, through-bolt.",
      'Line 3, column frame_body: "65" found, expected 48 or 56.',
      "Line 4, column total_hp: nothing found, expected horsepower above zero, such as 1.5, 3/4 or 1-1/2.",
      'Line 6, column model: "d" found, expected a value not used before (line 5 has it).',
    ]);
  });
});

describe("the table of spares", () => {
  it("says what a part is and which pumps it fits", () => {
    const { spares, errors } = parseSpares(sparesText);
    expect(errors).toEqual([]);
    expect(
      spares.map(({ kind, fits, totalHp, capacitorUf, priceUsd, inStock }) => [
        kind,
        fits,
        totalHp ?? capacitorUf,
        priceUsd,
        inStock,
      ]),
    ).toEqual([
      ["shaft-seal", ["Marmalade F5", "Marmalade H4"], undefined, 18.75, 10],
      ["impeller", ["Marmalade F5"], 1.65, undefined, 0],
      ["capacitor", [], 25, 16.2, 4],
    ]);
  });

  it("is written back as it was read", () =>
    expect(formatSpares(parseSpares(sparesText).spares)).toBe(sparesText));

  it("refuses an unknown kind and an empty one", () => {
    const { spares, errors } = parseSpares("sku,kind,fits\nX-1,wheel,A\nX-2,,A\nX-3,Shaft Seal,A\n");
    expect(spares.map(({ sku, kind }) => [sku, kind])).toEqual([["X-3", "shaft-seal"]]);
    const kinds = "one of: shaft-seal, gasket, impeller, diffuser, base, capacitor";
    expect(errors.map(showRowError)).toEqual([
      `Line 2, column kind: "wheel" found, expected ${kinds}.`,
      `Line 3, column kind: nothing found, expected ${kinds}.`,
    ]);
  });
});
