import { textWidth } from "./letters.ts";
import { colours, lines, sizes } from "./style.ts";
import { element, join, type Svg } from "./svg.ts";
import { write } from "./writing.ts";

export const DISC_RADIUS = 11;

/** A number on an ink disc, tying a place in a drawing to its line below. */
export function numberDisc(x: number, y: number, number: number): Svg {
  return join(
    element("circle", {
      cx: x,
      cy: y,
      r: DISC_RADIUS,
      fill: colours.ink,
      stroke: colours.paper,
      "stroke-width": lines.thin,
    }),
    write(x, y + 5, String(number), {
      size: sizes.small,
      weight: "bold",
      fill: colours.white,
      anchor: "middle",
    }),
  );
}

/** A crossed-out place: not this one. */
export function crossDisc(x: number, y: number): Svg {
  const arm = 4.5;
  return join(
    element("circle", {
      cx: x,
      cy: y,
      r: DISC_RADIUS,
      fill: colours.white,
      stroke: colours.signal,
      "stroke-width": lines.usual,
    }),
    element("path", {
      d: `M${x - arm} ${y - arm}L${x + arm} ${y + arm}M${x + arm} ${y - arm}L${x - arm} ${y + arm}`,
      stroke: colours.signal,
      "stroke-width": lines.bold,
    }),
  );
}

function arrowHead(fromX: number, fromY: number, toX: number, toY: number, fill: string, size = 7): Svg {
  const length = Math.hypot(toX - fromX, toY - fromY) || 1;
  const [dx, dy] = [(toX - fromX) / length, (toY - fromY) / length];
  const points = [
    [toX, toY],
    [toX - size * dx - (size / 2) * dy, toY - size * dy + (size / 2) * dx],
    [toX - size * dx + (size / 2) * dy, toY - size * dy - (size / 2) * dx],
  ];
  return element("path", {
    d: `M${points.map((point) => point.map(hundredths).join(" ")).join("L")}Z`,
    fill,
  });
}

/** A measure between two points of a horizontal line, an arrow head at either end. */
export function measure(x1: number, x2: number, y: number): Svg {
  const stroke = colours.ink;
  return join(
    element("line", { x1, y1: y, x2, y2: y, stroke, "stroke-width": lines.thin }),
    arrowHead(x2, y, x1, y, stroke),
    arrowHead(x1, y, x2, y, stroke),
  );
}

/** A ruler of whole inches, `unit` units each, with its end named. */
export function inchRuler(x: number, y: number, inches: number, unit: number, name: string): Svg {
  const ticks = Array.from(
    { length: inches + 1 },
    (_, inch) => `M${hundredths(x + inch * unit)} ${y - 5}v10`,
  );
  return join(
    element("path", {
      d: `M${x} ${y}h${hundredths(inches * unit)}${ticks.join("")}`,
      stroke: colours.ink,
      "stroke-width": lines.usual,
      fill: "none",
    }),
    write(x + inches * unit + 7, y + 5, name, { size: sizes.small }),
  );
}

/** Width of an {@link inchRuler} with its name. */
export function inchRulerWidth(inches: number, unit: number, name: string): number {
  return inches * unit + 7 + textWidth(name, sizes.small);
}

/** Slanting lines inside a rectangle, so that it differs from a plain one without any colour. */
export function hatching(x: number, y: number, width: number, height: number, stroke: string, gap = 9): Svg {
  const strokes: string[] = [];
  for (let offset = gap - height; offset < width; offset += gap) {
    const start = Math.max(0, -offset);
    const end = Math.min(height, width - offset);
    strokes.push(
      `M${hundredths(x + offset + start)} ${hundredths(y + height - start)}` +
        `L${hundredths(x + offset + end)} ${hundredths(y + height - end)}`,
    );
  }
  return element("path", { d: strokes.join(""), stroke, "stroke-width": lines.thin, fill: "none" });
}

const hundredths = (value: number): number => Math.round(value * 100) / 100;
