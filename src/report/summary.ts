import type { AskedFor } from "../engine/verdict-record.ts";
import type { OverallVerdict } from "../matching/types.ts";
import type { Agreement, ReportedRequest } from "./requests.ts";
import { median, type Wait } from "./waits.ts";

/** What the report is made from. */
export interface ReportData {
  /** First and last day, ISO `YYYY-MM-DD`, local to the shop. */
  readonly from: string;
  readonly to: string;
  readonly requests: readonly ReportedRequest[];
  /** Cases of the same days that came to the desk without a verdict: for a person, for danger, with a picture. */
  readonly withoutVerdict: number;
  readonly waits: readonly Wait[];
}

/** Requests alike in face, total horsepower and voltage for which the stock had nothing sure. */
export interface Gap {
  readonly face: string;
  readonly totalHp: string;
  readonly volts: string;
  readonly nothingFits: number;
  readonly undecided: number;
}

/** Requests in which the desk overruled the rules in the same way. */
export interface Overruled extends Pick<ReportedRequest, "verdict" | "sku" | "outcome" | "outcomeSku"> {
  /** Case numbers, newest first; without those of customers whose data was erased. */
  readonly cases: readonly number[];
}

export interface WaitSummary {
  readonly count: number;
  readonly medianMinutes: number | null;
  readonly longestMinutes: number | null;
  readonly notTaken: number;
  /** Waits by length, in the order of {@link waitLengths}. */
  readonly byLength: readonly number[];
}

/** Lengths of waits people tell apart; each up to so many minutes. */
export const waitLengths = [
  { upToMinutes: 15, words: "≤ 15 min" },
  { upToMinutes: 60, words: "≤ 1 h" },
  { upToMinutes: 240, words: "≤ 4 h" },
  { upToMinutes: 1440, words: "≤ 1 day" },
  { upToMinutes: Number.POSITIVE_INFINITY, words: "longer" },
] as const;

export interface Summary extends Pick<ReportData, "from" | "to" | "withoutVerdict"> {
  readonly requests: number;
  readonly verdicts: Readonly<Record<OverallVerdict, number>>;
  /** What the shop could stock, most asked for first. */
  readonly gaps: readonly Gap[];
  /** Requests that stayed open with none of face, total horsepower and voltage told: no stock would help. */
  readonly nothingTold: number;
  readonly agreement: Readonly<Record<Agreement, number>>;
  /** Alike ones together, the most frequent first. */
  readonly overruled: readonly Overruled[];
  /** Messages until the first verdict -> requests. */
  readonly messages: ReadonlyMap<number, number>;
  readonly medianMessages: number | null;
  readonly waits: { readonly deskOpen: WaitSummary; readonly deskClosed: WaitSummary };
}

export function summaryOf({ from, to, requests, withoutVerdict, waits }: ReportData): Summary {
  const verdicts = { "drop-in": 0, "fits-with-work": 0, "none-fits": 0, undecided: 0 };
  const agreement = { agreed: 0, overruled: 0, settled: 0, silent: 0 };
  const messages = new Map<number, number>();
  for (const request of requests) {
    verdicts[request.verdict]++;
    agreement[request.agreement]++;
    messages.set(request.messages, (messages.get(request.messages) ?? 0) + 1);
  }
  return {
    from,
    to,
    withoutVerdict,
    requests: requests.length,
    verdicts,
    gaps: gapsOf(requests),
    nothingTold: requests.filter(
      (request) => isMissing(request) && toldNothing(shownRequest(request.askedFor)),
    ).length,
    agreement,
    overruled: overruledOf(requests),
    messages: new Map([...messages].sort(([a], [b]) => a - b)),
    medianMessages: median(requests.map((request) => request.messages)),
    waits: {
      deskOpen: waitSummary(waits.filter(({ deskOpen }) => deskOpen)),
      deskClosed: waitSummary(waits.filter(({ deskOpen }) => !deskOpen)),
    },
  };
}

export const notTold = "not told";

/** Face, total horsepower and voltage of a request, in words. */
export function shownRequest({ face, totalHp, volts, supplyVolts }: AskedFor) {
  return {
    face: face ?? notTold,
    totalHp: totalHp === undefined ? notTold : String(Math.round(totalHp * 100) / 100),
    volts: volts?.join("/") ?? (supplyVolts === undefined ? notTold : `${supplyVolts} wired`),
  };
}

function gapsOf(requests: readonly ReportedRequest[]): readonly Gap[] {
  const gaps = new Map<string, Gap>();
  for (const { askedFor, verdict } of requests) {
    const shown = shownRequest(askedFor);
    if (!isMissing({ verdict }) || toldNothing(shown)) continue;
    const key = Object.values(shown).join("|");
    const { nothingFits, undecided } = gaps.get(key) ?? { nothingFits: 0, undecided: 0 };
    gaps.set(key, {
      ...shown,
      nothingFits: nothingFits + (verdict === "none-fits" ? 1 : 0),
      undecided: undecided + (verdict === "undecided" ? 1 : 0),
    });
  }
  return [...gaps.values()].sort(
    (a, b) => b.nothingFits - a.nothingFits || b.undecided - a.undecided || lessTold(a) - lessTold(b),
  );
}

const lessTold = (gap: Gap): number =>
  [gap.face, gap.totalHp, gap.volts].filter((word) => word === notTold).length;

const isMissing = ({ verdict }: Pick<ReportedRequest, "verdict">) =>
  verdict === "none-fits" || verdict === "undecided";

const toldNothing = (shown: ReturnType<typeof shownRequest>) =>
  Object.values(shown).every((word) => word === notTold);

function overruledOf(requests: readonly ReportedRequest[]): readonly Overruled[] {
  const alike = new Map<string, Overruled>();
  for (const { verdict, sku, outcome, outcomeSku, caseId, agreement } of requests.toReversed()) {
    if (agreement !== "overruled" || caseId === null) continue;
    const way = [sku ?? verdict, outcome, outcomeSku].join("|");
    const cases = [...(alike.get(way)?.cases ?? []), caseId];
    alike.set(way, { verdict, sku, outcome, outcomeSku, cases });
  }
  return [...alike.values()].sort((a, b) => b.cases.length - a.cases.length);
}

function waitSummary(waits: readonly Wait[]): WaitSummary {
  const minutes = waits.flatMap((wait) => wait.minutes ?? []);
  return {
    count: waits.length,
    medianMinutes: median(minutes),
    longestMinutes: minutes.length === 0 ? null : Math.max(...minutes),
    notTaken: waits.length - minutes.length,
    byLength: waitLengths.map(
      ({ upToMinutes }, at) =>
        minutes.filter((wait) => wait <= upToMinutes && wait > (waitLengths[at - 1]?.upToMinutes ?? -1))
          .length,
    ),
  };
}
