import { describe, expect, test } from "vitest";
import type { Nameplate } from "../../../src/nameplate/vocabulary.ts";
import { judge } from "../judging.ts";

const judged = (old: Nameplate, fresh: Nameplate) => judge("speed", { old }, fresh);

describe("speed: poles", () => {
  // Synchronous speed 120 x Hz / poles (definition); label speeds of 2- and 4-pole motors at 50 and 60 Hz:
  // NEMA MG 1 10.32 (section from memory) and handbook pages.
  test.each([
    [{ rpm: [3450] }, { rpm: [3500] }, "holds"],
    [{ rpm: [3450] }, { rpm: [3400] }, "holds"],
    [{ rpm: [1725] }, { rpm: [1750] }, "holds"],
    [{ rpm: [3450] }, { rpm: [1725] }, "rules-out"],
    [{ rpm: [1725] }, { rpm: [3450] }, "rules-out"],
    [{ rpm: [2850], hz: [50] }, { rpm: [3450], hz: [50, 60] }, "holds"],
    [{ rpm: [1425], hz: [50] }, { rpm: [1725], hz: [60] }, "holds"], // the frequency is another rule
    [{ rpm: [1425], hz: [50] }, { rpm: [2850], hz: [50] }, "rules-out"],
    [{ rpm: [2850] }, { rpm: [3450] }, "holds"], // 2850 is a 2-pole speed at 50 Hz whether said or not
  ])("%j replaced by %j %s", (old, fresh, outcome) => {
    expect(judged(old, fresh).outcome).toBe(outcome);
  });

  test("the top speed of a two-speed label decides, in whichever order it stands", () => {
    expect(judged({ rpm: [1725, 3450] }, { rpm: [3450, 1725] }).outcome).toBe("holds");
    expect(judged({ rpm: [1725, 3450] }, { rpm: [1725] }).outcome).toBe("rules-out");
  });

  test("poles rule out even where the kind is not known", () => {
    expect(judged({ rpm: [3450, 2850, 1725] }, { rpm: [1725] }).outcome).toBe("rules-out");
  });

  test("a rotor cannot outrun its field, so 3200 rpm at 60 Hz is a 2-pole speed", () => {
    expect(
      judged({ rpm: [3450, 600], speedKind: "variable" }, { rpm: [3200], speedKind: "variable" }).outcome,
    ).toBe("holds");
  });

  test("a speed that no pole count explains is asked again", () => {
    expect(judged({ rpm: [4000] }, { rpm: [3450] })).toMatchObject({
      outcome: "not-known",
      reason: "speed.odd",
      needs: ["rpm"],
    });
  });
});

describe("speed: kinds (common practice, no source)", () => {
  const single: Nameplate = { rpm: [3450] };
  const two: Nameplate = { rpm: [3450, 1725] };
  const variable: Nameplate = { rpm: [3450, 600], speedKind: "variable" };

  test.each([
    ["single to two", single, two, "speed.to-two"],
    ["single to variable", single, variable, "speed.to-variable"],
    ["two to single", two, single, "speed.to-single"],
    ["two to variable", two, variable, "speed.to-variable"],
    ["variable to single", variable, single, "speed.to-single"],
    ["variable to two", variable, two, "speed.variable-to-two"],
  ])("%s needs a control that can work it", (_, old, fresh, reason) => {
    const finding = judged(old, fresh);
    expect(finding).toMatchObject({ outcome: "needs-work", reason });
    expect(finding.work.map(({ key }) => key)).toEqual(["control-and-wiring"]);
  });

  test("words beat the count of figures: top and bottom of a variable-speed motor are two figures", () => {
    expect(judged(variable, { rpm: [3450], speedKind: "variable" }).outcome).toBe("holds");
  });

  test("2850/3450 rpm at 50/60 Hz is one speed named twice", () => {
    expect(judged({ rpm: [2850, 3450], hz: [50, 60] }, single).outcome).toBe("holds");
    expect(judged({ rpm: [3450, 2850], hz: [60, 50] }, two).outcome).toBe("needs-work");
  });

  test("without rpm the speed is not known, whatever the words say", () => {
    expect(judged({ speedKind: "single" }, single)).toMatchObject({ outcome: "not-known", needs: ["rpm"] });
    expect(judged({}, single).needs).toEqual(["rpm", "speedKind"]);
    expect(judged({ rpm: [3450, 2850, 1725] }, single).needs).toEqual(["speedKind"]);
  });
});
