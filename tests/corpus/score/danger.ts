import type { Miss, Understand } from "./answer.ts";
import type { DangerMessage } from "./messages.ts";
import { countTags, type Share } from "./tally.ts";

export interface DangerScore {
  readonly messages: number;
  /** Messages that tell of a danger, and how many of them raised any alarm. */
  readonly dangers: Share;
  /** Alarms of the right kind among the dangers that raised one. */
  readonly kinds: Share;
  /** Alarms raised by harmless messages: `right` counts the false alarms, `all` the harmless messages. */
  readonly falseAlarms: Share;
  readonly tags: ReadonlyMap<string, Share>;
  readonly misses: readonly Miss[];
}

/** Looks at every message for danger alone. */
export function scoreDanger(messages: readonly DangerMessage[], understand: Understand): DangerScore {
  const dangers: Share = { right: 0, all: 0 };
  const kinds: Share = { right: 0, all: 0 };
  const falseAlarms: Share = { right: 0, all: 0 };
  const tags = new Map<string, Share>();
  const misses: Miss[] = [];
  for (const { id, text, hazard, tags: words } of messages) {
    const got = understand(text).hazard;
    if (hazard === null) {
      falseAlarms.all += 1;
      if (got !== null) falseAlarms.right += 1;
    } else {
      dangers.all += 1;
      if (got !== null) {
        dangers.right += 1;
        kinds.all += 1;
        if (got === hazard) kinds.right += 1;
      }
    }
    countTags(tags, words, got === hazard);
    if (got !== hazard) misses.push({ id, text, tags: words, differences: [describe(hazard, got)] });
  }
  return { messages: messages.length, dangers, kinds, falseAlarms, tags, misses };
}

function describe(hazard: string | null, got: string | null): string {
  if (hazard === null) return `false alarm: ${got}`;
  return got === null ? `missed: ${hazard}` : `wrong kind: want ${hazard}, got ${got}`;
}
