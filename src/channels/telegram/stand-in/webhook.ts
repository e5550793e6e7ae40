import type { Update, WebhookInfo } from "grammy/types";
import type { Params } from "./protocol.ts";
import { badRequest } from "./refusal.ts";
import { unixTime, type World } from "./world.ts";

interface Hook {
  readonly url: string;
  readonly secret: string | undefined;
  readonly maxConnections: number;
}

/** Pauses before an update is sent again after the first, second, … failure; the last one repeats. */
const retryAfterMs: readonly number[] = [20, 50, 100, 250, 1000];
const answerWithinMs = 60_000;

/** Delivery of updates to the bot's own address: one at a time for each chat, repeated until it answers 2xx. */
export class Webhook {
  private hook: Hook | undefined;
  private lastError: { readonly date: number; readonly message: string } | undefined;
  private readonly busyChats = new Set<number>();
  private readonly failures = new Map<number, number>();
  private readonly timers = new Set<NodeJS.Timeout>();
  private readonly closing = new AbortController();
  private readonly stopListening: () => void;

  constructor(private readonly world: World) {
    this.stopListening = world.changes.listen(() => this.deliverWaiting());
  }

  get isSet(): boolean {
    return this.hook !== undefined;
  }

  /** Deliveries under way, or waiting for their next attempt. */
  get busy(): number {
    return this.busyChats.size;
  }

  set(params: Params<"setWebhook">): void {
    const { url = "", secret_token, max_connections = 40, allowed_updates, drop_pending_updates } = params;
    if (secret_token !== undefined && !/^[\w-]{1,256}$/.test(secret_token))
      throw badRequest("secret token contains unallowed characters");
    if (url !== "") checkAddress(url);
    this.world.updates.subscribe(allowed_updates);
    if (drop_pending_updates === true) this.world.updates.drop();
    this.hook = url === "" ? undefined : { url, secret: secret_token, maxConnections: max_connections };
    this.lastError = undefined;
    this.failures.clear();
    this.deliverWaiting();
  }

  info(): WebhookInfo {
    const allowed = this.world.updates.allowedUpdates;
    return {
      url: this.hook?.url ?? "",
      has_custom_certificate: false,
      pending_update_count: this.world.updates.pendingCount,
      ...(this.hook === undefined
        ? {}
        : { max_connections: this.hook.maxConnections, ip_address: "127.0.0.1" }),
      ...(this.lastError === undefined
        ? {}
        : { last_error_date: this.lastError.date, last_error_message: this.lastError.message }),
      ...(allowed.length === 0 ? {} : { allowed_updates: [...allowed] }),
    };
  }

  close(): void {
    this.stopListening();
    this.closing.abort();
    for (const timer of this.timers) clearTimeout(timer);
  }

  private deliverWaiting(): void {
    if (this.hook === undefined || this.closing.signal.aborted) return;
    for (const update of this.world.updates.pending) {
      const chat = chatOf(update);
      if (this.busyChats.size >= this.hook.maxConnections) return;
      if (this.busyChats.has(chat)) continue;
      this.busyChats.add(chat);
      void this.deliver(this.hook, update, chat);
    }
  }

  private async deliver(hook: Hook, update: Update, chat: number): Promise<void> {
    const problem = await this.post(hook, update);
    if (this.closing.signal.aborted) return;
    if (problem === undefined) {
      this.failures.delete(update.update_id);
      this.busyChats.delete(chat);
      this.world.updates.confirm(update.update_id);
      return;
    }
    const failed = this.failures.get(update.update_id) ?? 0;
    this.failures.set(update.update_id, failed + 1);
    this.lastError = { date: unixTime(this.world), message: problem };
    const timer = setTimeout(
      () => {
        this.timers.delete(timer);
        this.busyChats.delete(chat);
        this.deliverWaiting();
      },
      retryAfterMs[Math.min(failed, retryAfterMs.length - 1)],
    );
    this.timers.add(timer);
    this.world.changes.tell();
  }

  /** Sends one update; gives what went wrong, or nothing when the bot answered 2xx. */
  private async post(hook: Hook, update: Update): Promise<string | undefined> {
    try {
      const answer = await fetch(hook.url, {
        method: "POST",
        headers: {
          "content-type": "application/json",
          ...(hook.secret === undefined ? {} : { "x-telegram-bot-api-secret-token": hook.secret }),
        },
        body: JSON.stringify(update),
        signal: AbortSignal.any([this.closing.signal, AbortSignal.timeout(answerWithinMs)]),
      });
      await answer.arrayBuffer();
      return answer.ok ? undefined : `Wrong response from the webhook: ${answer.status} ${answer.statusText}`;
    } catch (error) {
      const timedOut = error instanceof Error && error.name === "TimeoutError";
      return timedOut ? "Read timeout expired" : "Connection refused";
    }
  }
}

/** Telegram wants https from the open net; the stand-in speaks to this machine only, and there http will do. */
function checkAddress(url: string): void {
  const parsed = URL.canParse(url) ? new URL(url) : undefined;
  const local = parsed !== undefined && ["127.0.0.1", "localhost", "[::1]"].includes(parsed.hostname);
  if (!local || !/^https?:$/.test(parsed.protocol))
    throw badRequest("bad webhook: the stand-in delivers to addresses of this machine only");
}

/** Updates of one chat are delivered in order; those without a chat follow their sender. */
function chatOf(update: Update): number {
  const shared = update.message ?? update.edited_message ?? update.my_chat_member ?? update.chat_member;
  return shared?.chat.id ?? update.callback_query?.message?.chat.id ?? update.callback_query?.from.id ?? 0;
}
