import { describe, expect, test } from "vitest";
import { readMessage, valuesOf } from "../../../../src/nameplate/read.ts";

// How people tell of a measured or delivered voltage: common practice, no source.
describe("a single voltage that arrives at the pump is the supply's", () => {
  test.each([
    ["there's 120 volts at it. The motor tag says 1 hp", 120],
    ["Plate says 1.5 HP, 115/230. my pump is fed 240.", 240],
    ["Power at that pump is 240.", 240],
    ["240 volts is reaching it; the motor however is a brick.", 240],
    ["El motor dice 2 HP. El eléctrico reporta 208 voltios en la bomba", 208],
  ])("%s", (text, expected) => {
    const { nameplate, site } = valuesOf(readMessage(text));
    expect(site.supplyVolts).toBe(expected);
    expect(nameplate.volts ?? []).not.toContain(expected);
  });

  test.each(["HP 1. 230 is the voltage", "the tag has 230 volts on it", "speed 3450, voltage 230"])(
    "what the label says stays the label's: %s",
    (text) => {
      const { nameplate, site } = valuesOf(readMessage(text));
      expect(nameplate.volts).toEqual([230]);
      expect(site.supplyVolts).toBeUndefined();
    },
  );
});

describe("a figure that is claimed or put right stays the customer's", () => {
  test.each([
    ["breaker 15 amp no 20 amp", 20],
    ["If I had a 2 hp would my 20 amp breaker hold? currently 1.5hp", 20],
  ])("%s", (text, amps) => expect(valuesOf(readMessage(text)).site.breakerAmps).toBe(amps));
});
