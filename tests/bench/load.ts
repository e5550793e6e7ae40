import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startTelegram } from "../../src/channels/telegram/adapter.ts";
import { systemClock } from "../../src/channels/telegram/clock.ts";
import { silentLog } from "../../src/channels/telegram/log.ts";
import { openStandIn } from "../../src/channels/telegram/stand-in/stand-in.ts";
import { type Desk, openDesk } from "../../src/compose.ts";
import { readConfig } from "../../src/config.ts";
import type { Watch } from "../../src/ops/observed.ts";
import { openDatabase } from "../../src/store/sqlite/database.ts";

// A thousand customers at once, memory over an hour, and raw SQLite beside it:
// node --expose-gc --import tsx tests/bench/load.ts [customers] [engine|hour|bot ...]
const [customersWanted = "1000", ...partsWanted] = process.argv.slice(2);
const customers = Number(customersWanted);
const wanted = (part: string) => partsWanted.length === 0 || partsWanted.includes(part);

const folder = mkdtempSync(join(tmpdir(), "load-"));
const say = (line: string) => process.stdout.write(`${line}\n`);
const gc = (globalThis as { gc?: () => void }).gc;
const DAY = "2026-11-24";
const START = Date.parse(`${DAY}T16:00:00.000Z`);

/** What one customer types; each fourth has another talk. */
const scripts: readonly (readonly string[])[] = [
  [
    "hi, my pump is dead",
    "1 hp, SF 1.65, 230V, frame 56Y",
    "single phase, 3450 rpm",
    "what do you have so far?",
  ],
  ["1.5hp 115V 48Y", "sf 1.1", "3450 rpm, single phase", "thanks!"],
  ["there is smoke coming out of the motor", "what now?", "the power is off", "hp 1, 230V, 56Y"],
  ["hello", "I can't read the label", "it says 2 horse I think, 230", "I want to talk to a person"],
];
const scriptOf = (n: number) => scripts[n % scripts.length] ?? [];

function shares(times: readonly number[]): string {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0).toFixed(1);
  return `p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, longest ${at(1)} ms`;
}

/** Counts this process's processor time from now on; a busy machine makes everything slower but that. */
function processor(): (messages: number) => string {
  const before = process.cpuUsage();
  return (messages) => {
    const { user, system } = process.cpuUsage(before);
    return `${((user + system) / 1000 / messages).toFixed(2)} ms of processor each`;
  };
}

const open = (name: string, watches: readonly Watch[] = []): Promise<Desk> =>
  openDesk({ ...readConfig({}), storeFile: join(folder, `${name}.sqlite`) }, { today: DAY, watches });

/** All customers type at once, each the next line when the last is answered; gives messages a second. */
async function throughEngine(atOnce: number): Promise<number> {
  const desk = await open(`engine-${atOnce}`);
  const times: number[] = [];
  const queue = Array.from({ length: customers }, (_, n) => n);
  const used = processor();
  const began = performance.now();
  const talk = async (n: number) => {
    for (const [index, text] of scriptOf(n).entries()) {
      const from = performance.now();
      const at = new Date(START + from).toISOString();
      await desk.engine.handle({ id: `${n}:${index}`, threadId: `c${n}`, text, at });
      times.push(performance.now() - from);
    }
  };
  const workers = Array.from({ length: atOnce }, async () => {
    for (let n = queue.shift(); n !== undefined; n = queue.shift()) await talk(n);
  });
  await Promise.all(workers);
  const rate = (times.length / (performance.now() - began)) * 1000;
  say(
    `engine, ${atOnce} at once: ${times.length} messages, ${rate.toFixed(0)} a second, ${used(times.length)}, ${shares(times)}`,
  );
  await desk.close();
  return rate;
}

/** The same rows as the engine stored, written again by plain statements: two commits a message, as the engine does. */
function rawSqlite(): number {
  const from = openDatabase(join(folder, "engine-16.sqlite"));
  const inbox = from.prepare("SELECT id, thread_id, text, at FROM inbox ORDER BY seq").all() as Record<
    string,
    string
  >[];
  const states = from.prepare("SELECT state FROM threads").pluck().all() as string[];
  const outbox = from.prepare("SELECT lane, content FROM outbox ORDER BY id").all() as {
    lane: string;
    content: string;
  }[];
  const docs = from.prepare("SELECT doc FROM cases").pluck().all() as string[];
  from.close();
  const db = openDatabase(join(folder, "raw.sqlite"));
  const receive = db.prepare("INSERT INTO inbox (id, thread_id, text, at) VALUES (?, ?, ?, ?)");
  const handled = db.prepare("UPDATE inbox SET handled = 1 WHERE id = ?");
  const thread = db.prepare(
    `INSERT INTO threads (id, state, updated_at) VALUES (?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET state = excluded.state, updated_at = excluded.updated_at`,
  );
  const send = db.prepare("INSERT INTO outbox (lane, content, created_at) VALUES (?, ?, ?)");
  const brief = db.prepare(
    `INSERT INTO cases (id, thread_id, state, urgency, doc, opened_at, updated_at) VALUES (?, ?, 'waiting', 'planning', ?, ?, ?)
     ON CONFLICT (id) DO UPDATE SET doc = excluded.doc`,
  );
  const share = outbox.length / inbox.length;
  const used = processor();
  const began = performance.now();
  inbox.forEach(({ id = "", thread_id = "", text = "", at = "" }, n) => {
    db.transaction(() => receive.run(id, thread_id, text, at)).immediate();
    db.transaction(() => {
      handled.run(id);
      thread.run(thread_id, states[n % states.length] ?? "{}", at);
      const doc = docs[n % Math.max(1, docs.length)];
      const number = Number(thread_id.slice(1)) + 1;
      if (doc !== undefined && n % 2 === 0) brief.run(number, thread_id, doc, at, at);
      for (const { lane, content } of outbox.slice(Math.floor(n * share), Math.floor((n + 1) * share)))
        send.run(lane, content, at);
    }).immediate();
  });
  const rate = (inbox.length / (performance.now() - began)) * 1000;
  say(
    `raw SQLite, the same rows: ${inbox.length} messages, ${rate.toFixed(0)} a second, ${used(inbox.length)} (2 commits each, ${share.toFixed(1)} messages out)`,
  );
  db.close();
  return rate;
}

/** An hour of the shop's clock: everybody writes every few minutes, staff tick, what waits is delivered. */
async function anHour(): Promise<void> {
  const desk = await open("hour");
  const heaps: number[] = [];
  const minutes = 60;
  let count = 0;
  for (let minute = 0; minute <= minutes; minute += 1) {
    for (let n = minute % 10; n < customers; n += 10) {
      const script = scriptOf(n);
      const round = Math.floor(minute / 10);
      const text = round < script.length ? (script[round] ?? "") : `is it there yet? ${minute}`;
      const at = new Date(START + minute * 60_000 + n * 50).toISOString();
      await desk.engine.handle({ id: `h${++count}`, threadId: `c${n}`, text, at });
    }
    await desk.engine.tick(new Date(START + minute * 60_000 + 59_000).toISOString());
    for (const { id } of await desk.store.undelivered()) await desk.store.delivered(id);
    if (minute % 10 === 0) {
      gc?.();
      heaps.push(process.memoryUsage().heapUsed / 1e6);
    }
  }
  await desk.close();
  const [, second = 0] = heaps;
  const last = heaps.at(-1) ?? 0;
  say(
    `one hour, ${count} messages of ${customers} customers: heap ${gc ? "after collection " : ""}at each 10 min ${heaps.map((mb) => mb.toFixed(0)).join(", ")} MB; ` +
      `from minute 10 to 60: ${(((last - second) / second) * 100).toFixed(1)} %`,
  );
}

/** How the bot takes it when everybody writes at once, and when they come one after the other, `aSecond` of them. */
async function throughBot(name: string, aSecond: number | "at once"): Promise<void> {
  const token = "424242:invented-token-of-nobody";
  const world = await openStandIn({ token, now: () => new Date().toISOString() });
  const group = world.addStaffGroup({ topics: true });
  const people = Array.from({ length: customers }, (_, n) => world.addUser({ first_name: `C${n}` }));
  const asked = new Map<number, number>();
  const handled: number[] = [];
  const working: number[] = [];
  const watch: Watch = {
    handled: ({ threadId }, ms) => {
      working.push(ms);
      handled.push(performance.now() - (asked.get(Number(threadId.split(":")[1])) ?? Number.NaN));
    },
    acted: () => {},
    failed: () => {},
  };
  const desk = await open(name, [watch]);
  const running = startTelegram({
    token,
    staffGroup: group.id,
    onCall: null,
    webhook: null,
    engine: desk.engine,
    store: desk.store,
    wording: desk.content.wording,
    shopName: desk.shop.name,
    log: silentLog,
    apiRoot: world.apiRoot,
    clock: systemClock,
  });
  let reported = 0;
  const answered = new Map<number, number>();
  world.onChange(() => {
    const { all } = world.calls;
    for (; reported < all.length; reported += 1) {
      const call = all[reported];
      const chat = Number((call?.params as { chat_id?: unknown } | undefined)?.chat_id);
      const since = call?.method === "sendMessage" ? asked.get(chat) : undefined;
      if (since !== undefined && !answered.has(chat)) answered.set(chat, performance.now() - since);
    }
  });
  const began = performance.now();
  const used = processor();
  const sayHello = (n: number) => {
    const person = people[n];
    if (person === undefined) return;
    asked.set(person.id, performance.now());
    person.says(scriptOf(n)[0] ?? "hello");
  };
  for (let n = 0; n < people.length; n += 1) {
    sayHello(n);
    if (aSecond !== "at once")
      while (performance.now() - began < ((n + 1) / aSecond) * 1000)
        await new Promise((resolve) => setTimeout(resolve, 1));
  }
  await world.until(() => answered.size === people.length, { withinMs: 600_000 });
  const seconds = (performance.now() - began) / 1000;
  const pace = aSecond === "at once" ? "all at once" : `${aSecond} a second`;
  say(
    `bot, ${customers} customers, ${pace} (stand-in in the same process): answered in ${seconds.toFixed(1)} s, ` +
      `${(customers / seconds).toFixed(0)} a second, ${used(customers)}`,
  );
  say(`  in the engine ${shares(working)}`);
  say(`  from writing to handled ${shares(handled)}`);
  say(`  from writing to the first reply ${shares([...answered.values()])}`);
  running.stop();
  await running.ended;
  await desk.close();
  await world.close();
}

try {
  if (wanted("engine")) {
    await throughEngine(1);
    const rate = await throughEngine(16);
    await throughEngine(customers);
    const raw = rawSqlite();
    say(`the engine does 1 message while raw SQLite commits ${(raw / rate).toFixed(1)}`);
  }
  if (wanted("hour")) await anHour();
  if (wanted("bot")) {
    await throughBot("burst", "at once");
    await throughBot("stream", 30);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
