import type { Wording } from "../conversation/wording.ts";

const MINUTE = 60_000;

/** How long ago `since` was at `at` (ISO instants), the way people say it: `12 min`, `3 h`, `2 days`. */
export function ageInWords(since: string, at: string, wording: Wording): string {
  const minutes = Math.floor((Date.parse(at) - Date.parse(since)) / MINUTE);
  if (minutes < 1) return wording.say("desk", "age.now");
  if (minutes < 60) return wording.say("desk", "age.minutes", { count: minutes });
  const hours = Math.floor(minutes / 60);
  if (hours < 24) return wording.say("desk", "age.hours", { count: hours });
  const days = Math.floor(hours / 24);
  return days === 1 ? wording.say("desk", "age.day") : wording.say("desk", "age.days", { count: days });
}
