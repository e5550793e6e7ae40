import type { Wording } from "../conversation/wording.ts";
import { type Hazard, hazards } from "../nameplate/reading.ts";
import type { Outgoing } from "../outgoing.ts";
import type { DeskCase } from "./case.ts";
import type { DeskHours } from "./hours.ts";
import { choiceIdOf } from "./staff-line.ts";

/** Without a new word for this long, the same danger named again is a new alert. */
const ALERT_AGAIN_MS = 60 * 60_000;

/** True when this danger has to be called out: the first, a worse one, or one named again much later. */
export function needsAlert({ alerted }: DeskCase, hazard: Hazard, at: string): boolean {
  if (alerted === null) return true;
  if (hazards.indexOf(hazard) < hazards.indexOf(alerted.hazard)) return true;
  return Date.parse(at) - Date.parse(alerted.at) >= ALERT_AGAIN_MS;
}

/** A danger called out: to all staff, and at any hour to the person on call where the hazard is theirs. */
export function alertMessages(
  caseId: number,
  hazard: Hazard,
  text: string,
  { onCall }: DeskHours,
  wording: Wording,
): readonly Outgoing[] {
  const content = {
    text,
    choices: [
      {
        id: choiceIdOf(caseId, { kind: "take" }),
        label: wording.say("desk", "choice.takeCase", { id: caseId }),
      },
    ],
  };
  const called = onCall.hazards.includes(hazard);
  return [
    ...(called ? [{ lane: { kind: "on-call" } as const, content }] : []),
    { lane: { kind: "desk" } as const, content },
  ];
}
