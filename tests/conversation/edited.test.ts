import { describe, expect, test } from "vitest";
import { type Incoming, step } from "../../src/conversation/step.ts";
import { newThread, type Thread } from "../../src/conversation/thread.ts";
import { knowledge } from "./knowledge.ts";

const at = "2026-11-24T16:00:00.000Z";

/** Says messages one after the other; gives the thread and the last replies. */
function talked(...messages: readonly Omit<Incoming, "at">[]) {
  let thread: Thread = newThread;
  let replies: readonly string[] = [];
  for (const message of messages) ({ thread, replies } = step(thread, { ...message, at }, knowledge));
  const values = Object.fromEntries(Object.entries(thread.facts).map(([name, fact]) => [name, fact?.value]));
  return { thread, values, replies };
}

describe("an edited message", () => {
  test("replaces the value it had stated, and says so", () => {
    const { values, replies } = talked(
      { text: "1 hp, SF 1.65", message: "1" },
      { text: "1.5 hp, SF 1.65", message: "1", edited: true },
    );
    expect(values).toMatchObject({ hp: 1.5, serviceFactor: 1.65 });
    expect(replies[0]).toContain("Changed horsepower from 1 hp to 1.5 hp.");
  });

  test("takes back what it no longer says", () => {
    const { values } = talked(
      { text: "1 hp, SF 1.65, 230V", message: "1" },
      { text: "1 hp, SF 1.65", message: "1", edited: true },
    );
    expect(values).toEqual({ hp: 1, serviceFactor: 1.65 });
  });

  test("leaves alone what other messages said, also of the same rating later on", () => {
    const { values } = talked(
      { text: "1 hp", message: "1" },
      { text: "SF 1.65", message: "2" },
      { text: "no wait, 2 hp", message: "3" },
      { text: "230V", message: "1", edited: true },
    );
    expect(values).toEqual({ hp: 2, serviceFactor: 1.65, volts: [230] });
  });

  test("as bare as the answer it corrects is read like that answer", () => {
    const first = talked({ text: "hi", message: "1" }, { text: "1 hp", message: "2" });
    expect(first.values).toEqual({ hp: 1 });
    const { values } = talked(
      { text: "hi", message: "1" },
      { text: "1 hp", message: "2" },
      { text: "1.5", message: "2", edited: true },
    );
    expect(values).toEqual({ hp: 1.5 });
  });

  test("that names a danger is answered as one", () => {
    const { thread } = talked(
      { text: "1 hp", message: "1" },
      { text: "1 hp, and it gives me a shock when I touch it", message: "1", edited: true },
    );
    expect(thread.hazard).toBe("shock");
  });

  test("of a channel without message names is a message like any other", () => {
    const { thread } = talked({ text: "1 hp" }, { text: "2 hp" });
    expect(thread.facts.hp).toMatchObject({ value: 2 });
    expect(thread.facts.hp).not.toHaveProperty("from");
  });
});
