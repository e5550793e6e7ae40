import { describe, expect, test } from "vitest";
import { pictureOfQuestion } from "../../src/conversation/pictured.ts";
import { say } from "./knowledge.ts";

const label = "HP 1.5 SF 1.1 115/230 V 19.2/9.6 A FR 56Y 3450 rpm 60 hz 1 ph, double breaker";
const kinds = (step: ReturnType<typeof say>[number]) => step.pictures.map((picture) => picture?.kind ?? null);

describe("the picture that helps with a reply", () => {
  test("is named beside the question it helps to answer, the first time it is asked", () => {
    const [first, second] = say("1 hp, SF 1.65, 230V", "hmm");
    expect(first!.pictures.at(-1)).toEqual({ kind: "ratings", ratings: ["rpm", "frame", "phase"] });
    expect(kinds(second!)).not.toContain("ratings");
  });

  test("shows the doubted entry again, and both of two exchanged ones", () => {
    const proposal = { rating: "hp", value: 1.5 } as const;
    expect(pictureOfQuestion({ kind: "doubt", rating: "hp", proposal })).toMatchObject({ ratings: ["hp"] });
    const also = { rating: "serviceFactor", value: 1.1 } as const;
    expect(pictureOfQuestion({ kind: "doubt", rating: "hp", proposal: { ...proposal, also } })).toMatchObject(
      {
        ratings: ["hp", "serviceFactor"],
      },
    );
  });

  test("shows what is asked about, or where the label is when no word is named", () => {
    expect(say("what is SF?").at(-1)!.pictures[0]).toEqual({ kind: "ratings", ratings: ["serviceFactor"] });
    expect(say("what does the label mean?").at(-1)!.pictures[0]).toEqual({ kind: "label" });
  });

  test("is none in danger, none while a danger holds the talk, and none where nothing is asked", () => {
    const [danger, held] = say("1 hp, there is smoke coming out of the motor", "what is SF?");
    expect([...kinds(danger!), ...kinds(held!)].filter((kind) => kind !== null)).toEqual([]);
    expect(pictureOfQuestion({ kind: "nothing" })).toBeUndefined();
    expect(pictureOfQuestion({ kind: "power-off", hazard: "shock" })).toBeUndefined();
    expect(pictureOfQuestion({ kind: "erase" })).toBeUndefined();
  });
});

describe("the running cost as a picture", () => {
  const verdict = say(label).at(-1)!;
  const costs = verdict.replies.findIndex((text) => text.includes("¢/kWh"));

  test("goes with the message that tells both costs, on the figures told there", () => {
    expect(verdict.pictures[costs]).toMatchObject({
      kind: "running-cost",
      costs: { use: { hoursPerDay: 8, pricePerKwh: 0.1729, stated: false } },
    });
    expect(kinds(verdict).filter((kind) => kind === "running-cost")).toHaveLength(1);
  });

  test("is drawn again when the customer tells hours or price", () => {
    const again = say(label, "we run it 6 hours a day and pay 31 cents per kwh").at(-1)!;
    expect(again.pictures).toContainEqual(
      expect.objectContaining({
        costs: expect.objectContaining({ use: { hoursPerDay: 6, pricePerKwh: 0.31, stated: true } }),
      }),
    );
  });

  test("is none when the old motor's cost cannot be told", () => {
    const silent = say("HP 1.5 SF 1.1 230 V FR 56Y 3450 rpm 60 hz 1 ph, double breaker, no amps on it").at(
      -1,
    )!;
    expect(silent.replies.join(" ")).not.toContain("your old motor about");
    expect(kinds(silent)).not.toContain("running-cost");
  });

  test("is plain data: it comes out of the store as it went in", () => {
    const picture = verdict.pictures[costs];
    expect(JSON.parse(JSON.stringify(picture))).toEqual(picture);
  });
});
