import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { briefCard } from "../../src/pictures/brief-card.ts";
import { labelPicture } from "../../src/pictures/label.ts";
import { textWidth } from "../../src/pictures/letters.ts";
import { contentKey, KEPT_PICTURES, renderPng } from "../../src/pictures/render.ts";
import { fontFamily, WIDTH } from "../../src/pictures/style.ts";
import { escapeXml } from "../../src/pictures/svg.ts";
import { wording } from "./examples.ts";
import { decodePng } from "./pixels.ts";

const picture = labelPicture(["hp"], wording);

describe("a rendered picture", () => {
  test("is a PNG of the width asked for", () => {
    const { width, height } = decodePng(renderPng(picture, 720));
    expect(width).toBe(720);
    expect(height).toBe(picture.height * 2);
  });

  test("is kept and given again", () => {
    expect(renderPng(picture, 360)).toBe(renderPng(labelPicture(["hp"], wording), 360));
    expect(renderPng(picture, 360)).not.toBe(renderPng(labelPicture(["rpm"], wording), 360));
  });

  test("is known by what it shows and by its width", () => {
    expect(contentKey(picture)).toBe(contentKey(labelPicture(["hp"], wording)));
    expect(contentKey(picture)).not.toBe(contentKey(labelPicture(["rpm"], wording)));
    expect(contentKey(picture, 360)).not.toBe(contentKey(picture, 720));
  });

  test("is not kept when it shows a customer's words", () => {
    const card = briefCard("PUMP DOWN\nSaid last: my address", "pump-down", wording);
    expect(card.personal).toBe(true);
    expect(renderPng(card, 200)).not.toBe(renderPng(card, 200));
  });

  test("gives way when too many are kept, the longest unused first", () => {
    const first = renderPng(picture, 60);
    const used = renderPng(picture, 61);
    for (let width = 62; width < 62 + KEPT_PICTURES - 1; width++) {
      renderPng(picture, width);
      renderPng(picture, 61);
    }
    expect(renderPng(picture, 61)).toBe(used);
    expect(renderPng(picture, 60)).not.toBe(first);
  });
});

test.each(["regular", "bold"] as const)(
  "%s words are set in the bundled font, not in whatever is there",
  (weight) => {
    const word = "HAMBURGEFONTSIVH";
    const svg =
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} 40" width="${WIDTH}" height="40">` +
      `<rect width="${WIDTH}" height="40" fill="#ffffff"/>` +
      `<text x="10" y="30" font-size="20" font-weight="${weight}" font-family="${fontFamily}">${word}</text></svg>`;
    const { width, height, at } = decodePng(
      renderPng({ svg, alt: word, width: WIDTH, height: 40, personal: true }, WIDTH),
    );
    const inked = [...Array(width).keys()].filter((x) =>
      [...Array(height).keys()].some((y) => at(x, y)[0] < 128),
    );
    // Side bearings and kerning take a few units.
    const extent = Math.max(...inked) - Math.min(...inked);
    expect(Math.abs(extent - textWidth(word, 20, weight))).toBeLessThan(6);
  },
);

describe("words from people", () => {
  test("cannot become markup", () => {
    const { svg } = briefCard(`DANGER\nSaid last: </text><script>"x"&amp;'`, "danger", wording);
    expect(svg).not.toMatch(/<script|<\/text><\/text>/);
    expect(svg).toContain("&lt;/text&gt;&lt;script&gt;&quot;x&quot;&amp;amp;&apos;");
  });

  // XML 1.0 (Fifth Edition), clause 2.2: the characters a document may hold.
  test("hold no character that XML does not allow", () => {
    expect(escapeXml("a\u0000b\u001bc\ud800d\uffffe\tf")).toBe("a\ufffdb\ufffdc\ufffdd\ufffde\tf");
    expect(escapeXml("🙂")).toBe("🙂");
  });

  test("are drawn whatever they are", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 120 }), (text) => {
        const { width } = decodePng(renderPng(briefCard(`HEAD\nSaid last: ${text}`, "danger", wording), 60));
        expect(width).toBe(60);
      }),
      { seed: 8, numRuns: 60 },
    );
  });
});
