import { describe, expect, test } from "vitest";
import { parseHtml } from "../../../../src/channels/telegram/stand-in/text/html.ts";

// Source of what is allowed: Bot API, "HTML style". Descriptions: from memory of TDLib's parser of it.
describe("Telegram's HTML style", () => {
  test("the tags of the documentation become entities counted in UTF-16 units", () => {
    expect(parseHtml("😀 <b>1.5 <i>hp</i></b> &lt;48Y&gt; &amp; &quot;J&quot; &#8211;")).toEqual({
      text: '😀 1.5 hp <48Y> & "J" –',
      entities: [
        { type: "bold", offset: 3, length: 6 },
        { type: "italic", offset: 7, length: 2 },
      ],
    });
    expect(parseHtml('<a href="https://example.com/?a=1&amp;b=2">here</a>').entities).toEqual([
      { type: "text_link", offset: 0, length: 4, url: "https://example.com/?a=1&b=2" },
    ]);
    expect(
      parseHtml('<span class="tg-spoiler">x</span><blockquote expandable>y</blockquote><pre>z</pre>')
        .entities,
    ).toEqual([
      { type: "spoiler", offset: 0, length: 1 },
      { type: "expandable_blockquote", offset: 1, length: 1 },
      { type: "pre", offset: 2, length: 1 },
    ]);
  });

  test("an ampersand that starts no reference stays one", () => {
    expect(parseHtml("R&D, A & B, &nbsp;").text).toBe("R&D, A & B, &nbsp;");
  });

  test.each([
    ["<b>bold", 'Can\'t find end tag corresponding to start tag "b"'],
    ["amps < 10", 'Unsupported start tag "" at byte offset 5'],
    ["é <p>x</p>", 'Unsupported start tag "p" at byte offset 3'],
    ["<b>x</i>", 'Unmatched end tag at byte offset 4, expected "</b>", found "</i>"'],
    ["x</b>", "Unexpected end tag at byte offset 1"],
    ["x <b", "Unclosed start tag at byte offset 2"],
    ["<b>x</b", "Unclosed end tag at byte offset 4"],
    ["<span>x</span>", 'Tag "span" must have class "tg-spoiler" at byte offset 0'],
    ["<a href>x</a>", 'Expected equal sign in declaration of an attribute of the tag "a" at byte offset 0'],
    ["<constructor>x</constructor>", 'Unsupported start tag "constructor" at byte offset 0'],
  ])("refuses %s", (html, expected) => {
    expect(() => parseHtml(html)).toThrowError(`400 Bad Request: can't parse entities: ${expected}`);
  });
});
