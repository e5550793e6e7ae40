import { urgencies } from "../conversation/thread.ts";
import type { Wording } from "../conversation/wording.ts";
import type { Choice, Content } from "../outgoing.ts";
import { ageInWords } from "./age.ts";
import type { DeskCase, Standing } from "./case.ts";
import { choiceIdOf } from "./staff-line.ts";

export type WaitingCase = DeskCase & { readonly standing: Extract<Standing, { state: "waiting" }> };
export type TakenCase = DeskCase & { readonly standing: Extract<Standing, { state: "taken" }> };

/** Longer lists are cut, with their number said: nobody reads on. */
const SHOWN = 20;

/** The cases that wait, most urgent first, then longest waiting. */
export function waitingCases(cases: readonly DeskCase[]): readonly WaitingCase[] {
  return cases.filter(isWaiting).toSorted(byUrgencyThenAge);
}

/** The cases people have, longest first. */
export function takenCases(cases: readonly DeskCase[]): readonly TakenCase[] {
  return cases.filter(isTaken).toSorted((a, b) => instant(a) - instant(b));
}

const isWaiting = (open: DeskCase): open is WaitingCase => open.standing.state === "waiting";
const isTaken = (open: DeskCase): open is TakenCase => open.standing.state === "taken";

const instant = ({ standing }: DeskCase) => Date.parse(standing.since);

function byUrgencyThenAge(a: WaitingCase, b: WaitingCase): number {
  return (
    urgencies.indexOf(a.urgency) - urgencies.indexOf(b.urgency) || instant(a) - instant(b) || a.id - b.id
  );
}

/** What waits and who has what, each waiting case with a choice that takes it. */
export function waitingContent(cases: readonly DeskCase[], at: string, wording: Wording): Content {
  const waiting = waitingCases(cases);
  const taken = takenCases(cases);
  const lines = [
    ...(waiting.length === 0
      ? [wording.say("desk", "list.none")]
      : [wording.say("desk", "list.head", { count: waiting.length }), ...caseLines(waiting, at, wording)]),
    ...(taken.length === 0 ? [] : [wording.say("desk", "list.taken", { count: taken.length })]),
    ...taken.slice(0, SHOWN).map(({ id, standing, headline }) =>
      wording.say("desk", "list.takenLine", {
        id,
        name: standing.by.name,
        age: ageInWords(standing.since, at, wording),
        headline,
      }),
    ),
  ];
  return { text: lines.join("\n"), choices: takeChoices(waiting, wording) };
}

/** One line a case: urgency, age, what it needs, what they have. */
export function caseLines(waiting: readonly WaitingCase[], at: string, wording: Wording): readonly string[] {
  const lines = waiting.slice(0, SHOWN).map(({ id, urgency, reason, standing, headline }) =>
    wording.say("desk", "list.line", {
      id,
      urgency: wording.say("brief", `urgency.${urgency}`),
      age: ageInWords(standing.since, at, wording),
      needs: wording.say("desk", `needs.${reason}`),
      headline,
    }),
  );
  const more = waiting.length - lines.length;
  return more > 0 ? [...lines, wording.say("desk", "list.more", { count: more })] : lines;
}

/** A button a case, in the order of the list. */
export function takeChoices(waiting: readonly WaitingCase[], wording: Wording): readonly Choice[] {
  return waiting.slice(0, SHOWN).map(({ id }) => ({
    id: choiceIdOf(id, { kind: "take" }),
    label: wording.say("desk", "choice.takeCase", { id }),
  }));
}
