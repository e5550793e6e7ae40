import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { type CaseReason, urgencies } from "../../src/conversation/thread.ts";
import { eventKinds } from "../../src/desk/case.ts";
import { outcomes } from "../../src/desk/outcomes.ts";
import { helpText } from "../../src/desk/staff-help.ts";
import { knowledge } from "../conversation/knowledge.ts";

const { wording } = knowledge;
const reasons: Record<CaseReason, true> = {
  danger: true,
  "asked-for-person": true,
  "verdict-ready": true,
  "nothing-fits": true,
  "cannot-decide": true,
  "sent-picture": true,
  "wrote-again": true,
  "danger-over": true,
};

test("every reason, outcome, urgency and event has its words", () => {
  const wanted = [
    ...Object.keys(reasons).flatMap((reason) => [`brief/reason.${reason}`, `desk/needs.${reason}`]),
    ...outcomes.map((outcome) => `desk/outcome.${outcome}`),
    ...urgencies.map((urgency) => `brief/urgency.${urgency}`),
    ...eventKinds.map((kind) => `desk/history.${kind}`),
    ...["waiting", "taken", "with-bot", "closed"].map((state) => `desk/state.${state}`),
  ];
  const missing = wanted.filter((path) => {
    const [group = "", key = ""] = path.split("/");
    return !wording.has(group as "desk" | "brief", key);
  });
  expect(missing).toEqual([]);
});

test("the help names every outcome and the relay mark", () => {
  const help = helpText(wording);
  for (const outcome of outcomes) expect(help).toContain(outcome);
  expect(help).toMatch(/starts with > goes to the customer/);
});

// A text nobody says is a text nobody keeps true.
test("no text of the desk is left over", () => {
  const source = (folder: string): string =>
    readdirSync(folder, { withFileTypes: true })
      .map((entry) => {
        const path = `${folder}/${entry.name}`;
        return entry.isDirectory() ? source(path) : readFileSync(path, "utf8");
      })
      .join("\n");
  const code = source(fileURLToPath(new URL("../../src", import.meta.url)));
  const texts = JSON.parse(
    readFileSync(fileURLToPath(new URL("../../intents/answers/desk.json", import.meta.url)), "utf8"),
  ) as Record<string, string>;
  const composed =
    /^(outcome|needs|history|state|verdict|part\.is|part|choice\.part|refused|unclear|answer\.closed|choice)\./;
  const unused = Object.keys(texts).filter((key) => {
    if (code.includes(`"${key}"`)) return false;
    const rest = key.replace(composed, "");
    return (
      rest === key || !(code.includes(`"${rest}"`) || code.includes(`'${rest}'`) || code.includes(`${rest}:`))
    );
  });
  expect(unused).toEqual([]);
});
