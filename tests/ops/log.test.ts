import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openDesk } from "../../src/compose.ts";
import { type Config, readConfig } from "../../src/config.ts";
import { namesWith, openLog, whereabouts } from "../../src/ops/log.ts";
import { talks } from "../channels/telegram/kill/script.ts";
import { openTown, saying, token, topicOf } from "../channels/telegram/town.ts";
import { nameplate } from "../commands/run.ts";

let folder: string;
let config: Config;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "log-"));
  config = { ...readConfig({}), storeFile: join(folder, "desk.sqlite"), logFile: join(folder, "desk.log") };
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** What customers of a recorded evening type, with the number and name of each added. */
const evenings = talks.map((deeds, n) => ({
  thread: `telegram:77001${n}`,
  texts: deeds.flatMap((deed) => (deed.kind === "says" ? [`${deed.text} Zebulon 555-01${n}0`] : [])),
}));

/** Everything that must not be in a log: words of four letters and more, numbers, ids of people. */
function secretsOf(texts: readonly string[]): readonly string[] {
  return [...new Set(texts.flatMap((text) => text.match(/[A-Za-z0-9/.-]{5,}/g) ?? []))];
}

describe("the log of an evening", () => {
  test("tells of every message who by name, how long and what it led to, and never a word, id or secret", async () => {
    const log = await openLog(config, "nowhere");
    const desk = await openDesk(config, { today: "2026-11-24", log });
    let count = 0;
    const texts: string[] = [];
    for (const { thread, texts: said } of evenings) {
      for (const text of said) {
        const id = `telegram:${++count}`;
        const { replies } = await desk.engine.handle({
          id,
          threadId: thread,
          text,
          at: "2026-11-25T04:00:00.000Z",
        });
        texts.push(text, ...replies);
      }
    }
    const by = { id: "telegram:88001", name: "Quillfeather" };
    await desk.engine.staff({
      id: "s1",
      caseId: 1,
      act: { kind: "tell", text: "hello Zebulon" },
      by,
      at: "2026-11-25T04:01:00.000Z",
    });
    const key = await desk.store.upkeep.installationKey();
    await desk.close();

    const written = readFileSync(config.logFile ?? "", "utf8");
    const lines = written
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines.filter(({ msg }) => msg === "message")).toHaveLength(count);
    expect(lines.filter(({ msg }) => msg === "act")).toHaveLength(1);
    expect(lines[0]).toMatchObject({ thread: namesWith(key)("telegram:770010"), ms: expect.any(Number) });
    // Words of the log's own keys and values may be said by people too.
    const own = new Set([
      "message",
      "thread",
      "replies",
      "urgency",
      "waiting",
      "danger",
      "case",
      "none",
      "taken",
    ]);
    const secrets = [
      ...secretsOf(texts),
      "Quillfeather",
      "88001",
      ...evenings.map(({ thread }) => thread),
      key,
    ];
    expect(secrets.length).toBeGreaterThan(100);
    expect(secrets.filter((secret) => !own.has(secret.toLowerCase()) && written.includes(secret))).toEqual(
      [],
    );
    expect(statSync(config.logFile ?? "").mode & 0o077).toBe(0);
  });

  test("on Telegram: neither token nor what people wrote, also when things go wrong", async () => {
    const town = await openTown();
    const ana = town.world.addUser({ first_name: "Zebulonia" });
    ana.says("there is smoke coming out of the Bosporusmotor");
    await town.world.until(() => ana.hears().length > 0);
    await town.world.until(() => town.group.topics().length > 0);
    town.kim.saysInTopic(topicOf(town, 1), "> Quillfeather here, stay away from it");
    await town.world.until(() => ana.hears().some((text) => text.includes("Quillfeather")));
    expect(saying(ana, "Quillfeather")).toBeDefined();
    const written = JSON.stringify(town.log);
    for (const secret of [token, "Zebulonia", "Bosporusmotor", "Quillfeather", String(ana.id)])
      expect(written).not.toContain(secret);
  });

  test("of a mistake: where it happened and whose message, not what was said", async () => {
    const intents = join(folder, "intents");
    cpSync(fileURLToPath(new URL("../../intents", import.meta.url)), intents, { recursive: true });
    const file = join(intents, "answers", "replies.json");
    writeFileSync(file, readFileSync(file, "utf8").replace('"thanks":', '"thankz":'));
    const log = await openLog(config, "nowhere");
    const desk = await openDesk({ ...config, intentsFolder: intents }, { today: "2026-11-24", log });
    const at = "2026-11-25T04:00:00.000Z";
    const item = { id: "telegram:1", threadId: "telegram:88001", text: "thanks, says Zebulon", at };
    const { replies } = await desk.engine.handle(item);
    expect(replies.join()).toMatch(/Something went wrong on my side/);
    await desk.close();
    const written = readFileSync(config.logFile ?? "", "utf8");
    expect(written).toMatch(/"error":"WordingError","where":\["[^"]*src\/conversation\/wording\.ts:\d+/);
    expect(written).not.toMatch(/Zebulon|88001/);
  });

  test("holds no error's own words", () => {
    expect(
      JSON.stringify(whereabouts(new TypeError("said\n    at said (/x/src/said.ts:1:1)\n"))),
    ).not.toContain("said");
  });
});

test("people have the same name in each log of one installation, another one elsewhere", () => {
  // The keyed hash itself: RFC 4231, test case 2 (key "Jefe"), first 48 bits.
  expect(namesWith("Jefe")("what do ya want for nothing?")).toBe("5bdcc146bf60");
  expect(namesWith("a")("telegram:1")).toBe(namesWith("a")("telegram:1"));
  expect(namesWith("a")("telegram:1")).not.toBe(namesWith("b")("telegram:1"));
});

test("the terminal chat writes no log unless one is asked for, and never to the screen", () => {
  const said = "there is smoke coming out of the Bosporusmotor\n";
  const environment = { NAMEPLATE_STORE: config.storeFile, NAMEPLATE_LOG: config.logFile ?? "" };
  const quiet = nameplate(["chat"], said, { NAMEPLATE_STORE: config.storeFile, NAMEPLATE_LOG: "" });
  expect(quiet.stderr).toBe("");
  expect(quiet.stdout).not.toContain('"level"');
  expect(() => statSync(config.logFile ?? "")).toThrow();
  const logged = nameplate(["chat"], said, environment);
  expect(logged.stderr).toBe("");
  expect(logged.stdout).not.toContain('"level"');
  const written = readFileSync(config.logFile ?? "", "utf8");
  expect(written).toContain('"urgency":"danger"');
  expect(written).not.toContain("Bosporusmotor");
});
