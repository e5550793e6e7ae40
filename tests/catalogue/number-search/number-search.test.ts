import { describe, expect, it } from "vitest";
import { createNumberSearch, narrow } from "../../../src/catalogue/number-search.ts";

const searchOf = (...numbers: string[]) => {
  const { search } = createNumberSearch(numbers.map((number) => ({ number, sku: `PIE-${number}` })));
  return search;
};
const found = (number: string, how: string) => ({ kind: "found", number, how });

describe("a number typed from a worn plate", () => {
  const search = searchOf("QUILL-4821K", "MOSS-17/B6", "TOFFEE-935-2", "K4.T7.8820");

  it.each(["QUILL-4821K", "quill 4821 k", "Quill4821K", "QUILL – 4821 – K", "ＱＵＩＬＬ４８２１Ｋ"])(
    "%s is found exactly",
    (typed) => expect(search(typed)).toMatchObject(found("QUILL-4821K", "exact")),
  );
  it.each(["QUI1L-4821K", "QUILL-4B2IK", "QUlLL 4821k", "QUILL-4827K", "QUILL-4621K", "QUILL-4G27K"])(
    "%s is found by its look-alikes",
    (typed) => expect(search(typed)).toMatchObject(found("QUILL-4821K", "look-alike")),
  );
  it.each([
    ["a wrong character", "QUILL-4851K"],
    ["a missing character", "QUILL-481K"],
    ["an extra character", "QUILL-48421K"],
    ["swapped characters", "QUILL-8421K"],
    ["a wrong character beside look-alikes", "QU1LL-4851K"],
  ])("%s: %s is near", (_, typed) => expect(search(typed)).toMatchObject(found("QUILL-4821K", "near")));
  it.each(["4821K", "QUILL-48", "21-K", "QUILL-4821K rev 2", "new QUILL-4821K", "482lK"])(
    "%s has a part of it",
    (typed) => expect(search(typed)).toMatchObject(found("QUILL-4821K", "part")),
  );
  it.each(["", " - ", "QUILL-5937K", "BRAMBLE-66", "21", "🙂", "x".repeat(100_000)])(
    "nothing is found for %j",
    (typed) => expect(search(typed)).toEqual({ kind: "none" }),
  );
});

describe("the surer way decides", () => {
  it("exact before look-alike before one edit", () => {
    expect(searchOf("MOSS-105", "MOSS-1O5")("MOSS-1O5")).toMatchObject(found("MOSS-1O5", "exact"));
    expect(searchOf("MOSS-105", "MOSS-1A5")("MOSS-1O5")).toMatchObject(found("MOSS-105", "look-alike"));
  });

  it("what a hand mistakes before what wear makes alike", () =>
    expect(searchOf("MOSS-105", "MOSS-705")("MOSS-IO5")).toMatchObject(found("MOSS-105", "look-alike")));

  it("one worn character before one edit, but several no surer than one edit", () => {
    expect(searchOf("MOSS-716", "MOSS-186")("MOSS-116")).toMatchObject(found("MOSS-716", "look-alike"));
    expect(searchOf("MOSS-776", "MOSS-196")("MOSS-116")).toMatchObject({
      kind: "choose",
      candidates: [{ number: "MOSS-196" }, { number: "MOSS-776" }],
    });
    expect(searchOf("MOSS-776")("MOSS-116")).toMatchObject(found("MOSS-776", "look-alike"));
  });

  it("one edit before an edit with look-alikes", () =>
    expect(searchOf("MOSS-2058", "MOSS-2O9B")("MOSS-2098")).toMatchObject({ number: "MOSS-2O9B" }));
});

describe("numbers that are as near as each other", () => {
  it("are asked about by the last character where that tells them apart", () => {
    const result = searchOf("QUILL-3104", "QUILL-310A")("QUILL-310X");
    expect(result).toMatchObject({
      kind: "choose",
      separates: {
        at: { from: "end", position: 1 },
        options: [
          { character: "A", numbers: ["QUILL-310A"] },
          { character: "4", numbers: ["QUILL-3104"] },
        ],
      },
    });
    if (result.kind !== "choose") return;
    expect(narrow(result.candidates, result.separates.at, "a").map(({ number }) => number)).toEqual([
      "QUILL-310A",
    ]);
  });

  it("are asked about by characters that do not look alike, where there are any", () =>
    expect(searchOf("PUDDLE-41-8", "PIDDLE-41-B")("PADDLE-41-G")).toMatchObject({
      kind: "choose",
      separates: { at: { from: "start", position: 2 }, options: [{ character: "U" }, { character: "I" }] },
    }));

  it("are asked about by what stands before, when the beginning is missing", () =>
    expect(searchOf("QUILL-806", "THIMBLE-K-806")("806")).toMatchObject({
      kind: "choose",
      separates: { at: { from: "start", position: 1 }, options: [{ character: "Q" }, { character: "T" }] },
    }));

  it("need no question when they lead to the same motor", () => {
    const { search } = createNumberSearch([
      { number: "QUILL-3104", sku: "PIE-1" },
      { number: "QUILL-310A", sku: "PIE-1" },
    ]);
    expect(search("QUILL-310X")).toMatchObject({ kind: "found", skus: ["PIE-1"], how: "near" });
  });

  it("are only counted when they are too many to ask about", () => {
    const numbers = Array.from({ length: 30 }, (_, n) => `TOFFEE-${100 + n}`);
    const result = searchOf(...numbers)("TOFFEE");
    expect(result).toMatchObject({ kind: "many", count: 30 });
    if (result.kind === "many") expect(result.likeliest).toHaveLength(3);
  });
});

describe("a number of several motors", () => {
  it("gives them all, in catalogue order, each once", () => {
    const { search } = createNumberSearch([
      { number: "MOSS-415", sku: "PIE-2" },
      { number: "moss 415", sku: "PIE-1" },
      { number: "MOSS-415", sku: "PIE-2" },
    ]);
    expect(search("moss415")).toMatchObject({ number: "MOSS-415", skus: ["PIE-2", "PIE-1"] });
  });
});

describe("letters beyond A to Z", () => {
  const search = searchOf("ÖSE-417", "ÄSE-417");
  it("are told apart when exact", () => expect(search("äse 417")).toMatchObject(found("ÄSE-417", "exact")));
  it("are found, where one sign stands for many letters", () =>
    expect(searchOf("\ufdfa-417", "QUILL-417")("\ufdfa 417")).toMatchObject(found("\ufdfa-417", "exact")));
  it("are asked about otherwise", () => expect(search("ÜSE-417")).toMatchObject({ kind: "choose" }));
});

describe("a serial number", () => {
  const search = searchOf("QUILL-4821K", "SN-1234");
  it.each(["S/N 0099171", "serial no. 4821", "Ser: QUILL4821", "SN# 77", "0099171 (serial)", "SERIAL"])(
    "%s is known by its word",
    (typed) => expect(search(typed)).toEqual({ kind: "serial", by: "word" }),
  );
  it("behind a number does not hide the number", () =>
    expect(search("QUILL-4821K S/N 0099171")).toMatchObject(found("QUILL-4821K", "exact")));
  it("has a word that a number may begin with", () =>
    expect(search("SN-1234")).toMatchObject(found("SN-1234", "exact")));
  it("is not seen in longer words", () => expect(search("SERIOUS-44")).toEqual({ kind: "none" }));
});

describe("words of the label before a number", () => {
  it.each(["Model QUILL-4821K", "PART NO. quill 4821k", "cat# QUILL4821K", "MOD: QUILL-4821K"])(
    "%s",
    (typed) => expect(searchOf("QUILL-4821K")(typed)).toMatchObject(found("QUILL-4821K", "exact")),
  );
});
