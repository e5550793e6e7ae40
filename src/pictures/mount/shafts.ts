import type { Wording } from "../../conversation/wording.ts";
import { inchRuler, measure } from "../marks.ts";
import { type Drawing, stack } from "../picture.ts";
import { colours, lines, MARGIN, sizes } from "../style.ts";
import { element, join, type Svg } from "../svg.ts";
import { paragraph, write } from "../writing.ts";
import { keyedShaft, threadedShaft } from "./published.ts";

/** Units to the inch. */
export const SHAFT_SCALE = 72;
const FACE_RIGHT = MARGIN + 26;
const END_VIEW_X = 306;
const outline = { stroke: colours.ink, "stroke-width": lines.usual } as const;
const radius = (diameterIn: number): number => (diameterIn / 2) * SHAFT_SCALE;

/** A threaded and a keyed shaft end, from the side and from the end, at one scale. */
export function shafts(wording: Wording): (top: number) => Drawing {
  const say = (key: string) => wording.say("pictures", `shafts.${key}`);
  return (top) =>
    stack(
      [
        row(say("threaded"), say("threaded.length"), threadedShaft.lengthIn, [threaded, threadedEnd]),
        row(say("keyed"), say("keyed.length"), keyedShaft.lengthIn, [keyed, keyedEnd]),
        (below) => ({
          svg: inchRuler(FACE_RIGHT, below + 8, 1, SHAFT_SCALE, say("ruler")),
          bottom: below + 20,
        }),
      ],
      top,
    );
}

function row(
  name: string,
  length: string,
  lengthIn: number,
  views: readonly ((y: number) => Svg)[],
): (top: number) => Drawing {
  return (top) => {
    const caption = paragraph(top, name, { weight: "bold" });
    const y = caption.bottom + 44;
    const end = FACE_RIGHT + lengthIn * SHAFT_SCALE;
    return {
      svg: join(
        caption.svg,
        element("rect", {
          x: MARGIN,
          y: y - 38,
          width: 26,
          height: 76,
          rx: 3,
          fill: colours.shade,
          ...outline,
        }),
        ...views.map((view) => view(y)),
        measure(FACE_RIGHT, end, y + 34),
        write((FACE_RIGHT + end) / 2, y + 54, length, { size: sizes.small, anchor: "middle" }),
      ),
      bottom: y + 68,
    };
  };
}

/** How much of the end carries thread, and the plain part: drawn freely, no source. */
const THREAD_SHARE = 0.42;

function threaded(y: number): Svg {
  const { diameterIn, lengthIn, threadIn } = threadedShaft;
  const plain = lengthIn * SHAFT_SCALE * (1 - THREAD_SHARE);
  const thread = lengthIn * SHAFT_SCALE * THREAD_SHARE;
  const r = radius(threadIn);
  // Drawn with half the turns: at full count the lines would run together on a phone.
  const pitch = (SHAFT_SCALE / threadedShaft.threadPerIn) * 2;
  const turns = Array.from(
    { length: Math.floor((thread - 4) / pitch) },
    (_, turn) => `M${(FACE_RIGHT + plain + 3 + turn * pitch).toFixed(1)} ${y + r}l3 ${-2 * r}`,
  );
  return join(
    element("rect", {
      x: FACE_RIGHT,
      y: y - radius(diameterIn),
      width: plain,
      height: 2 * radius(diameterIn),
      fill: colours.white,
      ...outline,
    }),
    element("rect", {
      x: FACE_RIGHT + plain,
      y: y - r,
      width: thread,
      height: 2 * r,
      rx: 3,
      fill: colours.highlight,
      ...outline,
    }),
    element("path", { d: turns.join(""), stroke: colours.ink, "stroke-width": lines.thin, fill: "none" }),
  );
}

function threadedEnd(y: number): Svg {
  const ring = (r: number, fill: string, dashes?: string): Svg =>
    element("circle", { cx: END_VIEW_X, cy: y, r, fill, "stroke-dasharray": dashes, ...outline });
  return join(
    ring(radius(threadedShaft.diameterIn), colours.white),
    ring(radius(threadedShaft.threadIn), colours.highlight),
    ring(radius(threadedShaft.threadIn) - 4, "none", "3 3"),
  );
}

function keyed(y: number): Svg {
  const { diameterIn, lengthIn, keyIn, keyLengthIn } = keyedShaft;
  const length = lengthIn * SHAFT_SCALE;
  const key = { length: keyLengthIn * SHAFT_SCALE, height: keyIn * SHAFT_SCALE };
  return join(
    element("rect", {
      x: FACE_RIGHT,
      y: y - radius(diameterIn),
      width: length,
      height: 2 * radius(diameterIn),
      rx: 2,
      fill: colours.white,
      ...outline,
    }),
    element("rect", {
      x: FACE_RIGHT + length - key.length,
      y: y - key.height / 2,
      width: key.length,
      height: key.height,
      fill: colours.highlight,
      ...outline,
    }),
  );
}

/** The key sits half in the shaft, half out of it. */
function keyedEnd(y: number): Svg {
  const r = radius(keyedShaft.diameterIn);
  const key = keyedShaft.keyIn * SHAFT_SCALE;
  return join(
    element("circle", { cx: END_VIEW_X, cy: y, r, fill: colours.white, ...outline }),
    element("rect", {
      x: END_VIEW_X - key / 2,
      y: y - r - key / 2,
      width: key,
      height: key,
      fill: colours.highlight,
      ...outline,
    }),
  );
}
