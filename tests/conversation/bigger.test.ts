import { describe, expect, test } from "vitest";
import { knowledge, say, sayIn, told } from "./knowledge.ts";

// 1.5 x 1.10 = 1.65 total hp. Total horsepower as hp x service factor: 10 CFR 431.483 by reference to UL 1004-10;
// that the impeller sets the flow: pump affinity laws, common practice.
const LABEL = "1.5 hp, SF 1.1, 230V, frame 56Y, single phase, 3450 rpm, wired for 240 volts";
const before = say(LABEL).at(-1)!.thread;
const asked = (text: string) => told(sayIn(before, text));
const caution = /impeller sets the flow, not the motor.*filter and pipes must stand it.*licensed electrician/;

const { motors } = knowledge.catalogue;
const hpOf = (reply: string) => motors.find(({ sku }) => reply.includes(`${sku} (`))?.label.hp;

describe("a bigger motor that is named", () => {
  test.each([
    ["can I put a 2 hp instead?", 2],
    ["would a two horse motor work?", 2],
    ["mine is 1.5 hp, can I put a 2hp in?", 2],
    ["can I go up to 3 hp", 3],
    ["can I put a 3/4 hp instead?", 0.75],
  ])("%j is answered about that horsepower, cautions with it", (text, hp) => {
    const reply = asked(text);
    expect(hpOf(reply)).toBe(hp);
    expect(reply).toContain(`${hp} hp motor`);
    expect(reply).toMatch(caution);
  });

  test("too weak a one is said to be overloaded", () => {
    expect(asked("can I put a 3/4 hp instead?")).toMatch(
      /None of our 0\.75 hp motors goes on.*would overload it/,
    );
  });

  test("more horsepower with a smaller service factor may be no stronger", () => {
    // 1 x 1.65 = 1.65 = 1.5 x 1.10: common practice, no source.
    const one = say(LABEL.replace("1.5 hp, SF 1.1", "1 hp, SF 1.65")).at(-1)!.thread;
    expect(told(sayIn(one, "can I put a 1.5 hp instead?"))).toMatch(
      /A 1\.5 hp motor can go in as yours did: .* up-rated 1\.5 hp .* 1\.65 total horsepower.* where yours gave 1\.65/,
    );
  });

  test("one we don't have is said not to be there", () => {
    expect(asked("can I put a 7.5 hp instead?")).toMatch(
      /no 7\.5 hp motor in our list.*impeller sets the flow/,
    );
  });

  test("a wish is no rating: the label stays as it was read", () => {
    const [step] = sayIn(before, "can I put a 2 hp instead?");
    expect(step?.thread.facts.hp?.value).toBe(1.5);
    expect(step?.understood.reading.readings).toEqual([]);
  });

  test("no horsepower named: the nearest stronger one, as before", () => {
    expect(asked("can I go bigger?")).toMatch(/You can go bigger, but the impeller sets the flow/);
    expect(asked("can I go bigger than my 1.5 hp?")).toMatch(
      /You can go bigger, but the impeller sets the flow/,
    );
  });

  test("before the motor is known it waits for that", () => {
    expect(told(say("can I put a 2 hp instead?"))).toMatch(/Once I know your motor/);
  });
});
