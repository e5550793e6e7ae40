import type { Wording } from "../../conversation/wording.ts";
import { inchRuler, inchRulerWidth, measure } from "../marks.ts";
import type { Drawing } from "../picture.ts";
import { colours, INNER, lines, MARGIN, sizes } from "../style.ts";
import { element, join, type Svg } from "../svg.ts";
import { paragraph, write } from "../writing.ts";
import { type FaceMeasures, roundFaces } from "./published.ts";

/** Units to the inch in the round faces. */
export const FACE_SCALE = 22;
const CELL = (INNER - 16) / 2;
const LEFT = MARGIN + CELL / 2;
const RIGHT = MARGIN + CELL + 16 + CELL / 2;

const outline = { stroke: colours.ink, "stroke-width": lines.usual } as const;

/**
 * Square and through-bolt mounts on the left, which no standard measures, and round faces on the right, drawn
 * to one scale.
 */
export function faces(wording: Wording): (top: number) => Drawing {
  const say = (key: string) => wording.say("pictures", `faces.${key}`);
  return (top) => {
    const first = [
      caption(LEFT, top, say("square"), say("square.how")),
      caption(RIGHT, top, say("round"), say("round.how")),
    ];
    const drawingTop = lowest(first) + 4;
    const big = roundFaces["56"];
    const centre = drawingTop + RIM_RADIUS_56;
    const secondTop = centre + RIM_RADIUS_56 + 30;
    const through = caption(LEFT, secondTop + 8, say("throughBolt"), say("throughBolt.how"));
    const small = roundFaces["48"];
    const smallCentre = secondTop + 16 + rimRadius(small);
    const rulerY = smallCentre + rimRadius(small) + 46;
    const ruler = say("ruler");
    const throughEnd = throughBolts(LEFT, through.bottom + 8);
    const noScale = write(LEFT, centre + RIM_RADIUS_56 + 18, say("notToScale"), {
      ...quiet,
      anchor: "middle",
    });
    return {
      svg: join(
        ...first.map(({ svg }) => svg),
        squareFace(LEFT, centre),
        noScale,
        roundFace(RIGHT, centre, big),
        write(RIGHT, centre + RIM_RADIUS_56 + 18, say("56"), { size: sizes.small, anchor: "middle" }),
        roundFace(RIGHT, smallCentre, small),
        write(RIGHT, smallCentre + rimRadius(small) + 18, say("48"), { size: sizes.small, anchor: "middle" }),
        inchRuler(RIGHT - inchRulerWidth(2, FACE_SCALE, ruler) / 2, rulerY, 2, FACE_SCALE, ruler),
        through.svg,
        throughEnd.svg,
        write(LEFT, throughEnd.bottom + 20, say("notToScale"), { ...quiet, anchor: "middle" }),
      ),
      bottom: Math.max(rulerY + 12, throughEnd.bottom + 26),
    };
  };
}

const quiet = { size: sizes.small, fill: colours.pencil } as const;

/** The rim stands this far outside the bolt circle (drawn freely: the outer diameter BD is only limited). */
const RIM_IN = 0.32;
const rimRadius = ({ boltCircleIn }: FaceMeasures): number => (boltCircleIn / 2 + RIM_IN) * FACE_SCALE;
const RIM_RADIUS_56 = rimRadius(roundFaces["56"]);

function roundFace(x: number, y: number, face: FaceMeasures): Svg {
  const bolts = (face.boltCircleIn / 2) * FACE_SCALE;
  return join(
    circle(x, y, rimRadius(face), colours.shade),
    element("circle", {
      cx: x,
      cy: y,
      r: bolts,
      fill: "none",
      stroke: colours.ink,
      "stroke-width": 1,
      "stroke-dasharray": "3 4",
    }),
    circle(x, y, (face.rabbetIn / 2) * FACE_SCALE, colours.plate),
    circle(x, y, (face.shaftIn / 2) * FACE_SCALE, colours.white),
    ...holes(x, y, bolts * Math.SQRT1_2, (face.holeIn / 2) * FACE_SCALE),
    ...boltCircleMeasure(x, y, bolts),
  );
}

/** The measure runs from hole to hole through the middle, at the slant the holes stand at. */
function boltCircleMeasure(x: number, y: number, bolts: number): readonly Svg[] {
  return [element("g", { transform: `rotate(-45 ${x} ${y})` }, measure(x - bolts, x + bolts, y))];
}

function squareFace(x: number, y: number): Svg {
  const half = RIM_RADIUS_56 - 4;
  return join(
    element("rect", {
      x: x - half,
      y: y - half,
      width: 2 * half,
      height: 2 * half,
      rx: 12,
      fill: colours.shade,
      ...outline,
    }),
    circle(x, y, 46, colours.plate),
    circle(x, y, 7, colours.white),
    ...holes(x, y, half - 14, 5),
  );
}

function holes(x: number, y: number, reach: number, radius: number): readonly Svg[] {
  return [-1, 1].flatMap((across) =>
    [-1, 1].map((down) => circle(x + across * reach, y + down * reach, Math.max(radius, 3), colours.white)),
  );
}

/** A motor from the side, held by bolts that run through it from end to end. */
function throughBolts(x: number, top: number): Drawing {
  const left = x - CELL / 2;
  const height = 74;
  const bolt = (y: number): Svg =>
    join(
      element("path", {
        d: `M${left + 8} ${y}H${left + CELL - 14}`,
        stroke: colours.signal,
        "stroke-width": lines.bold,
        "stroke-dasharray": "9 4",
      }),
      element("rect", { x: left + CELL - 18, y: y - 6, width: 9, height: 12, rx: 2, fill: colours.signal }),
      element("path", { d: `M${left + 2} ${y}h14`, stroke: colours.signal, "stroke-width": lines.bold }),
    );
  return {
    svg: join(
      element("rect", {
        x: left + 26,
        y: top,
        width: CELL - 52,
        height,
        rx: 4,
        fill: colours.white,
        ...outline,
      }),
      element("rect", {
        x: left + 18,
        y: top + 4,
        width: 12,
        height: height - 8,
        rx: 3,
        fill: colours.shade,
        ...outline,
      }),
      element("rect", {
        x: left + CELL - 34,
        y: top + 4,
        width: 16,
        height: height - 8,
        rx: 4,
        fill: colours.shade,
        ...outline,
      }),
      element("rect", {
        x: left,
        y: top + height / 2 - 5,
        width: 18,
        height: 10,
        fill: colours.white,
        ...outline,
      }),
      bolt(top + 16),
      bolt(top + height - 16),
    ),
    bottom: top + height,
  };
}

function circle(x: number, y: number, r: number, fill: string): Svg {
  return element("circle", { cx: x, cy: y, r, fill, ...outline });
}

function caption(x: number, top: number, name: string, how: string): Drawing {
  const column = { x, width: CELL, anchor: "middle" } as const;
  const first = paragraph(top, name, { ...column, weight: "bold" });
  const second = paragraph(first.bottom, how, { ...column, size: sizes.small });
  return { svg: join(first.svg, second.svg), bottom: second.bottom };
}

const lowest = (drawings: readonly Drawing[]): number => Math.max(...drawings.map(({ bottom }) => bottom));
