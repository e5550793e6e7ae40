import { DateTime, IANAZone } from "luxon";
import { z } from "zod";
import type { Presence } from "../conversation/presence.ts";

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time like "08:00"');
const shift = z
  .strictObject({ from: clock, to: clock })
  .refine(({ from, to }) => from < to, "a shift must end after it begins");
const shifts = z.array(shift);

const weekdays = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"] as const;

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

/** Further ahead than this no opening is looked for. */
const LOOK_AHEAD_DAYS = 60;

/** Is somebody at the desk at `at` (ISO instant), and if not, when? Daylight saving follows the time zone. */
export function presenceAt(hours: DeskHours, at: string): Presence {
  const now = DateTime.fromISO(at, { zone: hours.timeZone });
  for (let ahead = 0; ahead <= LOOK_AHEAD_DAYS; ahead++) {
    const day = now.startOf("day").plus({ days: ahead });
    for (const { from, to } of shiftsOn(hours, day)) {
      const opens = onClock(day, from);
      if (now >= onClock(day, to)) continue;
      if (now >= opens) return { open: true, promise: inHours(hours.promiseHours) };
      return { open: false, opens: sayOpening(opens, now) };
    }
  }
  return { open: false, opens: "as soon as the desk opens again" };
}

/** The local date at the shop of an instant, ISO `YYYY-MM-DD`. */
export function localDate(hours: DeskHours, at: string): string {
  return DateTime.fromISO(at, { zone: hours.timeZone }).toISODate() ?? at.slice(0, 10);
}

function shiftsOn(hours: DeskHours, day: DateTime): DeskHours["weekly"]["monday"] {
  if (hours.holidays.some(({ date }) => date === day.toISODate())) return [];
  const name = weekdays[day.weekday - 1];
  const found = name ? hours.weekly[name] : [];
  return found.toSorted((a, b) => a.from.localeCompare(b.from));
}

function onClock(day: DateTime, time: string): DateTime {
  const [hour = 0, minute = 0] = time.split(":").map(Number);
  return day.set({ hour, minute });
}

function sayOpening(opens: DateTime, now: DateTime): string {
  const days = Math.round(opens.startOf("day").diff(now.startOf("day"), "days").days);
  const time = opens
    .setLocale("en-US")
    .toFormat(opens.minute === 0 ? "h a" : "h:mm a")
    .toLowerCase();
  if (days === 0) return `today at ${time}`;
  const weekday = opens.setLocale("en-US").toFormat("EEEE");
  if (days === 1) return `tomorrow, ${weekday}, at ${time}`;
  return `on ${days < 7 ? weekday : opens.setLocale("en-US").toFormat("EEEE, MMMM d")} at ${time}`;
}

function inHours(promiseHours: number): string {
  return promiseHours === 1 ? "within an hour" : `within ${promiseHours} hours`;
}
