import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { terms } from "../../src/conversation/speaker.ts";
import { judgeMotor } from "../../src/matching/match.ts";
import { changeItems, workKeys } from "../../src/matching/parts.ts";
import { rules } from "../../src/matching/rules/index.ts";
import { drawCase, seeded } from "./generate.ts";

type Texts = Record<string, string>;

function texts(group: string): Texts {
  return JSON.parse(readFileSync(new URL(`../../intents/answers/${group}.json`, import.meta.url), "utf8"));
}

const reasons = texts("reasons");
const work = texts("work");
const blanks = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map((found) => found[1]!);

/** Blanks that the speaker fills with a trade word, explained the first time. */
const tradeWords: ReadonlySet<string> = new Set(terms);

describe("texts and keys", () => {
  test("every reason a rule may give has a text, and no text is left over", () => {
    expect(Object.keys(reasons).sort()).toEqual(rules.flatMap((rule) => rule.reasons).sort());
  });

  test("every work key has a text, and no text is left over", () => {
    expect(Object.keys(work).sort()).toEqual([...workKeys].sort());
  });

  test("each reason is one plain sentence", () => {
    const odd = Object.entries(reasons).filter(([, text]) => !/^[A-Z][^.?!]*(?:\.\d[^.?!]*)*\.$/.test(text));
    expect(odd).toEqual([]);
  });

  test("figures meant for an electrician stay out of what customers read", () => {
    const told = [...Object.values(reasons), ...Object.values(work)].filter((text) =>
      /NEC|430|AWG|125 %/.test(text),
    );
    expect(told).toEqual([]);
  });
});

describe("texts and values, over generated pairs", () => {
  const given = new Map<string, Set<string>>();
  const worked = new Map<string, Set<string>>();
  const unfilled = new Set<string>();

  beforeAll(() => {
    const random = seeded(7);
    for (let pairs = 0; pairs < 10_000; pairs++) {
      const { question, stock } = drawCase(random, 2);
      for (const motor of stock) {
        const judged = judgeMotor(question, motor);
        for (const { reason, values } of judged.findings) note(given, reasons, reason, values);
        for (const { key, values } of changeItems(judged)) note(worked, work, key, values);
      }
    }
  });

  function note(seen: Map<string, Set<string>>, from: Texts, key: string, values: object): void {
    for (const blank of blanks(from[key] ?? "")) {
      if (!(blank in values) && !tradeWords.has(blank)) unfilled.add(`${key} {${blank}}`);
    }
    const names = seen.get(key) ?? new Set();
    for (const [name, value] of Object.entries(values)) {
      names.add(name);
      if (value === "" || Number.isNaN(value)) unfilled.add(`${key} ${name} is empty`);
    }
    seen.set(key, names);
  }

  test("every blank is filled", () => {
    expect([...unfilled]).toEqual([]);
  });

  test("every reason and every piece of work really occurs", () => {
    expect(Object.keys(reasons).filter((key) => !given.has(key))).toEqual([]);
    expect(workKeys.filter((key) => !worked.has(key))).toEqual([]);
  });
});
