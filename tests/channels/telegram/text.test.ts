import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { keyboardOf, partsOf } from "../../../src/channels/telegram/render.ts";
import {
  escapeHtml,
  fitText,
  MESSAGE_CHARACTERS,
  splitText,
  withBoldHead,
} from "../../../src/channels/telegram/text.ts";

// Limits: Bot API, sendMessage ("1-4096 characters after entities parsing"), InlineKeyboardButton (callback_data 1-64
// bytes), sendMediaGroup (2-10 items).

describe("a long text", () => {
  test("is cut at line ends", () => {
    expect(splitText("one\ntwo\nthree\nfour", 10)).toEqual(["one\ntwo", "three\nfour"]);
  });

  test("is cut at a space where a line is too long, and inside a word only where it must be", () => {
    expect(splitText("a line that is long", 12)).toEqual(["a line that", "is long"]);
    expect(splitText("x".repeat(25), 10)).toEqual(["x".repeat(10), "x".repeat(10), "x".repeat(5)]);
  });

  test("never loses a word, never exceeds the limit, never tears a character apart", () => {
    const text = fc.array(fc.constantFrom("hp", "⚡", "👷🏽", "\n", " ", "motor", "x".repeat(30)), {
      maxLength: 80,
    });
    fc.assert(
      fc.property(text, fc.integer({ min: 12, max: 60 }), (words, limit) => {
        const whole = words.join("");
        const parts = splitText(whole, limit);
        const squeeze = (some: string) => some.replace(/\s+/g, "");
        expect(squeeze(parts.join(""))).toBe(squeeze(whole));
        for (const part of parts) {
          expect(part.length).toBeLessThanOrEqual(limit);
          expect(part.trim()).not.toBe("");
          expect(part).not.toMatch(/\p{Surrogate}/u);
        }
      }),
      { seed: 4096, numRuns: 300 },
    );
  });

  test("in one message ends with a mark and stays within the limit", () => {
    const fitted = fitText(Array.from({ length: 900 }, (_, n) => `line ${n}`).join("\n"));
    expect(fitted.length).toBeLessThanOrEqual(MESSAGE_CHARACTERS);
    expect(fitted).toMatch(/line \d+\n…$/);
  });
});

test("text is never markup", () => {
  expect(escapeHtml('<b onclick="x">&amp;</b>')).toBe('&lt;b onclick="x"&gt;&amp;amp;&lt;/b&gt;');
  expect(withBoldHead("a<b\nc&d")).toBe("<b>a&lt;b</b>\nc&amp;d");
});

describe("buttons", () => {
  test("stand under the last part, short ones side by side", () => {
    const choices = ["Yes", "No", "I can't"].map((label, n) => ({ id: `q/${n}`, label }));
    const parts = partsOf({ text: `${"line\n".repeat(900)}end`, choices });
    expect(parts.length).toBe(2);
    expect(parts.map((part) => (part.kind === "text" ? part.keyboard.length : -1))).toEqual([0, 1]);
  });

  test("that Telegram could not carry are left out, and the message still goes", () => {
    expect(
      keyboardOf([
        { id: "é".repeat(33), label: "Too long" },
        { id: "", label: "None" },
        { id: "a", label: " " },
      ]),
    ).toEqual([]);
  });
});

test("pictures go in albums of ten at most, files apart from photos", () => {
  const photos = Array.from({ length: 12 }, (_, n) => ({ kind: "photo" as const, ref: `p${n}` }));
  const parts = partsOf({ text: "see", attachments: [...photos, { kind: "file", ref: "f" }] });
  expect(parts.map((part) => (part.kind === "files" ? `${part.of} ${part.refs.length}` : "text"))).toEqual([
    "text",
    "photo 10",
    "photo 2",
    "file 1",
  ]);
});
