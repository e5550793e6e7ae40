import { Resvg } from "@resvg/resvg-js";
import { describe, expect, test } from "vitest";
import { renderPng } from "../../src/pictures/render.ts";
import { reportPicture } from "../../src/report/picture.ts";
import { type ReportData, summaryOf } from "../../src/report/summary.ts";

const nothing: ReportData = {
  from: "2026-10-27",
  to: "2026-11-25",
  requests: [],
  withoutVerdict: 0,
  waits: [],
};

function asking(count: number, totalHp: number): ReportData["requests"] {
  return Array.from({ length: count }, (_, caseId) => ({
    at: "2026-11-24T16:00:00.000Z",
    caseId,
    askedFor: { face: "square" as const, totalHp, volts: [230] },
    verdict: "none-fits" as const,
    sku: null,
    messages: 1,
    outcome: "open" as const,
    outcomeSku: null,
    agreement: "silent" as const,
  }));
}

/** Widths of the bars filled in a colour, from the left of the sheet. */
const barsFilled = (svg: string, fill: string): number[] =>
  Array.from(
    svg.matchAll(new RegExp(`<rect [^>]*width="([\\d.]+)" height="20" fill="${fill}"`, "g")),
    ([, width]) => Number(width),
  );

describe("the report's picture", () => {
  test("draws each bar as long as its count says", () => {
    const requests = [...asking(12, 3.9), ...asking(6, 2.6), ...asking(3, 1.1)];
    const [first = 0, second = 0, third = 0] = barsFilled(
      reportPicture(summaryOf({ ...nothing, requests })).svg,
      "#a8330c",
    );
    expect(first).toBeGreaterThan(100);
    expect(second / first).toBeCloseTo(6 / 12, 2);
    expect(third / first).toBeCloseTo(3 / 12, 2);
  });

  test("says what was missing in words beside the bars", () => {
    const { svg, alt } = reportPicture(summaryOf({ ...nothing, requests: asking(2, 3.9) }));
    expect(svg).toContain("square face, 3.9 total hp, 230 V");
    expect(alt).toContain("2 requests");
  });

  test.each([
    ["with nothing to show", nothing],
    [
      "with many different requests",
      { ...nothing, requests: Array.from({ length: 40 }, (_, at) => asking(1, 1 + at / 10)).flat() },
    ],
  ])("stays on its sheet %s", (_, data) => {
    const picture = reportPicture(summaryOf(data));
    const box = new Resvg(picture.svg).innerBBox();
    expect(box).toBeDefined();
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(picture.width);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(picture.height);
    // The eight bytes every PNG begins with: ISO/IEC 15948, clause 5.2.
    expect([...renderPng(picture, 1000).subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  });
});
