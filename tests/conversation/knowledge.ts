import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseMotors } from "../../src/catalogue/motors-csv.ts";
import { loadContent } from "../../src/content.ts";
import { createIntentMatcher } from "../../src/conversation/intents.ts";
import type { Knowledge } from "../../src/conversation/knowledge.ts";
import { type Step, step } from "../../src/conversation/step.ts";
import { newThread, type Thread } from "../../src/conversation/thread.ts";
import { createUnderstand } from "../../src/conversation/understand.ts";
import { readPumpsAndSpares } from "../../src/stock-files.ts";

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** The instant of every message in these tests: a Tuesday evening in November 2026, the desk closed. */
export const AT = "2026-11-25T05:40:00Z";

const content = loadContent(root("intents"));
const { motors } = parseMotors(readFileSync(root("data/motors.csv"), "utf8"));

/** The demo shop at 23:40, as one conversation step sees it. */
export const knowledge: Knowledge = {
  understand: createUnderstand(createIntentMatcher(content.intents)),
  wording: content.wording,
  catalogue: { motors, ...readPumpsAndSpares(root("data")), importedOn: "2026-11-24" },
  shop: { name: "The Soggy Towel Pool Supply", emergencyNumber: "911", pricePerKwh: 0.1729, hoursPerDay: 8 },
  presence: { open: false, opens: "tomorrow, Wednesday, at 8 am" },
  on: "2026-11-24",
};

/** Says the messages one after another and gives every step. */
export function say(...messages: readonly string[]): readonly Step[] {
  return sayIn(newThread, ...messages);
}

export function sayIn(thread: Thread, ...messages: readonly string[]): readonly Step[] {
  const steps: Step[] = [];
  for (const text of messages) steps.push(step(steps.at(-1)?.thread ?? thread, { text, at: AT }, knowledge));
  return steps;
}

/** All that the customer was told in the last step. */
export function told(steps: readonly Step[]): string {
  return steps.at(-1)?.replies.join("\n\n") ?? "";
}
