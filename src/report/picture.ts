import { DateTime } from "luxon";
import type { Picture } from "../pictures/picture.ts";
import { colours } from "../pictures/style.ts";
import { element, join, type Svg } from "../pictures/svg.ts";
import { write } from "../pictures/writing.ts";
import {
  bars,
  columns,
  EDGE,
  hatched,
  heading,
  key,
  letters,
  type Panel,
  quiet,
  SHEET,
  sheet,
} from "./chart.ts";
import { type Summary, type WaitSummary, waitLengths } from "./summary.ts";
import { duration, gapWords, overruledWords } from "./text.ts";

const GAPS_SHOWN = 8;
const OVERRULED_SHOWN = 4;
/** Longer talks are one column. */
const MOST_MESSAGES = 8;

const LEFT = EDGE;
const RIGHT = 560;
const RIGHT_WIDTH = SHEET - EDGE - RIGHT;

/** The report as one sheet: what was missing first, for that is what somebody can act on. */
export function reportPicture(summary: Summary): Picture {
  const { from, to, requests } = summary;
  const alt = `What was asked for and not found, ${from} to ${to}, ${requests} requests`;
  const title = join(
    write(LEFT, 66, "What was asked for, and what was missing", { size: letters.title, weight: "bold" }),
    quiet(LEFT, 92, `Requests that got an answer from the bot, ${day(from)} to ${day(to)}`, {
      size: letters.text,
    }),
  );
  const first = figures(summary, 116);
  const missing = gapsPanel(summary, first.bottom + 34);
  const lower = missing.bottom + 30;
  const desk = deskPanel(summary, lower);
  const waits = waitsPanel(summary, lower);
  const messages = messagesPanel(summary, desk.bottom + 26);
  const svg = sheet(
    join(title, first.svg, missing.svg, desk.svg, waits.svg, messages.svg),
    Math.max(waits.bottom, messages.bottom),
    alt,
  );
  const height = Number(/height="(\d+)"/.exec(svg)?.[1] ?? SHEET);
  return { svg, alt, width: SHEET, height, personal: false };
}

/** The few numbers to remember. */
function figures({ requests, verdicts, medianMessages, waits }: Summary, top: number): Panel {
  const found = verdicts["drop-in"] + verdicts["fits-with-work"];
  const share = requests === 0 ? "–" : `${Math.round((100 * found) / requests)} %`;
  const shown = [
    { figure: String(requests), words: "requests" },
    { figure: share, words: "found a motor" },
    { figure: String(verdicts["none-fits"]), words: "nothing fitted" },
    { figure: String(verdicts.undecided), words: "stayed open" },
    { figure: medianMessages === null ? "–" : String(medianMessages), words: "messages, typically" },
    {
      figure: waits.deskOpen.medianMinutes === null ? "–" : duration(waits.deskOpen.medianMinutes),
      words: "wait, desk open",
    },
  ];
  const width = (SHEET - 2 * EDGE) / shown.length;
  const height = 96;
  const pieces = shown.map(({ figure, words }, at) => {
    const x = EDGE + at * width;
    return join(
      element("rect", { x: x + 3, y: top, width: width - 6, height, rx: 8, fill: colours.plate }),
      write(x + width / 2, top + 52, figure, {
        size: figure.length > 5 ? 30 : letters.figure,
        weight: "bold",
        anchor: "middle",
      }),
      quiet(x + width / 2, top + 80, words, { anchor: "middle" }),
    );
  });
  return { svg: join(...pieces), bottom: top + height };
}

function gapsPanel({ gaps, nothingTold }: Summary, top: number): Panel {
  const head = heading(
    LEFT,
    top,
    "What the shop could stock",
    "Asked for by face, total horsepower and voltage of the label",
  );
  if (gaps.length === 0) return said(head, LEFT, "Nothing was missing.");
  const rows = gaps.slice(0, GAPS_SHOWN).map((gap) => ({
    label: gapWords(gap),
    parts: [
      { count: gap.nothingFits, fill: colours.signal },
      { count: gap.undecided, fill: hatched },
    ],
    end: String(gap.nothingFits + gap.undecided),
  }));
  const drawn = bars(rows, { x: LEFT, top: head.bottom + 10, labelWidth: 340, length: 500 });
  const rest = gaps.slice(GAPS_SHOWN).reduce((sum, gap) => sum + gap.nothingFits + gap.undecided, 0);
  const legend = join(
    key(LEFT + 340, drawn.bottom + 14, colours.signal, "nothing fitted"),
    key(LEFT + 480, drawn.bottom + 14, hatched, "not decided"),
  );
  const beside = [
    ...(rest > 0 ? [`${rest} more asked for other motors, each less often.`] : []),
    ...(nothingTold > 0 ? [`${nothingTold} had no label to read at all: no stock would help.`] : []),
  ].join(" ");
  const below = quiet(LEFT + 340, drawn.bottom + 38, beside);
  return { svg: join(head.svg, drawn.svg, legend, below), bottom: drawn.bottom + (beside === "" ? 20 : 44) };
}

function deskPanel({ agreement, overruled }: Summary, top: number): Panel {
  const head = heading(LEFT, top, "The rules and the desk", "What the desk did with the verdicts");
  const rows = [
    { label: "agreed", count: agreement.agreed, fill: colours.shade },
    { label: "overruled", count: agreement.overruled, fill: colours.signal },
    { label: "settled what was open", count: agreement.settled, fill: colours.shade },
    { label: "no word on it yet", count: agreement.silent, fill: colours.white },
  ].map(({ label, count, fill }) => ({ label, parts: [{ count, fill }], end: String(count) }));
  const drawn = bars(rows, { x: LEFT, top: head.bottom + 10, labelWidth: 180, length: 250 });
  const lines = overruled
    .slice(0, OVERRULED_SHOWN)
    .map((way) => `${way.cases.length} ×  ${overruledWords(way)}`);
  const more = overruled.length > lines.length ? [`and ${overruled.length - lines.length} other ways`] : [];
  const intro = lines.length > 0 ? ["Overruled, what the rules said → what the desk did:"] : [];
  const listed = [...intro, ...lines, ...more].map((line, at) =>
    quiet(LEFT, drawn.bottom + 16 + at * 20, line),
  );
  return { svg: join(head.svg, drawn.svg, ...listed), bottom: drawn.bottom + 16 + listed.length * 20 };
}

function messagesPanel({ messages }: Summary, top: number): Panel {
  const head = heading(
    LEFT,
    top,
    "Messages until the answer",
    "Requests by the number of messages the customer wrote",
  );
  if (messages.size === 0) return said(head, LEFT, "No request yet.");
  const values = Array.from({ length: MOST_MESSAGES }, (_, at) => ({
    name: at + 1 === MOST_MESSAGES ? `${MOST_MESSAGES}+` : String(at + 1),
    count: [...messages].reduce(
      (sum, [count, times]) => (Math.min(Math.max(count, 1), MOST_MESSAGES) === at + 1 ? sum + times : sum),
      0,
    ),
  }));
  const largest = Math.max(...values.map(({ count }) => count));
  const drawn = columns(values, colours.shade, {
    x: LEFT,
    top: head.bottom,
    width: 440,
    height: 150,
    largest,
  });
  return { svg: join(head.svg, drawn.svg), bottom: drawn.bottom };
}

function waitsPanel({ waits: { deskOpen, deskClosed } }: Summary, top: number): Panel {
  const head = heading(RIGHT, top, "Waiting until a person took it", "Cases by how long they waited");
  if (deskOpen.count + deskClosed.count === 0) return said(head, RIGHT, "Nothing came to the desk.");
  const largest = Math.max(1, ...countsOf(deskOpen), ...countsOf(deskClosed));
  const open = waitColumns(
    "came while the desk was open",
    deskOpen,
    colours.shade,
    head.bottom + 14,
    largest,
  );
  const closed = waitColumns(
    "came while it was closed",
    deskClosed,
    colours.white,
    open.bottom + 30,
    largest,
  );
  return { svg: join(head.svg, open.svg, closed.svg), bottom: closed.bottom };
}

const countsOf = ({ byLength, notTaken }: WaitSummary): readonly number[] => [...byLength, notTaken];

/** Both charts have one scale; the one with less in it is lower. */
function waitColumns(words: string, wait: WaitSummary, fill: string, top: number, largest: number): Panel {
  const names = [...waitLengths.map(({ words: name }) => name), "not taken"];
  const values = countsOf(wait).map((count, at) => ({ name: names[at] ?? "", count }));
  const own = Math.max(...countsOf(wait));
  const height = 24 + (own / largest) * 130;
  const drawn = columns(values, fill, { x: RIGHT, top: top + 24, width: RIGHT_WIDTH, height, largest: own });
  return {
    svg: join(write(RIGHT, top + 14, `${wait.count} ${words}`, { size: letters.text }), drawn.svg),
    bottom: drawn.bottom,
  };
}

const day = (iso: string) => DateTime.fromISO(iso, { locale: "en-US" }).toFormat("d LLL yyyy");

function said(head: Panel, x: number, text: string): Panel {
  const line: Svg = write(x, head.bottom + 20, text, { size: letters.text });
  return { svg: join(head.svg, line), bottom: head.bottom + 34 };
}
