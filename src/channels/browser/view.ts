import { DateTime } from "luxon";
import type { Wording } from "../../conversation/wording.ts";
import { type DeskHours, presenceAt, sayClock } from "../../desk/hours.ts";
import type { Group } from "../telegram/stand-in/people/group.ts";
import type { Person } from "../telegram/stand-in/people/person.ts";
import type { Seen } from "../telegram/stand-in/people/seen.ts";
import type { Speaker } from "../telegram/stand-in/people/speaker.ts";

/** All a page shows; plain data. */
export interface View {
  readonly clock: {
    /** Time of day at the shop, `21:40`. */
    readonly time: string;
    /** `Tuesday, November 24, 9:40 pm`. */
    readonly words: string;
    readonly desk: string;
  };
  readonly shop: string;
  readonly homeowners: readonly { readonly id: number; readonly name: string; readonly entries: Entries }[];
  readonly staff: readonly { readonly id: number; readonly name: string }[];
  /** What stands beside all cases: digest, alerts, lists. */
  readonly notices: Entries;
  readonly cases: readonly CaseCard[];
}

export interface CaseCard {
  readonly topic: number;
  readonly number: string;
  readonly headline: string;
  readonly state: CaseMark;
  readonly entries: Entries;
}

export interface Entry {
  readonly id: number;
  readonly from: string;
  readonly by: "bot" | "person";
  readonly text: string;
  /** Bold stretches as start and end, in UTF-16 code units. */
  readonly bold: readonly (readonly [number, number])[];
  readonly buttons: readonly string[];
  readonly edited: boolean;
  /** `9:40 pm` at the shop. */
  readonly at: string;
  /** Where its picture is served. */
  readonly picture?: string;
}
type Entries = readonly Entry[];

const marks = ["danger", "taken", "with-bot", "closed", "waiting"] as const;
export type CaseMark = (typeof marks)[number];

export interface ViewParts {
  readonly homeowners: readonly Person[];
  readonly staff: readonly Speaker[];
  readonly group: Group;
  readonly now: string;
  readonly hours: DeskHours;
  readonly shopName: string;
  readonly wording: Wording;
}

/** Everything both sides see at an instant. */
export function viewOf({ homeowners, staff, group, now, hours, shopName, wording }: ViewParts): View {
  const entries = (seen: readonly Seen[]): Entries =>
    seen.filter(({ kind }) => kind !== "service").map((one) => entryOf(one, hours.timeZone));
  const local = DateTime.fromISO(now, { zone: hours.timeZone }).setLocale("en-US");
  const presence = presenceAt(hours, now);
  return {
    clock: {
      time: local.toFormat("HH:mm"),
      words: `${local.toFormat("EEEE, MMMM d")}, ${sayClock(local)}`,
      desk: presence.open ? "The desk is open." : `The desk is closed. It opens ${presence.opens}.`,
    },
    shop: shopName,
    homeowners: homeowners.map((person) => ({
      id: person.id,
      name: person.user.first_name,
      entries: entries(person.sees()),
    })),
    staff: staff.map(({ user }) => ({ id: user.id, name: user.first_name })),
    notices: entries(group.sees("general")),
    cases: group.topics().map(({ threadId, name }) => ({
      topic: threadId,
      ...titleParts(name, wording),
      entries: entries(group.sees(threadId)),
    })),
  };
}

/** A topic's name is the case's number, its mark and its headline. */
function titleParts(name: string, wording: Wording): Omit<CaseCard, "topic" | "entries"> {
  const [, number = "", rest = ""] = /^(\d+) (.*)$/s.exec(name) ?? [];
  const found = marks.find((mark) => rest.startsWith(wording.say("telegram", `mark.${mark}`)));
  const state = found ?? "waiting";
  const headline = found ? rest.slice(wording.say("telegram", `mark.${found}`).length).trim() : rest;
  return { number, headline, state };
}

function entryOf(seen: Seen, timeZone: string): Entry {
  const { message_id, from, byBot, text, entities, buttons, edited, at, file } = seen;
  return {
    id: message_id,
    from,
    by: byBot ? "bot" : "person",
    text,
    bold: entities.flatMap(({ type, offset, length }) =>
      type === "bold" ? [[offset, offset + length] as const] : [],
    ),
    buttons: buttons.flat(),
    edited,
    at: sayClock(DateTime.fromISO(at, { zone: timeZone })),
    ...(file === undefined ? {} : { picture: `/pictures/${file}` }),
  };
}
