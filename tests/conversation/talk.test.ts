import { describe, expect, test } from "vitest";
import { say, told } from "./knowledge.ts";

const LABEL = "1 1/2 hp, sf 1.1, 115/230 v 19.2/9.6 amps, frame 56y, 3450 rpm";

describe("from a label to a verdict", () => {
  test("the usual plate leads over one question to a drop-in, its reasons, parts, cost and cautions", () => {
    const steps = say("its a 1 1/2 horse, sf 1.1, 115/230 v 19.2/9.6 amps, frame 56y", "3450");
    expect(steps[0]?.replies.join()).toContain("RPM");
    const answer = told(steps);
    expect(answer).toMatch(/should fit as a drop-in/);
    expect(answer).toMatch(/1\.65 total/);
    expect(answer).toMatch(/shaft seal/);
    expect(answer).toMatch(/¢\/kWh/);
    expect(answer).toMatch(/locked out at the breaker/);
    expect(answer).toMatch(/licensed electrician/);
    expect(answer).toMatch(/tomorrow, Wednesday, at 8 am/);
    expect(steps.at(-1)?.thread.case).toEqual({
      state: "waiting",
      urgency: "ready-to-confirm",
      reason: "verdict-ready",
    });
  });

  test("what was read is said back, so that a wrong reading shows", () => {
    expect(told(say("frame 56y, 230 volts"))).toMatch(/^Got it: .*56Y/);
  });

  test("a correction replaces the value and says so", () => {
    const steps = say("hp 1.5 sf 1.1", "sorry, hp is 1 not 1.5");
    expect(told(steps)).toMatch(/Changed horsepower from 1\.5 hp to 1 hp/);
    expect(steps.at(-1)?.thread.facts.hp?.value).toBe(1);
  });

  test("nothing new after the verdict does not repeat it", () => {
    const steps = say(LABEL, "serial number is KQ44");
    expect(told(steps)).not.toMatch(/drop-in/);
  });

  test("a new reading that changes the answer gives a new verdict", () => {
    const steps = say(LABEL, "wait, the frame is 56J");
    expect(told(steps)).toMatch(/round/);
  });
});

describe("doubts", () => {
  test("a decimal slip is asked about with a proposal, and yes takes it", () => {
    const steps = say("HP 15 SF 1.1 volts 115/230 amps 19.2/9.6 fr 56Y rpm 3450", "yes");
    expect(steps[0]?.replies.join()).toMatch(/Could it be 1\.5 hp/);
    expect(steps[1]?.thread.facts.hp).toMatchObject({ value: 1.5, certainty: "confirmed" });
    expect(told(steps)).toMatch(/drop-in/);
  });

  test("a doubted value that is stood by goes to the desk and never into a verdict", () => {
    const steps = say("HP 15 SF 1.1 volts 115/230 amps 19.2/9.6 fr 56Y rpm 3450", "no, it really is 15");
    expect(told(steps)).not.toMatch(/drop-in/);
    expect(steps.at(-1)?.thread.case).toMatchObject({ reason: "cannot-decide" });
  });
});

describe("asking", () => {
  test("no rating is asked for a third time: the ladder takes over, then the desk", () => {
    const steps = say("1.5 hp 230 volts", ...Array.from({ length: 12 }, () => "hmm let me see"));
    for (const times of Object.values(steps.at(-1)?.thread.asked ?? {})) expect(times).toBeLessThanOrEqual(2);
    expect(steps.at(-1)?.thread.case.state).toBe("waiting");
  });

  test("at most three label readings are asked together", () => {
    const bullets = told(say("1.5 hp motor")).match(/^• /gm) ?? [];
    expect(bullets.length).toBeGreaterThan(1);
    expect(bullets.length).toBeLessThanOrEqual(3);
  });

  test("a trade word is explained once", () => {
    const steps = say("230 volts 3450 rpm", "can't read the frame", "volts 230");
    const all = steps.flatMap(({ replies }) => replies).join("\n");
    expect(all.match(/how much extra load it is built to carry/g) ?? []).toHaveLength(1);
  });

  test("without a label the pump is asked for, then a photo for the desk", () => {
    const steps = say("the label is gone completely", "no idea");
    expect(steps[0]?.replies.join()).toMatch(/model name/);
    expect(told(steps)).toMatch(/photo/);
    expect(steps.at(-1)?.thread.case.state).toBe("waiting");
  });

  test("a question in between is answered and the open one is left standing", () => {
    const steps = say("1.5 hp sf 1.1 115/230 v frame 56y", "what is sf?");
    expect(told(steps)).toMatch(/how much more than its printed horsepower/);
    expect(steps[1]?.thread.pending).toEqual(steps[0]?.thread.pending);
  });
});

describe("a known pump", () => {
  test("gives what the lost label can't, and the verdict says that it rests on that", () => {
    const steps = say(
      "no label on the motor at all",
      "pump is a Marmalade F5",
      "single speed",
      "two handles tied together, 240 volts",
    );
    const answer = told(steps);
    expect(answer).not.toMatch(/should fit as a drop-in/);
    expect(steps.at(-1)?.assessment.facts.totalHp).toMatchObject({ value: 1.65, certainty: "inferred" });
  });

  test("a current told at one of the label's voltages keeps both; said alone, one voltage corrects them", () => {
    const [, second] = say("hp 1, 115/230 volts", "max amps 14.8 on 115");
    expect(second?.assessment.facts.volts?.value).toEqual([115, 230]);
    expect(second?.assessment.facts.serviceFactorAmps?.value).toEqual([14.8]);
    const [, corrected] = say("hp 1, 115/230 volts", "sorry, it's 230 volts only");
    expect(corrected?.assessment.facts.volts?.value).toEqual([230]);
  });

  test("a pump and a label that disagree are told to the desk", () => {
    const steps = say("pump model is Marmalade B6. " + LABEL);
    expect(steps.at(-1)?.assessment.contradictions.map(({ rating }) => rating)).toEqual(["totalHp"]);
    expect(told(steps)).toMatch(/may have changed the motor before/);
  });
});
