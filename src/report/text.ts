import type { OverallVerdict } from "../matching/types.ts";
import type { Agreement } from "./requests.ts";
import { type Gap, notTold, type Overruled, type Summary, type WaitSummary } from "./summary.ts";

/** Of long lists so many lines; the CSV has all. */
const SHOWN = 12;

export const verdictWords: Readonly<Record<OverallVerdict, string>> = {
  "drop-in": "drop-in",
  "fits-with-work": "fits with work",
  "none-fits": "nothing fits",
  undecided: "not decided",
};

export const agreementWords: Readonly<Record<Agreement, string>> = {
  agreed: "the desk agreed",
  overruled: "the desk overruled the rules",
  settled: "the desk settled what the rules left open",
  silent: "still open, or ended without a word on it",
};

/** The report as text for a terminal. */
export function reportText(summary: Summary): string {
  const { from, to, requests, verdicts, gaps, agreement, overruled, messages, withoutVerdict } = summary;
  const out = [`Report, ${from} to ${to}`, ""];
  const section = (head: string, lines: readonly string[]) =>
    out.push(head, ...lines.map((line) => `  ${line}`), "");

  section(
    `Requests that got an answer: ${requests}`,
    Object.entries(verdictWords).map(([verdict, words]) => {
      const count = verdicts[verdict as OverallVerdict];
      return `${pad(count)}  ${words}${requests > 0 ? ` (${Math.round((100 * count) / requests)} %)` : ""}`;
    }),
  );
  section("What the shop could stock: asked for, and nothing fitted or it stayed open", [
    ...(gaps.length === 0 ? ["nothing was missing"] : gaps.slice(0, SHOWN).map(gapLine)),
    ...moreThan(gaps.length),
    ...(summary.nothingTold > 0
      ? [`${pad(summary.nothingTold)}  had nothing readable at all: no stock would help`]
      : []),
  ]);
  section("The rules and the desk", [
    ...Object.entries(agreementWords).map(([key, words]) => `${pad(agreement[key as Agreement])}  ${words}`),
    ...overruled.slice(0, SHOWN).map(overruledLine),
    ...moreThan(overruled.length),
  ]);
  section(
    `Messages until the answer: ${summary.medianMessages === null ? "none yet" : `${round(summary.medianMessages)} as a rule (median)`}`,
    [...messages].map(
      ([count, times]) => `${pad(times)}  with ${count} ${count === 1 ? "message" : "messages"}`,
    ),
  );
  section("Waiting until a person took it", [
    waitLine("came while the desk was open", summary.waits.deskOpen),
    waitLine("came while it was closed", summary.waits.deskClosed),
  ]);
  if (withoutVerdict > 0) {
    out.push(`On the desk without a verdict (a person asked for, danger, a picture): ${withoutVerdict}`, "");
  }
  return out.join("\n");
}

const pad = (count: number) => String(count).padStart(4);
const round = (value: number) => String(Math.round(value * 10) / 10);
const moreThan = (count: number) => (count > SHOWN ? [`… and ${count - SHOWN} more: --csv`] : []);

function gapLine(gap: Gap): string {
  const { nothingFits, undecided } = gap;
  const parts = [
    ...(nothingFits > 0 ? [`${nothingFits} nothing fitted`] : []),
    ...(undecided > 0 ? [`${undecided} not decided`] : []),
  ];
  return `${pad(nothingFits + undecided)}  ${gapWords(gap)} (${parts.join(", ")})`;
}

/** "square face, 1.65 total hp, 115/230 V". */
export function gapWords({ face, totalHp, volts }: Pick<Gap, "face" | "totalHp" | "volts">): string {
  return [
    face === notTold ? "face not told" : face === "through-bolt" ? "through-bolt" : `${face} face`,
    totalHp === notTold ? "total hp not told" : `${totalHp} total hp`,
    volts === notTold
      ? "volts not told"
      : volts.endsWith(" wired")
        ? `${volts.slice(0, -6)} V wired`
        : `${volts} V`,
  ].join(", ");
}

function overruledLine(overruled: Overruled): string {
  const { cases } = overruled;
  const numbers = cases.slice(0, CASES_SHOWN).join(", ");
  const more = cases.length > CASES_SHOWN ? ", …" : "";
  return `${pad(cases.length)}      ${overruledWords(overruled)} (case ${numbers}${more})`;
}

const CASES_SHOWN = 3;

/** "BISCUIT-12 → sold BISCUIT-14": what the rules said, and what the desk did. */
export function overruledWords({ verdict, sku, outcome, outcomeSku }: Overruled): string {
  const rules = sku ?? verdictWords[verdict];
  if (outcome === "wrong-part") return `${rules} → came back as wrong`;
  return `${rules} → ${outcome.replaceAll("-", " ")}${outcomeSku === null ? "" : ` ${outcomeSku}`}`;
}

function waitLine(head: string, { count, medianMinutes, longestMinutes, notTaken }: WaitSummary): string {
  if (count === 0) return `${pad(0)}  ${head}`;
  const times =
    medianMinutes === null || longestMinutes === null
      ? ""
      : `: ${duration(medianMinutes)} as a rule (median), ${duration(longestMinutes)} at most`;
  return `${pad(count)}  ${head}${times}${notTaken > 0 ? `; ${notTaken} not taken yet` : ""}`;
}

/** Minutes in the unit people would say them in. */
export function duration(minutes: number): string {
  if (minutes < 1) return "under a minute";
  if (minutes < 90) return `${Math.round(minutes)} min`;
  if (minutes < 48 * 60) return `${round(minutes / 60)} h`;
  return `${round(minutes / 1440)} days`;
}
