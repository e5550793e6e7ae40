import { describe, expect, test } from "vitest";
import { AT, knowledge, say, sayIn, told } from "./knowledge.ts";

const LABEL = "1 1/2 hp, sf 1.1, 115/230 v 19.2/9.6 amps, frame 56y, 3450 rpm";

describe("danger goes before everything", () => {
  // The four dangers and what to do: U.S. CPSC "Don't Swim with Shocks"; NFPA electric shock drowning tips.
  test.each([
    ["shock", "I get a tingle when I touch the ladder in the pool", /out of the water/],
    ["fire", "there's smoke coming out of the motor", /breaker/],
    ["trip", "the gfci keeps tripping", /don't reset/],
    ["water", "the motor is standing in water and still plugged in", /[Kk]eep away/],
  ] as const)("%s: the safety text alone, and the desk alerted", (hazard, text, words) => {
    const steps = say(`${text}. ${LABEL}`);
    expect(steps[0]?.replies).toHaveLength(1);
    expect(told(steps)).toMatch(words);
    expect(told(steps)).not.toMatch(/drop-in|Got it|\$/);
    expect(steps[0]?.thread).toMatchObject({
      hazard,
      case: { state: "waiting", urgency: "danger", reason: "danger" },
    });
  });

  test.each([
    ["in the middle of the questions", [LABEL.replace(", 3450 rpm", ""), "it smells like burning now"]],
    ["after the verdict", [LABEL, "thanks. by the way the motor is smoking"]],
    ["while a doubt is open", ["HP 15 sf 1.1", "yes but i get shocked when i touch it"]],
    ["while erasing is being confirmed", ["delete my data", "the breaker trips every time"]],
  ])("it is heard %s", (_, messages) => {
    expect(told(say(...messages))).toMatch(/^STOP/);
  });

  test("it is heard while a person has the thread", () => {
    const [first] = say("can I talk to a person");
    const taken = {
      ...first!.thread,
      case: { state: "taken", urgency: "pump-down", reason: "asked-for-person" } as const,
    };
    expect(told(sayIn(taken, "ok. now there is smoke"))).toMatch(/^STOP/);
    expect(sayIn(taken, "ok thanks, 230 volts")[0]?.replies).toEqual([]);
  });

  test("no parts talk until the power is off", () => {
    const steps = say(`breaker keeps tripping. ${LABEL}`, "so which motor fits?", "the breaker is off now");
    expect(steps[1]?.replies.join()).not.toMatch(/drop-in/);
    expect(told(steps)).toMatch(/drop-in/);
    expect(steps.at(-1)?.thread.case).toMatchObject({ urgency: "danger" });
  });

  test("after a shock a person takes over, whatever is said", () => {
    const steps = say("my kid got zapped by the pool light", LABEL, "power is off");
    expect(told(steps)).not.toMatch(/drop-in/);
    expect(told(steps)).toMatch(/electrician/);
  });
});

describe("every verdict", () => {
  test.each([
    ["drop-in", LABEL],
    ["nothing fits", "0.5 hp sf 1.0 115 v 60 hz single phase 1725 rpm 56Y"],
    ["can't be settled", "frame 145TC 1.5 hp sf 1.15 230 v 3450 rpm 3 phase"],
  ])("carries the cautions and never calls wiring safe: %s", (_, label) => {
    const steps = say(label, "no idea", "no idea", "no idea", "no idea");
    const all = steps.flatMap(({ replies }) => replies).join("\n");
    expect(all).toMatch(/locked out at the breaker/);
    expect(all).toMatch(/capacitors stay charged/);
    expect(all).toMatch(/NEC 680\.26/);
    expect(all).toMatch(/NEC 680\.21/);
    expect(all).toMatch(/Local code and a licensed electrician decide/);
    expect(all).not.toMatch(/wiring is (safe|fine|ok)|safe to (wire|connect)/i);
  });

  test("circuit figures stay out of the customer's messages", () => {
    const all = say(LABEL)
      .flatMap(({ replies }) => replies)
      .join("\n");
    expect(all).not.toMatch(/430\.\d|AWG/);
  });

  test("the same message, thread and knowledge give the same step", () => {
    expect(say(LABEL)).toEqual(say(LABEL));
    expect(knowledge.on).toBe("2026-11-24");
    expect(AT < "2026-11-26").toBe(true);
  });
});
