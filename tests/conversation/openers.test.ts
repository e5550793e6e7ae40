import { describe, expect, test } from "vitest";
import { say, told } from "./knowledge.ts";

const invitation = /Type what the motor's label says/;

describe("what people say first", () => {
  test.each([
    "my pool pump motor quit working, do you have a replacement?",
    "I need a new motor for my pump. Where do I start?",
    "mi bomba no prende, necesito motor",
    "its broken",
  ])("%j is told who speaks and how to begin", (text) => {
    expect(told(say(text))).toMatch(/^Hi, I'm the bot .* a person confirms what I find\. Tell me what/);
  });

  test.each([
    "pump makes a loud screeching noise",
    "can i just replace the capacitor",
    "how do I know if it's the motor or the pump?",
    "la bomba hace ruido y se calienta",
  ])("%j is not judged from afar, and the capacitor is left alone", (text) => {
    const [step] = say(text);
    expect(step?.replies[0]).toMatch(/can't tell from here.*switched off.*don't touch the capacitor/);
    expect(step?.replies[1]).toMatch(invitation);
  });

  test.each(["do you guys install?", "do you ship to Canada"])("%j is for the desk", (text) => {
    const [step] = say(text);
    expect(step?.replies).toEqual([expect.stringMatching(/say "person"/), expect.stringMatching(invitation)]);
  });

  test("a picture is for the desk; the words go on", () => {
    const [step] = say("I have a photo of the label");
    expect(step?.replies).toEqual([
      expect.stringMatching(/can't read pictures/),
      expect.stringMatching(invitation),
    ]);
  });

  test("a fault told beside the label asks nothing: it is read on", () => {
    const answer = told(say("it just hums. 1 hp, 230v, 56J"));
    expect(answer).toMatch(/^Got it: 1 hp, 230 V, frame 56J\./);
    expect(answer).not.toMatch(/can't tell from here/);
  });

  test("how to begin is told once", () => {
    const [first, second] = say("do you guys install?", "what's the warranty?");
    expect(first?.replies).toHaveLength(2);
    expect(second?.replies).toEqual([expect.stringMatching(/say "person"/)]);
  });

  test("other speeds are asked for, not more power", () => {
    const answer = told(say("i want to upgrade to variable speed"));
    expect(answer).toMatch(/two-speed or variable/);
    expect(answer).not.toMatch(/Bigger/);
  });
});
