import type { Wording } from "../conversation/wording.ts";
import type { Outgoing } from "../outgoing.ts";
import { ageInWords } from "./age.ts";
import { alertMessages } from "./alert.ts";
import type { CaseEvent, DeskCase } from "./case.ts";
import { type DeskHours, sayClock } from "./hours.ts";
import { lastClosing, openHoursBetween, runningShift } from "./shifts.ts";
import { caseLines, takeChoices, takenCases, waitingCases } from "./waiting.ts";

/** Something an instant brings. It is sent once: `key` is stored with the messages. */
export interface Notice {
  readonly key: string;
  /** The case it speaks of; null for the digest. */
  readonly caseId: number | null;
  /** Texts for the customer of that case. */
  readonly toCustomer: readonly string[];
  readonly outgoing: readonly Outgoing[];
  readonly events: readonly CaseEvent[];
}

export interface DueKnowledge {
  readonly hours: DeskHours;
  readonly wording: Wording;
}

type Timer = (at: string, cases: readonly DeskCase[], knowledge: DueKnowledge) => readonly Notice[];

/** Everything that time alone brings, most urgent first. */
const timers: readonly Timer[] = [alertsAgain, digest, lateWords];

/** What `at` (ISO instant) brings for these cases; keys that were sent before are for the caller to leave out. */
export function due(at: string, cases: readonly DeskCase[], knowledge: DueKnowledge): readonly Notice[] {
  return timers.flatMap((timer) => timer(at, cases, knowledge));
}

/** A danger that nobody has taken for this long is called out once more. */
const ALERT_UNANSWERED_MINUTES = 10;

function alertsAgain(at: string, cases: readonly DeskCase[], { hours, wording }: DueKnowledge) {
  return waitingCases(cases).flatMap(({ id, alerted }): readonly Notice[] => {
    if (alerted === null) return [];
    const minutes = (Date.parse(at) - Date.parse(alerted.at)) / 60_000;
    if (minutes < ALERT_UNANSWERED_MINUTES) return [];
    const { hazard } = alerted;
    const age = ageInWords(alerted.at, at, wording);
    const text = wording.say("desk", "alert.again", { hazard, id, age, phone: hours.onCall.phone });
    return [
      {
        key: `alert-again:${id}:${alerted.at}`,
        caseId: id,
        toCustomer: [],
        outgoing: alertMessages(id, hazard, text, hours, wording),
        events: [{ caseId: id, at, by: null, kind: "alerted", text: hazard }],
      },
    ];
  });
}

/** At opening, once a shift: what came in since the desk closed, what waits from before, and who has what. */
function digest(at: string, cases: readonly DeskCase[], { hours, wording }: DueKnowledge): readonly Notice[] {
  const shift = runningShift(hours, at);
  if (!shift) return [];
  const opened = shift.opens.toMillis();
  const closed = lastClosing(hours, shift.opens.toISO() ?? at)?.toMillis() ?? Number.NEGATIVE_INFINITY;
  // A tick that comes late in the shift still tells what stood there at opening, not what came since.
  const waiting = waitingCases(cases).filter(({ standing }) => Date.parse(standing.since) < opened);
  const fresh = waiting.filter(({ standing }) => Date.parse(standing.since) >= closed);
  const before = waiting.filter((open) => !fresh.includes(open));
  if (waiting.length === 0) return [];
  const inHand = takenCases(cases)
    .filter(({ standing }) => Date.parse(standing.since) >= closed && Date.parse(standing.since) < opened)
    .map(({ id, standing }) => `${id} (${standing.by.name})`);
  const lines = [
    wording.say("desk", "digest.head", { count: fresh.length }),
    ...caseLines(fresh, at, wording),
    ...(before.length > 0 ? [wording.say("desk", "digest.before", { count: before.length })] : []),
    ...caseLines(before, at, wording),
    ...(inHand.length > 0 ? [wording.say("desk", "digest.inHand", { cases: inHand.join(", ") })] : []),
  ];
  const content = { text: lines.join("\n"), choices: takeChoices([...fresh, ...before], wording) };
  return [
    {
      key: `digest:${shift.opens.toUTC().toISO()}`,
      caseId: null,
      toCustomer: [],
      outgoing: [{ lane: { kind: "desk" }, content }],
      events: [],
    },
  ];
}

/**
 * A customer who waits longer than promised, in opening hours, gets one honest word, and staff see it. One who
 * has had a word from the person since is not written to again: that person is reminded.
 */
function lateWords(at: string, cases: readonly DeskCase[], { hours, wording }: DueKnowledge) {
  const shift = runningShift(hours, at);
  if (!shift) return [];
  const closes = sayClock(shift.closes);
  return [...waitingCases(cases), ...takenCases(cases)].flatMap((open): readonly Notice[] => {
    const { id, unanswered, standing } = open;
    if (unanswered === null) return [];
    const { since, promised } = unanswered;
    if (openHoursBetween(hours, since, at) <= hours.promiseHours) return [];
    const name = standing.state === "taken" ? standing.by.name : null;
    const age = ageInWords(since, at, wording);
    const told =
      name === null
        ? wording.say("desk", "customer.late", { closes })
        : wording.say("desk", "customer.lateTaken", { closes, name });
    const reminder =
      name === null
        ? wording.say("desk", "case.toldLate")
        : wording.say("desk", promised ? "case.toldLateTaken" : "case.reminder", { name, age });
    return [
      {
        key: `late:${id}:${since}`,
        caseId: id,
        toCustomer: promised ? [told] : [],
        outgoing: [{ lane: { kind: "case", caseId: id }, content: { text: reminder } }],
        events: promised ? [{ caseId: id, at, by: null, kind: "told-late", text: "" }] : [],
      },
    ];
  });
}
