import fc from "fast-check";
import { expect, test } from "vitest";
import { isConcept } from "../../../src/conversation/danger/lexicon.ts";
import { conceptNamesIn } from "../../../src/conversation/danger/pattern.ts";
import { fireSense } from "../../../src/conversation/danger/senses/fire.ts";
import { shockSense } from "../../../src/conversation/danger/senses/shock.ts";
import { tripSense } from "../../../src/conversation/danger/senses/trip.ts";
import { waterSense } from "../../../src/conversation/danger/senses/water.ts";
import { detectDanger } from "../../../src/conversation/danger.ts";
import { dangers, harmless } from "./sentences.ts";

const seed = { seed: 20_260_101, numRuns: 300 };
const anyText = fc.oneof(fc.string({ unit: "binary", maxLength: 300 }), fc.string({ maxLength: 300 }));
const danger = fc.constantFrom(...dangers.map(([text]) => text));
const plain = fc.constantFrom(...harmless.map(([, text]) => text));
const separator = fc.constantFrom(". ", "\n", "! ", "\n\n", "? ");

test("never throws, and points into the message", () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const found = detectDanger(text);
      if (found) expect(text.slice(found.span.start, found.span.end)).toBe(found.words);
    }),
    seed,
  );
});

test("a danger is found before, after and between harmless sentences", () => {
  fc.assert(
    fc.property(plain, separator, danger, separator, plain, (before, a, middle, b, after) => {
      expect(detectDanger(`${before}${a}${middle}${b}${after}`)).not.toBeNull();
    }),
    seed,
  );
});

test("a danger is found in any noise on lines of its own", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), danger, (noise, text) => {
      expect(detectDanger(`${noise.replace(/["“:]/g, "")}\n\n${text}`)).not.toBeNull();
    }),
    seed,
  );
});

test("harmless sentences together stay harmless", () => {
  fc.assert(
    fc.property(plain, plain, (first, second) => {
      expect(detectDanger(`${first}. ${second}`)).toBeNull();
    }),
    seed,
  );
});

test("capitals and missing marks change nothing", () => {
  for (const [text, hazard] of dangers) {
    expect(detectDanger(text.toUpperCase())?.hazard).toBe(hazard);
    expect(detectDanger(text.replace(/[.,?!']/g, ""))?.hazard).toBe(hazard);
  }
});

test("every concept a sense names is in the lexicon", () => {
  const named = [...shockSense, ...fireSense, ...waterSense, ...tripSense].flatMap(conceptNamesIn);
  expect(named.length).toBeGreaterThan(100);
  expect(named.filter((name) => !isConcept(name))).toEqual([]);
});
