import type { Outgoing } from "../../outgoing.ts";
import type { KeptUpdate, ParkedUpdate, TelegramStore } from "../telegram.ts";
import type { Db } from "./database.ts";
import type { Write } from "./writes.ts";

type AddOutgoing = (message: Outgoing, at: string) => unknown;

/** The Telegram channel's own tables. */
export function telegramOf(db: Db, write: Write, addOutgoing: AddOutgoing): TelegramStore {
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

  return {
    keepUpdates: (updates, at) =>
      write(() =>
        updates
          .filter(({ id, queue, body }) => keep.run(id, queue, body, at).changes === 1)
          .map((update) => ({ ...update, album: null })),
      ),
    waitingUpdates: async () => waiting.all() as KeptUpdate[],
    joinAlbum: (ids, first) =>
      write(() => {
        for (const id of ids) join.run(first, id);
      }),
    finishUpdates: (ids, at, outgoing) =>
      write(() => {
        const fresh = ids.filter((id) => finish.run(id).changes === 1);
        if (fresh.length > 0) for (const message of outgoing) addOutgoing(message, at);
      }),
    parkUpdate: (id, error, at, outgoing) =>
      write(() => {
        if (park.run(error, id).changes === 1) for (const message of outgoing) addOutgoing(message, at);
      }),
    parkedUpdates: async () => parked.all() as ParkedUpdate[],
    forgetUpdates: async (before) => {
      await write(() => forget.run(before));
    },
    waitingLanes: async () => lanes.all() as string[],
    parkAndTell: (ids, error, at, outgoing) =>
      write(() => {
        const parkedNow = ids.filter((id) => parkMessage.run(error, id).changes === 1);
        if (parkedNow.length > 0) for (const message of outgoing) addOutgoing(message, at);
      }),
  };
}
