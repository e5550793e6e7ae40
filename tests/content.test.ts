import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { ContentError, loadContent } from "../src/content.ts";

const intents = fileURLToPath(new URL("../intents", import.meta.url));

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "intents-"));
  cpSync(intents, folder, { recursive: true });
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const change = (file: string, edit: (content: Record<string, unknown>) => unknown) => {
  const path = join(folder, file);
  writeFileSync(
    path,
    JSON.stringify(edit(JSON.parse(readFileSync(path, "utf8")) as Record<string, unknown>)),
  );
};

describe("a bad file under intents/ is told by file and key", () => {
  test.each([
    [
      "an empty text",
      () => change("answers/replies.json", (all) => ({ ...all, hello: "" })),
      "replies.json",
      "hello",
    ],
    [
      "a text that is a number",
      () => change("answers/safety.json", (all) => ({ ...all, shock: 7 })),
      "safety.json",
      "shock",
    ],
    [
      "an unknown intent",
      () => change("said/thanks.json", (all) => ({ ...all, intent: "applause" })),
      "thanks.json",
      "intent",
    ],
    [
      "too few examples",
      () => change("said/thanks.json", (all) => ({ ...all, examples: ["ta"] })),
      "thanks.json",
      "examples",
    ],
    [
      "an unknown key",
      () => change("said/thanks.json", (all) => ({ ...all, colour: "red" })),
      "thanks.json",
      "(top level)",
    ],
  ])("%s", (_, spoil, file, key) => {
    spoil();
    expect(() => loadContent(folder)).toThrow(ContentError);
    expect(() => loadContent(folder)).toThrow(file);
    expect(() => loadContent(folder)).toThrow(`key "${key}`);
  });

  test("broken JSON", () => {
    writeFileSync(join(folder, "answers/work.json"), "{ oops");
    expect(() => loadContent(folder)).toThrow(/work\.json: not valid JSON/);
  });

  test("a missing file", () => {
    rmSync(join(folder, "answers/cautions.json"));
    expect(() => loadContent(folder)).toThrow(/cautions\.json: this file cannot be read/);
  });
});
