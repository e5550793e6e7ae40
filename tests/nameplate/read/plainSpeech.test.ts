import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

const read = (text: string) => valuesOf(readMessage(text));

describe("the same said otherwise is read the same", () => {
  test.each([
    [
      "the plate says 1.5 hp",
      "the plate clearly says um 1.5 hp",
      "the plate states 1.5 hp",
      'the plate says "1.5" hp',
    ],
    ["it's not a 1 hp, it's 3/4", "it is not a 1 hp, it is like 3/4"],
    [
      "the sf isn't on there, volts 230",
      "the sf is not on there, volts 230",
      "the sf is not on there 😩 volts 230",
    ],
    ["2 hp, 230. Thanks", "2 hp, 230 Thanks so much", "2 hp, 230 🙏", "2 hp, 230. Thanks lol"],
    ["can't read the amps, hp 1", "cannot read the amps, hp 1", "can not read the amps, hp 1"],
  ])("%s", (plain, ...others) => {
    for (const other of others) expect(read(other)).toEqual(read(plain));
  });
});

describe("speech around a label is no part of it", () => {
  test.each([
    [
      "asset,hp,sf,volts,rpm\nPMP-2,2,1.30,230,3450. My cell is out of order.",
      { hp: 2, serviceFactor: 1.3, volts: [230], rpm: [3450] },
    ],
    ["Filter sits at 15 psi The plate: 3 HP 230 V", { hp: 3, volts: [230] }],
    ["ok top row: HP, V, RPM\nunder it: 1.5, 230, 3450", { hp: 1.5, volts: [230], rpm: [3450] }],
    ["The flange is square with a hole in each corner", { flange: "square" }],
    ["I'd love a 2 hp next time but what's in there now is a 1 hp", { hp: 1 }],
    ["HP l/2, VOLTS llS", { hp: 0.5, volts: [115] }],
    ["HP 2, 230 volts. I'm half asleep.", { hp: 2, volts: [230] }],
    ["HP 2, amps 9.6. It's 2 am here.", { hp: 2, amps: [9.6] }],
    ["Good evening. HP | SF | V\n2 | 1.3 | 230", { hp: 2, serviceFactor: 1.3, volts: [230] }],
    ["PH     HZ     SF\n1      60     1.4. I have two dogs.", { phase: 1, hz: [60], serviceFactor: 1.4 }],
    ["1.1 kW, 230 V. Power factor is given as 0.92.", { kw: 1.1, volts: [230] }],
    ["hp 15 (thats what it says, fifteen, I know)", { hp: 15 }],
    ["A 5,2 / 2.850 rpm / 50 Hz", { amps: [5.2], rpm: [2850], hz: [50] }],
    ["Two amp lines: full load 8.0 and below that SF amps 9.4", { amps: [8], serviceFactorAmps: [9.4] }],
  ])("%s", (text, expected) => {
    expect(read(text).nameplate).toEqual(expected);
  });
});

test("in a message that shouts, words are no numbers of a maker", () => {
  expect(read("MODEL NUMBER UNREADABLE, SERIAL MISSING, HP 2")).toEqual({
    nameplate: { hp: 2 },
    site: {},
    unreadable: ["modelNumbers", "serialNumber"],
  });
});
