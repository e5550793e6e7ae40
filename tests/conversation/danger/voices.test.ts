import { describe, expect, test } from "vitest";
import { detectDanger } from "../../../src/conversation/danger.ts";
import voices from "./voices.json" with { type: "json" };

/** Short messages in many voices, written while the detector grew: it must not forget one of them. */
describe.each(Object.entries(voices))("%s", (hazard, texts) => {
  test("is told apart in every voice", () => {
    expect(texts.length).toBeGreaterThan(100);
    expect(texts.filter((text) => (detectDanger(text)?.hazard ?? "none") !== hazard)).toEqual([]);
  });
});
