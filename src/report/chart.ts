import { colours, fontFamily } from "../pictures/style.ts";
import { element, join, type Svg, words } from "../pictures/svg.ts";
import { type LetterStyle, write } from "../pictures/writing.ts";

/** The sheet's width in its own units, and the room around everything on it. */
export const SHEET = 1000;
export const EDGE = 36;

/** Sizes of letters on the sheet. */
export const letters = { title: 30, head: 19, text: 16, small: 14, figure: 40 } as const;

/** A part of the sheet and the lowest point it reaches. */
export interface Panel {
  readonly svg: Svg;
  readonly bottom: number;
}

/** One bar: its parts from the left, what it is about, and what it says at its end. */
export interface Bar {
  readonly label: string;
  readonly parts: readonly { readonly count: number; readonly fill: string }[];
  readonly end: string;
}

const BAR = 20;
const ROW = 34;

export interface BarPlace {
  readonly x: number;
  readonly top: number;
  /** Where the bars begin, right of the labels. */
  readonly labelWidth: number;
  /** Length of the longest bar. */
  readonly length: number;
}

/** Bars under each other, all to one scale, labels on the left. */
export function bars(rows: readonly Bar[], { x, top, labelWidth, length }: BarPlace): Panel {
  const total = ({ parts }: Bar) => parts.reduce((sum, { count }) => sum + count, 0);
  const largest = Math.max(1, ...rows.map(total));
  const pieces = rows.map((row, at) => {
    const y = top + at * ROW;
    const start = x + labelWidth;
    let from = start;
    const drawn = row.parts.map(({ count, fill }) => {
      const width = (count / largest) * length;
      const part = element("rect", {
        x: from,
        y,
        width,
        height: BAR,
        fill,
        stroke: colours.ink,
        "stroke-width": 1,
      });
      from += width;
      return count > 0 ? part : join();
    });
    return join(
      write(start - 10, y + BAR - 4, row.label, { size: letters.text, anchor: "end" }),
      element("line", {
        x1: start,
        y1: y - 4,
        x2: start,
        y2: y + BAR + 4,
        stroke: colours.faint,
        "stroke-width": 1,
      }),
      ...drawn,
      write(from + 8, y + BAR - 4, row.end, { size: letters.text, weight: "bold" }),
    );
  });
  return { svg: join(...pieces), bottom: top + rows.length * ROW };
}

export interface ColumnPlace {
  readonly x: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Of the highest column; charts side by side share it. */
  readonly largest: number;
}

/** Columns side by side, each with its count on top and its name below. */
export function columns(
  values: readonly { readonly name: string; readonly count: number }[],
  fill: string,
  { x, top, width, height, largest }: ColumnPlace,
): Panel {
  const step = width / Math.max(1, values.length);
  const floor = top + height;
  const pieces = values.map(({ name, count }, at) => {
    const middle = x + (at + 0.5) * step;
    const tall = (count / Math.max(1, largest)) * (height - 24);
    const wide = Math.min(46, step * 0.7);
    const column = element("rect", {
      x: middle - wide / 2,
      y: floor - tall,
      width: wide,
      height: tall,
      fill,
      stroke: colours.ink,
      "stroke-width": 1,
    });
    return join(
      ...(count > 0
        ? [
            column,
            write(middle, floor - tall - 6, String(count), {
              size: letters.text,
              weight: "bold",
              anchor: "middle",
            }),
          ]
        : []),
      write(middle, floor + 20, name, { size: letters.small, anchor: "middle", fill: colours.pencil }),
    );
  });
  const ground = element("line", {
    x1: x,
    y1: floor,
    x2: x + width,
    y2: floor,
    stroke: colours.ink,
    "stroke-width": 1.5,
  });
  return { svg: join(...pieces, ground), bottom: floor + 26 };
}

/** A heading over a panel, with a quieter line below it. */
export function heading(x: number, top: number, text: string, below = ""): Panel {
  const head = write(x, top + letters.head, text, { size: letters.head, weight: "bold" });
  if (below === "") return { svg: head, bottom: top + 36 };
  return { svg: join(head, quiet(x, top + letters.head + 22, below)), bottom: top + 58 };
}

/** Quieter words on a baseline. */
export function quiet(x: number, y: number, text: string, style: LetterStyle = {}): Svg {
  return write(x, y, text, { size: letters.small, fill: colours.pencil, ...style });
}

/** A small square that says what a fill stands for. */
export function key(x: number, y: number, fill: string, text: string): Svg {
  return join(
    element("rect", { x, y: y - 12, width: 14, height: 14, fill, stroke: colours.ink, "stroke-width": 1 }),
    quiet(x + 20, y, text),
  );
}

/** Slanted lines, so that two fills are told apart without their colours. */
export const hatched = "url(#hatched)";

/** The whole sheet. */
export function sheet(content: Svg, bottom: number, alt: string): string {
  const height = Math.ceil(bottom + EDGE);
  const hatch = element(
    "pattern",
    { id: "hatched", width: 7, height: 7, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" },
    element("rect", { width: 7, height: 7, fill: colours.white }),
    element("rect", { width: 3, height: 7, fill: colours.signal }),
  );
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${SHEET} ${height}`,
      width: SHEET,
      height,
      role: "img",
      "aria-label": alt,
      "font-family": fontFamily,
    },
    element("title", {}, words(alt)),
    element("defs", {}, hatch),
    element("rect", { width: SHEET, height, fill: colours.paper }),
    content,
  );
}
