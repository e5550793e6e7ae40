import { describe, expect, test } from "vitest";
import { say, told } from "./knowledge.ts";

describe("an old number typed from a worn plate", () => {
  test("on record as typed: the record is named, the ratings still make sure", () => {
    const answer = told(say("model MOSS-415, frame 56Y"));
    expect(answer).toMatch(/Our records link MOSS-415 to [A-Z]+-\d+/);
    expect(answer).not.toMatch(/drop-in/);
  });

  test("one look-alike away: it is read back, and yes takes it", () => {
    const steps = say("model MOSS-41S, frame 56Y", "yes");
    expect(steps[0]?.replies.join()).toMatch(/MOSS-415, where you typed MOSS-41S/);
    expect(steps[1]?.thread.facts.modelNumbers).toMatchObject({
      value: ["MOSS-415"],
      certainty: "confirmed",
    });
  });

  test("no leaves the number as it was typed and the talk goes on", () => {
    const steps = say("model MOSS-41S, frame 56Y", "no");
    expect(steps[1]?.thread.facts.modelNumbers?.value).toEqual(["MOSS-41S"]);
    expect(steps[1]?.thread.pending.kind).toBe("ratings");
  });

  test("two numbers as near: the character that tells them apart is asked for, never guessed", () => {
    const steps = say("model TRIVET-34, frame 56Y", "1");
    expect(steps[0]?.replies.join()).toMatch(/end in: 1 or 3\?/);
    expect(steps[1]?.thread.facts.modelNumbers?.value).toEqual(["TRIVET-341"]);
  });

  test("the number of a stocked motor stands in for a worn label, and the verdict says so", () => {
    const steps = say("part number MUFFIN-806");
    expect(told(steps)).toMatch(/looks like a drop-in.*rests on our own list's label of MUFFIN-806/s);
    expect(steps[0]?.assessment.facts.frame).toMatchObject({ certainty: "inferred", because: "number" });
  });

  test("a serial number is kindly declined", () => {
    expect(told(say("serial number 22-40318, frame 56Y"))).toMatch(/serial number only tells age and origin/);
  });

  test("an unknown number asks nothing", () => {
    expect(told(say("model ZEBRA-000000, frame 56Y"))).not.toMatch(/on record/);
  });
});
