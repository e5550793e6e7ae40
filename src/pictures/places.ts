import type { Wording } from "../conversation/wording.ts";
import { crossDisc, DISC_RADIUS, numberDisc } from "./marks.ts";
import { type Drawing, type Picture, picture, stack } from "./picture.ts";
import { colours, lines, MARGIN, sizes, WIDTH } from "./style.ts";
import { element, join, type Svg } from "./svg.ts";
import { caution, lineHeight, paragraph, title, write } from "./writing.ts";

/** Whose label is looked for: the motor's own, or the pump's (the wet end). */
export type LabelOwner = "motor" | "pump";

/** A pump from the side, with the places where the label of the motor, or of the pump itself, is found. */
export function placesPicture(owner: LabelOwner, wording: Wording): Picture {
  const say = (key: string) => wording.say("pictures", `places.${key}`);
  return picture(
    stack([
      title(say(`${owner}.title`)),
      pumpFromTheSide(owner, say),
      ...["1", "2", "3"].map((place) => legend(numberDisc, Number(place), say(`${owner}.${place}`))),
      legend(crossDisc, 0, say(`${owner}.not`)),
      caution(say("caution")),
    ]),
    say(`${owner}.alt`),
  );
}

/** Axis of pump and motor, measured from the top of the drawing. */
const AXIS = 124;

function pumpFromTheSide(owner: LabelOwner, say: (key: string) => string): (top: number) => Drawing {
  return (top) => {
    const y = top + AXIS;
    return {
      svg: join(
        write(74, top + 14, say("pumpPart"), { size: sizes.small, anchor: "middle", weight: "bold" }),
        write(256, top + 14, say("motorPart"), { size: sizes.small, anchor: "middle", weight: "bold" }),
        ground(y + 84),
        wetEnd(y),
        motor(y),
        ...(owner === "motor" ? motorPlaces(y) : pumpPlaces(y)),
      ),
      bottom: y + 100,
    };
  };
}

const outline = { stroke: colours.ink, "stroke-width": lines.usual } as const;

function ground(y: number): Svg {
  return element("path", {
    d: `M${MARGIN} ${y}H${WIDTH - MARGIN}`,
    stroke: colours.faint,
    "stroke-width": lines.usual,
  });
}

/** Strainer pot, volute and pipes. */
function wetEnd(y: number): Svg {
  const body = { fill: colours.shade, ...outline };
  return join(
    // Pipes: suction to the left, discharge upwards.
    element("rect", { x: MARGIN, y: y - 22, width: 20, height: 34, fill: colours.plate, ...outline }),
    element("rect", { x: 116, y: y - 92, width: 32, height: 54, fill: colours.plate, ...outline }),
    element("path", { d: `M36 ${y - 46}h66v92q0 14 -14 14h-38q-14 0 -14 -14z`, ...body }),
    element("rect", { x: 30, y: y - 62, width: 78, height: 16, rx: 5, fill: colours.plate, ...outline }),
    element("rect", { x: 52, y: y - 72, width: 34, height: 10, rx: 4, fill: colours.plate, ...outline }),
    element("path", { d: `M116 ${y + 20}l-8 64h48l-8 -64z`, ...body }),
    element("circle", { cx: 132, cy: y, r: 43, ...body }),
    // The neck that the motor is bolted to.
    element("path", { d: `M158 ${y - 34}h12v68h-12`, ...body }),
  );
}

/** Bracket, motor body with its cooling slots, end cover, and the box where the cable goes in. */
function motor(y: number): Svg {
  const slots = [0, 1, 2, 3]
    .map((slot) => `M${318 + slot * 6} ${y - 28 + slot * 3}v${56 - slot * 6}`)
    .join("");
  return join(
    element("rect", { x: 168, y: y - 52, width: 14, height: 104, rx: 3, fill: colours.shade, ...outline }),
    element("path", { d: `M310 ${y - 44}q32 4 34 44q-2 40 -34 44z`, fill: colours.plate, ...outline }),
    element("rect", { x: 182, y: y - 46, width: 128, height: 92, rx: 4, fill: colours.white, ...outline }),
    element("path", { d: slots, stroke: colours.faint, "stroke-width": lines.usual }),
    element("path", { d: `M206 ${y + 46}v38h76v-38`, fill: colours.shade, ...outline }),
  );
}

function smallPlate(x: number, y: number, width: number, height: number, look: "sought" | "other"): Svg {
  const sought = look === "sought";
  const rows = [0.3, 0.52, 0.74].map((part) => `M${x + 6} ${y + height * part}h${width - 12}`).join("");
  return join(
    element("rect", {
      x,
      y,
      width,
      height,
      rx: 3,
      fill: sought ? colours.highlight : colours.white,
      stroke: sought ? colours.signal : colours.ink,
      "stroke-width": sought ? lines.bold : lines.thin,
    }),
    element("path", { d: rows, stroke: colours.ink, "stroke-width": lines.thin }),
  );
}

function motorPlaces(y: number): readonly Svg[] {
  return [
    smallPlate(194, y - 16, 56, 42, "sought"),
    numberDisc(194, y - 18, 1),
    // A sticker on top is seen at a slant.
    element("path", {
      d: `M206 ${y - 46}l8 -12h56l8 12z`,
      fill: colours.highlight,
      stroke: colours.signal,
      "stroke-width": lines.bold,
    }),
    numberDisc(206, y - 60, 2),
    // Dashed as hidden edges are: on the side turned away.
    element("rect", {
      x: 262,
      y: y - 16,
      width: 40,
      height: 42,
      rx: 3,
      fill: "none",
      stroke: colours.signal,
      "stroke-width": lines.usual,
      "stroke-dasharray": "5 4",
    }),
    numberDisc(262, y - 18, 3),
    smallPlate(42, y - 10, 42, 36, "other"),
    crossDisc(82, y - 12),
  ];
}

function pumpPlaces(y: number): readonly Svg[] {
  return [
    smallPlate(42, y - 10, 42, 36, "sought"),
    numberDisc(44, y - 12, 1),
    element("rect", {
      x: 30,
      y: y - 62,
      width: 78,
      height: 16,
      rx: 5,
      fill: colours.highlight,
      stroke: colours.signal,
      "stroke-width": lines.bold,
    }),
    element("path", { d: `M46 ${y - 54}h36`, stroke: colours.ink, "stroke-width": lines.thin }),
    numberDisc(34, y - 66, 2),
    smallPlate(110, y - 14, 44, 32, "sought"),
    numberDisc(112, y - 16, 3),
    smallPlate(214, y - 18, 62, 42, "other"),
    crossDisc(276, y - 20),
  ];
}

function legend(
  mark: (x: number, y: number, place: number) => Svg,
  place: number,
  text: string,
): (top: number) => Drawing {
  return (top) => {
    const x = MARGIN + 2 * DISC_RADIUS + 8;
    const drawn = paragraph(top, text, { x, width: WIDTH - MARGIN - x });
    return {
      svg: join(mark(MARGIN + DISC_RADIUS, top + lineHeight(sizes.text) / 2 + 1, place), drawn.svg),
      bottom: drawn.bottom + 6,
    };
  };
}
