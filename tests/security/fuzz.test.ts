import { expect, test } from "vitest";
import { fuzz } from "../bench/fuzz-evening.ts";
import { knowledge } from "../conversation/knowledge.ts";

// `.ci/run` sends 5,000; the bench (tests/bench/fuzz.ts) 100,000, longer ones, on the whole stock.
const MESSAGES = Number(process.env["FUZZED"] ?? 2500);

test("hostile and random messages through the whole engine: nothing thrown, nothing read from noise", async () => {
  const { faults, noise, messages } = await fuzz(MESSAGES, 2026, { longest: 80, motors: 3 });
  expect(faults).toEqual([]);
  expect(messages).toBe(MESSAGES);
  expect(noise).toBeGreaterThan(0.4 * MESSAGES);
}, 300_000);

/** Strings that make a careless pattern try every way there is; time is for the bench, here nothing may be thrown. */
const blowUps: Readonly<Record<string, string>> = {
  "one letter": "a".repeat(4000),
  digits: "1".repeat(4000),
  "spaces before a word": `${" ".repeat(4000)}x`,
  fractions: "1/".repeat(2000),
  volts: "115/230/".repeat(400),
  thousands: "1,000,".repeat(600),
  "open brackets": "((((".repeat(800),
  denials: "not no never ".repeat(250),
  "label words": "hp sf amps ".repeat(300),
  "line ends": "hp\n".repeat(1000),
  "combining marks": "e\u0301".repeat(2000),
  joiners: "\u200d".repeat(4000),
  "letters and digits": "A1B2C3D4E5".repeat(300),
  "half a pair": "\ud83d".repeat(2000),
};

test.each(Object.keys(blowUps))("a long string of %s is understood without a throw", (name) => {
  const { reading, intents } = knowledge.understand(blowUps[name] ?? "");
  expect(intents.length).toBeGreaterThan(0);
  expect(reading.readings.length).toBeLessThan(50);
});
