import type { Picture } from "../../pictures/picture.ts";
import { renderPng } from "../../pictures/render.ts";
import { colours } from "../../pictures/style.ts";
import { element, join } from "../../pictures/svg.ts";
import { write } from "../../pictures/writing.ts";

const WIDTH = 360;
const HEIGHT = 240;

/** What a homeowner's phone might take: an invented label, askew, worn and scratched; PNG. */
export function madeUpPhoto(): Buffer {
  const faded = "#7d8488";
  const lines: readonly (readonly [number, number, string, string])[] = [
    [52, 78, "ELECTRIC MOTOR", colours.ink],
    [52, 108, "HP 1.5", colours.ink],
    [150, 108, "SF 1.1", colours.ink],
    [230, 108, "PH 1", colours.ink],
    [52, 138, "V 115/230", colours.ink],
    [190, 138, "A 1 . 2/ .6", faded],
    [52, 168, "RPM 3450", colours.ink],
    [190, 168, "FR 5 Y", faded],
  ];
  const scratches = [
    [60, 190, 210, 120],
    [180, 176, 300, 130],
    [40, 120, 130, 60],
  ] as const;
  const svg = element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, width: WIDTH, height: HEIGHT },
    element("rect", { width: WIDTH, height: HEIGHT, fill: "#3d4448" }),
    element("rect", { y: 150, width: WIDTH, height: 90, fill: "#33393c" }),
    element(
      "g",
      { transform: `rotate(-4 ${WIDTH / 2} ${HEIGHT / 2})`, "font-family": "DejaVu Sans Condensed" },
      element("rect", { x: 34, y: 44, width: 292, height: 150, rx: 6, fill: "#b9bdb8" }),
      element("ellipse", { cx: 250, cy: 148, rx: 64, ry: 34, fill: "#9c7a58", opacity: 0.45 }),
      ...lines.map(([x, y, text, fill]) => write(x, y, text, { fill, weight: "bold" })),
      ...scratches.map(([x1, y1, x2, y2]) =>
        element("line", { x1, y1, x2, y2, stroke: "#d8dad6", "stroke-width": 2, opacity: 0.8 }),
      ),
      join(...[46, 314].map((cx) => element("circle", { cx, cy: 119, r: 5, fill: "#6d7375" }))),
    ),
  );
  const photo: Picture = { svg, alt: "", width: WIDTH, height: HEIGHT, personal: false };
  return renderPng(photo);
}
