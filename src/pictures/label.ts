import type { Wording } from "../conversation/wording.ts";
import { ratings } from "../nameplate/vocabulary.ts";
import { type DrawnRating, type Field, sampleRows } from "./label/sample.ts";
import { DISC_RADIUS, numberDisc } from "./marks.ts";
import { type Drawing, type Picture, picture, stack } from "./picture.ts";
import { colours, INNER, lines, MARGIN, sizes, WIDTH } from "./style.ts";
import { element, join, type Svg } from "./svg.ts";
import { lineHeight, paragraph, remark, title, write } from "./writing.ts";

const ROW_HEIGHT = 45;
const COLUMN_WIDTH = (INNER - 16) / 6;
const PLATE_TOP = 33;

/** A label with invented figures, the asked-for ratings marked and told apart by number. */
export function labelPicture(marked: readonly DrawnRating[], wording: Wording): Picture {
  const names = marked.map((rating) => ratings[rating].title).join(", ");
  const alt =
    marked.length === 0
      ? wording.say("pictures", "label.alt.plain")
      : wording.say("pictures", "label.alt", { names });
  return picture(
    stack([
      title(wording.say("pictures", marked.length > 1 ? "label.title.several" : "label.title")),
      plate(marked, wording),
      ...marked.map((rating, index) => legend(rating, index + 1, wording)),
      remark(wording.say("pictures", "label.remark")),
    ]),
    alt,
  );
}

/** The label with every rating numbered, for a page that explains each by its number. */
export function numberedLabel(order: readonly DrawnRating[], wording: Wording): Picture {
  return picture(
    stack([plate(order, wording, { filled: false }), remark(wording.say("pictures", "label.remark"))]),
    wording.say("pictures", "label.alt.numbered"),
  );
}

function plate(
  marked: readonly DrawnRating[],
  wording: Wording,
  { filled = true } = {},
): (top: number) => Drawing {
  return (top) => {
    const height = PLATE_TOP + sampleRows.length * ROW_HEIGHT + 8;
    const cells = sampleRows.flatMap((row, rowIndex) => {
      let column = 0;
      return row.map((field) => {
        const x = MARGIN + 8 + column * COLUMN_WIDTH;
        column += field.span;
        return { field, x, y: top + PLATE_TOP + rowIndex * ROW_HEIGHT, width: field.span * COLUMN_WIDTH };
      });
    });
    const place = (rating: DrawnRating) => marked.indexOf(rating) + 1;
    return {
      svg: join(
        element("rect", {
          x: MARGIN,
          y: top,
          width: INNER,
          height,
          rx: 10,
          fill: colours.plate,
          stroke: colours.ink,
          "stroke-width": lines.usual,
        }),
        ...[MARGIN + 14, WIDTH - MARGIN - 14].map((x) => rivet(x, top + 16)),
        write(WIDTH / 2, top + 21, wording.say("pictures", "label.plate"), {
          size: sizes.small,
          anchor: "middle",
          weight: "bold",
        }),
        element("rect", {
          x: MARGIN + 8,
          y: top + PLATE_TOP,
          width: INNER - 16,
          height: sampleRows.length * ROW_HEIGHT,
          fill: colours.white,
        }),
        ...cells.filter(({ field }) => !filled || place(field.rating) === 0).map((cell) => cellOf(cell)),
        ...cells
          .filter(({ field }) => filled && place(field.rating) > 0)
          .map((cell) => cellOf(cell, "asked")),
        ...cells.flatMap(({ field, x, y, width }) =>
          place(field.rating) > 0
            ? [numberDisc(x + width - (filled ? 7 : 14), y + (filled ? 4 : 14), place(field.rating))]
            : [],
        ),
      ),
      bottom: top + height + 10,
    };
  };
}

interface Cell {
  readonly field: Field;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

function cellOf({ field, x, y, width }: Cell, state?: "asked"): Svg {
  const asked = state === "asked";
  return join(
    element("rect", {
      x,
      y,
      width,
      height: ROW_HEIGHT,
      rx: asked ? 5 : 0,
      fill: asked ? colours.highlight : "none",
      stroke: asked ? colours.signal : colours.faint,
      "stroke-width": asked ? lines.bold : lines.thin,
    }),
    write(x + 7, y + 17, field.caption, {
      size: sizes.small,
      fill: asked ? colours.ink : colours.pencil,
    }),
    write(x + 7, y + 37, field.value, { size: sizes.value, weight: asked ? "bold" : "regular" }),
  );
}

function rivet(x: number, y: number): Svg {
  return join(
    element("circle", {
      cx: x,
      cy: y,
      r: 5,
      fill: colours.shade,
      stroke: colours.ink,
      "stroke-width": lines.thin,
    }),
    element("path", { d: `M${x - 3} ${y}h6`, stroke: colours.ink, "stroke-width": lines.thin }),
  );
}

/** What else labels print for a rating. */
function legend(rating: DrawnRating, place: number, wording: Wording): (top: number) => Drawing {
  return (top) => {
    const x = MARGIN + 2 * DISC_RADIUS + 8;
    const drawn = paragraph(top, wording.say("pictures", `label.${rating}`), {
      x,
      width: WIDTH - MARGIN - x,
    });
    return {
      svg: join(numberDisc(MARGIN + DISC_RADIUS, top + lineHeight(sizes.text) / 2 + 1, place), drawn.svg),
      bottom: drawn.bottom + 6,
    };
  };
}
