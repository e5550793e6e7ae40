import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read/message.ts";

const read = (text: string) => valuesOf(readMessage(text)).nameplate;

// How labels come out of a text scanner or from a loose thumb is common practice, no source.
describe("stray blanks in words and figures of a label", () => {
  test.each([
    ["SF 1. 25  H P 1  V OLTS 23 0  R PM 34 50", { serviceFactor: 1.25, hp: 1, volts: [230], rpm: [3450] }],
    ["HP 1 .5 AMPS 19 .2/9 .6 VOLTS 115 /23 0", { hp: 1.5, amps: [19.2, 9.6], volts: [115, 230] }],
    ["VOLTS 1 15/230 AMPS 1 1.6/5.8 FR 4 8Y", { volts: [115, 230], amps: [11.6, 5.8], frame: "48Y" }],
    ["A M P S 9.8  F R A M E 56Y", { amps: [9.8], frame: "56Y" }],
    ["RPM 3'450 H P 2", { rpm: [3450], hp: 2 }],
    ["1 .5 hp, 3 450 rpm", { hp: 1.5, rpm: [3450] }],
  ])("%s", (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test.each([
    ["HP 1 .75 KW 230 V", { hp: 1, kw: 0.75, volts: [230] }],
    ["SF 1. 60 HZ", { serviceFactor: 1, hz: [60] }],
    ["PH AMPS 1 8.2", { phase: 1, amps: [8.2] }],
    ["RATED LOAD AMPS 10.4/5.2 115/230V", { amps: [10.4, 5.2], volts: [115, 230] }],
    ["FLA 10.0 SFA 11.2 3450 RPM", { amps: [10], serviceFactorAmps: [11.2], rpm: [3450] }],
  ])("two figures stay two: %s", (text, expected) => {
    expect(read(text)).toEqual(expected);
  });
});
