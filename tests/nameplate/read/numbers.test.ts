import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

const label = (text: string) => valuesOf(readMessage(text)).nameplate;

describe("horsepower is written in every way there is (common practice, no source)", () => {
  test.each([
    ["1-1/2 HP", 1.5],
    ["1 1/2hp", 1.5],
    ["HP: 1½", 1.5],
    ["¾ horse", 0.75],
    [".75hp", 0.75],
    ["1,5 HP", 1.5],
    ["one and a half horse", 1.5],
    ["one-and-a-half hp", 1.5],
    ["a horse and a half", 1.5],
    ["three quarter horse", 0.75],
    ["half a horse", 0.5],
    ["uno y medio caballos", 1.5],
    ["caballo y medio", 1.5],
    ["tres cuartos de caballo", 0.75],
    ["one and 1/2 hp", 1.5],
    ["horsepower one, that is all", 1],
    ["HP 1.1/2", 1.5],
    ["l.5 HP", 1.5],
    ["HP I", 1],
    ["1.5/0.25 hp", 1.5],
    ["HP 3/4 - 1/8", 0.75],
    ["HP 15", 15],
  ])("%s", (text, hp) => {
    expect(label(text)).toEqual({ hp });
  });
});

describe("volts, amps and speed said in trade pairs, look-alikes and thousands", () => {
  test.each([
    ["one fifteen slash two thirty volts", { volts: [115, 230] }],
    ["two oh eight to two thirty volts", { volts: [208, 230] }],
    ["ciento quince o doscientos treinta voltios", { volts: [115, 230] }],
    ["1l5/23O V", { volts: [115, 230] }],
    ["230 or 115 volts", { volts: [230, 115] }],
    ["115/208-230V", { volts: [115, 208, 230] }],
    ["between 208 and 230 volts", { volts: [208, 230] }],
    ["sixteen point oh over eight point oh amps", { amps: [16, 8] }],
    ["19,2/9,6 amps", { amps: [19.2, 9.6] }],
    ["AMPS 1O.4", { amps: [10.4] }],
    ["9.5 amps high and 3.1 low", { amps: [9.5, 3.1] }],
    ["Max amps: 9.6 @ 230V, 19.2 @ 115V", { serviceFactorAmps: [9.6, 19.2], volts: [230, 115] }],
    ["thirty-four fifty rpm", { rpm: [3450] }],
    ["3.450 rpm", { rpm: [3450] }],
    ["RPM 3,450/1,725", { rpm: [3450, 1725] }],
    ["variable speed, 600-3450 rpm", { speedKind: "variable", rpm: [600, 3450] }],
  ])("%s", (text, expected) => {
    expect(label(text)).toEqual(expected);
  });
});

describe("Fahrenheit is converted to one decimal (the scales' definition: 0 °C = 32 °F, 100 °C = 212 °F)", () => {
  test.each([
    ["ambient 122F", 50],
    ["AMB 104 F", 40],
    ["max ambient 50°C", 50],
    ["AMB 105F", 40.6],
  ])("%s", (text, ambientC) => {
    expect(label(text)).toEqual({ ambientC });
  });
});
