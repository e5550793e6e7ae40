import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import fc from "fast-check";
import { expect, test } from "vitest";
import { isMeasured, textWidth, type Weight, wrapText } from "../../src/pictures/letters.ts";

/** Advance width of a letter in em, from the font file. Source: OpenType 1.9, tables cmap (format 4), hhea, hmtx. */
function advanceOf(file: string): (letter: string) => number {
  const font = readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${file}`));
  const tables = new Map<string, number>();
  for (let record = 12; record < 12 + 16 * font.readUInt16BE(4); record += 16) {
    tables.set(font.toString("latin1", record, record + 4), font.readUInt32BE(record + 8));
  }
  const at = (tag: string) => tables.get(tag)!;
  let map = 0;
  for (let index = 0; index < font.readUInt16BE(at("cmap") + 2); index++) {
    const record = at("cmap") + 4 + 8 * index;
    const windowsUnicode = font.readUInt16BE(record) === 3 && font.readUInt16BE(record + 2) === 1;
    if (windowsUnicode) map = at("cmap") + font.readUInt32BE(record + 4);
  }
  const segments = font.readUInt16BE(map + 6) / 2;
  const glyphOf = (code: number): number => {
    for (let segment = 0; segment < segments; segment++) {
      const end = font.readUInt16BE(map + 14 + 2 * segment);
      if (code > end) continue;
      const start = font.readUInt16BE(map + 16 + 2 * segments + 2 * segment);
      const delta = font.readUInt16BE(map + 16 + 4 * segments + 2 * segment);
      const rangeAt = map + 16 + 6 * segments + 2 * segment;
      const range = font.readUInt16BE(rangeAt);
      if (code < start) return 0;
      return range === 0
        ? (code + delta) & 0xffff
        : (font.readUInt16BE(rangeAt + range + 2 * (code - start)) + delta) & 0xffff;
    }
    return 0;
  };
  const unitsPerEm = font.readUInt16BE(at("head") + 18);
  const metrics = font.readUInt16BE(at("hhea") + 34);
  return (letter) => {
    const glyph = glyphOf(letter.codePointAt(0)!);
    if (glyph === 0) throw new Error(`the font has no ${letter}`);
    return font.readUInt16BE(at("hmtx") + 4 * Math.min(glyph, metrics - 1)) / unitsPerEm;
  };
}

const latin = [...Array(95).keys()]
  .map((index) => 0x20 + index)
  .concat([...Array(96).keys()].map((index) => 0xa0 + index));
const letters = [...latin.map((code) => String.fromCharCode(code)), ..."–—‘’“”…•−"];

test.each([
  ["regular", "DejaVuSansCondensed.ttf"],
  ["bold", "DejaVuSansCondensed-Bold.ttf"],
] as const satisfies readonly (readonly [Weight, string])[])(
  "%s letters are as wide as in the font",
  (weight, file) => {
    const advance = advanceOf(file);
    for (const letter of letters) {
      expect(isMeasured(letter), letter).toBe(true);
      expect(textWidth(letter, 1, weight), letter).toBeCloseTo(advance(letter), 4);
    }
  },
);

test("a letter outside the table is taken for a wide one", () => {
  expect(isMeasured("水")).toBe(false);
  expect(textWidth("水", 10)).toBeGreaterThan(textWidth("W", 10));
});

test("breaking lines loses no word and keeps every line within its width", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 200 }), fc.integer({ min: 30, max: 400 }), (text, width) => {
      const lines = wrapText(text, 15, width);
      expect(lines.join("").replace(/\s/g, "")).toBe(text.replace(/\s/g, ""));
      for (const line of lines) expect(textWidth(line, 15)).toBeLessThanOrEqual(width);
    }),
    { seed: 8, numRuns: 300 },
  );
});

test("words stay whole where they can", () => {
  expect(wrapText("four bolts at the corners", 15, 100)).toEqual(["four bolts at", "the corners"]);
});
