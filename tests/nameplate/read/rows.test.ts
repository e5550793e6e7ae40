import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

const label = (text: string) => valuesOf(readMessage(text)).nameplate;

// How labels are laid out is common practice, no source.
describe("a row with a figure for each voltage or speed", () => {
  test("belongs to the name before it", () => {
    expect(label("VOLTS   115    230\nAMPS    15.8   7.9\nSFA     17.6   8.8")).toEqual({
      volts: [115, 230],
      amps: [15.8, 7.9],
      serviceFactorAmps: [17.6, 8.8],
    });
  });

  test("may stand under HIGH and LOW", () => {
    expect(label("        HIGH    LOW\nRPM     3450    1725\nAMPS    10.6    3.2")).toEqual({
      rpm: [3450, 1725],
      amps: [10.6, 3.2],
    });
  });

  test("is none when another rating follows on the line", () => {
    expect(label("VOLTS   230    PH 1\nAMPS    9.6   HZ 60")).toEqual({
      volts: [230],
      phase: 1,
      amps: [9.6],
      hz: [60],
    });
  });
});
