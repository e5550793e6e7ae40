import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { urgencies } from "../../src/conversation/thread.ts";
import { outcomes } from "../../src/desk/outcomes.ts";
import { actOfChoice, type ButtonAct, choiceIdOf, readStaffLine } from "../../src/desk/staff-line.ts";

const tell = (text: string) => ({ kind: "act", act: { kind: "tell", text } });
const note = (text: string) => ({ kind: "act", act: { kind: "note", text } });

describe("the relay mark", () => {
  test.each([
    ["> Good morning", "Good morning"],
    [">Good morning", "Good morning"],
    ["  > leading blanks", "leading blanks"],
    ["> 1.65 total is what you have", "1.65 total is what you have"],
    [">¿Habla español?", "¿Habla español?"],
    ['> two lines\nand "quotes" > inside', 'two lines\nand "quotes" > inside'],
  ])("%j goes to the customer", (typed, text) => {
    expect(readStaffLine(typed)).toEqual(tell(text));
  });

  test.each([
    "he says it is < 10 years old, > 5 anyway",
    "line one\n> quoted below",
    "=> looks like a Y frame",
    "» not our mark",
    "＞ nor this one",
    "- > neither",
    "1.65 > 1.5",
  ])("%j stays a note", (typed) => {
    expect(readStaffLine(typed)).toEqual(note(typed.trim()));
  });

  test.each([">1.1 so an impeller is needed", ">= 1.65", ">> 2", ">_>", ">-("])(
    "%j could be either: neither sent nor kept",
    (typed) => {
      expect(readStaffLine(typed)).toMatchObject({ kind: "unclear", problem: "mark" });
    },
  );

  test.each([">", "  >  "])("%j has no words to send", (typed) => {
    expect(readStaffLine(typed)).toMatchObject({ kind: "unclear", problem: "tell" });
  });

  test("property: only text that starts with the mark is ever told", () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        const line = readStaffLine(typed);
        const told = line.kind === "act" && line.act.kind === "tell";
        expect(told && !typed.trim().startsWith(">")).toBe(false);
      }),
      { seed: 5, numRuns: 2000 },
    );
  });
});

describe("acts in words", () => {
  test.each([
    ["/take", { kind: "take" }],
    ["/TAKE@some_bot", { kind: "take" }],
    ["/takeover", { kind: "take-over" }],
    ["/back", { kind: "hand-back" }],
    ["/allclear", { kind: "all-clear" }],
    ["/reopen", { kind: "reopen" }],
    ["/note > not for the customer", { kind: "note", text: "> not for the customer" }],
    ["/fix sf 1.65", { kind: "correct", text: "sf 1.65" }],
    ["/offer AB-1 because\nit is here", { kind: "offer", sku: "AB-1", why: "because\nit is here" }],
    ["/parts", { kind: "show-parts" }],
    ["/part drop gasket", { kind: "edit-part", part: "gasket", to: "dropped" }],
    ["/part Optional shaft seal", { kind: "edit-part", part: "shaft seal", to: "optional" }],
    ["/part needed AB-1", { kind: "edit-part", part: "AB-1", to: "needed" }],
    ["/part undo gasket", { kind: "edit-part", part: "gasket", to: "as-ruled" }],
    ["/part add AB-1 theirs: torn", { kind: "add-part", part: { sku: "AB-1" }, note: "theirs: torn" }],
    ["/part other two clamps: torn", { kind: "add-part", part: { words: "two clamps" }, note: "torn" }],
    ["/confirm", { kind: "confirm" }],
    ["/close sold AB-1", { kind: "close", outcome: "sold", sku: "AB-1" }],
    ["/close no-reply", { kind: "close", outcome: "no-reply", sku: null }],
    ["/urgency planning", { kind: "rank", urgency: "planning" }],
  ])("%j", (typed, act) => {
    expect(readStaffLine(typed)).toEqual({ kind: "act", act });
  });

  test.each([
    ["/waiting", { kind: "list" }],
    ["/case 12", { kind: "show", caseId: 12 }],
    ["/help", { kind: "help" }],
    ["/case twelve", { kind: "unclear", problem: "show" }],
    ["/close happily", { kind: "unclear", problem: "close", words: "happily" }],
    ["/urgency soon", { kind: "unclear", problem: "rank", words: "soon" }],
    ["/offer AB-1", { kind: "unclear", problem: "offer" }],
    ["/fix", { kind: "unclear", problem: "fix" }],
    ["/part", { kind: "unclear", problem: "part" }],
    ["/part gasket", { kind: "unclear", problem: "part" }],
    ["/part lose gasket", { kind: "unclear", problem: "part" }],
    ["/part other : torn", { kind: "unclear", problem: "part" }],
    ["/tell him", { kind: "unclear", problem: "command" }],
    ["/constructor", { kind: "unclear", problem: "command" }],
    ["/__proto__ x", { kind: "unclear", problem: "command" }],
    ["/", { kind: "unclear", problem: "command" }],
  ])("%j", (typed, line) => {
    expect(readStaffLine(typed)).toMatchObject(line);
  });
});

describe("buttons", () => {
  const acts: readonly ButtonAct[] = [
    { kind: "take" },
    { kind: "take-over" },
    { kind: "hand-back" },
    { kind: "all-clear" },
    { kind: "reopen" },
    ...urgencies.map((urgency) => ({ kind: "rank", urgency }) as const),
    ...outcomes.map((outcome) => ({ kind: "close", outcome, sku: null }) as const),
    { kind: "close", outcome: "sold", sku: "AB-1" },
    { kind: "show-parts" },
    { kind: "confirm" },
    ...(["needed", "optional", "dropped", "as-ruled"] as const).map(
      (to) => ({ kind: "edit-part", part: "shaft-seal", to }) as const,
    ),
  ];
  test("say the same when pressed as when shown", () => {
    for (const act of acts) expect(actOfChoice(choiceIdOf(12, act))).toEqual({ caseId: 12, act });
  });

  test.each([
    "",
    "take",
    "12",
    "12/",
    "x/take",
    "12/> hi",
    "12/note hi",
    "12/offer AB-1 why",
    "12/fix sf 1",
    "12/part add AB-1",
    "12/part other clamps",
    "-1/take",
  ])("%j is none of ours", (id) => {
    expect(actOfChoice(id)).toBeNull();
  });

  test("property: nothing a forged button carries can reach the customer or throw", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string().map((text) => `12/${text}`),
        ),
        (id) => {
          const kind = actOfChoice(id)?.act.kind;
          expect(["tell", "note", "offer", "correct", "add-part"]).not.toContain(kind);
        },
      ),
      { seed: 5, numRuns: 2000 },
    );
  });
});
