import { describe, expect, test } from "vitest";
import { judge } from "../judging.ts";

describe("shaft", () => {
  // C keyed 3/16 in, J threaded 7/16-20 UNF: NEMA MG 1 Parts 4 and 18. Y threaded: common practice, no source.
  test.each([
    ["56J", "56J", "holds"],
    ["56Y", "56Y", "holds"],
    ["56C", "56C", "holds"],
    ["56Y", "56J", "holds"], // the face is another rule
    ["56J", "56C", "rules-out"],
    ["56C", "56J", "rules-out"],
    ["56C", "56Y", "rules-out"],
  ])("the impeller of a %s on a %s %s", (old, fresh, outcome) => {
    expect(judge("shaft", { old: { frame: old } }, { frame: fresh }).outcome).toBe(outcome);
  });

  test("stated words beat the letter, on both sides", () => {
    expect(judge("shaft", { old: { frame: "56J", shaft: "keyed" } }, { frame: "56C" }).outcome).toBe("holds");
    expect(judge("shaft", { old: { frame: "56J" } }, { frame: "56J", shaft: "keyed" }).outcome).toBe(
      "rules-out",
    );
  });

  test("Z behind the letter means a shaft outside the standard (NEMA MG 1 Part 4), so it is asked", () => {
    expect(judge("shaft", { old: { frame: "56CZ" } }, { frame: "56C" })).toMatchObject({
      outcome: "not-known",
      needs: ["shaft"],
    });
  });

  test("without a frame either the frame or the shaft would tell, the frame more easily", () => {
    expect(judge("shaft", { old: {} }, { frame: "56Y" }).needs).toEqual(["frame", "shaft"]);
  });
});
