import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { jsonLines, nameplate } from "./run.ts";

const folder = mkdtempSync(join(tmpdir(), "chat-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const at = "2026-11-24T23:40:00-06:00";

describe("chat --json", () => {
  const ran = nameplate(
    ["chat", "--json"],
    jsonLines(
      { thread: "ana", text: "1 1/2 horse, sf 1.1, 115/230 v 19.2/9.6 amps, frame 56y", at },
      { thread: "ben", text: "there is smoke coming out of the pump motor", at },
      { thread: "ana", text: "3450", at },
      { thread: "cleo", text: "hello", at },
    ) + `{"thread":"ana"}\n`,
  );

  test("keeps the threads apart and answers in order", () => {
    expect(ran.lines.map(({ thread }) => thread)).toEqual(["ana", "ben", "ana", "cleo", undefined]);
    expect(ran.lines[2]).toMatchObject({
      verdict: { verdict: "drop-in", ask: [] },
      case: { priority: "ready-to-confirm", state: "waiting" },
    });
    expect(ran.lines[3]).toMatchObject({ verdict: null, case: null });
  });

  test("danger is the safety text alone, no verdict, and an urgent case", () => {
    expect(ran.lines[1]).toMatchObject({ verdict: null, case: { priority: "danger", state: "waiting" } });
    expect((ran.lines[1] as { replies: string[] }).replies).toHaveLength(1);
  });

  test("says truthfully when a person will be there", () => {
    expect(JSON.stringify(ran.lines[2])).toContain("tomorrow, Wednesday, at 8 am");
  });

  test("a bad line is an error line and exit status 1", () => {
    expect(ran.lines[4]).toMatchObject({ error: expect.stringMatching(/text/) });
    expect(ran.status).toBe(1);
  });
});

describe("the terminal chat on a pipe", () => {
  const environment = { NAMEPLATE_STORE: join(folder, "desk.sqlite") };
  const first = nameplate(["chat"], "1 1/2 hp sf 1.1 115/230 volts 56y\n", environment);
  const second = nameplate(["chat"], "3450\n", environment);

  test("prints replies and nothing else", () => {
    expect(first.stderr).toBe("");
    expect(first.stdout).toMatch(/^Got it: 1\.5 hp/);
    expect(first.stdout).not.toContain("> ");
    expect(first.status).toBe(0);
  });

  test("a second start remembers the thread", () => {
    expect(second.stdout).toMatch(/drop-in/);
  });

  test("the desk sees the case with its brief", () => {
    expect(nameplate(["cases"], "", environment).stdout).toMatch(/READY TO CONFIRM .* 56Y → BAKLAVA-498/);
    const brief = nameplate(["case", "1"], "", environment).stdout;
    expect(brief).toMatch(/Has: .*56Y/);
    expect(brief).toMatch(/Fits: /);
    expect(brief).toMatch(/NEC 430/);
  });

  test("a store that cannot be opened is told in words", () => {
    const refused = nameplate(["chat", "--store", folder], "hi\n");
    expect(refused.stderr).toContain(folder);
    expect(refused.stderr).toMatch(/--store/);
    expect(refused.stderr).not.toMatch(/\n\s+at /);
    expect(refused.status).toBe(1);
  });
});
