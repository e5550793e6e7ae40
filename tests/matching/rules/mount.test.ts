import { describe, expect, test } from "vitest";
import { shaftHeightIn } from "../../../src/engineering/frames.ts";
import { judge } from "../judging.ts";

describe("mount: the faces of the usual frames", () => {
  // Y square, J and C round on pool motors: common practice, no source.
  test.each([
    ["56Y", "56Y", "holds"],
    ["48Y", "48Y", "holds"],
    ["56J", "56J", "holds"],
    ["56J", "56C", "holds"], // 56J has the 56C face: NEMA MG 1 Part 4 and Part 18; the shaft is another rule
    ["56C", "56J", "holds"],
    ["56Y", "56J", "rules-out"],
    ["56Y", "56C", "rules-out"],
    ["48Y", "56J", "rules-out"],
    ["56C", "48Y", "rules-out"],
    ["48Y", "56Y", "needs-work"],
    ["56Y", "48Y", "needs-work"],
    ["48C", "56C", "needs-work"],
  ])("%s replaced by %s %s", (old, fresh, outcome) => {
    expect(judge("mount", { old: { frame: old } }, { frame: fresh }).outcome).toBe(outcome);
  });

  test("48 against 56 asks for a base and clearance: shafts sit at 3.0 and 3.5 in (NEMA MG 1 Part 4, number / 16)", () => {
    const finding = judge("mount", { old: { frame: "48Y" } }, { frame: "56Y" });
    expect(finding.work.map(({ key }) => key)).toEqual(["base", "clearance"]);
    expect([shaftHeightIn(48), shaftHeightIn(56)]).toEqual([3, 3.5]);
  });

  test("48C against 56C also asks for a look at the bolts: circles of 3.75 and 5.875 in (NEMA MG 1 Part 4, AJ)", () => {
    const finding = judge("mount", { old: { frame: "48C" } }, { frame: "56C" });
    expect(finding.work.map(({ key }) => key)).toContain("bolt-circle");
  });
});

describe("mount: words beat letters", () => {
  test("a Y motor held by through-bolts does not take a square-face one (common practice, no source)", () => {
    const old = { frame: "48Y", flange: "through-bolt" } as const;
    expect(judge("mount", { old }, { frame: "48Y" })).toMatchObject({
      outcome: "rules-out",
      reason: "mount.through-bolt",
    });
    expect(judge("mount", { old }, { frame: "48J" }).outcome).toBe("rules-out");
    expect(judge("mount", { old }, { frame: "48Y", flange: "through-bolt" }).outcome).toBe("holds");
    expect(judge("mount", { old }, { frame: "56Y", flange: "through-bolt" }).outcome).toBe("needs-work");
  });

  test("the stock row's words count as well", () => {
    const finding = judge("mount", { old: { frame: "48Y" } }, { frame: "48Y", flange: "through-bolt" });
    expect(finding.outcome).toBe("rules-out");
  });

  test("a face from a letter is marked inferred, a stated one is not", () => {
    const stated = { frame: "56", flange: "square" } as const;
    expect(judge("mount", { old: stated }, stated).inferred).toBe(false);
    expect(judge("mount", { old: { frame: "56Y" } }, stated).inferred).toBe(true);
  });
});

describe("mount: what is not known", () => {
  test.each([
    ["no frame at all", {}, ["frame", "flange"]],
    ["a frame number without its letter", { frame: "56" }, ["flange"]],
    ["a frame letter outside the custom", { frame: "143T" }, ["flange"]],
    ["a face without 48 or 56", { flange: "square" }, ["frame"]],
  ] as const)("%s", (_, old, needs) => {
    expect(judge("mount", { old }, { frame: "56Y" })).toMatchObject({ outcome: "not-known", needs });
  });

  test("a face alone can rule out, whatever the body", () => {
    expect(judge("mount", { old: { flange: "round" } }, { frame: "56Y" }).outcome).toBe("rules-out");
  });

  test("145TC has the 56C face but a 7/8 in shaft (NEMA MG 1 Part 4): the desk decides, nobody is asked", () => {
    expect(judge("mount", { old: { frame: "56C" } }, { frame: "145TC" })).toMatchObject({
      outcome: "not-known",
      reason: "mount.uncommon-body",
      needs: [],
    });
  });
});
