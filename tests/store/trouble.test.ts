import { spawnSync } from "node:child_process";
import {
  chmodSync,
  closeSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  statSync,
  truncateSync,
  writeSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Db, openDatabase } from "../../src/store/sqlite/database.ts";
import { openFile } from "../../src/store/sqlite/open-file.ts";
import { inPlainWords, plainly } from "../../src/store/sqlite/trouble.ts";
import { openSqliteStore, storeOn } from "../../src/store/sqlite.ts";
import { type Store, StoreError } from "../../src/store/store.ts";
import { customer, evening } from "../desk/evening.ts";

const at = "2026-11-24T16:00:00.000Z";
const said = (id: string, text = "1 hp, SF 1.65, 230V, 56Y", threadId = "ana") => ({
  id,
  threadId,
  text,
  at,
});

let folder: string;
let file: string;
let db: Db;
let store: Store;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "trouble-"));
  file = join(folder, "desk.sqlite");
  db = openDatabase(file);
  db.pragma("busy_timeout = 50");
  store = inPlainWords(storeOn(db), file);
});
afterEach(() => {
  db.close();
  rmSync(folder, { recursive: true, force: true });
});

const project = fileURLToPath(new URL("../../", import.meta.url));
/** Root writes anything: then another user opens the file, if that user can read the project at all. */
const asUser = process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
const reads = `require("node:fs").accessSync("package.json")`;
const noOtherUser = spawnSync(process.execPath, ["-e", reads], { cwd: project, ...asUser }).status !== 0;

/** What the failed work said; fails when nothing failed. */
async function trouble(work: () => unknown): Promise<StoreError> {
  try {
    await work();
  } catch (error) {
    expect(error).toBeInstanceOf(StoreError);
    expect((error as Error).message).toContain(file);
    return error as StoreError;
  }
  throw new Error("nothing failed");
}

describe("a full disk", () => {
  const fill = () => db.pragma(`max_page_count = ${Number(db.pragma("page_count", { simple: true }))}`);
  const makeRoom = () => db.pragma("max_page_count = 100000");

  test("is told in words, leaves nothing half done, and the message is handled once there is space", async () => {
    const shop = evening({ store });
    await shop.engine.handle(said("u1"));
    fill();
    const long = `frame 56Y ${"x".repeat(9000)}`;
    const { message } = await trouble(() => shop.engine.handle(said("u2", long)));
    expect(message).toMatch(/disk is full.*Free some space/);
    expect((await shop.engine.thread("ana")).lines.filter(({ from }) => from === "customer")).toHaveLength(1);
    makeRoom();
    // The channel confirms nothing that was not stored: the platform sends it again.
    const { replies } = await shop.engine.handle(said("u2", long));
    expect(replies.length).toBeGreaterThan(0);
    expect(db.pragma("integrity_check", { simple: true })).toBe("ok");
  });

  test("between taking a message in and answering it: the message waits and is answered at the next start", async () => {
    const shop = evening({ store });
    // The answer makes a case, a brief and replies: more than the pages that are free.
    await store.receive(said("u1", "there is smoke coming out of my pump motor"));
    fill();
    await trouble(() =>
      store.commit({ at, outgoing: [{ lane: customer("ana"), content: { text: "x".repeat(20000) } }] }),
    );
    await shop.engine.catchUp();
    makeRoom();
    await shop.engine.catchUp();
    expect(await store.unhandled()).toEqual([]);
    expect((await shop.texts(customer("ana"))).length).toBe(1);
    expect(await store.openCases()).toMatchObject([{ urgency: "danger" }]);
  });
});

describe("a file that cannot be written", () => {
  test("is told at each write, and what was stored can still be read", async () => {
    await store.receive(said("u1"));
    db.pragma("query_only = ON");
    const { message } = await trouble(() => store.receive(said("u2")));
    expect(message).toMatch(/can be read but not written.*permission/);
    expect(await store.unhandled()).toHaveLength(1);
  });

  test.skipIf(noOtherUser)("is told at the start, before any customer waits", async () => {
    await store.close();
    // Once neither file nor folder can be written, once the file alone.
    const open = mkdtempSync(join(tmpdir(), "trouble-open-"));
    const files = [file, join(open, "desk.sqlite")];
    copyFileSync(file, join(open, "desk.sqlite"));
    for (const each of files) chmodSync(each, 0o444);
    chmodSync(folder, 0o555);
    chmodSync(open, 0o777);
    try {
      const program = `import { openSqliteStore } from ${JSON.stringify(fileURLToPath(new URL("../../src/store/sqlite.ts", import.meta.url)))};
        for (const file of ${JSON.stringify(files)})
          try { openSqliteStore(file); console.log("opened"); } catch (error) { console.log(error.name + ": " + error.message); }`;
      const { stdout, stderr } = spawnSync(
        process.execPath,
        ["--import", "tsx", "--input-type=module", "-e", program],
        {
          encoding: "utf8",
          cwd: project,
          ...asUser,
        },
      );
      expect(stderr).toBe("");
      expect(stdout.trim().split("\n")).toEqual(
        files.map(() =>
          expect.stringMatching(/^StoreError: .*desk\.sqlite: .*(?:permission|belong to the desk's user)/),
        ),
      );
    } finally {
      chmodSync(folder, 0o755);
      rmSync(open, { recursive: true, force: true });
    }
  });
});

describe("a store another program holds", () => {
  test("is waited for, then told; afterwards the same message is taken", async () => {
    const other = openFile(file);
    other.exec("BEGIN IMMEDIATE");
    const { message } = await trouble(() => store.receive(said("u1")));
    expect(message).toMatch(/another program has held the store.*Nothing was lost/);
    expect(await store.findThread("ana")).toBeUndefined();
    other.exec("ROLLBACK");
    other.close();
    expect(await store.receive(said("u1"))).toBe(true);
  });

  test("for less than the patience is no trouble at all", async () => {
    db.pragma("busy_timeout = 5000");
    const program = `const Database = require("better-sqlite3"); const db = new Database(process.argv[1]);
      db.exec("BEGIN IMMEDIATE"); console.log("held"); Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300); db.exec("ROLLBACK")`;
    const { spawn } = await import("node:child_process");
    const other = spawn(process.execPath, ["-e", program, file], {
      cwd: project,
    });
    await new Promise((resolve) => other.stdout.once("data", resolve));
    const began = performance.now();
    expect(await store.receive(said("u1"))).toBe(true);
    expect(performance.now() - began).toBeGreaterThan(50);
    await new Promise((resolve) => other.once("exit", resolve));
  });
});

describe("a damaged file", () => {
  /** Writes rubbish over the middle of every page but the first two. */
  function damage(): void {
    const pages = statSync(file).size / 4096;
    const handle = openSync(file, "r+");
    for (let page = 2; page < pages; page += 1)
      writeSync(handle, Buffer.alloc(2000, 0xa5), 0, 2000, page * 4096);
    closeSync(handle);
  }

  test("is told in words that lead to doctor and restore", async () => {
    const shop = evening({ store });
    for (let n = 0; n < 20; n += 1) await shop.engine.handle(said(`u${n}`, "hello", `c${n}`));
    await store.close();
    damage();
    const { message } = await trouble(async () => {
      const opened = openSqliteStore(file);
      for (let n = 0; n < 20; n += 1) await opened.findThread(`c${n}`);
    });
    expect(message).toMatch(/damaged.*doctor.*restore/);
  });

  test("cut short, as after a disk that lied, is told too", async () => {
    await store.close();
    copyFileSync(file, `${file}.whole`);
    truncateSync(file, 5000);
    expect((await trouble(() => openSqliteStore(file))).message).toMatch(/damaged/);
  });
});

test("a disk that lets nothing be read or written is told as one", async () => {
  // A folder where the file should be: SQLite's "unable to open", as with a disk that is gone.
  mkdirSync(`${file}.there`);
  const { message } = await trouble(() => openSqliteStore(`${file}.there`));
  expect(message).toMatch(/disk does not let the store be read or written.*\(SQLITE_CANTOPEN/);
  const broken = plainly(Object.assign(new Error("disk I/O error"), { code: "SQLITE_IOERR_WRITE" }), file);
  expect((broken as Error).message).toMatch(/disk does not let/);
});

test("an error of another kind is not dressed up as trouble with the disk", () => {
  const mistake = new TypeError("x is not a function");
  expect(plainly(mistake, file)).toBe(mistake);
  expect(
    plainly(Object.assign(new Error("dup"), { code: "SQLITE_CONSTRAINT_UNIQUE" }), file),
  ).not.toBeInstanceOf(StoreError);
});

describe("two programs on one file", () => {
  test("starting at the same moment on a file that is not there yet: both get it", async () => {
    const fresh = join(folder, "fresh.sqlite");
    const program = `import { openSqliteStore } from ${JSON.stringify(fileURLToPath(new URL("../../src/store/sqlite.ts", import.meta.url)))};
      while (Date.now() < Number(process.argv[1])) {}
      const store = openSqliteStore(process.argv[2]);
      for (let n = 0; n < 20; n++) await store.receive({ id: process.argv[3] + n, threadId: "ana", text: "hi", at: "${at}" });
      await store.close();`;
    const { spawn } = await import("node:child_process");
    const start = String(Date.now() + 900);
    const ends = ["a", "b", "c"].map(
      (name) =>
        new Promise<string>((resolve) => {
          const child = spawn(
            process.execPath,
            ["--import", "tsx", "--input-type=module", "-e", program, start, fresh, name],
            {
              cwd: project,
            },
          );
          let words = "";
          child.stderr.on("data", (data) => {
            words += String(data);
          });
          child.once("exit", (code) => resolve(`${code}${words}`));
        }),
    );
    expect(await Promise.all(ends)).toEqual(["0", "0", "0"]);
    const both = openSqliteStore(fresh);
    expect(await both.unhandled()).toHaveLength(60);
    await both.close();
  });

  test("two desks answering one customer: every message once, none lost", async () => {
    const shops = [evening({ store }), evening({ store: openSqliteStore(file) })] as const;
    await Promise.all(
      Array.from({ length: 12 }, (_, n) => shops[n % 2]?.engine.handle(said(`u${n}`, `message ${n}`))),
    );
    expect(await store.unhandled()).toEqual([]);
    const heard = (await shops[0].engine.thread("ana")).lines.filter(({ from }) => from === "customer");
    expect(new Set(heard.map(({ text }) => text)).size).toBe(heard.length);
    expect(shops.flatMap(({ troubles }) => troubles)).toEqual([]);
    await shops[1].store.close();
  });
});
