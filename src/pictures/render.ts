import { createHash } from "node:crypto";
import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import type { Picture } from "./picture.ts";

/** A picture cannot be rendered: the bundled font or the renderer is broken. */
export class PictureError extends Error {
  override readonly name = "PictureError";
}

const resolve = createRequire(import.meta.url).resolve;
const fontFiles = ["DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"];

/** Two pixels to a unit: sharp where a chat shows a picture in part of the screen, and quick to render. */
export const CHAT_WIDTH_PX = 720;
/** Pictures kept; a label with three ratings marked is one of many. */
export const KEPT_PICTURES = 64;

const kept = new Map<string, Buffer>();
let fontWorks: boolean | undefined;

/** Names a picture by what it shows: a channel that has sent one before may send its own copy again. */
export function contentKey({ svg }: Picture, widthPx = CHAT_WIDTH_PX): string {
  return createHash("sha256").update(`${widthPx}\n${svg}`).digest("hex").slice(0, 32);
}

/**
 * The picture as PNG, `widthPx` wide. Pictures that show no customer's words are kept, the {@link KEPT_PICTURES}
 * used last. Throws {@link PictureError} when the font draws nothing.
 */
export function renderPng(picture: Picture, widthPx = CHAT_WIDTH_PX): Buffer {
  const key = contentKey(picture, widthPx);
  const known = kept.get(key);
  if (known !== undefined) {
    kept.delete(key);
    kept.set(key, known);
    return known;
  }
  const png = render(picture.svg, widthPx);
  if (picture.personal) return png;
  kept.set(key, png);
  const [oldest] = kept.keys();
  if (kept.size > KEPT_PICTURES && oldest !== undefined) kept.delete(oldest);
  return png;
}

function render(svg: string, widthPx: number): Buffer {
  const font = { fontFiles: fontPaths(), loadSystemFonts: false, defaultFontFamily: "DejaVu Sans Condensed" };
  // Without a usable font the renderer leaves all words out and says nothing.
  fontWorks ??= new Resvg(PROBE, { font }).getBBox() !== undefined;
  if (!fontWorks)
    throw new PictureError("The font for pictures draws nothing. Install the packages again (npm ci).");
  return new Resvg(svg, { font, fitTo: { mode: "width", value: widthPx } }).render().asPng();
}

const PROBE = `<svg xmlns="http://www.w3.org/2000/svg" width="50" height="50"><text y="40">Hx</text></svg>`;

function fontPaths(): string[] {
  try {
    return fontFiles.map((file) => resolve(`dejavu-fonts-ttf/ttf/${file}`));
  } catch (cause) {
    throw new PictureError("The font for pictures is missing. Install the packages again (npm ci).", {
      cause,
    });
  }
}
