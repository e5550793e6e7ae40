import { bench, describe } from "vitest";
import { detectDanger } from "../../src/conversation/danger.ts";
import { createIntentMatcher } from "../../src/conversation/intents.ts";
import { definitions } from "../conversation/intents/matcher.ts";

/** Ten times the length must cost about ten times the time: compare the two lines of each pair. */
const shapes: Readonly<Record<string, string>> = {
  "an ordinary message": "the motor hums and then the breaker trips, label says 1.5 HP 115/230. ",
  "one endless sentence of dangers": "smoke and sparks and it shocked me and no water in the box ",
  "negations without end": "no not never without any ",
  "one word of letters": "a",
  misspellings: "brekaer triping shokced smokeing ",
  "questions and quotes": 'what if it says: "risk of shock"? ',
};

function fill(text: string, length: number): string {
  return text.repeat(Math.ceil(length / text.length)).slice(0, length);
}

for (const [name, text] of Object.entries(shapes)) {
  describe(`danger, ${name}`, () => {
    const short = fill(text, 2_000);
    const long = fill(text, 20_000);
    bench("2,000 characters", () => void detectDanger(short), { time: 200 });
    bench("20,000 characters", () => void detectDanger(long), { time: 200 });
  });
}

describe("one message, warm", () => {
  const match = createIntentMatcher(definitions);
  const nothing = { readings: [], unreadable: [] };
  const message = "can I go up to 2 hp, and what would that cost to run?";
  bench("danger", () => void detectDanger(message), { time: 300 });
  bench("intents by patterns", () => void match(message, nothing), { time: 300 });
  bench("intents by phrases", () => void match("yes please", nothing), { time: 300 });
  bench("intents of 20,000 characters", () => void match(fill(`${message} `, 20_000), nothing), {
    time: 300,
  });
});

describe("start", () => {
  bench("compile every intent", () => void createIntentMatcher(definitions), { time: 500 });
});
