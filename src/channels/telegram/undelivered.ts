import { type Content, type Lane, laneKey } from "../../outgoing.ts";
import { chatIdOf } from "./refs.ts";
import type { Station } from "./station.ts";

const SHOWN = 20;

/** What could never be delivered or handled, newest last, for staff. */
export async function undelivered({ store, wording }: Pick<Station, "store" | "wording">): Promise<Content> {
  const messages = await store.parked();
  const updates = await store.telegram.parkedUpdates();
  const lines = [
    ...(await Promise.all(
      messages.map(async ({ lane, createdAt, error }) => ({
        at: createdAt,
        where: await nameOf(store, lane),
        error,
      })),
    )),
    ...updates.map(({ id, at, error }) => ({
      at,
      where: wording.say("telegram", "undelivered.update", { id }),
      error,
    })),
  ].toSorted((a, b) => a.at.localeCompare(b.at));
  if (lines.length === 0) return { text: wording.say("telegram", "undelivered.none") };
  const shown = lines
    .slice(-SHOWN)
    .map(({ at, ...line }) =>
      wording.say("telegram", "undelivered.line", { at: at.slice(0, 16).replace("T", " "), ...line }),
    );
  return {
    text: [wording.say("telegram", "undelivered.head", { count: lines.length }), ...shown].join("\n"),
  };
}

/** A customer is called by their case, where there is one. */
async function nameOf(store: Station["store"], lane: Lane): Promise<string> {
  if (lane.kind !== "customer") return laneKey(lane);
  const row = await store.latestCase(lane.threadId);
  if (row !== undefined) return `customer of case ${row.id}`;
  return chatIdOf(lane.threadId) === undefined ? "customer of another channel" : "customer without a case";
}
