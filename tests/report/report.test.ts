import { beforeAll, describe, expect, test } from "vitest";
import { csvOf } from "../../src/commands/csv.ts";
import { gather } from "../../src/report/gather.ts";
import { requestColumns, requestRows } from "../../src/report/rows.ts";
import { type ReportData, type Summary, summaryOf } from "../../src/report/summary.ts";
import { reportText } from "../../src/report/text.ts";
import { evening, hours, kim } from "../desk/evening.ts";
import { aMonth } from "./a-month.ts";

const NOW = "2026-11-25T22:00:00.000Z";

describe("a fortnight of a shop", () => {
  let data: ReportData;
  let summary: Summary;
  beforeAll(async () => {
    const { store } = await aMonth("2026-11-16T15:00:00.000Z", 2);
    data = await gather(store, hours, 14, NOW);
    summary = summaryOf(data);
    await store.close();
  });

  test("counts what each request came to", () => {
    expect(summary).toMatchObject({ from: "2026-11-12", to: "2026-11-25", requests: 22 });
    expect(summary.verdicts).toEqual({ "drop-in": 9, "fits-with-work": 3, "none-fits": 6, undecided: 4 });
    // One asked for a person, one told of smoke; the second round had the person only.
    expect(summary.withoutVerdict).toBe(3);
  });

  test("says what the shop should stock, the most wanted first", () => {
    expect(summary.gaps).toEqual([
      { face: "square", totalHp: "3.9", volts: "230", nothingFits: 4, undecided: 0 },
      { face: "round", totalHp: "1.4", volts: "115", nothingFits: 2, undecided: 0 },
      { face: "not told", totalHp: "1.65", volts: "230", nothingFits: 0, undecided: 2 },
    ]);
    expect(summary.nothingTold).toBe(2);
  });

  test("says where the desk overruled the rules, alike ones together", () => {
    expect(
      summary.overruled.map(({ sku, outcome, outcomeSku, cases }) => [
        sku,
        outcome,
        outcomeSku,
        cases.length,
      ]),
    ).toEqual([
      ["NOUGAT-317", "not-stocked", null, 2],
      ["BAKLAVA-498", "sold", "BAKLAVA-851", 2],
      ["STRUDEL-975", "not-stocked", null, 1],
    ]);
  });

  test("counts the customer's messages until the answer", () => {
    expect(Object.fromEntries(summary.messages)).toMatchObject({
      1: expect.any(Number),
      3: expect.any(Number),
    });
    expect([...summary.messages.values()].reduce((sum, times) => sum + times, 0)).toBe(22);
    expect(summary.medianMessages).toBe(1);
  });

  test("is told in words", () => {
    const text = reportText(summary);
    expect(text).toContain("   4  square face, 3.9 total hp, 230 V (4 nothing fitted)");
    expect(text).toMatch(/2 {6}BAKLAVA-498 → sold BAKLAVA-851 \(case \d+, \d+\)/);
    expect(text).toMatch(/came while it was closed: 13\.\d h as a rule/);
  });

  test("has one row a request for a spreadsheet, and no word of a customer", () => {
    const lines = csvOf(requestColumns, requestRows(data)).trimEnd().split("\r\n");
    expect(lines).toHaveLength(23);
    expect(lines[1]).toBe(
      "2026-11-16T15:00:00.000Z,1,square,1.65,230,,1,single,drop-in,BAKLAVA-498,1,sold,BAKLAVA-498,agreed,8",
    );
    expect(lines.join("\n")).not.toMatch(/rust|scratched|hello|r0c/);
  });
});

test("a window leaves out what came before it", async () => {
  const { store } = await aMonth("2026-11-01T15:00:00.000Z", 2, { daysApart: 21 });
  expect((await gather(store, hours, 7, NOW)).requests.length).toBe(10);
  expect((await gather(store, hours, 60, NOW)).requests.length).toBe(22);
});

test("a verdict that changes within a case counts once, with the messages to the first", async () => {
  const shop = evening();
  await shop.says("ana", "1 hp, SF 1.65, 230V, frame 56Y, single phase, 3450 rpm");
  await shop.says("ana", "sorry, it's 3 hp and SF 1.3");
  const { requests } = await gather(shop.store, hours, 30, NOW);
  expect(requests).toMatchObject([{ verdict: "none-fits", messages: 1, askedFor: { totalHp: 3.9 } }]);
});

test("messages are counted anew after a matter was closed", async () => {
  const shop = evening();
  await shop.says("ana", "hello");
  await shop.says("ana", "1 hp, SF 1.65, 230V, frame 56Y, single phase, 3450 rpm");
  await shop.types(kim, 1, "/take");
  await shop.types(kim, 1, "/close sold BAKLAVA-498");
  shop.at("2027-03-01T16:00:00Z");
  await shop.says("ana", "another pump, start over please");
  await shop.says("ana", "1.5 hp, SF 1.1, 230V, frame 56Y, single phase, 3450 rpm");
  const given = await shop.store.verdicts("2026-01-01T00:00:00Z");
  expect(given.map(({ caseId, messages }) => [caseId, messages])).toEqual([
    [1, 2],
    [2, 2],
  ]);
});

test("what was missing stays known after the customer was erased, without the customer", async () => {
  const shop = evening();
  await shop.says("ana", "3 hp, SF 1.3, 230V, frame 56Y, single phase, 3450 rpm");
  await shop.says("ana", "delete my data");
  await shop.says("ana", "yes");
  expect(await shop.store.cases()).toEqual([]);
  const given = await shop.store.verdicts("2026-01-01T00:00:00Z");
  expect(given).toMatchObject([{ caseId: null, verdict: "none-fits" }]);
  const { requests } = await gather(shop.store, hours, 30, NOW);
  expect(requests).toMatchObject([{ outcome: "erased", agreement: "silent" }]);
});
