import { bench, describe } from "vitest";
import { BRIEF_CHARACTERS } from "../../src/desk/brief.ts";
import { briefCard } from "../../src/pictures/brief-card.ts";
import { renderPng } from "../../src/pictures/render.ts";
import { everyPicture, wording } from "../pictures/examples.ts";

// To be read as milliseconds each, against 100 ms; `personal` keeps the renderer from giving a kept copy.
describe("render for a chat, nothing kept", () => {
  const line = (index: number) => `\nLine ${index}: ${"a new shaft seal and a pump gasket, ".repeat(3)}`;
  const longest = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map(line).join("").padEnd(BRIEF_CHARACTERS, " x");
  const card = briefCard(`HEAD${longest}`.slice(0, BRIEF_CHARACTERS), "danger", wording);
  bench("the longest brief", () => void renderPng(card), { time: 300 });

  for (const [name, picture] of everyPicture.filter(
    ([name]) => !/^label, (?!hp|three|numbered)/.test(name),
  )) {
    bench(name, () => void renderPng({ ...picture, personal: true }), { time: 300 });
  }
});

describe("render for a chat, kept", () => {
  const picture = everyPicture[0]![1];
  bench("a label", () => void renderPng(picture), { time: 300 });
});
