import type { Wording } from "../conversation/wording.ts";
import { type Drawing, type Picture, picture, stack } from "./picture.ts";
import { colours, INNER, lines, MARGIN, sizes } from "./style.ts";
import { element, join, type Svg } from "./svg.ts";
import { caution, paragraph, remark, title, write } from "./writing.ts";

/** What is asked of the breaker: how many handles it has, or the figure on them. */
export type BreakerQuestion = "poles" | "amps";

const PANEL_WIDTH = (INNER - 16) / 2;
const SLOT = 38;
const SLOTS = 4;
const FIRST_SLOT = 14;

/**
 * A single and a double breaker as seen with the panel's door open and its cover on. That two handles mean
 * 208 or 240 V in North America is common practice, no source.
 */
export function breakersPicture(question: BreakerQuestion, wording: Wording): Picture {
  const say = (key: string) => wording.say("pictures", `breakers.${key}`);
  return picture(
    stack([
      title(say(`${question}.title`)),
      panels(question, say),
      captions(say),
      caution(say("caution")),
      remark(wording.say("pictures", "notToScale")),
    ]),
    say(`${question}.alt`),
  );
}

function panels(question: BreakerQuestion, say: (key: string) => string): (top: number) => Drawing {
  return (top) => {
    const right = MARGIN + PANEL_WIDTH + 16;
    return {
      svg: join(
        panel(MARGIN, top, [1, 1, 1, 1], 1, question, say),
        panel(right, top, [1, 2, 1], 1, question, say),
      ),
      bottom: top + SLOTS * SLOT + 2 * FIRST_SLOT,
    };
  };
}

/** One column of breakers; `poles` gives how many slots each takes, `pump` which of them is the pump's. */
function panel(
  x: number,
  top: number,
  poles: readonly number[],
  pump: number,
  question: BreakerQuestion,
  say: (key: string) => string,
): Svg {
  let slot = 0;
  const breakers = poles.map((count, index) => {
    const y = top + FIRST_SLOT + slot * SLOT;
    slot += count;
    return index === pump ? pumpBreaker(x + 12, y, count, question, say) : otherBreaker(x + 12, y);
  });
  return join(
    element("rect", {
      x,
      y: top,
      width: PANEL_WIDTH,
      height: SLOTS * SLOT + 2 * FIRST_SLOT,
      rx: 6,
      fill: colours.plate,
      stroke: colours.ink,
      "stroke-width": lines.usual,
    }),
    ...breakers,
  );
}

const BODY_WIDTH = PANEL_WIDTH - 24;
const HANDLE_X = BODY_WIDTH - 54;

function otherBreaker(x: number, y: number): Svg {
  return join(
    element("rect", {
      x,
      y: y + 3,
      width: BODY_WIDTH,
      height: SLOT - 6,
      rx: 3,
      fill: "none",
      stroke: colours.faint,
      "stroke-width": lines.thin,
    }),
    element("rect", {
      x: x + HANDLE_X,
      y: y + 10,
      width: 40,
      height: SLOT - 20,
      rx: 2,
      fill: "none",
      stroke: colours.faint,
      "stroke-width": lines.thin,
    }),
  );
}

function pumpBreaker(
  x: number,
  y: number,
  poles: number,
  question: BreakerQuestion,
  say: (key: string) => string,
): Svg {
  const handles = Array.from({ length: poles }, (_, pole) =>
    handle(x + HANDLE_X, y + pole * SLOT + 7, question),
  );
  const tieTop = y + 12;
  return join(
    element("rect", {
      x,
      y: y + 2,
      width: BODY_WIDTH,
      height: poles * SLOT - 4,
      rx: 4,
      fill: colours.ink,
      stroke: colours.signal,
      "stroke-width": lines.bold,
    }),
    write(x + 8, y + (poles * SLOT) / 2 + 5, say("pump"), {
      size: sizes.small,
      weight: "bold",
      fill: colours.white,
    }),
    ...handles,
    // The bar that ties the two handles.
    ...(poles > 1
      ? [
          element("rect", {
            x: x + HANDLE_X + 31,
            y: tieTop,
            width: 11,
            height: poles * SLOT - 24,
            rx: 2,
            fill: colours.white,
            stroke: colours.ink,
            "stroke-width": lines.thin,
          }),
        ]
      : []),
  );
}

function handle(x: number, y: number, question: BreakerQuestion): Svg {
  const asked = question === "amps";
  return join(
    element("rect", {
      x,
      y,
      width: 40,
      height: SLOT - 14,
      rx: 3,
      fill: asked ? colours.highlight : colours.white,
      stroke: colours.ink,
      "stroke-width": lines.thin,
    }),
    write(x + 16, y + 17, "20", { size: sizes.text, weight: asked ? "bold" : "regular", anchor: "middle" }),
  );
}

function captions(say: (key: string) => string): (top: number) => Drawing {
  return (top) => {
    const columns = (["single", "double"] as const).map((kind, index) => {
      const x = MARGIN + index * (PANEL_WIDTH + 16) + PANEL_WIDTH / 2;
      const column = { x, width: PANEL_WIDTH, anchor: "middle" } as const;
      const name = paragraph(top + 8, say(kind), { ...column, weight: "bold" });
      const volts = paragraph(name.bottom, say(`${kind}.volts`), column);
      return { svg: join(name.svg, volts.svg), bottom: volts.bottom };
    });
    return {
      svg: join(...columns.map(({ svg }) => svg)),
      bottom: Math.max(...columns.map(({ bottom }) => bottom)),
    };
  };
}
