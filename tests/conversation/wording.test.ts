import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { terms } from "../../src/conversation/speaker.ts";
import { createWording, type Texts, WordingError, wordingGroups } from "../../src/conversation/wording.ts";
import { ratingNames } from "../../src/nameplate/vocabulary.ts";
import { knowledge } from "./knowledge.ts";

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const texts = (group: string) =>
  JSON.parse(readFileSync(root(`intents/answers/${group}.json`), "utf8")) as Record<string, string>;

describe("what the bot says", () => {
  test("every rating can be asked, asked again and explained", () => {
    for (const rating of ratingNames) {
      expect(knowledge.wording.has("questions", rating), rating).toBe(true);
      expect(knowledge.wording.has("questions", `${rating}.again`), rating).toBe(true);
    }
    const unexplained = ratingNames.filter((rating) => !knowledge.wording.has("explain", rating));
    expect(unexplained).toEqual(["pricePerKwh", "hoursPerDay"]);
  });

  test("every trade word has its name and a short explanation", () => {
    for (const term of terms) {
      expect(knowledge.wording.has("explain", `${term}.name`), term).toBe(true);
      expect(knowledge.wording.has("explain", `${term}.short`), term).toBe(true);
    }
  });

  test("there is a file for every group and no file is left over", () => {
    const files = readdirSync(root("intents/answers")).map((file) => file.replace(/\.json$/, ""));
    expect(files.sort()).toEqual([...wordingGroups].sort());
  });

  test("every reply and question fits a phone screen by itself", () => {
    for (const group of ["replies", "questions", "safety", "explain"] as const) {
      for (const [key, text] of Object.entries(texts(group)))
        expect(text.length, key).toBeLessThanOrEqual(560);
    }
  });

  test("no text calls wiring safe", () => {
    for (const group of wordingGroups) {
      for (const [key, text] of Object.entries(texts(group))) {
        expect(text, key).not.toMatch(/(wiring|circuit|it) is safe|safe to (touch|wire|connect|use)/i);
      }
    }
  });
});

describe("a mistake in the texts", () => {
  const wording = createWording({ ...emptyTexts(), replies: { got: "Got it: {facts}." } });

  test("a missing text is named by file and key", () => {
    expect(() => wording.say("replies", "gone")).toThrow(WordingError);
    expect(() => wording.say("replies", "gone")).toThrow('intents/answers/replies.json, key "gone"');
  });

  test("a blank that nobody fills is named", () => {
    expect(() => wording.say("replies", "got", {})).toThrow("{facts}");
  });

  test("what customers typed fills a blank as it is, blanks and all", () => {
    expect(wording.say("replies", "got", { facts: "{facts} $& <b>" })).toBe("Got it: {facts} $& <b>.");
  });

  function emptyTexts(): Texts {
    return Object.fromEntries(wordingGroups.map((group) => [group, {}])) as unknown as Texts;
  }
});
