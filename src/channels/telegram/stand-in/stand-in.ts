import type { User } from "grammy/types";
import { Calls } from "./calls.ts";
import { Faults } from "./faults.ts";
import { listen } from "./http/server.ts";
import { administrator, type BotRights, member } from "./membership.ts";
import { allMethods } from "./methods/methods.ts";
import { Group } from "./people/group.ts";
import { Person } from "./people/person.ts";
import { Polling } from "./polling.ts";
import { groupRoom } from "./rooms.ts";
import type { Patience, Quietness } from "./waiting.ts";
import { Waiting } from "./waiting.ts";
import { Webhook } from "./webhook.ts";
import { type BotDetails, botUser, emptyWorld, newGroupId, newPerson } from "./world.ts";

export interface StandInOptions {
  /** The bot's token, `<number>:<letters>`. */
  readonly token: string;
  /** The clock: gives the instant as ISO 8601 text. Message dates come from it. */
  readonly now: () => string;
  readonly bot?: BotDetails;
  /** Port on loopback; a free one unless stated. */
  readonly port?: number;
}

export interface GroupDetails {
  readonly title?: string;
  readonly type?: "group" | "supergroup";
  /** Makes the supergroup a forum. */
  readonly topics?: boolean;
  /** The bot's place when the story begins; an administrator has every right that is not taken. */
  readonly bot?: "absent" | "member" | { readonly administrator: BotRights };
}

/**
 * A small Telegram on this machine, with one bot and whoever a script puts around it.
 *
 * Left out on purpose: Telegram's own limits of rate (plan a 429 instead), Markdown (refused), fetching files from
 * URLs (refused), answering a webhook delivery with a method call in the response, reply keyboards (accepted, not
 * kept), channels, business accounts, inline mode, payments and polls. Parameters of sending methods that change
 * nothing a test could see (`disable_notification`, `protect_content`, …) are accepted and ignored.
 */
export interface StandIn {
  /** For `new Bot(token, { client: { apiRoot } })`. */
  readonly apiRoot: string;
  readonly token: string;
  readonly faults: Faults;
  readonly calls: Calls;
  addUser(details?: Partial<Omit<User, "id" | "is_bot">>): Person;
  /** A group; a basic one the bot is not in, unless stated. */
  addGroup(details?: GroupDetails): Group;
  /** A supergroup where the bot is administrator. */
  addStaffGroup(details?: Pick<GroupDetails, "title" | "topics">): Group;
  /** Commands the bot published for everybody, or under another scope (its JSON) and language. */
  commands(scope?: string): readonly { readonly command: string; readonly description: string }[];
  /** Updates the bot has not confirmed. */
  pendingUpdates(): number;
  until(holds: () => boolean, patience?: Patience): Promise<void>;
  quiet(quietness?: Quietness): Promise<void>;
  /** Calls `listener` after every change until the returned function is called. */
  onChange(listener: () => void): () => void;
  /** Cuts every connection at once, long polls included, as a network failure does; new ones are accepted. */
  dropConnections(): void;
  /** Ends every connection and frees the port; closing twice does no harm. */
  close(): Promise<void>;
}

/** Opens a stand-in on loopback. Throws when the token has not the form of one. */
export async function openStandIn(options: StandInOptions): Promise<StandIn> {
  const { token, now, bot = {}, port = 0 } = options;
  if (!/^\d{1,15}:[\w-]+$/.test(token)) throw new Error("A bot token has the form <number>:<letters>.");
  const world = emptyWorld(token, now, bot);
  const faults = new Faults(world.changes);
  const calls = new Calls(world.changes);
  const webhook = new Webhook(world);
  const polling = new Polling(world, () => webhook.isSet);
  const methods = allMethods(world, polling, webhook);
  const served = await listen({ token, methods, faults, calls, files: world.files, now }, port);
  const waiting = new Waiting(world, calls, webhook);

  const addGroup = (details: GroupDetails = {}): Group => {
    const { title = "Neighbours", type = "group", topics = false, bot: place = "absent" } = details;
    const id = newGroupId(world, type);
    const forum = topics ? { is_forum: true as const } : {};
    const room = groupRoom(type === "group" ? { id, type, title } : { id, type, title, ...forum });
    const user = botUser(world);
    if (place === "member") room.members.set(user.id, member(user));
    else if (place !== "absent") room.members.set(user.id, administrator(user, place.administrator));
    world.rooms.set(id, room);
    return new Group(world, room);
  };

  return {
    apiRoot: `http://127.0.0.1:${served.port}`,
    token,
    faults,
    calls,
    addUser: (details = {}) => new Person(world, newPerson(world, { first_name: "Ada", ...details })),
    addGroup,
    addStaffGroup: ({ title = "Desk", topics = true } = {}) =>
      addGroup({ title, topics, type: "supergroup", bot: { administrator: {} } }),
    commands: (scope = '{"type":"default"}') => world.commands.get(scope) ?? [],
    pendingUpdates: () => world.updates.pendingCount,
    until: (holds, patience) => waiting.until(holds, patience),
    quiet: (quietness) => waiting.quiet(quietness),
    onChange: (listener) => world.changes.listen(listener),
    dropConnections: () => served.server.closeAllConnections(),
    close: () =>
      new Promise((resolve, reject) => {
        webhook.close();
        polling.close();
        if (!served.server.listening) return resolve();
        served.server.close((error) => (error === undefined ? resolve() : reject(error)));
        served.server.closeAllConnections();
      }),
  };
}
