import { DateTime, IANAZone } from "luxon";
import { z } from "zod";
import type { Presence } from "../conversation/presence.ts";
import { shiftAt } from "./shifts.ts";

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time like "08:00"');
const shift = z
  .strictObject({ from: clock, to: clock })
  .refine(({ from, to }) => from < to, "a shift must end after it begins");
const shifts = z.array(shift).refine((day) => {
  const sorted = day.toSorted((a, b) => a.from.localeCompare(b.from));
  return sorted.every(({ from }, index) => index === 0 || (sorted[index - 1]?.to ?? "") <= from);
}, "shifts of one day must not overlap");

export const weekdays = [
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
] as const;

/** `data/desk-hours.json`: when a person is at the desk. */
export const deskHoursSchema = z.strictObject({
  timeZone: z.string().refine((zone) => IANAZone.isValidZone(zone), "an IANA time zone like America/Chicago"),
  weekly: z.strictObject(
    Object.fromEntries(weekdays.map((day) => [day, shifts])) as Record<
      (typeof weekdays)[number],
      typeof shifts
    >,
  ),
  holidays: z.array(z.strictObject({ date: z.iso.date(), name: z.string() })),
  onCall: z.strictObject({
    phone: z.string(),
    hazards: z.array(z.enum(["shock", "fire", "water", "trip"])),
  }),
  promiseHours: z.number().positive(),
});
export type DeskHours = z.infer<typeof deskHoursSchema>;

/** Is somebody at the desk at `at` (ISO instant), and if not, when? Daylight saving follows the time zone. */
export function presenceAt(hours: DeskHours, at: string): Presence {
  const now = DateTime.fromISO(at, { zone: hours.timeZone });
  const shift = shiftAt(hours, at);
  if (shift === undefined) return { open: false, opens: "as soon as the desk opens again" };
  if (shift.opens <= now) return { open: true, promise: inHours(hours.promiseHours) };
  return { open: false, opens: sayOpening(shift.opens, now) };
}

/** The local date at the shop of an instant, ISO `YYYY-MM-DD`. */
export function localDate(hours: DeskHours, at: string): string {
  return DateTime.fromISO(at, { zone: hours.timeZone }).toISODate() ?? at.slice(0, 10);
}

/** A time of day the way people say it: `8 am`, `5:30 pm`. */
export function sayClock(time: DateTime): string {
  return time
    .setLocale("en-US")
    .toFormat(time.minute === 0 ? "h a" : "h:mm a")
    .toLowerCase();
}

function sayOpening(opens: DateTime, now: DateTime): string {
  const days = Math.round(opens.startOf("day").diff(now.startOf("day"), "days").days);
  const time = sayClock(opens);
  if (days === 0) return `today at ${time}`;
  const weekday = opens.setLocale("en-US").toFormat("EEEE");
  if (days === 1) return `tomorrow, ${weekday}, at ${time}`;
  return `on ${days < 7 ? weekday : opens.setLocale("en-US").toFormat("EEEE, MMMM d")} at ${time}`;
}

function inHours(promiseHours: number): string {
  return promiseHours === 1 ? "within an hour" : `within ${promiseHours} hours`;
}
