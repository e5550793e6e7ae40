import { type CostComparison, roundUsd } from "../conversation/money.ts";
import { SAME_COST } from "../conversation/verdict/cost.ts";
import type { Wording } from "../conversation/wording.ts";
import type { Assumption } from "../engineering/running-cost.ts";
import { centsFromUsd } from "../engineering/units.ts";
import { hatching } from "./marks.ts";
import { type Drawing, type Picture, picture, stack } from "./picture.ts";
import { colours, INNER, lines, MARGIN, sizes, WIDTH } from "./style.ts";
import { element, join } from "./svg.ts";
import { paragraph, remark, title, write } from "./writing.ts";

const BAR_HEIGHT = 34;

/** Running cost a year, now and after, as bars from zero, and below them every figure they rest on. */
export function runningCostPicture({ before, after, use }: CostComparison, wording: Wording): Picture {
  const say = (key: string, values = {}) => wording.say("pictures", `cost.${key}`, values);
  const usd = { before: roundUsd(before.usdPerYear), after: roundUsd(after.usdPerYear) };
  const most = Math.max(usd.before, usd.after, 1);
  const bases = [
    say("hours", { hours: use.hoursPerDay }),
    say("price", { cents: centsFromUsd(use.pricePerKwh) }),
    ...powerFactors({ before, after }, say),
    say("load"),
  ];
  const same = Math.abs(before.usdPerYear - after.usdPerYear) <= before.usdPerYear * SAME_COST;
  return picture(
    stack([
      title(say("title")),
      bar(say("before"), say("usd", { usd: usd.before }), usd.before / most, "hatched"),
      bar(say("after"), say("usd", { usd: usd.after }), usd.after / most, "plain"),
      ...(same ? [(top: number) => paragraph(top - 2, say("same"))] : []),
      (top) => paragraph(top + 6, say(use.stated ? "bases.stated" : "bases"), { weight: "bold" }),
      ...bases.map((basis) => point(basis)),
      remark(say("remark")),
    ]),
    `${say("alt", { before: usd.before, after: usd.after })}${same ? ` ${say("same")}` : ""} ${say("bases")} ${bases.join("; ")}.`,
    { personal: true },
  );
}

/** One bar with its name and value above it, so that neither depends on the bar's length. */
function bar(
  name: string,
  value: string,
  share: number,
  look: "hatched" | "plain",
): (top: number) => Drawing {
  return (top) => {
    const width = Math.max(INNER * share, 2);
    const y = top + 24;
    const hatched = look === "hatched";
    return {
      svg: join(
        write(MARGIN, top + 16, name),
        write(WIDTH - MARGIN, top + 16, value, { size: sizes.value, weight: "bold", anchor: "end" }),
        element("rect", {
          x: MARGIN,
          y,
          width,
          height: BAR_HEIGHT,
          fill: hatched ? colours.shade : colours.highlight,
          stroke: colours.ink,
          "stroke-width": lines.usual,
        }),
        ...(hatched ? [hatching(MARGIN, y, width, BAR_HEIGHT, colours.pencil)] : []),
      ),
      bottom: y + BAR_HEIGHT + 14,
    };
  };
}

function point(text: string): (top: number) => Drawing {
  return (top) => {
    const drawn = paragraph(top + 2, text, { x: MARGIN + 16, width: INNER - 16 });
    const bullet = element("circle", { cx: MARGIN + 5, cy: top + 12, r: 3, fill: colours.ink });
    return { svg: join(bullet, drawn.svg), bottom: drawn.bottom };
  };
}

/** Power factors differ from motor to motor: each is named, with whether it was printed. */
function powerFactors(
  costs: Pick<CostComparison, "before" | "after">,
  say: (key: string, values?: Readonly<Record<string, string | number>>) => string,
): readonly string[] {
  const find = (assumptions: readonly Assumption[]) => assumptions.find(({ name }) => name === "powerFactor");
  return (["before", "after"] as const).flatMap((which) => {
    const found = find(costs[which].assumptions);
    return found
      ? [say(`powerFactor.${which}.${found.basis}`, { value: found.value })]
      : [say(`efficiency.${which}`)];
  });
}
