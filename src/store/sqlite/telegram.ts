import type { Outgoing } from "../../outgoing.ts";
import type { KeptUpdate, ParkedUpdate, TelegramStore } from "../telegram.ts";
import type { Db } from "./database.ts";

type AddOutgoing = (message: Outgoing, at: string) => unknown;

/** The Telegram channel's own tables. */
export function telegramOf(db: Db, addOutgoing: AddOutgoing): TelegramStore {
  const keep = db.prepare(
    "INSERT INTO telegram_updates (id, queue, body, at) VALUES (?, ?, ?, ?) ON CONFLICT (id) DO NOTHING",
  );
  const waiting = db.prepare(
    "SELECT id, queue, body, album FROM telegram_updates WHERE state = 'waiting' ORDER BY id",
  );
  const join = db.prepare("UPDATE telegram_updates SET album = ? WHERE id = ?");
  const finish = db.prepare(
    "UPDATE telegram_updates SET state = 'handled', body = '' WHERE id = ? AND state = 'waiting'",
  );
  const park = db.prepare(
    "UPDATE telegram_updates SET state = 'parked', error = ? WHERE id = ? AND state = 'waiting'",
  );
  const parked = db.prepare(
    "SELECT id, queue, error, at FROM telegram_updates WHERE state = 'parked' ORDER BY id",
  );
  const forget = db.prepare("DELETE FROM telegram_updates WHERE state = 'handled' AND at < ?");
  const lanes = db
    .prepare("SELECT lane FROM outbox WHERE state = 'waiting' GROUP BY lane ORDER BY min(id)")
    .pluck();
  const parkMessage = db.prepare(
    "UPDATE outbox SET state = 'parked', error = ? WHERE id = ? AND state = 'waiting'",
  );

  const keepAll = db.transaction((updates: readonly Omit<KeptUpdate, "album">[], at: string) =>
    updates
      .filter(({ id, queue, body }) => keep.run(id, queue, body, at).changes === 1)
      .map((update) => ({ ...update, album: null })),
  );
  const joinAll = db.transaction((ids: readonly number[], first: number) => {
    for (const id of ids) join.run(first, id);
  });
  const finishAll = db.transaction((ids: readonly number[], at: string, outgoing: readonly Outgoing[]) => {
    const fresh = ids.filter((id) => finish.run(id).changes === 1);
    if (fresh.length > 0) for (const message of outgoing) addOutgoing(message, at);
  });
  const parkOne = db.transaction((id: number, error: string, at: string, outgoing: readonly Outgoing[]) => {
    if (park.run(error, id).changes === 1) for (const message of outgoing) addOutgoing(message, at);
  });
  const parkMessages = db.transaction(
    (ids: readonly number[], error: string, at: string, outgoing: readonly Outgoing[]) => {
      const parkedNow = ids.filter((id) => parkMessage.run(error, id).changes === 1);
      if (parkedNow.length > 0) for (const message of outgoing) addOutgoing(message, at);
    },
  );

  return {
    keepUpdates: async (updates, at) => keepAll.immediate(updates, at),
    waitingUpdates: async () => waiting.all() as KeptUpdate[],
    joinAlbum: async (ids, first) => joinAll.immediate(ids, first),
    finishUpdates: async (ids, at, outgoing) => finishAll.immediate(ids, at, outgoing),
    parkUpdate: async (id, error, at, outgoing) => parkOne.immediate(id, error, at, outgoing),
    parkedUpdates: async () => parked.all() as ParkedUpdate[],
    forgetUpdates: async (before) => {
      forget.run(before);
    },
    waitingLanes: async () => lanes.all() as string[],
    parkAndTell: async (ids, error, at, outgoing) => parkMessages.immediate(ids, error, at, outgoing),
  };
}
