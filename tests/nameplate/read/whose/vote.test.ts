import { describe, expect, test } from "vitest";
import { statedIn } from "../../../../src/nameplate/read/message.ts";
import { signsOf } from "../../../../src/nameplate/read/whose/signs.ts";
import { oddsOf, readWeights } from "../../../../src/nameplate/read/whose/vote.ts";
import { readMessage, valuesOf } from "../../../../src/nameplate/read.ts";

const signs = (text: string, rating: string) => {
  const { stated, context } = statedIn(text);
  const claim = stated.find((one) => one.rating === rating);
  if (!claim) throw new Error(`no ${rating} in ${text}`);
  return signsOf(context, claim);
};

describe("the signs of a figure", () => {
  test("are the words around it, by where they stand", () => {
    const found = signs("Mine is old. My aunt bought a 2 hp last week. Good?", "hp");
    expect([...found]).toEqual(
      expect.arrayContaining([
        "b:aunt",
        "bb:bought a",
        "b1:a",
        "a:last",
        "s:week",
        "p:mine",
        "n:good",
        "o:my aunt",
      ]),
    );
    expect(found).not.toContain("asked");
  });

  test("do not name the figure, so that what is said of 2 hp holds for 3", () => {
    expect(signs("my aunt bought a 2 hp", "hp")).toEqual(signs("my aunt bought a 3 hp", "hp"));
  });

  test("tell a question", () => {
    expect(signs("do people run 2 hp on that?", "hp")).toContain("asked");
  });

  test("are a bounded number, however long the sentence", () => {
    const endless = "and then some more words came ".repeat(400);
    expect(signs(`${endless} 2 hp ${endless}`, "hp").size).toBeLessThan(500);
  });
});

test("odds add up what known signs say, less for each of many", () => {
  const weights = readWeights({ bias: 1, damping: 0.5, weights: ["b:aunt\t-6", "s:label\t2"] });
  expect(oddsOf(weights, [])).toBe(1);
  expect(oddsOf(weights, ["b:nobody"])).toBe(1);
  expect(oddsOf(weights, ["b:aunt"])).toBeCloseTo(1 - 6 / Math.SQRT2, 10);
  expect(oddsOf(weights, ["b:aunt", "s:label"])).toBeCloseTo(1 - 4 / Math.sqrt(3), 10);
});

describe("words that no list of cues holds", () => {
  const hp = (text: string) => valuesOf(readMessage(text)).nameplate.hp;

  test.each([
    "Just curious, not for my pump at all: what do 1.5 hp motors go for these days?",
    "wife wants a quiet one, 2 hp like her sister's",
  ])("%s", (text) => expect(hp(text)).toBeUndefined());

  test.each([
    ["luckily i wrote down what was on it in 2019: 1hp 115/230v", 1],
    ["my son went out and read it to me, 1.5 hp he says", 1.5],
  ])("%s", (text, expected) => expect(hp(text)).toBe(expected));
});
