import { laneKey, laneOfKey } from "../../outgoing.ts";
import type { Link, Store } from "../store.ts";
import type { Db } from "./database.ts";
import type { Write } from "./writes.ts";

interface Row {
  readonly theirs: string;
  readonly lane: string;
  readonly kind: string;
}

const linkOf = ({ theirs, lane, kind }: Row): Link => ({ theirs, lane: laneOfKey(lane), kind });

/** Where things of ours are in the channels. */
export function linksOf(
  db: Db,
  write: Write,
): Pick<Store, "link" | "unlink" | "links" | "linkOf" | "orphans"> {
  const add = db.prepare(
    `INSERT INTO links (channel, theirs, lane, kind) VALUES (?, ?, ?, ?)
     ON CONFLICT (channel, theirs) DO UPDATE SET lane = excluded.lane, kind = excluded.kind`,
  );
  const remove = db.prepare("DELETE FROM links WHERE channel = ? AND theirs = ?");
  const inLane = db.prepare(
    "SELECT theirs, lane, kind FROM links WHERE channel = ? AND lane = ? ORDER BY rowid",
  );
  const find = db.prepare("SELECT theirs, lane, kind FROM links WHERE channel = ? AND theirs = ?");
  const orphans = db.prepare(
    `SELECT theirs, lane, kind FROM links
     WHERE channel = ? AND lane GLOB 'case:*' AND CAST(substr(lane, 6) AS INTEGER) NOT IN (SELECT id FROM cases)
     ORDER BY rowid`,
  );
  return {
    link: async (channel, { theirs, lane, kind }) => {
      await write(() => add.run(channel, theirs, laneKey(lane), kind));
    },
    unlink: async (channel, theirs) => {
      await write(() => remove.run(channel, theirs));
    },
    links: async (channel, lane) => (inLane.all(channel, laneKey(lane)) as Row[]).map(linkOf),
    linkOf: async (channel, theirs) => {
      const row = find.get(channel, theirs) as Row | undefined;
      return row && linkOf(row);
    },
    orphans: async (channel) => (orphans.all(channel) as Row[]).map(linkOf),
  };
}
