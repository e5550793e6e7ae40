import { isMeasured, textWidth, type Weight, wrapText } from "./letters.ts";
import type { Drawing } from "./picture.ts";
import { colours, INNER, lines, MARGIN, sizes } from "./style.ts";
import { element, join, type Svg, words } from "./svg.ts";

export interface LetterStyle {
  readonly size?: number;
  readonly weight?: Weight;
  readonly fill?: string;
  readonly anchor?: "start" | "middle" | "end";
}

/**
 * One line of words on the baseline `y`. Its width is written down, so that a viewer without the font squeezes
 * its own letters into the same place.
 */
export function write(x: number, y: number, text: string, style: LetterStyle = {}): Svg {
  const { size = sizes.text, weight = "regular", fill = colours.ink, anchor = "start" } = style;
  return element(
    "text",
    {
      x,
      y,
      "font-size": size,
      "font-weight": weight === "bold" ? "bold" : undefined,
      fill,
      "text-anchor": anchor === "start" ? undefined : anchor,
      textLength: isMeasured(text) ? textWidth(text, size, weight) : undefined,
      lengthAdjust: isMeasured(text) ? "spacingAndGlyphs" : undefined,
    },
    words(text),
  );
}

export interface Column extends LetterStyle {
  readonly x?: number;
  readonly width?: number;
}

/** Words broken into lines from `top` down. With an anchor, `x` is where the anchor stands. */
export function paragraph(top: number, text: string, column: Column = {}): Drawing {
  const { size = sizes.text, weight = "regular", x = MARGIN, width = INNER } = column;
  const leading = lineHeight(size);
  const broken = wrapText(text, size, width, weight);
  return {
    svg: join(...broken.map((line, index) => write(x, top + size + index * leading, line, column))),
    bottom: top + broken.length * leading,
  };
}

/** From one baseline to the next. */
export function lineHeight(size: number): number {
  return Math.round(size * 1.3);
}

/** What the picture is about, at its top. */
export function title(text: string): (top: number) => Drawing {
  return (top) => {
    const drawn = paragraph(top - 2, text, { size: sizes.title, weight: "bold" });
    return { svg: drawn.svg, bottom: drawn.bottom + 8 };
  };
}

/** A quiet remark below the drawing. */
export function remark(text: string): (top: number) => Drawing {
  return (top) => paragraph(top + 6, text, { size: sizes.small, fill: colours.pencil });
}

/** What must be heeded, behind a warning triangle. */
export function caution(text: string): (top: number) => Drawing {
  return (top) => {
    const drawn = paragraph(top + 8, text, {
      x: MARGIN + TRIANGLE,
      width: INNER - TRIANGLE,
      weight: "bold",
      size: sizes.small,
    });
    return {
      svg: join(warningTriangle(MARGIN, top + 6, colours.ink, colours.highlight), drawn.svg),
      bottom: drawn.bottom,
    };
  };
}

const TRIANGLE = 30;

/** The general warning sign in outline, 22 wide and 20 high (form after ISO 7010 W001). */
export function warningTriangle(x: number, y: number, stroke: string, fill: string): Svg {
  return join(
    element("path", {
      d: `M${x + 11} ${y + 1}L${x + 21} ${y + 19}H${x + 1}Z`,
      fill,
      stroke,
      "stroke-width": lines.usual,
    }),
    element("path", {
      d: `M${x + 11} ${y + 7}v5M${x + 11} ${y + 15.6}v0.2`,
      stroke,
      "stroke-width": lines.usual,
    }),
  );
}
