import { describe, expect, it } from "vitest";
import { motorBySku, pumpByModel, sparesFor, sparesOfWork } from "../../src/catalogue/catalogue.ts";
import { parseMotors } from "../../src/catalogue/motors-csv.ts";
import { parsePumps } from "../../src/catalogue/pumps-csv.ts";
import { parseSpares } from "../../src/catalogue/spares-csv.ts";
import type { Catalogue } from "../../src/catalogue/types.ts";
import { workKeys } from "../../src/matching/parts.ts";

const catalogue: Catalogue = {
  motors: parseMotors("sku,volts,phase,frame\nPIE-101,230,1,56Y\nPIE-202,115,1,48Y\n").motors,
  pumps:
    parsePumps(`model,flange,shaft,total_hp,frame_body,seal_sku,gasket_sku,impeller_sku,diffuser_sku,aliases
Marmalade F5,square,threaded,1.65,56,SIMMER-2,HOOP-1,TWIRL-165,BONNET-165,MARM F5/N
Gallivant B7,square,threaded,1.125,48,,,,,
`).pumps,
  spares: parseSpares(`sku,kind,fits,total_hp
SIMMER-1,shaft-seal,Marmalade F5 | Gallivant B7,
SIMMER-2,shaft-seal,Marmalade F5,
HOOP-1,gasket,Marmalade F5,
TWIRL-125,impeller,Marmalade F5,1.25
TWIRL-165,impeller,Marmalade F5,1.65
TWIRL-220,impeller,Marmalade F5,2.2
BONNET-165,diffuser,Marmalade F5,1.65
PLINTH-1,base,MARMALADE-F5,
JAR-25,capacitor,,
`).spares,
  importedOn: "2026-11-25",
};

/** Stock numbers of the parts for some work on a pump, by the keys of the work. */
function partsFor(model: string, keys: string[], totalHp?: number): (string | undefined)[] {
  const pump = pumpByModel(catalogue, model);
  if (!pump) throw new Error(`no pump ${model}`);
  const work = keys.map((key) => ({ key }));
  return sparesFor(catalogue, pump, work, totalHp).map(({ spare }) => spare?.sku);
}

describe("look-ups", () => {
  it("finds a motor by its stock number in any spelling", () => {
    expect(motorBySku(catalogue, "pie 101")?.label.frame).toBe("56Y");
    expect(motorBySku(catalogue, "PIE-10")).toBeUndefined();
  });

  it("finds a pump by its model or an alias in any spelling", () => {
    for (const typed of ["marmalade-f5", "MARMALADEF5", "marm f5/n"])
      expect(pumpByModel(catalogue, typed)?.model).toBe("Marmalade F5");
    for (const typed of ["Marmalade", "F5", "", "-"]) expect(pumpByModel(catalogue, typed)).toBeUndefined();
  });
});

describe("spares for a motor change", () => {
  it("knows only work that the matching rules may ask for", () =>
    expect(workKeys).toEqual(expect.arrayContaining(Object.keys(sparesOfWork))));

  it("takes the seal and the gasket that the pump lists", () =>
    expect(partsFor("Marmalade F5", ["seal-and-gasket"])).toEqual(["SIMMER-2", "HOOP-1"]));

  it("keeps the order of the work and takes nothing for work without parts", () =>
    expect(partsFor("Marmalade F5", ["clearance", "base", "seal-and-gasket"])).toEqual([
      "PLINTH-1",
      "SIMMER-2",
      "HOOP-1",
    ]));

  it("takes a seal that fits where the pump lists none, and says when there is nothing", () =>
    expect(partsFor("Gallivant B7", ["seal-and-gasket", "impeller-and-diffuser"])).toEqual([
      "SIMMER-1",
      undefined,
      undefined,
      undefined,
    ]));

  it("takes the impeller and diffuser of the pump when no other motor is meant", () =>
    expect(partsFor("Marmalade F5", ["impeller-and-diffuser"])).toEqual(["TWIRL-165", "BONNET-165"]));

  it("matches the impeller to the new motor's total horsepower, never above what it carries", () => {
    const impellerFor = (totalHp: number) => partsFor("Marmalade F5", ["impeller-and-diffuser"], totalHp)[0];
    expect(impellerFor(2.2)).toBe("TWIRL-220");
    expect(impellerFor(2.156)).toBe("TWIRL-220"); // 0.98 of 2.2: label rounding
    expect(impellerFor(2.15)).toBeUndefined(); // 0.977 of 2.2 overloads, 1.30 of 1.65 wastes
    expect(impellerFor(1.815)).toBe("TWIRL-165"); // 1.10 of 1.65
    expect(impellerFor(3.45)).toBeUndefined();
  });

  it("never offers a capacitor for a pump: it goes by the motor's label", () =>
    expect(partsFor("Marmalade F5", ["own-capacitor"])).toEqual([]));

  it("names each part once", () => expect(partsFor("Marmalade F5", ["base", "base"])).toEqual(["PLINTH-1"]));
});
