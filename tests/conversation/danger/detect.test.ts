import { describe, expect, test } from "vitest";
import { detectDanger } from "../../../src/conversation/danger.ts";

/** Kept apart from the corpus: one sentence for each idea the detector rests on. */
const dangers: readonly (readonly [text: string, hazard: string])[] = [
  ["lol got zapped when I touched the ladder", "shock"],
  ["kid got bit by the pool light", "shock"],
  ["it bites me when I touch it", "shock"],
  ["me da toques la escalera", "shock"],
  ["me dio corriente cuando toque la bomba", "shock"],
  ["hot to touch and smells like burning plastic", "fire"],
  ["huele a quemado y sale humo", "fire"],
  ["is it bad that the breaker keeps tripping?", "trip"],
  ["brekaer keeps triping", "trip"],
  ["popped the breaker again", "trip"],
  ["keeps kicking the GFCI", "trip"],
  ["breaker won't stay on", "trip"],
  ["blows the fuse", "trip"],
  ["se baja la pastilla cuando prendo la bomba", "trip"],
  ["there is water in the junction box", "water"],
  ["motor got flooded and is still plugged in", "water"],
  ["hay agua en la caja del breaker", "water"],
];

const harmless: readonly (readonly [why: string, text: string])[] = [
  ["resolved", "it tripped last year, electrician fixed it"],
  ["denied", "no smoke or burning smell, never trips"],
  ["printed", "label says THERMALLY PROTECTED and risk of electric shock"],
  ["hypothetical", "what if it trips"],
  ["hypothetical", "would a bigger one trip the breaker?"],
  ["figurative", "the price shocked me"],
  ["figurative", "fire away"],
  ["figurative", "that is a smoking deal"],
  ["chemical", "I have to shock the pool, pool shock is expensive"],
  ["chemical", "the chlorine is burning my eyes"],
  ["a namesake", "20 amp breaker, GFCI breaker installed"],
  ["a namesake", "trip to the store"],
  ["a plain leak", "there is a drip at the union"],
];

describe("danger that counts", () => {
  test.each(dangers)("%s", (text, hazard) => {
    expect(detectDanger(text)?.hazard).toBe(hazard);
  });
});

describe("no danger", () => {
  test.each(harmless)("%s: %s", (_, text) => {
    expect(detectDanger(text)).toBeNull();
  });
});

describe("the finding", () => {
  test("gives the customer's own words and where they stand", () => {
    const text = "1 hp 115 V. My wife got ZAPPED by it";
    const found = detectDanger(text);
    expect(found?.words).toBe("ZAPPED");
    expect(text.slice(found?.span.start, found?.span.end)).toBe(found?.words);
  });

  test("names shock before fire before water before trip", () => {
    expect(detectDanger("it trips, smokes and shocked me")?.hazard).toBe("shock");
    expect(detectDanger("it trips and smokes")?.hazard).toBe("fire");
    expect(detectDanger("it trips, there is water in the junction box")?.hazard).toBe("water");
  });

  test("a danger of today counts after one that is over", () => {
    expect(detectDanger("it tripped last year, electrician fixed it. Now it is smoking")?.hazard).toBe(
      "fire",
    );
  });
});
