import { setTimeout as pause } from "node:timers/promises";
import { expect, test } from "vitest";
import { openFile } from "../../src/store/sqlite/open-file.ts";

test("statements dropped by the hundred end no process, whatever the version of Node collects when", async () => {
  const db = openFile(":memory:");
  db.exec("CREATE TABLE motors (sku TEXT) STRICT");
  for (let round = 0; round < 20; round += 1) {
    for (let n = 0; n < 100; n += 1) db.prepare("INSERT INTO motors VALUES (?)").run(`PIE-${n}`);
    await pause(1);
  }
  expect(db.prepare("SELECT count(*) FROM motors").pluck().get()).toBe(2000);
  expect(db.pragma("foreign_keys", { simple: true })).toBe(1);
  db.close();
});
