import { describe, expect, test } from "vitest";
import { customerChoices, textOfChoice } from "../../src/conversation/choices.ts";
import { isRatingName, type RatingName } from "../../src/nameplate/vocabulary.ts";
import { fitsChoice } from "../../src/outgoing.ts";
import { knowledge } from "./knowledge.ts";

const asking = (...ratings: RatingName[]) => ({ kind: "ratings", ratings }) as const;

describe("buttons beside a question", () => {
  // What a button says is read like any typed answer: it must give the value it promises.
  test.each([
    ["flange", ["square", "round"]],
    ["shaft", ["threaded", "keyed"]],
    ["phase", [1, 3]],
    ["breakerPoles", [1, 2]],
    ["speedKind", ["single", "two", "variable"]],
  ] as const)("%s: each is read as what it says", (rating, values) => {
    const choices = customerChoices(asking(rating));
    const read = choices.slice(0, -1).map(({ text }) => {
      const { readings } = knowledge.understand(text, [rating]).reading;
      return readings.find((reading) => reading.rating === rating)?.value;
    });
    expect(read).toEqual(values);
    expect(isRatingName(rating)).toBe(true);
    const { intents } = knowledge.understand(choices.at(-1)?.text ?? "", [rating]);
    expect(["unreadable", "dont-know"]).toContain(intents[0]?.intent);
  });

  test("a question for several readings, or for a figure, has none", () => {
    expect(customerChoices(asking("flange", "shaft"))).toEqual([]);
    expect(customerChoices(asking("serviceFactor"))).toEqual([]);
    expect(customerChoices({ kind: "nothing" })).toEqual([]);
  });

  test("an old button says nothing once the question has passed", () => {
    const [square] = customerChoices(asking("flange"));
    expect(square && textOfChoice(asking("flange"), square.id)).toBe("square face");
    expect(square && textOfChoice(asking("shaft"), square.id)).toBeNull();
    expect(textOfChoice({ kind: "nothing" }, "erase/1")).toBeNull();
  });

  test("a yes to one doubt is no yes to another", () => {
    const doubt = (rating: "hp" | "serviceFactor", value: number) =>
      ({ kind: "doubt", rating, proposal: { rating, value } }) as const;
    const [yes] = customerChoices(doubt("hp", 1.5));
    expect(yes && textOfChoice(doubt("hp", 1.5), yes.id)).toBe("yes");
    expect(yes && textOfChoice(doubt("hp", 2.5), yes.id)).toBeNull();
    expect(yes && textOfChoice(doubt("serviceFactor", 1.5), yes.id)).toBeNull();
  });

  test("every id is short enough for any channel", () => {
    const all = (["flange", "shaft", "phase", "breakerPoles", "speedKind"] as const).flatMap((rating) =>
      customerChoices(asking(rating)),
    );
    expect(all.length).toBeGreaterThan(10);
    expect(all.every(({ id }) => fitsChoice(id))).toBe(true);
  });
});
