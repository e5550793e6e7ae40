import { textWidth } from "../../src/pictures/letters.ts";
import type { Picture } from "../../src/pictures/picture.ts";

/** One line of words as it stands in a picture, in units. */
export interface PlacedWords {
  readonly text: string;
  readonly size: number;
  readonly fill: string;
  readonly left: number;
  readonly right: number;
  /** Top of the capitals. */
  readonly top: number;
  readonly baseline: number;
}

/** Height of capitals of DejaVu Sans in em (table OS/2, sCapHeight 1493 of 2048). */
const CAPITALS = 0.729;

/** The attributes of every element of one name, and what stands inside. */
export function elements(
  svg: string,
  name: string,
): readonly (Readonly<Record<string, string>> & { inner: string })[] {
  const found = svg.matchAll(new RegExp(`<${name}((?: [a-zA-Z:-]+="[^"]*")*)(?:/>|>([^<]*))`, "g"));
  return [...found].map(([, attributes = "", inner = ""]) => ({
    ...Object.fromEntries(
      [...attributes.matchAll(/ ([a-zA-Z:-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
    ),
    inner,
  }));
}

export function placedWords({ svg }: Picture): readonly PlacedWords[] {
  return elements(svg, "text").map((found) => {
    const text = plainText(found.inner);
    const size = Number(found["font-size"]);
    const weight = found["font-weight"] === "bold" ? "bold" : "regular";
    const width = textWidth(text, size, weight);
    const x = Number(found["x"]);
    const anchor = found["text-anchor"] ?? "start";
    const left = anchor === "middle" ? x - width / 2 : anchor === "end" ? x - width : x;
    const baseline = Number(found["y"]);
    return {
      text,
      size,
      fill: found["fill"]!,
      left,
      right: left + width,
      top: baseline - CAPITALS * size,
      baseline,
    };
  });
}

/** The same picture with all its words left out. */
export function withoutWords(picture: Picture): Picture {
  return { ...picture, svg: picture.svg.replace(/<text [^>]*>[^<]*<\/text>/g, ""), personal: true };
}

function plainText(text: string): string {
  return text
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&apos;", "'")
    .replaceAll("&amp;", "&");
}
