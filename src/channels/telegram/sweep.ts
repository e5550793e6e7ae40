import { describe, failureOf } from "./failures.ts";
import { CHANNEL, numberIn } from "./refs.ts";
import type { Station } from "./station.ts";

/** Removes from the staff group what stood there of customers who asked to be forgotten. */
export async function sweepErased({ api, store, staff, log }: Station): Promise<void> {
  if (staff === null) return;
  for (const { theirs, kind } of await store.orphans(CHANNEL)) {
    const number = numberIn(theirs, staff.id);
    try {
      if (number !== undefined && kind === "topic") await api.deleteForumTopic(staff.id, number);
      else if (number !== undefined) await api.deleteMessage(staff.id, number);
    } catch (error) {
      // Gone already, or too old for a bot to delete: staff were asked to delete it themselves.
      if (failureOf(error).kind !== "refused") throw error;
      log.warn({ failure: describe(error) }, "something of an erased case could not be deleted");
    }
    await store.unlink(CHANNEL, theirs);
  }
}
