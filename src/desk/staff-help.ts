import { urgencies } from "../conversation/thread.ts";
import type { Wording } from "../conversation/wording.ts";
import { outcomes } from "./outcomes.ts";
import type { StaffLine } from "./staff-line.ts";

/** What staff can type. */
export function helpText(wording: Wording): string {
  return wording.say("desk", "help", { outcomes: outcomes.join(", "), urgencies: urgencies.join("|") });
}

/** Why a line was neither sent nor kept. */
export function unclearText(
  { problem, words }: Extract<StaffLine, { kind: "unclear" }>,
  wording: Wording,
): string {
  return wording.say("desk", `unclear.${problem}`, {
    words,
    outcomes: outcomes.join(", "),
    urgencies: urgencies.join(", "),
  });
}
