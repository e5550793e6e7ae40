import { describe, expect, it } from "vitest";
import { z } from "zod";
import type { Answer } from "./score/answer.ts";
import { scoreDanger } from "./score/danger.ts";
import { scoreHostile, sumHostile } from "./score/hostile.ts";
import { scoreIntents } from "./score/intents.ts";
import { parseLines } from "./score/messages.ts";
import { compareReadings, scoreReadings } from "./score/readings.ts";
import { reportDanger, reportReadings } from "./score/report.ts";
import { splitOf } from "./score/split.ts";
import { f1, precision, ratio, recall, sumTallies } from "./score/tally.ts";
import { sameSet, sameValue } from "./score/values.ts";

const nothing: Answer = { nameplate: {}, site: {}, unreadable: [], intents: ["other"], hazard: null };
const answer = (part: Partial<Answer>): Answer => ({ ...nothing, ...part });
const reading = (text: string, gold: Partial<Parameters<typeof scoreReadings>[0][number]>) => ({
  id: text,
  file: "dummy",
  text,
  nameplate: {},
  site: {},
  unreadable: [],
  tags: ["plain"],
  ...gold,
});

describe("values", () => {
  it("takes numbers within a millionth for the same, and no others", () => {
    expect(sameValue(1.1, 1.1 + 1e-9)).toBe(true);
    expect(sameValue(1.1, 1.1001)).toBe(false);
  });

  it("compares lists in label order", () => {
    expect(sameValue([115, 230], [115, 230])).toBe(true);
    expect(sameValue([115, 230], [230, 115])).toBe(false);
    expect(sameValue([115, 230], [115])).toBe(false);
  });

  it("never takes a number for its text, nor texts of other case", () => {
    expect(sameValue(1, "1")).toBe(false);
    expect(sameValue("56Y", "56y")).toBe(false);
    expect(sameValue("56Y", "56Y")).toBe(true);
  });

  it("compares names as a set", () => {
    expect(sameSet(["hp", "amps"], ["amps", "hp", "hp"])).toBe(true);
    expect(sameSet(["hp"], ["hp", "amps"])).toBe(false);
    expect(sameSet(["hp", "rpm"], ["hp", "amps"])).toBe(false);
  });
});

describe("tallies", () => {
  // Worked by hand: 6 right, 2 false, 4 lost.
  const tally = { truePositives: 6, falsePositives: 2, falseNegatives: 4 };

  it("gives precision, recall and their harmonic mean", () => {
    expect(precision(tally)).toBeCloseTo(0.75, 12);
    expect(recall(tally)).toBeCloseTo(0.6, 12);
    expect(f1(tally)).toBeCloseTo(2 / (1 / 0.75 + 1 / 0.6), 12);
  });

  it("sums for the micro average and counts nothing as perfect", () => {
    expect(sumTallies([tally, tally])).toEqual({ truePositives: 12, falsePositives: 4, falseNegatives: 8 });
    expect(ratio(0, 0)).toBe(1);
    expect(f1({ truePositives: 0, falsePositives: 3, falseNegatives: 0 })).toBe(0);
  });
});

describe("readings", () => {
  it("judges each field right, wrong, missing or added", () => {
    const gold = { nameplate: { hp: 1.5, volts: [115, 230], frame: "56Y" }, site: {}, unreadable: [] };
    const got = answer({ nameplate: { hp: 1.5, volts: [230] }, site: { breakerAmps: 20 } });
    expect(compareReadings(gold, got).map(({ name, verdict }) => [name, verdict])).toEqual([
      ["hp", "right"],
      ["volts", "wrong"],
      ["frame", "missing"],
      ["breakerAmps", "added"],
    ]);
  });

  it("counts a wrong value both as false and as lost", () => {
    const score = scoreReadings([reading("1 hp", { nameplate: { hp: 1 } })], () =>
      answer({ nameplate: { hp: 2 } }),
    );
    expect(score.fields.get("hp")).toEqual({ truePositives: 0, falsePositives: 1, falseNegatives: 1 });
    expect(score.exact).toBe(0);
  });

  it("takes unreadable as one field, whatever the order of its names", () => {
    const messages = [reading("?", { unreadable: ["amps", "frame"] })];
    const right = scoreReadings(messages, () => answer({ unreadable: ["frame", "amps"] }));
    const wrong = scoreReadings(messages, () => answer({ unreadable: ["frame"] }));
    expect([right.exact, wrong.exact]).toEqual([1, 0]);
    expect(wrong.fields.get("unreadable")).toEqual({
      truePositives: 0,
      falsePositives: 1,
      falseNegatives: 1,
    });
  });

  it("counts an invented reading in a message without any against the message and the field", () => {
    const score = scoreReadings([reading("call 5550123", {})], () =>
      answer({ nameplate: { rpm: [5550123] } }),
    );
    expect(score.exact).toBe(0);
    expect(score.fields.get("rpm")).toEqual({ truePositives: 0, falsePositives: 1, falseNegatives: 0 });
    expect(score.misses[0]?.differences).toEqual(["added rpm: want nothing, got [5550123]"]);
  });

  it("does not mix a rating left undefined with one that is stated", () => {
    expect(
      compareReadings({ nameplate: {}, site: {}, unreadable: [] }, answer({ nameplate: { hp: undefined } })),
    ).toEqual([]);
  });

  it("keeps the accuracy of each tag", () => {
    const messages = [
      reading("a", { nameplate: { hp: 1 }, tags: ["caps", "typo"] }),
      reading("b", { nameplate: { hp: 2 }, tags: ["caps"] }),
    ];
    const score = scoreReadings(messages, () => answer({ nameplate: { hp: 1 } }));
    expect(Object.fromEntries(score.tags)).toEqual({
      caps: { right: 1, all: 2 },
      typo: { right: 1, all: 1 },
    });
  });
});

describe("danger", () => {
  const message = (id: string, hazard: "shock" | "fire" | null) => ({
    id,
    file: "danger",
    text: id,
    hazard,
    tags: ["plain"],
  });
  const messages = [
    message("tingle", "shock"),
    message("zap", "shock"),
    message("smoke", "fire"),
    message("sale", null),
    message("price", null),
  ];
  const score = scoreDanger(messages, (text) =>
    answer({ hazard: { tingle: "shock", zap: "trip", sale: "fire" }[text] ?? null }),
  );

  it("counts any alarm as found, and its kind apart", () => {
    expect(score.dangers).toEqual({ right: 2, all: 3 });
    expect(score.kinds).toEqual({ right: 1, all: 2 });
  });

  it("counts false alarms among harmless messages only", () => {
    expect(score.falseAlarms).toEqual({ right: 1, all: 2 });
  });

  it("names each miss", () => {
    expect(score.misses.map(({ differences }) => differences[0])).toEqual([
      "wrong kind: want shock, got trip",
      "missed: fire",
      "false alarm: fire",
    ]);
  });

  it("hides the misses of a held-out part", () => {
    expect(reportDanger(score, true)).toContain("missed: fire");
    expect(reportDanger(score, false)).not.toContain("missed: fire");
  });
});

describe("intents", () => {
  const message = (text: string, intent: "price" | "no" | "yes", also: ("thanks" | "ratings")[]) => ({
    id: text,
    file: "intents",
    text,
    intent,
    also,
    tags: ["plain"],
  });
  const messages = [
    message("cost", "price", ["thanks"]),
    message("nah", "no", ["thanks"]),
    message("yes", "yes", []),
  ];
  const score = scoreIntents(messages, (text) =>
    answer({ intents: { cost: ["price", "thanks"], nah: ["thanks", "no"] }[text] ?? [] }),
  );

  it("wants the right intent first, and tells separately where another one is a matter of taste", () => {
    expect(score.first).toBe(1);
    expect(score.firstOrAlso).toBe(2);
    expect(score.also).toEqual({ right: 2, all: 2 });
  });

  it("lists the confusions, an empty answer among them", () => {
    expect(Object.fromEntries(score.confusions)).toEqual({ "no -> thanks": 1, "yes -> nothing": 1 });
  });
});

describe("hostile input", () => {
  const messages = [
    { id: "1", file: "hostile", text: "boom", why: "throws", states: [] },
    { id: "2", file: "hostile", text: "mute", why: "no intent", states: [] },
    { id: "3", file: "hostile", text: "made up", why: "invents", states: [] },
    { id: "4", file: "hostile", text: "stated", why: "true rating", states: ["hp"] },
    { id: "5", file: "hostile", text: "below", why: "negative", states: ["volts"] },
  ];
  const score = scoreHostile(messages, (text) => {
    if (text === "boom") throw new RangeError("too long");
    if (text === "mute") return answer({ intents: [] });
    if (text === "below") return answer({ nameplate: { volts: [-230] } });
    return answer({ nameplate: { hp: 9 } });
  });

  it("counts exceptions and silence as not answered", () => {
    expect(score.answered).toBe(3);
    expect(score.misses.slice(0, 2).map(({ differences }) => differences[0])).toEqual([
      "threw RangeError: too long",
      "no intent at all",
    ]);
  });

  it("counts readings that the text does not state, and values that no label holds", () => {
    expect(score.invented).toBe(1);
    expect(score.unsound).toBe(1);
  });

  it("adds up", () => {
    const twice = sumHostile([score, score]);
    expect([twice.messages, twice.answered, twice.invented, twice.unsound]).toEqual([10, 6, 2, 2]);
    expect(twice.misses).toHaveLength(2 * score.misses.length);
  });
});

describe("the corpus files", () => {
  const schema = z.strictObject({ id: z.string(), text: z.string() });

  it("names file and line of a bad line and of an id used twice", () => {
    expect(() => parseLines("hard", '{"id":"a","text":"x"}\n{"id":"b"', schema)).toThrow("hard.jsonl line 2");
    expect(() => parseLines("hard", '{"id":"a"}', schema)).toThrow("hard.jsonl line 1");
    expect(() => parseLines("hard", '{"id":"a","text":"x"}\n\n{"id":"a","text":"y"}', schema)).toThrow(
      "hard.jsonl line 3: id a is used twice",
    );
  });

  it("keeps the file's name beside each message", () => {
    expect(parseLines("hard", '{"id":"a","text":"x"}\n', schema)).toEqual([
      { id: "a", text: "x", file: "hard" },
    ]);
  });
});

describe("the split", () => {
  // First bytes of SHA-256: "abc" ba (NIST's example for FIPS 180-4); "" e3, "a" ca, "b" 3e (coreutils sha256sum).
  it("follows the first byte of the id's SHA-256", () => {
    expect(["abc", "", "a", "b"].map(splitOf)).toEqual(["held", "held", "held", "tune"]);
  });

  it("puts about three fifths into the part that is tuned on", () => {
    const ids = Array.from({ length: 1000 }, (_, number) => `message-${number}`);
    const tune = ids.filter((id) => splitOf(id) === "tune").length;
    expect(tune).toBeGreaterThan(550);
    expect(tune).toBeLessThan(650);
  });
});

describe("the report", () => {
  it("shows fields, the micro average and the misses", () => {
    const score = scoreReadings([reading("1 hp 56Y", { nameplate: { hp: 1, frame: "56Y" } })], () =>
      answer({ nameplate: { hp: 1 } }),
    );
    const report = reportReadings(score, true);
    expect(report).toContain("exactly right 0/1 0.0 %");
    expect(report).toMatch(/hp +1\.0000 {2}1\.0000 {2}1\.0000/);
    expect(report).toMatch(/ALL \(micro\) +1\.0000 {2}0\.5000 {2}0\.6667/);
    expect(report).toContain('missing frame: want "56Y", got nothing');
  });
});
