import { describe, expect, test } from "vitest";
import { renderPng } from "../../src/pictures/render.ts";
import { colours, WIDTH } from "../../src/pictures/style.ts";
import { everyPicture } from "./examples.ts";
import { decodePng } from "./pixels.ts";
import { placedWords, withoutWords } from "./placed-words.ts";
import { contrast, rgb } from "./wcag.ts";

describe.each(everyPicture)("%s, on a phone 360 pixels wide", (_, picture) => {
  const words = placedWords(picture);
  const bare = decodePng(renderPng(withoutWords(picture), WIDTH));
  const full = decodePng(renderPng({ ...picture, personal: true }, WIDTH));

  test("has words, none smaller than 14 pixels, all of them on the paper", () => {
    expect(words.length).toBeGreaterThan(3);
    for (const { text, size, left, right, top, baseline } of words) {
      expect(size, text).toBeGreaterThanOrEqual(14);
      expect(left, text).toBeGreaterThanOrEqual(0);
      expect(right, text).toBeLessThanOrEqual(WIDTH);
      expect(top, text).toBeGreaterThanOrEqual(0);
      expect(baseline, text).toBeLessThanOrEqual(picture.height - 4);
    }
  });

  test("brings its own ground, so that a light and a dark chat show the same", () => {
    const { width, height } = full;
    for (const [x, y] of [
      [0, 0],
      [width - 1, 0],
      [0, height - 1],
      [width - 1, height - 1],
    ] as const) {
      const corner = full.at(x, y);
      expect([rgb(colours.paper), rgb(colours.ink), rgb(colours.signal)]).toContainEqual(corner);
    }
  });

  // WCAG 2.2, success criterion 1.4.3: 4.5:1. Judged against every pixel that lies under the letters.
  test("words stand out from whatever is under them", () => {
    for (const { text, fill, left, right, top, baseline } of words) {
      for (let y = Math.ceil(top); y < Math.floor(baseline); y++) {
        for (let x = Math.ceil(left); x < Math.floor(right); x++) {
          const ratio = contrast(rgb(fill), bare.at(x, y));
          if (ratio < 4.5) expect.fail(`"${text}" at ${x},${y}: ${ratio.toFixed(2)}:1`);
        }
      }
    }
  });

  test("every line of words leaves ink", () => {
    for (const { text, left, right, top, baseline } of words) {
      let inked = 0;
      for (let y = Math.ceil(top); y < Math.floor(baseline); y++) {
        for (let x = Math.ceil(left); x < Math.floor(right); x++) {
          if (String(full.at(x, y)) !== String(bare.at(x, y))) inked++;
        }
      }
      expect(inked, text).toBeGreaterThan(4);
    }
  });

  test("no words run into others", () => {
    for (const [index, one] of words.entries()) {
      for (const other of words.slice(index + 1)) {
        const apart =
          one.right <= other.left ||
          other.right <= one.left ||
          one.baseline <= other.top ||
          other.baseline <= one.top;
        expect(apart, `"${one.text}" and "${other.text}"`).toBe(true);
      }
    }
  });

  test("says in words what it shows", () => {
    expect(picture.alt.length).toBeGreaterThan(30);
    expect(picture.alt).not.toMatch(/[{}]|undefined|NaN/);
    expect(picture.svg).toContain('role="img"');
    expect(picture.svg).not.toMatch(/NaN|undefined|Infinity/);
  });
});

// WCAG 2.2, success criterion 1.4.11: 3:1 for what must be told apart without words.
test("marks and outlines stand out from every ground they are drawn on", () => {
  const grounds = [colours.paper, colours.plate, colours.white];
  for (const line of [colours.ink, colours.signal]) {
    for (const ground of [...grounds, colours.highlight, colours.shade]) {
      expect(contrast(rgb(line), rgb(ground)), `${line} on ${ground}`).toBeGreaterThanOrEqual(3);
    }
  }
});

// WCAG 2.2, worked values: black on white is 21:1; #767676 is the lightest grey that passes 4.5:1 on white.
test("contrast is measured as the guideline defines it", () => {
  expect(contrast(rgb("#000000"), rgb("#ffffff"))).toBeCloseTo(21, 5);
  expect(contrast(rgb("#767676"), rgb("#ffffff"))).toBeGreaterThan(4.5);
  expect(contrast(rgb("#777777"), rgb("#ffffff"))).toBeLessThan(4.5);
});
