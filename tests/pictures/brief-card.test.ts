import { describe, expect, test } from "vitest";
import { briefCard } from "../../src/pictures/brief-card.ts";
import { briefText, wording } from "./examples.ts";
import { placedWords } from "./placed-words.ts";

const flat = (text: string) => text.replace(/\s/g, "");

describe("the brief as a card", () => {
  const brief = briefText(
    "ready-to-confirm",
    "HP 1.5 SF 1.1 115/230 V 19.2/9.6 A FR 56Y 3450 rpm 1 ph, double breaker",
  );
  const card = briefCard(brief, "ready-to-confirm", wording);

  test("leaves no word out, in order", () => {
    expect(brief.split("\n").length).toBeGreaterThan(5);
    expect(
      flat(
        placedWords(card)
          .map(({ text }) => text)
          .join(""),
      ),
    ).toBe(flat(brief));
  });

  test("sets the lead of each line apart", () => {
    const bold = [...card.svg.matchAll(/font-weight="bold"[^>]*>([^<]*)</g)].map(([, text]) => text);
    expect(bold).toEqual(expect.arrayContaining(["Has:", "Fits:", "Why:", "Still open:", "Said last:"]));
    expect(bold).toContain("For the electrician");
  });

  test("a danger is marked by a sign, not by colour alone", () => {
    const colourless = (svg: string) => svg.replace(/ (fill|stroke)="#[0-9a-f]{6}"/g, "");
    const danger = colourless(briefCard(brief, "danger", wording).svg);
    expect(danger.match(/<path/g)!.length).toBe(colourless(card.svg).match(/<path/g)!.length + 3);
  });

  test("a long word is broken and a long brief still ends", () => {
    const long = briefCard(`HEAD\nSaid last: ${"x".repeat(1400)}`, "pump-down", wording);
    for (const { right } of placedWords(long)) expect(right).toBeLessThanOrEqual(344.01);
    expect(
      flat(
        placedWords(long)
          .map(({ text }) => text)
          .join(""),
      ),
    ).toHaveLength("HEADSaidlast:".length + 1400);
  });
});
