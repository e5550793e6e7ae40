import { colours, fontFamily, MARGIN, WIDTH } from "./style.ts";
import { element, join, type Svg } from "./svg.ts";

/** A drawn picture, ready to be shown in a page or rendered for a chat. */
export interface Picture {
  readonly svg: string;
  /** What the picture shows, for people who do not see it. */
  readonly alt: string;
  /** Size in units; see {@link WIDTH}. */
  readonly width: number;
  readonly height: number;
  /** True when it shows what a customer said: it is never kept, so that erasing their chat erases all. */
  readonly personal: boolean;
}

/** A part of a picture and the lowest point it reaches. */
export interface Drawing {
  readonly svg: Svg;
  readonly bottom: number;
}

/** The drawing on its paper. */
export function picture({ svg, bottom }: Drawing, alt: string, { personal = false } = {}): Picture {
  const height = Math.ceil(bottom + MARGIN);
  const root = element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${WIDTH} ${height}`,
      width: WIDTH,
      height,
      role: "img",
      "aria-label": alt,
      "font-family": fontFamily,
      "stroke-linejoin": "round",
      "stroke-linecap": "round",
    },
    element("rect", { width: WIDTH, height, fill: colours.paper }),
    svg,
  );
  return { svg: root, alt, width: WIDTH, height, personal };
}

/** Parts from the top down, each told where to begin. */
export function stack(parts: readonly ((top: number) => Drawing)[], top = MARGIN): Drawing {
  let bottom = top;
  const pieces: Svg[] = [];
  for (const part of parts) {
    const drawn = part(bottom);
    pieces.push(drawn.svg);
    bottom = drawn.bottom;
  }
  return { svg: join(...pieces), bottom };
}
