import { describe, expect, it } from "vitest";
import { separate } from "../../../src/catalogue/number-search/separate.ts";

const ask = (...numbers: string[]) =>
  separate(numbers.map((number) => ({ number, skus: [number], how: "near" })));

describe("the question that tells numbers apart", () => {
  it("asks what a number ends in", () =>
    expect(ask("QUILL-3104", "QUILL-310A")).toEqual({
      at: { from: "end", position: 1 },
      options: [
        { character: "4", numbers: ["QUILL-3104"] },
        { character: "A", numbers: ["QUILL-310A"] },
      ],
    }));

  it("counts letters and digits only, from the nearer end", () => {
    expect(ask("M-OSS/12", "M-USS/12").at).toEqual({ from: "start", position: 2 });
    expect(ask("MOSS/1-2", "MOSS/3-2").at).toEqual({ from: "end", position: 2 });
  });

  it("parts three numbers in one question, where one does", () =>
    expect(ask("MOSS-17A", "MOSS-27B", "MOSS-37A").at).toEqual({ from: "end", position: 3 }));

  it("does not ask for one of two look-alikes, where something else differs", () =>
    expect(ask("PUDDLE-41-8", "PIDDLE-41-B").at).toEqual({ from: "start", position: 2 }));

  it("asks about look-alikes when nothing else differs", () =>
    expect(ask("MOSS-18", "MOSS-1B").options.map(({ character }) => character)).toEqual(["8", "B"]));

  it("asks whether there is one more character, rather than for one of two look-alikes", () =>
    expect(ask("1777", "17777")).toEqual({
      at: { from: "end", position: 5 },
      options: [
        { character: "", numbers: ["1777"] },
        { character: "1", numbers: ["17777"] },
      ],
    }));

  it("tells motors apart, not numbers of the same motor", () => {
    const candidates = [
      { number: "MOSS-1A", skus: ["PIE-1"], how: "near" as const },
      { number: "MOSS-2A", skus: ["PIE-1"], how: "near" as const },
      { number: "MOSS-1B", skus: ["PIE-2"], how: "near" as const },
    ];
    expect(separate(candidates).at).toEqual({ from: "end", position: 1 });
    const otherwise = candidates.map((one) => ({ ...one, number: [...one.number].reverse().join("") }));
    expect(separate(otherwise).at).toEqual({ from: "start", position: 1 });
  });
});
