import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

// How people tell a label over the telephone: common practice, no source.
const read = (text: string) => valuesOf(readMessage(text)).nameplate;

describe("values told over several sentences or far from their names", () => {
  test.each([
    ["There are two lines for amps. The first is 13.6. The second is 6.8.", { amps: [13.6, 6.8] }],
    ["There are two voltages listed. The low one is 115. The high one is 230.", { volts: [115, 230] }],
    ["On 115 it would be 14.8. On 230 it would be 7.4.", { amps: [14.8, 7.4], volts: [115, 230] }],
    ["Two voltages are listed. 115 and 230.", { volts: [115, 230] }],
    ["3450 / 60 / 1 for rpm, hz and phase", { rpm: [3450], hz: [60], phase: 1 }],
    ["the label goes HP V A then underneath 1.5 230 9.2", { hp: 1.5, volts: [230], amps: [9.2] }],
    ["left column hp sf right column 1.5 1.1", { hp: 1.5, serviceFactor: 1.1 }],
    [
      "I see two numbers for amps 15.2/7.6 and two for volts 115/230",
      { amps: [15.2, 7.6], volts: [115, 230] },
    ],
    ["it is wired for 240 and the motor plate says 230", { volts: [230] }],
    ["plate says 3450 and 230", { rpm: [3450], volts: [230] }],
    ["230 for volts, 8.8 for amps, 1 for phase", { volts: [230], amps: [8.8], phase: 1 }],
    ["amps 9.4, max 10.8", { amps: [9.4], serviceFactorAmps: [10.8] }],
    ["amps are 14.4 on one line and 7.2 on the next", { amps: [14.4, 7.2] }],
    ["fifty six wye frame", { frame: "56Y" }],
    ["volts two oh eight to two thirty slash four sixty", { volts: [208, 230, 460] }],
    ["1.5 (hp), 1.1 (sf), 56Y (frame)", { hp: 1.5, serviceFactor: 1.1, frame: "56Y" }],
    ["1.5=hp 230=volts", { hp: 1.5, volts: [230] }],
    ['says "HP 1-1/2" & "THP 1.95" & "RPM 3450"', { hp: 1.5, totalHp: 1.95, rpm: [3450] }],
    ["VOLTS 115\n/230", { volts: [115, 230] }],
    ["volts uno quince diagonal dos treinta", { volts: [115, 230] }],
    ["H.P. I V. ll5/23O", { hp: 1, volts: [115, 230] }],
    ["built 1956, motor 3/4", { hp: 0.75 }],
  ])("%s", (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test("what the wiring was changed to is the supply, not the label", () => {
    const { nameplate, site } = valuesOf(readMessage("They rewired it from 230 to 115. Plate reads 115/230"));
    expect({ nameplate, site }).toEqual({ nameplate: { volts: [115, 230] }, site: { supplyVolts: 115 } });
  });

  test("a name whose figure cannot be read is not answered by the next figure", () => {
    expect(read("I can't read the amps. It is 9 years old")).toEqual({});
  });
});
