import { describe, expect, test } from "vitest";
import { detectDanger, judgeMentions } from "../../../src/conversation/danger.ts";
import { dangers, harmless, pairs } from "./sentences.ts";

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

  test("keeps what was put aside, and why", () => {
    expect(judgeMentions("no smoke, but it tripped")).toEqual([
      expect.objectContaining({ hazard: "fire", words: "smoke", dismissed: "denied" }),
      expect.objectContaining({ hazard: "trip", words: "tripped", dismissed: undefined }),
    ]);
  });
});

describe("context turns on small words", () => {
  test.each(pairs)("%s | %s", (present, absent) => {
    expect(detectDanger(present)).not.toBeNull();
    expect(detectDanger(absent)).toBeNull();
  });
});
