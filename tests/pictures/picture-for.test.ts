import { describe, expect, test } from "vitest";
import type { Pictured } from "../../src/conversation/pictured.ts";
import { type RatingName, ratingNames } from "../../src/nameplate/vocabulary.ts";
import { picturesOf } from "../../src/pictures/picture-for.ts";
import { comparison, wording } from "./examples.ts";

const alt = (pictured: Pictured) =>
  picturesOf(pictured, wording)
    .map((picture) => picture.alt)
    .join(" | ");
const asking = (...ratings: readonly RatingName[]): Pictured => ({ kind: "ratings", ratings });

describe("the picture that goes with a question", () => {
  test("shows where on the label the asked-for ratings stand", () => {
    expect(alt(asking("hp", "serviceFactor", "volts"))).toMatch(/label.*horsepower, service factor, volts/);
  });

  test("shows the faces when the question is how it bolts on, whatever else is asked", () => {
    expect(alt(asking("hp", "flange"))).toMatch(/Square face.*Round face.*Through-bolt/);
  });

  test("shows shafts, or faces and shafts in a picture each", () => {
    expect(alt(asking("shaft"))).toMatch(/Threaded.*Keyed/);
    expect(alt(asking("flange", "shaft"))).toMatch(/Round face.*\| .*Threaded/);
  });

  test("shows breaker handles for the poles and for the supply, the figure for the amps", () => {
    expect(alt(asking("breakerPoles"))).toMatch(/two handles tied/);
    expect(alt(asking("supplyVolts"))).toMatch(/two handles tied/);
    expect(alt(asking("breakerAmps"))).toMatch(/figure, 20/);
  });

  test("shows where the pump's own model is", () => expect(alt(asking("pumpModel"))).toMatch(/strainer pot/));

  test("is none where none helps", () => expect(picturesOf(asking("pricePerKwh"), wording)).toEqual([]));
});

test("every rating of a label and every fact of the place but use and price has a picture", () => {
  const without = ratingNames.filter((rating) => picturesOf(asking(rating), wording).length === 0);
  expect(without).toEqual(["pricePerKwh", "hoursPerDay"]);
});

test("where the label is, the running cost and the brief have pictures of their own", () => {
  expect(alt({ kind: "label" })).toMatch(/motor's side/);
  expect(alt({ kind: "running-cost", costs: comparison() })).toMatch(/your motor now about \$950/);
  expect(alt({ kind: "brief", text: "HEAD\nHas: 1.5 hp", urgency: "pump-down" })).toMatch(/Has: 1\.5 hp/);
});

test("a picture that an earlier or later version named is left out, not an error", () => {
  expect(picturesOf(JSON.parse('["hp"]'), wording)).toEqual([]);
  expect(picturesOf(JSON.parse('{"kind":"hologram"}'), wording)).toEqual([]);
});
