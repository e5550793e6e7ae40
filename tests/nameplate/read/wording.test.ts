import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

// How people write at a parts counter: common practice, no source.
const read = (text: string) => valuesOf(readMessage(text));

describe("the label is quoted in ordinary words", () => {
  test.each([
    ["HP 1/3", { hp: 1 / 3 }],
    ["insulation B, 30 minute duty", { insulationClass: "B", duty: 30 }],
    ["2/3 hp motor", { hp: 2 / 3 }],
    ["3/4 HP, 12½ amps", { hp: 0.75, amps: [12.5] }],
    ["volts are 115, oops no 230", { volts: [230] }],
    ["runs on 230 volts per the tag", { volts: [230] }],
    ["Got anything for this: 1.5 hp, 115/230", { hp: 1.5, volts: [115, 230] }],
    ["60 hz, whatever that is", { hz: [60] }],
    ["According to the tag it draws 7.2 amps at 115 volts", { amps: [7.2], volts: [115] }],
  ])("%s", (text, expected) => {
    expect(read(text)).toEqual({ nameplate: expected, site: {}, unreadable: [] });
  });

  test("everything but one rating", () => {
    const { nameplate, unreadable } = read("I can read everything but the rpm: HP 1, FR 56J");
    expect({ nameplate, unreadable }).toEqual({ nameplate: { hp: 1, frame: "56J" }, unreadable: ["rpm"] });
  });

  test("a price in cents with the letter alone", () => {
    expect(read("power is 29c per kWh here").site).toEqual({ pricePerKwh: 0.29 });
  });
});

describe("a carton and a wish are no label", () => {
  test.each(["The cardboard box says 1 HP 115V", "Someday I'd love a 3 hp motor", "Box says 3/4 HP"])(
    "%s",
    (text) => {
      expect(read(text).nameplate).toEqual({});
    },
  );

  test("a breaker box is no carton", () => {
    expect(read("the breaker box says 20 amps on that breaker").site.breakerAmps).toBe(20);
  });
});
