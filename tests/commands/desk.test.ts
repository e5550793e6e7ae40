import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { LABEL } from "../desk/evening.ts";
import { jsonLines, nameplate } from "./run.ts";

describe("a shop whose staff sit at a terminal", () => {
  let folder: string;
  let store: string;
  const run = (args: readonly string[], input = "") => nameplate([...args, "--store", store], input);
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "desk-"));
    store = join(folder, "desk.sqlite");
    run(
      ["chat", "--json"],
      jsonLines({ thread: "ana", text: LABEL.replace("QX-4471", "=QX-4471") }, { thread: "bo", text: LABEL }),
    );
    run(["desk", "--as", "Kim"], "/case 2\n/take\nhe haggles\n/close sold BAKLAVA-498\n");
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test("cases: what waits, with age and need", () => {
    expect(run(["cases"]).stdout).toMatch(
      /^Waiting: 1\nREADY TO CONFIRM · case 1 · .* · confirm the motor before it ships/,
    );
  });

  test("case: standing, brief and history", () => {
    const { stdout } = run(["case", "2"]);
    expect(stdout).toMatch(/^Case 2, closed: sold, BAKLAVA-498 \(Kim\)/);
    expect(stdout).toMatch(/Kim: note: he haggles/);
  });

  test("case: one that there is not is told in words", () => {
    for (const number of ["9", "one", "1; DROP TABLE cases"]) {
      const refused = run(["case", number]);
      expect(refused.status).toBe(1);
      expect(refused.stderr).toMatch(/There is no case/);
      expect(refused.stderr).not.toMatch(/ at /);
    }
  });

  test("numbers: listed, exported and struck", () => {
    expect(run(["numbers"]).stdout).toMatch(/^1 {2}QX-4471 {2}BAKLAVA-498 {2}used {2}2 {2}Kim/);
    expect(run(["numbers", "--csv"]).stdout).toMatch(
      /^id,number,sku,standing,case,by,at,endedBy,endedAt\r\n1,QX-4471,/,
    );
    expect(run(["numbers", "strike", "1", "--as", "Lee"]).stdout).toMatch(/^Struck: QX-4471 → BAKLAVA-498/);
    expect(run(["numbers"]).stdout).toMatch(/struck {2}2 {2}Kim .* Lee /);
    const again = run(["numbers", "strike", "1"]);
    expect([again.status, again.stderr]).toEqual([1, expect.stringMatching(/is struck already/)]);
  });

  test("numbers --came-back: nothing has", () => {
    expect(run(["numbers", "--came-back"]).stdout).toBe("No part has come back as wrong.\n");
  });
});
