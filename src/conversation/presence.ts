import type { Speaker } from "./speaker.ts";

/** Whether a person is at the desk, in words ready for a sentence. */
export type Presence =
  | { readonly open: true /** "within 2 hours" */; readonly promise: string }
  | { readonly open: false /** "tomorrow, Thursday, at 8:00 am" */; readonly opens: string };

/** One truthful sentence on when a person is there. */
export function whenSentence(presence: Presence, speaker: Speaker): string {
  return presence.open
    ? speaker.say("replies", "when.open", { promise: presence.promise })
    : speaker.say("replies", "when.closed", { opens: presence.opens });
}
