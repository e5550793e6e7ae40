import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { briefPart, keyboardOf, partsOf } from "../../src/channels/telegram/render.ts";
import { csvOf } from "../../src/commands/csv.ts";
import { fitsChoice } from "../../src/outgoing.ts";

const seed = { seed: 6, numRuns: 300 };
const markup = [
  '<a href="https://evil.example">click</a>',
  "<b>bold</b><i>",
  "&lt;b&gt; &amp;amp; &#60;script&#62;",
  '<tg-spoiler>x</tg-spoiler><pre language="x">',
  "[click](https://evil.example) *bold* _it_ `code` ||x||",
  "</b></b>\n<b>",
  "<!-- --> <![CDATA[x]]>",
];
const hostile = fc.oneof(
  fc.constantFrom(...markup),
  fc.string({ unit: fc.constantFrom(..."<>&;\"'/ab \n#x60"), maxLength: 80 }),
  fc.string({ unit: "binary", maxLength: 60 }),
);

/** What a reader of Telegram's HTML sees (Bot API, "HTML style": only these entities are named, tags are in angles). */
function seen(html: string): string {
  return html
    .replace(/<\/?b>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");
}

describe("a customer's words in Telegram's HTML", () => {
  test("property: hold no tag and no entity of their own; what is shown is what was typed", () => {
    fc.assert(
      fc.property(hostile, (text) => {
        for (const part of partsOf({ text })) {
          if (part.kind !== "text") continue;
          expect(part.html).not.toMatch(/[<>]/);
          expect(part.html).not.toMatch(/&(?!(?:lt|gt|amp|quot);)/);
          expect(text).toContain(seen(part.html));
        }
      }),
      seed,
    );
  });

  test("property: in a brief only the desk's own bold head is a tag, once and closed", () => {
    fc.assert(
      fc.property(hostile, hostile, (head, rest) => {
        const { html } = briefPart({ text: `${head}\n${rest}` });
        expect(html.match(/<[^>]*>/g) ?? []).toEqual(html.includes("<b>") ? ["<b>", "</b>"] : []);
        expect(html.replace(/<\/?b>/g, "")).not.toMatch(/[<>]/);
      }),
      seed,
    );
  });

  test("property: buttons carry at most 64 bytes (Bot API, InlineKeyboardButton) and their labels as plain text", () => {
    fc.assert(
      fc.property(fc.array(fc.record({ id: hostile, label: hostile }), { maxLength: 6 }), (choices) => {
        for (const button of keyboardOf(choices).flat()) {
          const data = (button as { callback_data?: string }).callback_data ?? "";
          expect(Buffer.byteLength(data)).toBeLessThanOrEqual(64);
          expect(fitsChoice(data)).toBe(true);
          expect(choices.some(({ label }) => label === button.text)).toBe(true);
        }
      }),
      seed,
    );
  });
});

describe("a customer's words in a table for spreadsheets", () => {
  /** OWASP, "CSV Injection": a cell that starts with one of these runs. */
  const runs = /^[=+\-@\t\r]/;
  const formulas = [
    "=1+1",
    "+1",
    "-1",
    "@SUM(A1)",
    "\t=1",
    "\r=1",
    ' =cmd|" /C calc"!A0',
    '=HYPERLINK("x","y")',
    '","=1',
    "a\n=1",
  ];

  test.each(formulas)(
    "%j does not run, and the table keeps its shape (RFC 4180, read by another program)",
    (text) => {
      const rows = parse(csvOf(["number", "by"], [[text, "Kim"]]), {
        relax_column_count: false,
      }) as string[][];
      expect(rows).toHaveLength(2);
      expect(rows[1]).toHaveLength(2);
      for (const cell of rows.flat()) {
        expect(cell).not.toMatch(runs);
        expect(cell.trimStart()).not.toMatch(/^[=+@]/);
      }
      expect(rows[1]?.[0]).toContain(text.trim());
    },
  );

  test("property: whatever the words, as many cells come out as went in, and none runs", () => {
    const cells = fc.array(fc.tuple(hostile, hostile), { maxLength: 5 });
    fc.assert(
      fc.property(cells, (rows) => {
        const read = parse(csvOf(["a", "b"], rows), { record_delimiter: "\r\n" }) as string[][];
        expect(read).toHaveLength(rows.length + 1);
        for (const cell of read.slice(1).flat()) expect(cell).not.toMatch(runs);
      }),
      seed,
    );
  });
});
