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

describe("what people say next", () => {
  const label = "1.5 hp, sf 1.1, 115/230, 56y, 3450, 1 phase";

  test("an order is for the desk to confirm; before a verdict there is nothing to order", () => {
    expect(told(say(label, "ok order it"))).toMatch(/can't take the order myself; a person.*confirms/);
    expect(told(say("hello", "I'll take it"))).toMatch(/once I know which motor fits/);
  });

  test("whether it takes an electrician is not the bot's to say", () => {
    expect(told(say(label, "do i need an electrician"))).toMatch(/licensed electrician and your local code/);
  });

  test("a question typed without its mark is no failed answer", () => {
    const open = "HP 1 SF 1.65 V 230 A 7.2 FR 48Y RPM 3450 PH 1";
    const [asked, first, second] = say(open, "how long will it last", "what colour is it");
    expect(asked?.thread.pending).toMatchObject({ kind: "ratings", ratings: ["supplyVolts"] });
    expect([first?.replies, second?.replies].flat()).toEqual([
      expect.stringMatching(/say "person"/),
      expect.stringMatching(/say "person"/),
    ]);
    expect(second?.thread).toMatchObject({ pending: asked?.thread.pending, asked: asked?.thread.asked });
  });

  test("while the total is open, motors of the printed horsepower are named first", () => {
    const last = told(
      say("1 1/2 horse 230v 56y, cant read the sf", "3450, no thp, single phase", "not sure what pump"),
    );
    const named = [...last.matchAll(/^• \S+ \((.*?) hp/gm)].map(([, words]) => words);
    expect(named).toHaveLength(2);
    expect(named.every((words) => words?.endsWith(" 1.5"))).toBe(true);
  });
});
