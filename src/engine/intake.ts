import { type Hazard, hazards } from "../nameplate/reading.ts";
import type { InboxItem } from "../store/store.ts";
import { toCustomer } from "./customer.ts";
import { createGate, type Passage } from "./limits.ts";
import { threadOf } from "./state.ts";
import { byThread, cutToKeep, type Items } from "./together.ts";
import type { Engine, EngineParts, Handled } from "./types.ts";

export interface IntakeParts {
  readonly parts: EngineParts;
  /** Answers messages of one thread, all of them at once; stored are they already. */
  readonly work: (items: Items) => Promise<Handled>;
  readonly inTurn: <T>(threadId: string, task: () => Promise<T>) => Promise<T>;
}

export interface Intake extends Pick<Engine, "handle" | "catchUp"> {
  /** Answers what was held back of floods that are over. */
  readonly release: (at: string) => Promise<void>;
}

/**
 * Takes messages in: each is stored first, then answered; in a flood it waits, and what waited is read together. Danger
 * never waits.
 */
export function createIntake({ parts, work, inTurn }: IntakeParts): Intake {
  const { store, wording } = parts;
  const gate = parts.limits && createGate(parts.limits);
  /** Messages somebody waits for: stored perhaps, but nothing a crash has left over. */
  const underWay = new Set<string>();

  const quiet = async (threadId: string): Promise<Handled> => ({
    replies: [],
    thread: threadOf(await store.findThread(threadId)),
    assessment: null,
  });

  const heldOf = async (threadId: string): Promise<Items | undefined> =>
    byThread((await store.unhandled()).filter((item) => item.threadId === threadId))[0];

  const hold = async (item: InboxItem, passage: Passage): Promise<Handled> => {
    const held = await quiet(item.threadId);
    if (isNewDanger(parts, item.text, held.thread.hazard)) return work([item]);
    if (passage === "hold" || held.thread.case.state === "taken") return held;
    const replies = [wording.say("replies", "flood")];
    await store.commit({ at: item.at, outgoing: toCustomer(item.threadId, replies, { kind: "nothing" }) });
    return { ...held, replies };
  };

  const take = async (item: InboxItem): Promise<Handled> => {
    if (!(await store.receive(item))) return quiet(item.threadId);
    const passage = gate?.arrives(item.threadId, item.at) ?? "answer";
    if (passage === "answer") return work([item]);
    if (passage === "together") return work((await heldOf(item.threadId)) ?? [item]);
    return hold(item, passage);
  };

  /** One that fails again must not keep the others, or the start, waiting. */
  const workLeft = (items: Items) => work(items).catch((error: unknown) => parts.onTrouble(items[0], error));

  return {
    handle: async (item) => {
      underWay.add(item.id);
      try {
        return await inTurn(item.threadId, () => take(cutToKeep(item)));
      } finally {
        underWay.delete(item.id);
      }
    },
    catchUp: async () => {
      const stored = (await store.unhandled()).filter(({ id }) => !underWay.has(id));
      const left = byThread(stored).filter(([{ threadId }]) => !gate?.holds(threadId));
      for (const items of left) {
        const flood = gate !== undefined && items.length > gate.perThread;
        for (const group of flood ? [items] : items.map((item): Items => [item]))
          await inTurn(group[0].threadId, () => workLeft(group));
      }
      return left.flat().length;
    },
    release: async (at) => {
      for (const threadId of gate?.release(at) ?? []) {
        await inTurn(threadId, async () => {
          const items = await heldOf(threadId);
          if (items !== undefined) await workLeft(items);
        });
      }
    },
  };
}

/** A danger the thread does not know yet, or a worse one. What cannot be read here is not held back either. */
function isNewDanger({ understand }: EngineParts, text: string, known: Hazard | null): boolean {
  try {
    const { hazard } = understand(text);
    if (hazard === null) return false;
    return known === null || hazards.indexOf(hazard) < hazards.indexOf(known);
  } catch {
    return true;
  }
}
