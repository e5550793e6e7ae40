import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { ConfigError, readConfig, settingNames } from "../src/config.ts";

const token = "123456:invented-token-of-nobody";

describe("the settings", () => {
  test("without a token are those of the terminal", () => {
    expect(readConfig({}).telegram).toBeNull();
    expect(readConfig({ NAMEPLATE_TELEGRAM_TOKEN: "  " }).telegram).toBeNull();
  });

  test("with a token poll, and know the staff group", () => {
    expect(
      readConfig({ NAMEPLATE_TELEGRAM_TOKEN: token, NAMEPLATE_TELEGRAM_STAFF_GROUP: "-1001234567890" })
        .telegram,
    ).toEqual({ token, staffGroup: -1_001_234_567_890, onCall: null, webhook: null, apiRoot: undefined });
  });

  test("of a webhook need its secret", () => {
    const hook = {
      NAMEPLATE_TELEGRAM_TOKEN: token,
      NAMEPLATE_TELEGRAM_WEBHOOK_URL: "https://desk.example/in",
    };
    expect(() => readConfig(hook)).toThrow(/NAMEPLATE_TELEGRAM_WEBHOOK_SECRET: a webhook needs one/);
    const secret = "sixteen_letters_and_more";
    expect(readConfig({ ...hook, NAMEPLATE_TELEGRAM_WEBHOOK_SECRET: secret }).telegram?.webhook).toEqual({
      url: "https://desk.example/in",
      secret,
      host: "127.0.0.1",
      port: 8443,
    });
  });

  test.each([
    [{ NAMEPLATE_TELEGRAM_TOKEN: "123456 secret-part" }, "NAMEPLATE_TELEGRAM_TOKEN"],
    [{ NAMEPLATE_TELEGRAM_STAFF_GROUP: "12345" }, "NAMEPLATE_TELEGRAM_STAFF_GROUP"],
    [{ NAMEPLATE_TELEGRAM_STAFF_GROUP: "@our_group" }, "NAMEPLATE_TELEGRAM_STAFF_GROUP"],
    [{ NAMEPLATE_TELEGRAM_ON_CALL: "-5" }, "NAMEPLATE_TELEGRAM_ON_CALL"],
    [{ NAMEPLATE_TELEGRAM_WEBHOOK_PORT: "eighty" }, "NAMEPLATE_TELEGRAM_WEBHOOK_PORT"],
    [{ NAMEPLATE_TELEGRAM_WEBHOOK_URL: "desk.example" }, "NAMEPLATE_TELEGRAM_WEBHOOK_URL"],
    [{ NAMEPLATE_LOG_LEVEL: "chatty" }, "NAMEPLATE_LOG_LEVEL"],
  ])("that cannot be used are named, %o, and never shown", (environment, name) => {
    expect(() => readConfig(environment)).toThrow(ConfigError);
    expect(() => readConfig(environment)).toThrow(name);
    const [value = ""] = Object.values(environment);
    expect(() => readConfig(environment)).not.toThrow(value);
  });

  test("are all in the README's table, and no others are", () => {
    const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
    const [, after = ""] = readme.split("\n## Settings\n");
    const [table = ""] = after.split("\n## ");
    const rows = table.split("\n").filter((line) => line.startsWith("| `"));
    const named = rows.flatMap((row) => row.split("|")[1]?.match(/NAMEPLATE_\w+/g) ?? []);
    expect(named.toSorted()).toEqual([...settingNames].toSorted());
  });
});
