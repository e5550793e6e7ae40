import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../src/nameplate/read.ts";

// How people write at a parts counter: common practice, no source.
const read = (text: string) => valuesOf(readMessage(text));

describe("the label is quoted in ordinary words", () => {
  test.each([
    ["HP 1/3", { hp: 1 / 3 }],
    ["60 hz, whatever that is", { hz: [60] }],
    ["According to the tag it draws 7.2 amps at 115 volts", { amps: [7.2], volts: [115] }],
  ])("%s", (text, expected) => {
    expect(read(text)).toEqual({ nameplate: expected, site: {}, unreadable: [] });
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
