import { DateTime } from "luxon";
import type { Wording } from "../../conversation/wording.ts";
import type { DeskHours } from "../../desk/hours.ts";
import type { Engine } from "../../engine/types.ts";
import type { Store } from "../../store/store.ts";
import { startTelegram } from "../telegram/adapter.ts";
import type { Log } from "../telegram/log.ts";
import type { Speaker } from "../telegram/stand-in/people/speaker.ts";
import { openStandIn } from "../telegram/stand-in/stand-in.ts";
import type { Doer, Outcome, TryAct } from "./acts.ts";
import type { MovableClock } from "./clock.ts";
import { madeUpPhoto } from "./made-up-photo.ts";
import { type View, viewOf } from "./view.ts";

export interface PlaceParts {
  readonly engine: Engine;
  /** Kept in memory: what is tried leaves nothing behind. */
  readonly store: Store;
  readonly wording: Wording;
  readonly shopName: string;
  readonly hours: DeskHours;
  readonly clock: MovableClock;
  readonly log: Log;
}

/** A shop with people around it, on the same Telegram channel that serves real customers. */
export interface Place {
  readonly view: () => View;
  readonly act: (act: Exclude<TryAct, { do: "afresh" }>) => Promise<Outcome>;
  /** The bytes of a picture by its identifier; undefined when there is none. */
  readonly picture: (file: string) => Promise<Uint8Array | undefined>;
  /** Calls `listener` after every change until the returned function is called. */
  readonly onChange: (listener: () => void) => () => void;
  readonly close: () => Promise<void>;
}

/** Nobody's: the stand-in takes any token of the right form. */
const token = "100000:made-up-token-for-trying";
const names = ["Ada", "Ben", "Cleo", "Dev", "Edda", "Finn"] as const;
const ANSWERED_WITHIN_MS = 8000;

/** Opens the place: one homeowner who has just opened the chat, and two people at the desk. */
export async function openPlace(parts: PlaceParts): Promise<Place> {
  const { clock, store, hours } = parts;
  const world = await openStandIn({ token, now: clock.now, bot: { firstName: "Bot" } });
  const group = world.addStaffGroup();
  const staff = [
    group.has(world.addUser({ first_name: "Kim" }), "creator"),
    group.has(world.addUser({ first_name: "Lee" })),
  ];
  const [first, ...others] = names;
  const homeowners = [world.addUser({ first_name: first })];
  homeowners[0]?.starts();
  const channel = startTelegram({
    ...parts,
    token,
    staffGroup: group.id,
    onCall: null,
    webhook: null,
    apiRoot: world.apiRoot,
    pace: { tickEvery: 2000, albumGap: 150, stopWithin: 1000 },
  });
  channel.ended.catch((error: unknown) => parts.log.error({ error: String(error) }, "the channel has ended"));

  const speakerOf = (as: Doer): Speaker | undefined => {
    if (as.side === "home") return homeowners.find(({ id }) => id === as.person);
    return staff.find(({ user }) => user.id === as.person);
  };
  const whereOf = (as: Doer) => (as.side === "desk" && as.topic !== null ? { topic: as.topic } : {});

  const byPerson = async (act: Extract<TryAct, { as: Doer }>): Promise<Outcome> => {
    const speaker = speakerOf(act.as);
    if (speaker === undefined) return refused("There is nobody of that number here.");
    switch (act.do) {
      case "write":
        speaker.says(act.text, whereOf(act.as));
        return done;
      case "edit":
        speaker.edits({ message_id: act.message }, act.text);
        return done;
      case "photo":
        speaker.sendsPhoto({
          bytes: madeUpPhoto(),
          fileName: "photo.png",
          ...whereOf(act.as),
          ...(act.caption.trim() === "" ? {} : { caption: act.caption }),
        });
        return done;
      case "press": {
        const { answer } = speaker.presses(act.button, { message_id: act.message });
        await world.until(() => answer() !== undefined, { withinMs: ANSWERED_WITHIN_MS });
        return { kind: "done", said: answer()?.text ?? "" };
      }
    }
  };

  return {
    view: () => viewOf({ ...parts, homeowners, staff, group, now: clock.now() }),
    onChange: world.onChange,
    act: async (act) => {
      try {
        switch (act.do) {
          case "clock":
            clock.moveTo(nextTime(act.to, clock.now(), hours.timeZone));
            return done;
          case "another-homeowner": {
            const name = others[homeowners.length - 1];
            if (name === undefined) return refused(`${names.length} homeowners are enough for one evening.`);
            const person = world.addUser({ first_name: name });
            homeowners.push(person);
            person.starts();
            return { kind: "done", person: person.id };
          }
          default:
            return await byPerson(act);
        }
      } catch (error) {
        // The stand-in says what a person could not have done, as pressing a button that is gone.
        return refused(error instanceof Error ? error.message : String(error));
      } finally {
        world.calls.forget();
      }
    },
    picture: async (file) => {
      const root = world.apiRoot;
      const found = await fetch(`${root}/bot${token}/getFile?file_id=${encodeURIComponent(file)}`);
      const told = (await found.json()) as { readonly result?: { readonly file_path?: string } };
      const path = told.result?.file_path;
      if (path === undefined) return undefined;
      const bytes = await fetch(`${root}/file/bot${token}/${path}`);
      return bytes.ok ? new Uint8Array(await bytes.arrayBuffer()) : undefined;
    },
    close: async () => {
      channel.stop();
      await channel.ended.catch(() => {});
      await world.close();
      await store.close();
    },
  };
}

const done: Outcome = { kind: "done" };
const refused = (problem: string): Outcome => ({ kind: "refused", problem });

/** The next instant after `now` at which it is `time` (`07:30`) at the shop. */
export function nextTime(time: string, now: string, timeZone: string): string {
  const [hour, minute] = time.split(":").map(Number);
  const local = DateTime.fromISO(now, { zone: timeZone });
  const today = local.set({ hour: hour ?? 0, minute: minute ?? 0, second: 0, millisecond: 0 });
  return (today > local ? today : today.plus({ days: 1 })).toUTC().toISO() ?? now;
}
