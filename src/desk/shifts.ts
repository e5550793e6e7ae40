import { DateTime } from "luxon";
import { type DeskHours, weekdays } from "./hours.ts";

/** One stretch in which somebody is at the desk, in the shop's time zone. */
export interface Shift {
  readonly opens: DateTime;
  readonly closes: DateTime;
}

/** Further than this no opening or closing is looked for. */
const LOOK_DAYS = 60;

const local = (hours: DeskHours, at: string) => DateTime.fromISO(at, { zone: hours.timeZone });

/** The shift that runs at `at` (ISO instant), else the next one; undefined when there is none for weeks. */
export function shiftAt(hours: DeskHours, at: string): Shift | undefined {
  const now = local(hours, at);
  for (let ahead = 0; ahead <= LOOK_DAYS; ahead++) {
    const shift = shiftsOn(hours, now.startOf("day").plus({ days: ahead })).find(
      ({ closes }) => now < closes,
    );
    if (shift) return shift;
  }
  return undefined;
}

/** The shift that runs at `at`; undefined while the desk is closed. */
export function runningShift(hours: DeskHours, at: string): Shift | undefined {
  const shift = shiftAt(hours, at);
  return shift && shift.opens <= local(hours, at) ? shift : undefined;
}

/** When the desk last closed before `at` (an instant in a shift counts from its opening); undefined when not for weeks. */
export function lastClosing(hours: DeskHours, at: string): DateTime | undefined {
  const now = local(hours, at);
  for (let back = 0; back <= LOOK_DAYS; back++) {
    const day = now.startOf("day").minus({ days: back });
    const closed = shiftsOn(hours, day).findLast(({ closes }) => closes <= now);
    if (closed) return closed.closes;
  }
  return undefined;
}

/** Time with somebody at the desk between two ISO instants, in hours; what the promise is counted in. */
export function openHoursBetween(hours: DeskHours, from: string, to: string): number {
  const start = local(hours, from);
  const end = local(hours, to);
  let milliseconds = 0;
  for (let day = start.startOf("day"); day < end; day = day.plus({ days: 1 })) {
    for (const { opens, closes } of shiftsOn(hours, day)) {
      const overlap = Math.min(+closes, +end) - Math.max(+opens, +start);
      if (overlap > 0) milliseconds += overlap;
    }
  }
  return milliseconds / 3_600_000;
}

function shiftsOn(hours: DeskHours, day: DateTime): readonly Shift[] {
  if (hours.holidays.some(({ date }) => date === day.toISODate())) return [];
  const name = weekdays[day.weekday - 1];
  return (name ? hours.weekly[name] : [])
    .toSorted((a, b) => a.from.localeCompare(b.from))
    .map(({ from, to }) => ({ opens: onClock(day, from), closes: onClock(day, to) }));
}

function onClock(day: DateTime, time: string): DateTime {
  const [hour = 0, minute = 0] = time.split(":").map(Number);
  return day.set({ hour, minute });
}
