import type { Urgency } from "../conversation/thread.ts";
import type { Wording } from "../conversation/wording.ts";
import { textWidth, wrapText } from "./letters.ts";
import { hatching } from "./marks.ts";
import { type Drawing, type Picture, picture, stack } from "./picture.ts";
import { colours, INNER, lines, MARGIN, sizes, WIDTH } from "./style.ts";
import { element, join, type Svg } from "./svg.ts";
import { lineHeight, paragraph, warningTriangle, write } from "./writing.ts";

/**
 * The brief (`briefOf`) as a card: what it is about in a band at the top, each line with its lead word in bold.
 * A danger has a warning sign besides its colour.
 */
export function briefCard(brief: string, urgency: Urgency, wording: Wording): Picture {
  const [head = "", ...rest] = brief.split("\n");
  return picture(
    stack([band(head, urgency), ...rest.filter((line) => line.trim() !== "").map(entry)], 0),
    wording.say("pictures", "brief.alt", { brief: spoken(brief) }),
    { personal: true },
  );
}

/** Lines as sentences, for a voice that reads them out. */
function spoken(brief: string): string {
  return brief.replace(/([.?!…”]?)\s*\n\s*/g, (_, end: string) => `${end || "."} `);
}

function band(head: string, urgency: Urgency): (top: number) => Drawing {
  return (top) => {
    const danger = urgency === "danger";
    const x = danger ? MARGIN + 30 : MARGIN;
    const drawn = paragraph(top + 12, head, {
      x,
      width: WIDTH - MARGIN - x,
      weight: "bold",
      fill: colours.white,
    });
    const height = drawn.bottom + 10 - top;
    return {
      svg: join(
        element("rect", { x: 0, y: top, width: WIDTH, height, fill: danger ? colours.signal : colours.ink }),
        ...(danger ? [warningTriangle(MARGIN, top + 10, colours.ink, colours.highlight)] : []),
        drawn.svg,
        ...(danger ? [hatching(0, top + height, WIDTH, 8, colours.signal)] : []),
      ),
      bottom: top + height + (danger ? 16 : 8),
    };
  };
}

/** What a line is about: up to its colon, or to a bracket before that. */
const LEAD = /^[^:(]{1,48}(?::(?= )|(?= \())/;

/** "Has: 1.5 hp, ..." with its lead in bold; a thin line parts it from the entry above. */
function entry(line: string, index: number): (top: number) => Drawing {
  return (top) => {
    const lead = LEAD.exec(line)?.[0] ?? "";
    const indent = lead === "" ? 0 : textWidth(`${lead} `, sizes.text, "bold");
    const [first = "", ...others] = wrapAfter(line.slice(lead.length).trim(), indent);
    const leading = lineHeight(sizes.text);
    const baseline = top + 7 + sizes.text;
    const rule = element("path", {
      d: `M${MARGIN} ${top}H${WIDTH - MARGIN}`,
      stroke: colours.shade,
      "stroke-width": lines.thin,
    });
    const written: Svg[] = [
      ...(index === 0 ? [] : [rule]),
      ...(lead === "" ? [] : [write(MARGIN, baseline, lead, { weight: "bold" })]),
      write(MARGIN + indent, baseline, first),
      ...others.map((text, row) => write(MARGIN, baseline + (row + 1) * leading, text)),
    ];
    return { svg: join(...written), bottom: top + 7 + (others.length + 1) * leading + 5 };
  };
}

/** Lines of which the first begins `indent` further in. */
function wrapAfter(text: string, indent: number): readonly string[] {
  const first = wrapText(text, sizes.text, INNER - indent)[0] ?? "";
  const rest = text.replace(/\s+/g, " ").slice(first.length).trim();
  return [first, ...wrapText(rest, sizes.text, INNER)];
}
