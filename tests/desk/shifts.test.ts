import { describe, expect, test } from "vitest";
import { type DeskHours, deskHoursSchema } from "../../src/desk/hours.ts";
import { lastClosing, openHoursBetween, runningShift } from "../../src/desk/shifts.ts";

const always = [{ from: "00:00", to: "06:00" }];
const split = [
  { from: "13:00", to: "17:00" },
  { from: "08:00", to: "12:00" },
];
const hoursOf = (day: DeskHours["weekly"]["monday"], sunday: DeskHours["weekly"]["monday"]): DeskHours =>
  deskHoursSchema.parse({
    timeZone: "America/Chicago",
    weekly: {
      monday: day,
      tuesday: day,
      wednesday: day,
      thursday: day,
      friday: day,
      saturday: [],
      sunday,
    },
    holidays: [{ date: "2026-09-07", name: "Labor Day" }],
    onCall: { phone: "555-0142", hazards: ["shock"] },
    promiseHours: 4,
  });

describe("opening hours between two instants", () => {
  // Clocks go forward at 2 a.m. on the second Sunday of March and back on the first Sunday of November:
  // Energy Policy Act of 2005, section 110 (15 U.S.C. 260a). Midnight to six is five hours, then seven.
  test.each([
    ["an ordinary Sunday", "2026-03-01", 6],
    ["the Sunday clocks go forward", "2026-03-08", 5],
    ["the Sunday clocks go back", "2026-11-01", 7],
  ])("%s", (_, date, expected) => {
    const nights = hoursOf([], always);
    expect(openHoursBetween(nights, `${date}T05:00:00Z`, `${date}T23:00:00Z`)).toBe(expected);
  });

  test("count only what overlaps, over a lunch break and a closed weekend", () => {
    const days = hoursOf(split, []);
    expect(openHoursBetween(days, "2026-11-20T16:30:00-06:00", "2026-11-23T08:30:00-06:00")).toBe(1);
    expect(openHoursBetween(days, "2026-11-24T11:30:00-06:00", "2026-11-24T13:15:00-06:00")).toBe(0.75);
    expect(openHoursBetween(days, "2026-11-24T13:15:00-06:00", "2026-11-24T11:30:00-06:00")).toBe(0);
  });

  // Labor Day is the first Monday of September (5 U.S.C. 6103(a)).
  test("leave out a holiday", () => {
    expect(
      openHoursBetween(hoursOf(split, []), "2026-09-07T00:00:00-05:00", "2026-09-08T00:00:00-05:00"),
    ).toBe(0);
  });
});

describe("the running shift and the last closing", () => {
  const days = hoursOf(split, []);
  test("a shift runs from its opening up to its closing", () => {
    expect(runningShift(days, "2026-11-24T08:00:00-06:00")?.closes.toFormat("HH:mm")).toBe("12:00");
    expect(runningShift(days, "2026-11-24T12:00:00-06:00")).toBeUndefined();
    expect(runningShift(days, "2026-11-24T13:00:00-06:00")?.opens.toFormat("HH:mm")).toBe("13:00");
  });

  test("on Monday morning the desk last closed on Friday", () => {
    expect(lastClosing(days, "2026-11-23T08:00:00-06:00")?.toISO()).toBe("2026-11-20T17:00:00.000-06:00");
  });
});

test("hours with overlapping shifts are refused", () => {
  const overlapping = [
    { from: "08:00", to: "12:00" },
    { from: "11:00", to: "15:00" },
  ];
  expect(() => hoursOf(overlapping, [])).toThrow(/must not overlap/);
});
