import { describe, expect, test } from "vitest";
import weights from "../../../intents/dangers/weights.json" with { type: "json" };
import { tokenize } from "../../../src/conversation/danger/tokens.ts";
import { clausesOf, clauseView } from "../../../src/conversation/danger/vote/clauseView.ts";
import { anyKind, readLinear, speak } from "../../../src/conversation/danger/vote/linear.ts";
import { typeWords } from "../../../src/conversation/danger/vote/typed.ts";
import { vote } from "../../../src/conversation/danger/vote/vote.ts";
import { wholeView } from "../../../src/conversation/danger/vote/wholeView.ts";
import {
  englishVerb,
  spanishNoun,
  spanishVerb,
} from "../../../src/conversation/danger/vote/words/inflect.ts";
import { detectDanger } from "../../../src/conversation/danger.ts";
import { learnWeights } from "./learn/fit.ts";

const clauses = (text: string) => clausesOf(typeWords(tokenize(text)));

test("words are inflected as people write them", () => {
  expect(englishVerb("trip")).toEqual(expect.arrayContaining(["trips", "tripped", "tripping"]));
  expect(englishVerb("smoke")).toEqual(expect.arrayContaining(["smokes", "smoked", "smoking"]));
  expect(spanishVerb("brincar")).toEqual(expect.arrayContaining(["brinca", "brinco", "brinque"]));
  expect(spanishNoun("quemado")).toEqual(expect.arrayContaining(["quemada", "quemados", "quemadas"]));
});

describe("the views", () => {
  test("name what words mean, not how they are written", () => {
    const shared = wholeView(typeWords(tokenize("the breaker trips")));
    for (const sign of wholeView(typeWords(tokenize("the fuse tripped")))) expect(shared).toContain(sign);
  });

  test("mark what stands under a negation", () => {
    expect(wholeView(typeWords(tokenize("no smoke")))).toContain("!@smoke");
    expect(wholeView(typeWords(tokenize("no noise but smoke")))).not.toContain("!@smoke");
  });

  test("tell volts that were measured from those of a supply", () => {
    const figures = (text: string) => typeWords(tokenize(text)).flatMap(({ symbols }) => symbols);
    expect(figures("reads 62 V to ground")).toContain("@oddVolts");
    // IEC 60038, table 1, from memory: 230 V is a supply.
    expect(figures("230 V, 8 A")).toContain("@volts");
    expect(figures("230 V, 8 A")).not.toContain("@oddVolts");
  });

  test("take clauses apart and let one place the other", () => {
    const parts = clauses("it used to smoke, the electrician fixed it");
    expect(parts).toHaveLength(2);
    expect(clauseView(parts)[0]).toContain(">@pro");
  });
});

describe("the weights", () => {
  test.each(Object.entries(weights))("of %s are one number for each kind, a sign to a line", (_, view) => {
    expect(view.weights.length).toBeGreaterThan(1_000);
    expect(
      view.weights.filter((line) => !/^[^\t]+\t(?:-?\d+(?:\.\d+)? ){3}-?\d+(?:\.\d+)?$/.test(line)),
    ).toEqual([]);
  });

  test("add up as log odds, damped by the number of signs", () => {
    const linear = readLinear({
      bias: "-1 -1 -1 -1",
      damping: 0.5,
      weights: ["@smoke\t0 4 0 0", "a\t0 2 0 0"],
    });
    // (4 + 2) / sqrt(3) - 1; unknown signs count for nothing.
    expect(speak(linear, ["@smoke", "a", "unknown"])[1]).toBeCloseTo(6 / Math.sqrt(3) - 1, 10);
    // Four equal chances: log(4 e^0).
    expect(anyKind([0, 0, 0, 0])).toBeCloseTo(Math.log(4), 10);
  });

  test("are learned from examples, and unlearned by none", () => {
    const examples = Array.from({ length: 40 }, (_, i) => ({
      bags: [new Set(i % 2 === 0 ? ["@smoke", "it"] : ["@price", "it"])],
      hazard: i % 2 === 0 ? ("fire" as const) : null,
      weight: 1,
      composed: false,
    }));
    const settings = { atLeast: 2, most: 10, damping: 0.5, rounds: 20, rate: 0.1, pull: 1e-3 };
    const learned = learnWeights(examples, settings);
    expect(anyKind(speak(learned, ["@smoke", "it"]))).toBeGreaterThan(0);
    expect(anyKind(speak(learned, ["@price", "it"]))).toBeLessThan(0);
  });
});

test("the vote by itself hears a danger and points at its clause", () => {
  const text = "need a 1 hp, every time I touch the pump housing my hand tingles";
  const { odds, hazard, span } = vote(tokenize(text));
  expect(odds).toBeGreaterThan(0);
  expect(hazard).toBe("shock");
  expect(text.slice(span.start, span.end)).toContain("touch");
});

test("one danger in a long harmless message is heard", () => {
  const filler = "label says 1 hp 115/230 V, 48Y, 3450 rpm, what would a new one cost to run? ".repeat(6);
  expect(detectDanger(`${filler}The breaker keeps tripping. ${filler}`)?.hazard).toBe("trip");
});
