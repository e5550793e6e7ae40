import { describe, expect, test } from "vitest";
import type { Pending } from "../../src/conversation/thread.ts";
import { type RatingName, ratingNames } from "../../src/nameplate/vocabulary.ts";
import { pictureFor, pictureOf } from "../../src/pictures/picture-for.ts";
import { knowledge, say } from "../conversation/knowledge.ts";
import { wording } from "./examples.ts";

const alt = (pending: Pending) => pictureOf(pending, wording)?.alt;
const asking = (...ratings: readonly RatingName[]): Pending => ({ kind: "ratings", ratings });

describe("the picture that goes with a question", () => {
  test("shows where on the label the asked-for ratings stand", () => {
    expect(alt(asking("hp", "serviceFactor", "volts"))).toMatch(/label.*horsepower, service factor, volts/);
  });

  test("shows the faces when the question is how it bolts on, whatever else is asked", () => {
    expect(alt(asking("hp", "flange"))).toMatch(/Square face.*Round face.*Through-bolt/);
  });

  test("shows shafts, or both faces and shafts", () => {
    expect(alt(asking("shaft"))).toMatch(/Threaded.*Keyed/);
    expect(alt(asking("flange", "shaft"))).toMatch(/Round face.*Threaded/);
  });

  test("shows breaker handles for the poles and for the supply, the figure for the amps", () => {
    expect(alt(asking("breakerPoles"))).toMatch(/two handles tied/);
    expect(alt(asking("supplyVolts"))).toMatch(/two handles tied/);
    expect(alt(asking("breakerAmps"))).toMatch(/figure, 20/);
  });

  test("shows where the pump's own model is", () => expect(alt(asking("pumpModel"))).toMatch(/strainer pot/));

  test("shows the doubted entry again, and both of two exchanged ones", () => {
    const proposal = { rating: "hp", value: 1.5 } as const;
    expect(alt({ kind: "doubt", rating: "hp", proposal })).toMatch(/horsepower\.$/);
    const also = { rating: "serviceFactor", value: 1.1 } as const;
    expect(alt({ kind: "doubt", rating: "hp", proposal: { ...proposal, also } })).toMatch(
      /horsepower, service factor/,
    );
  });

  test("is none where none helps, least of all in danger", () => {
    expect(pictureOf({ kind: "nothing" }, wording)).toBeNull();
    expect(pictureOf({ kind: "power-off", hazard: "shock" }, wording)).toBeNull();
    expect(pictureOf({ kind: "erase" }, wording)).toBeNull();
    expect(pictureOf(asking("pricePerKwh"), wording)).toBeNull();
  });

  test("comes with what the bot asks in a talk", () => {
    const first = say("hi, my pool pump motor died, 1.5 hp").at(-1)!;
    expect(first.thread.pending.kind).toBe("ratings");
    expect(pictureOf(first.thread.pending, knowledge.wording)).not.toBeNull();
  });
});

test("every rating of a label and every fact of the place but use and price has a picture", () => {
  const without = ratingNames.filter((rating) => pictureFor(rating, wording) === null);
  expect(without).toEqual(["pricePerKwh", "hoursPerDay"]);
});

test("where the label is has a picture of its own", () => {
  expect(pictureFor("label", wording)?.alt).toMatch(/motor's side/);
});
