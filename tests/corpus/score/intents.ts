import type { Miss, Understand } from "./answer.ts";
import type { IntentMessage } from "./messages.ts";
import { countTags, type Share } from "./tally.ts";

export interface IntentScore {
  readonly messages: number;
  /** Messages whose first intent is the one wanted. */
  readonly first: number;
  /** Messages whose first intent is the one wanted or one that the message also carries. */
  readonly firstOrAlso: number;
  /** Intents a message also carries, and how many of them were listed at any place. */
  readonly also: Share;
  readonly intents: ReadonlyMap<string, Share>;
  /** `wanted -> got`, how often. */
  readonly confusions: ReadonlyMap<string, number>;
  readonly tags: ReadonlyMap<string, Share>;
  readonly misses: readonly Miss[];
}

/** Compares what each message is taken to want. */
export function scoreIntents(messages: readonly IntentMessage[], understand: Understand): IntentScore {
  let first = 0;
  let firstOrAlso = 0;
  const also: Share = { right: 0, all: 0 };
  const intents = new Map<string, Share>();
  const confusions = new Map<string, number>();
  const tags = new Map<string, Share>();
  const misses: Miss[] = [];
  for (const message of messages) {
    const listed = understand(message.text).intents;
    const got = listed[0] ?? "nothing";
    const right = got === message.intent;
    if (right) first += 1;
    if (right || message.also.some((name) => name === got)) firstOrAlso += 1;
    also.all += message.also.length;
    also.right += message.also.filter((name) => listed.includes(name)).length;
    countTags(intents, [message.intent], right);
    countTags(tags, message.tags, right);
    if (right) continue;
    const confusion = `${message.intent} -> ${got}`;
    confusions.set(confusion, (confusions.get(confusion) ?? 0) + 1);
    const differences = [
      `want ${[message.intent, ...message.also].join(", also ")}; got ${listed.join(", ") || "nothing"}`,
    ];
    misses.push({ id: message.id, text: message.text, tags: message.tags, differences });
  }
  return { messages: messages.length, first, firstOrAlso, also, intents, confusions, tags, misses };
}
