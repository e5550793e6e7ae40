import type { SentPictures } from "../sent-pictures.ts";
import type { Db } from "./database.ts";
import type { Write } from "./writes.ts";

export function sentPicturesOf(db: Db, write: Write): SentPictures {
  const find = db.prepare("SELECT name FROM sent_pictures WHERE account = ? AND picture = ?").pluck();
  const keep = db.prepare(
    `INSERT INTO sent_pictures (account, picture, name) VALUES (?, ?, ?)
     ON CONFLICT (account, picture) DO UPDATE SET name = excluded.name`,
  );
  return {
    find: async (account, picture) => find.get(account, picture) as string | undefined,
    keep: async (account, picture, name) => {
      await write(() => keep.run(account, picture, name));
    },
  };
}
