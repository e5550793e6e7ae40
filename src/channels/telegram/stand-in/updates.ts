import type { Update } from "grammy/types";
import type { Changes } from "./changes.ts";

export type UpdateKind = Exclude<keyof Update, "update_id">;
/** What an update carries besides its number: exactly one of the kinds. */
export type UpdateContent = { [K in UpdateKind]: { readonly [P in K]: NonNullable<Update[K]> } }[UpdateKind];

/** Kinds a bot must ask for by name (Bot API, getUpdates, `allowed_updates`). */
const onlyOnRequest: readonly UpdateKind[] = ["chat_member", "message_reaction", "message_reaction_count"];
/** "Incoming updates are stored on the server until the bot receives them, but not longer than 24 hours." */
const keptForMs = 24 * 60 * 60 * 1000;
const firstUpdateId = 700_000_001;

interface Waiting {
  readonly update: Update;
  readonly createdMs: number;
}

/** Updates the bot has not confirmed yet, oldest first. */
export class UpdateQueue {
  private waiting: Waiting[] = [];
  private nextId = firstUpdateId;
  private allowed: readonly UpdateKind[] = [];

  constructor(
    private readonly nowMs: () => number,
    private readonly changes: Changes,
  ) {}

  get pending(): readonly Update[] {
    this.dropOld();
    return this.waiting.map(({ update }) => update);
  }

  get pendingCount(): number {
    return this.waiting.length;
  }

  /** Kinds the bot subscribed to; empty means the default set. */
  get allowedUpdates(): readonly UpdateKind[] {
    return this.allowed;
  }

  /** Puts an update in the queue, unless the bot did not subscribe to its kind. */
  add(content: UpdateContent): Update | undefined {
    const kind = Object.keys(content)[0] as UpdateKind;
    const wanted = this.allowed.length === 0 ? !onlyOnRequest.includes(kind) : this.allowed.includes(kind);
    if (!wanted) return undefined;
    const update: Update = { update_id: this.nextId, ...content };
    this.nextId += 1;
    this.waiting.push({ update, createdMs: this.nowMs() });
    this.changes.tell();
    return update;
  }

  /** Changes the subscription; `undefined` keeps the earlier one, as Telegram does. */
  subscribe(kinds: readonly UpdateKind[] | undefined): void {
    if (kinds !== undefined) this.allowed = kinds;
  }

  /**
   * The updates from `offset` on. A positive offset confirms everything before it; a negative one keeps only that
   * many of the latest.
   */
  take(offset: number, limit: number): Update[] {
    this.dropOld();
    if (offset > 0) this.keep(this.waiting.filter(({ update }) => update.update_id >= offset));
    if (offset < 0) this.keep(this.waiting.slice(offset));
    return this.waiting.slice(0, limit).map(({ update }) => update);
  }

  /** Forgets one update: a webhook took it. */
  confirm(updateId: number): void {
    this.keep(this.waiting.filter(({ update }) => update.update_id !== updateId));
  }

  /** Forgets everything (`drop_pending_updates`). */
  drop(): void {
    this.keep([]);
  }

  private dropOld(): void {
    const oldest = this.nowMs() - keptForMs;
    if (this.waiting.some(({ createdMs }) => createdMs < oldest))
      this.keep(this.waiting.filter(({ createdMs }) => createdMs >= oldest));
  }

  private keep(kept: Waiting[]): void {
    if (kept.length === this.waiting.length) return;
    this.waiting = kept;
    this.changes.tell();
  }
}
