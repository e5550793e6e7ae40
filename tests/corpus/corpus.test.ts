import { beforeAll, describe, expect, it } from "vitest";
import { detectDanger } from "../../src/conversation/danger.ts";
import { readMessage, valuesOf } from "../../src/nameplate/read.ts";
import { openUnderstanding } from "../../src/understanding.ts";
import { type DangerScore, scoreDanger } from "./score/danger.ts";
import { type HostileScore, scoreHostile } from "./score/hostile.ts";
import { type IntentScore, scoreIntents } from "./score/intents.ts";
import { loadDanger, loadHostile, loadIntents, loadReadings } from "./score/messages.ts";
import { type ReadingScore, scoreReadings } from "./score/readings.ts";
import { f1, precision, ratio, sumTallies } from "./score/tally.ts";

// Floors on the whole corpus, below what `npm run corpus` shows: they catch a step back. Raise them with the reader.
const MINIMUM_READING_F1 = 0.985;
const MINIMUM_READING_PRECISION = 0.985;
const MINIMUM_EXACT_MESSAGES = 0.96;
const MINIMUM_DANGER_RECALL = 0.98;
const MAXIMUM_FALSE_ALARMS = 0.03;
const MINIMUM_RIGHT_KIND = 0.95;
const MINIMUM_FIRST_INTENT = 0.97;
/** Hostile messages that may give a reading they do not state. */
const MAXIMUM_INVENTED = 0.1;

const nothing = { nameplate: {}, site: {}, unreadable: [], intents: [], hazard: null } as const;

const messages = {
  readings: loadReadings(),
  danger: loadDanger(),
  intents: loadIntents(),
  hostile: loadHostile(),
};

describe("the labelled messages", () => {
  it("are enough to measure with", () => {
    expect(messages.readings.length).toBeGreaterThanOrEqual(600);
    expect(messages.danger.length).toBeGreaterThanOrEqual(300);
    expect(messages.intents.length).toBeGreaterThanOrEqual(400);
    expect(messages.hostile.length).toBeGreaterThanOrEqual(60);
  });

  it("use each id once across all files", () => {
    const ids = Object.values(messages).flatMap((list) => list.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("hold about as many dangers as near-dangers", () => {
    const dangers = messages.danger.filter(({ hazard }) => hazard !== null).length;
    expect(dangers / messages.danger.length).toBeGreaterThan(0.4);
    expect(dangers / messages.danger.length).toBeLessThan(0.6);
  });

  it("hold at least twenty messages of every intent", () => {
    const counts = new Map<string, number>();
    for (const { intent } of messages.intents) counts.set(intent, (counts.get(intent) ?? 0) + 1);
    expect(counts.size).toBe(17);
    expect(Math.min(...counts.values())).toBeGreaterThanOrEqual(20);
  });
});

describe("what the reader makes of them", () => {
  let readings: ReadingScore;
  let danger: DangerScore;
  let intents: IntentScore;
  let hostile: HostileScore;
  beforeAll(() => {
    const understand = openUnderstanding();
    // Each set is looked at for what it is about; all at once is what the last two get.
    readings = scoreReadings(messages.readings, (text) => ({ ...nothing, ...valuesOf(readMessage(text)) }));
    danger = scoreDanger(messages.danger, (text) => ({
      ...nothing,
      hazard: detectDanger(text)?.hazard ?? null,
    }));
    intents = scoreIntents(messages.intents, understand);
    hostile = scoreHostile(messages.hostile, understand);
  }, 300_000);

  it("reads ratings", () => {
    const all = sumTallies(readings.fields.values());
    expect(f1(all)).toBeGreaterThanOrEqual(MINIMUM_READING_F1);
    expect(precision(all)).toBeGreaterThanOrEqual(MINIMUM_READING_PRECISION);
    expect(ratio(readings.exact, readings.messages)).toBeGreaterThanOrEqual(MINIMUM_EXACT_MESSAGES);
  });

  it("notices danger without crying wolf", () => {
    expect(ratio(danger.dangers.right, danger.dangers.all)).toBeGreaterThanOrEqual(MINIMUM_DANGER_RECALL);
    expect(ratio(danger.falseAlarms.right, danger.falseAlarms.all)).toBeLessThanOrEqual(MAXIMUM_FALSE_ALARMS);
    expect(ratio(danger.kinds.right, danger.kinds.all)).toBeGreaterThanOrEqual(MINIMUM_RIGHT_KIND);
  });

  it("puts what the person wants first", () => {
    expect(ratio(intents.first, intents.messages)).toBeGreaterThanOrEqual(MINIMUM_FIRST_INTENT);
  });

  it("answers every hostile input, with no value that a label cannot hold", () => {
    expect(hostile.answered).toBe(hostile.messages);
    expect(hostile.unsound).toBe(0);
    expect(ratio(hostile.invented, hostile.messages)).toBeLessThanOrEqual(MAXIMUM_INVENTED);
  });
});
