import { caseContent } from "./desk/present.ts";
import { waitingContent } from "./desk/waiting.ts";
import { afterMistake, answerCustomer, type Found } from "./engine/customer.ts";
import { createIntake } from "./engine/intake.ts";
import { knowing } from "./engine/knowledge.ts";
import { oneByOne } from "./engine/one-by-one.ts";
import { sweeper } from "./engine/retention.ts";
import { actOnCase } from "./engine/staff.ts";
import { caseOf, eventOf, threadOf } from "./engine/state.ts";
import { bringOnTime } from "./engine/time.ts";
import { asOne, type Items } from "./engine/together.ts";
import type { Engine, EngineParts, Handled, StaffAnswer, StaffItem } from "./engine/types.ts";
import type { InboxItem } from "./store/store.ts";

export type { Engine, EngineParts, Handled, StaffAnswer, StaffItem } from "./engine/types.ts";

/** Another process may change the same thread; deciding again is safe, because deciding changes nothing. */
const TRIES = 8;

/** One message, one transaction: thread, case and messages are committed together. */
export function createEngine(parts: EngineParts): Engine {
  const { store, wording } = parts;
  const know = knowing(parts);
  const inTurn = oneByOne();

  const find = async (item: InboxItem): Promise<Found> => {
    const stored = await store.findThread(item.threadId);
    const last = await store.latestCase(item.threadId);
    return {
      item,
      thread: threadOf(stored),
      version: stored?.version ?? 0,
      last: last && caseOf(last),
      known: await know(item.at),
      newId: store.newCaseId,
    };
  };

  const work = async (items: Items): Promise<Handled> => {
    const item = asOne(items);
    const handledToo = items.slice(0, -1).map(({ id }) => id);
    for (let left = TRIES; left > 0; left--) {
      const found = await find(item);
      const { change, handled } = await answerCustomer(parts, found).catch((error: unknown) => {
        parts.onTrouble(item, error);
        return afterMistake(parts, found);
      });
      const committed = await store.commit({ ...change, handledToo });
      if (committed === "done") return handled;
      if (committed === "seen") return { replies: [], thread: found.thread, assessment: null };
    }
    throw new Error(
      `Message ${item.id} kept being overtaken by others; it is tried again at the next start.`,
    );
  };
  const intake = createIntake({ parts, work, inTurn });
  const sweep = sweeper(parts, inTurn);

  const act = async (item: StaffItem): Promise<StaffAnswer> => {
    const before = await store.actAnswer(item.id);
    if (before) return before;
    for (let left = TRIES; left > 0; left--) {
      const row = await store.findCase(item.caseId);
      if (!row) return refused("noCase", { id: item.caseId });
      const { change, answer } = await actOnCase(parts, item, row, await know(item.at));
      const committed = await store.commit(change);
      if (committed === "done") return answer;
      if (committed === "seen") return (await store.actAnswer(item.id)) ?? answer;
    }
    return refused("again");
  };
  const refused = (key: string, values = {}): StaffAnswer => ({
    done: false,
    answer: wording.say("desk", `refused.${key}`, values),
  });

  return {
    thread: async (id) => threadOf(await store.findThread(id)),
    handle: intake.handle,
    catchUp: intake.catchUp,
    staff: async (item) => {
      const row = await store.findCase(item.caseId);
      if (!row) return refused("noCase", { id: item.caseId });
      return inTurn(row.threadId, () => act(item)).catch((error: unknown) => {
        parts.onTrouble({ id: item.id, threadId: row.threadId }, error);
        return refused("mistake");
      });
    },
    tick: async (at) => {
      await intake.release(at);
      const sent = await bringOnTime(parts, at, inTurn);
      await sweep(at);
      return sent;
    },
    waiting: async (at) => waitingContent((await store.openCases()).map(caseOf), at, wording),
    show: async (caseId, at) => {
      const row = await store.findCase(caseId);
      if (!row) return undefined;
      const thread = threadOf(await store.findThread(row.threadId));
      const events = (await store.events(caseId)).map(eventOf);
      return caseContent(caseOf(row), thread, events, at, {
        wording,
        timeZone: parts.hours.timeZone,
      });
    },
  };
}
