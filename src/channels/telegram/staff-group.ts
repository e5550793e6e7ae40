import type { Api } from "grammy";
import type { ChatMember } from "grammy/types";
import type { Store } from "../../store/store.ts";
import type { Clock } from "./clock.ts";
import { failureOf } from "./failures.ts";
import type { Log } from "./log.ts";
import type { Pace } from "./pace.ts";
import { CHANNEL } from "./refs.ts";

interface Parts {
  readonly api: Api;
  readonly store: Pick<Store, "link" | "links" | "unlink">;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: Log;
}

const DESK = { kind: "desk" } as const;

/** The staff's group: where it is now, whether it has topics, and who is in it. */
export class StaffGroup {
  private topics: boolean | undefined;
  private readonly members = new Map<number, { readonly is: boolean; readonly untilMs: number }>();

  private constructor(
    private readonly parts: Parts,
    /** As the operator wrote it. */
    private readonly configured: number,
    private current: number,
  ) {}

  /** The group under the configured id, or where it has moved since. */
  static async find(parts: Parts, configured: number): Promise<StaffGroup> {
    const moved = (await parts.store.links(CHANNEL, DESK)).find(({ kind }) => kind === movedFrom(configured));
    return new StaffGroup(parts, configured, moved === undefined ? configured : Number(moved.theirs));
  }

  get id(): number {
    return this.current;
  }

  /** The group became a supergroup: remembered, so that a restart finds it. */
  async moveTo(id: number): Promise<void> {
    if (id === this.current) return;
    const { store, log } = this.parts;
    await store.link(CHANNEL, { theirs: String(id), lane: DESK, kind: movedFrom(this.configured) });
    log.warn({ from: this.current, to: id }, "the staff group has a new id; put it into the configuration");
    this.current = id;
    this.topics = undefined;
    this.members.clear();
  }

  /** True when each case can have a topic of its own. */
  async hasTopics(): Promise<boolean> {
    if (this.topics === undefined) {
      const chat = await this.parts.api.getChat(this.current);
      this.topics = chat.type === "supergroup" && chat.is_forum === true;
    }
    return this.topics;
  }

  /** Topics were switched off, or the bot may not open any. */
  withoutTopics(): void {
    this.topics = false;
  }

  /** Is this person in the group now? Asked of Telegram, never taken from what a message or a button says. */
  async has(userId: number): Promise<boolean> {
    const { api, clock, pace } = this.parts;
    const nowMs = Date.parse(clock.now());
    const known = this.members.get(userId);
    const leftMs = known === undefined ? 0 : known.untilMs - nowMs;
    // More than can be left means that the clock was set back: asked again, since somebody may have been sent away.
    if (known !== undefined && leftMs > 0 && leftMs <= pace.membershipKept) return known.is;
    const is = await api.getChatMember(this.current, userId).then(isIn, (error: unknown) => {
      // "Not found" is an answer; a broken line is none, and the act waits.
      if (failureOf(error).kind === "refused") return false;
      throw error;
    });
    this.members.set(userId, { is, untilMs: nowMs + pace.membershipKept });
    return is;
  }

  /** Somebody came, went, or was thrown out. */
  changed(userId: number): void {
    this.members.delete(userId);
  }
}

const movedFrom = (id: number): string => `moved-from ${id}`;

/** True for whoever can read and write in the group. */
export function isIn(member: ChatMember): boolean {
  switch (member.status) {
    case "creator":
    case "administrator":
    case "member":
      return true;
    case "restricted":
      return member.is_member;
    default:
      return false;
  }
}
