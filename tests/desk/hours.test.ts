import { describe, expect, test } from "vitest";
import { type DeskHours, deskHoursSchema, localDate, presenceAt } from "../../src/desk/hours.ts";

const weekday = [{ from: "08:00", to: "17:30" }];
const hours: DeskHours = deskHoursSchema.parse({
  timeZone: "America/Chicago",
  weekly: {
    monday: weekday,
    tuesday: weekday,
    wednesday: weekday,
    thursday: weekday,
    friday: weekday,
    saturday: [{ from: "09:00", to: "13:00" }],
    sunday: [],
  },
  holidays: [{ date: "2026-11-26", name: "Thanksgiving Day" }],
  onCall: { phone: "555-0142", hazards: ["shock"] },
  promiseHours: 4,
});

describe("when a person is there", () => {
  test("in opening hours the promise is told", () => {
    expect(presenceAt(hours, "2026-11-24T15:00:00Z")).toEqual({ open: true, promise: "within 4 hours" });
  });

  test("at 23:40 the next morning is named", () => {
    expect(presenceAt(hours, "2026-11-23T23:40:00-06:00")).toEqual({
      open: false,
      opens: "tomorrow, Tuesday, at 8 am",
    });
  });

  test("before opening it is today", () => {
    expect(presenceAt(hours, "2026-11-24T06:10:00-06:00")).toEqual({ open: false, opens: "today at 8 am" });
  });

  test("a holiday is skipped", () => {
    expect(presenceAt(hours, "2026-11-25T20:00:00-06:00")).toEqual({
      open: false,
      opens: "on Friday at 8 am",
    });
  });

  test("Saturday afternoon leads over a closed Sunday", () => {
    expect(presenceAt(hours, "2026-11-28T13:00:00-06:00")).toEqual({
      open: false,
      opens: "on Monday at 8 am",
    });
  });

  // Daylight saving in the United States begins on the second Sunday of March and ends on the first of
  // November: Energy Policy Act of 2005, section 110. 8:00 is 14:00 UTC in winter and 13:00 UTC in summer.
  test.each([
    ["the Monday before clocks go forward", "2026-03-02T14:00:00Z", "2026-03-02T13:59:00Z"],
    ["the Monday after clocks went forward", "2026-03-09T13:00:00Z", "2026-03-09T12:59:00Z"],
    ["the Friday before clocks go back", "2026-10-30T13:00:00Z", "2026-10-30T12:59:00Z"],
    ["the Monday after clocks went back", "2026-11-02T14:00:00Z", "2026-11-02T13:59:00Z"],
  ])("opens at 8 local time on %s", (_, opens, before) => {
    expect(presenceAt(hours, opens).open).toBe(true);
    expect(presenceAt(hours, before).open).toBe(false);
  });

  test("the date of a late message is the shop's, not Greenwich's", () => {
    expect(localDate(hours, "2026-11-25T04:30:00Z")).toBe("2026-11-24");
  });
});

describe("the hours file", () => {
  test.each([
    ["an unknown time zone", { timeZone: "America/Lower_Puddleham" }, "timeZone"],
    [
      "a shift that ends before it begins",
      { weekly: { ...hours.weekly, monday: [{ from: "17:00", to: "08:00" }] } },
      "weekly",
    ],
    ["a time that is none", { weekly: { ...hours.weekly, monday: [{ from: "8", to: "17:00" }] } }, "weekly"],
  ])("refuses %s and names the key", (_, wrong, key) => {
    const checked = deskHoursSchema.safeParse({ ...hours, ...wrong });
    expect(checked.success).toBe(false);
    expect(checked.error?.issues[0]?.path[0]).toBe(key);
  });
});
