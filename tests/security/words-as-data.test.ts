import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { z } from "zod";
import { readLine } from "../../src/commands/json-lines.ts";
import { nameplateSchema, siteSchema } from "../../src/nameplate/vocabulary.ts";
import { openFile } from "../../src/store/sqlite/open-file.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import { knowledge } from "../conversation/knowledge.ts";
import { caseLane, customer, evening, kim, LABEL } from "../desk/evening.ts";

let folder: string;
let file: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "words-"));
  file = join(folder, "desk.sqlite");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Attacks on SQL as listed by OWASP ("SQL Injection Prevention Cheat Sheet" and testing guide), from memory. */
const sql = [
  "'; DROP TABLE threads; --",
  '" OR 1=1; DELETE FROM cases; --',
  "x'); UPDATE cases SET state = 'closed'; --",
  "ana' UNION SELECT state FROM threads --",
  "%_\\'\"`;--/**/",
  "ana\u0000'; DROP TABLE inbox; --",
];

describe("words and names of people as SQL", () => {
  test("are kept as they are; every table survives and nobody sees anybody else's", async () => {
    const store = openSqliteStore(file);
    const tables = () => {
      const db = openFile(file, { readonly: true });
      const names = db.prepare("SELECT name, sql FROM sqlite_master ORDER BY name").all();
      const whole = db.pragma("integrity_check", { simple: true });
      db.close();
      return { names, whole };
    };
    const before = tables();
    const shop = evening({ store });
    await shop.says("ana", LABEL);
    for (const attack of sql) {
      await shop.says(attack, `${LABEL} ${attack}`);
      await shop.says(attack, attack, { attachments: [{ kind: "photo", ref: attack }], message: attack });
      const row = await store.latestCase(attack);
      await shop.types({ id: attack, name: attack }, row!.id, `> ${attack}`);
      await shop.types({ id: attack, name: attack }, row!.id, attack);
      await store.link(attack, { theirs: attack, lane: customer(attack), kind: attack });
      const found = (await store.links(attack, customer(attack)))[0];
      expect(found).toMatchObject({ theirs: attack, kind: attack });
      expect((await shop.texts(customer(attack))).length).toBeGreaterThan(0);
      expect(JSON.stringify(await store.upkeep.customerData(attack))).toContain(
        JSON.stringify(attack).slice(1, -1),
      );
      // One of the attacks reads as a wish to be forgotten: then the first of these confirms it.
      await shop.says(attack, "delete my data");
      if (await store.findThread(attack)) await shop.says(attack, "YES");
      expect(await store.findThread(attack)).toBeUndefined();
    }
    expect(shop.troubles).toEqual([]);
    expect(tables()).toEqual(before);
    expect(await store.findThread("ana")).toBeDefined();
    expect((await store.cases()).map(({ threadId, state }) => [threadId, state])).toEqual([
      ["ana", "waiting"],
    ]);
    await store.close();
  });
});

/** Names every object of the language has: a look-up by a customer's word may find them instead of nothing. */
const inherited = [
  "constructor",
  "__proto__",
  "prototype",
  "toString",
  "valueOf",
  "hasOwnProperty",
  "isPrototypeOf",
  "propertyIsEnumerable",
  "toLocaleString",
  "__defineGetter__",
];

describe("names that every object has", () => {
  test.each(inherited)("“%s” as a word reads as nothing", (word) => {
    for (const text of [word, `${word} ${word}`, `hp ${word}`, `my ${word} is broken`, `${word} 1.5`]) {
      const { reading, hazard } = knowledge.understand(text);
      expect(hazard).toBeNull();
      for (const { rating } of reading.readings) expect(rating).toMatch(/^(?:hp|modelNumbers)$/);
    }
    expect(knowledge.understand(word).reading.readings).toEqual([]);
  });

  test("as thread, staff name, button and text go through the whole engine", async () => {
    const shop = evening();
    for (const word of inherited) {
      await shop.says(word, LABEL);
      const row = await shop.store.latestCase(word);
      expect((await shop.types({ id: word, name: word }, row!.id, "/take")).done).toBe(true);
      expect((await shop.types({ id: word, name: word }, row!.id, `/offer ${word} why`)).done).toBe(false);
      expect((await shop.types({ id: word, name: word }, row!.id, `/fix x${word} 1`)).done).toBe(false);
    }
    expect(shop.troubles).toEqual([]);
  });

  test("as keys of a JSON line change no object, and are refused where keys are fixed", () => {
    const own = () => JSON.stringify(Object.getOwnPropertyNames(Object.prototype).sort());
    const before = own();
    const chat = z.object({ thread: z.string(), text: z.string() });
    const match = z.object({ nameplate: nameplateSchema.default({}), site: siteSchema.default({}) });
    const evil = '{"polluted": "yes"}';
    for (const key of ["__proto__", "constructor", "prototype"]) {
      readLine(`{"thread": "a", "text": "b", "${key}": ${evil}}`, chat);
      readLine(`{"thread": "a", "text": "b", "constructor": {"prototype": ${evil}}}`, chat);
      readLine(`{"${key}": ${evil}}`, match);
      expect(readLine(`{"nameplate": {"${key}": ${evil}}}`, match)).toMatchObject({
        error: expect.stringContaining("nameplate"),
      });
    }
    expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
    expect(own()).toBe(before);
  });
});

test("blanks in a customer's words are not filled, for the customer or for staff", async () => {
  const shop = evening();
  const words = "{emergencyNumber} {when} {toString} {serviceFactor} $& $1";
  await shop.says("ana", `I want a person, ${words}`);
  expect((await shop.types(kim, 1, `> ${words}`)).done).toBe(true);
  expect(shop.troubles).toEqual([]);
  expect((await shop.texts(customer("ana"))).join("\n")).toContain(words);
  expect((await shop.texts(caseLane(1))).join("\n")).toContain(words);
});

test("names that are paths open and make no file", async () => {
  const store = openSqliteStore(file);
  const shop = evening({ store });
  for (const path of [
    "../../escaped",
    "/etc/passwd",
    "..\\..\\escaped",
    "file:///etc/passwd",
    "C:\\escaped",
  ]) {
    await shop.says(path, `my model number is ${path}`, {
      attachments: [{ kind: "file", ref: path }],
      message: path,
    });
    await shop.says(path, "I want to talk to a person");
    expect(JSON.stringify(await store.upkeep.customerData(path))).not.toContain("root:");
  }
  expect(shop.troubles).toEqual([]);
  await store.close();
  expect(readdirSync(folder)).toEqual(["desk.sqlite"]);
});
