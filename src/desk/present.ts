import { DateTime } from "luxon";
import type { Assessment } from "../conversation/assess.ts";
import { createSpeaker, showFacts } from "../conversation/speaker.ts";
import type { Thread } from "../conversation/thread.ts";
import type { Wording } from "../conversation/wording.ts";
import type { RatingName } from "../nameplate/vocabulary.ts";
import { type Choice, type Content, fitsChoice } from "../outgoing.ts";
import type { DeskTurn } from "./acts/act.ts";
import { ageInWords } from "./age.ts";
import { briefOf, cardOf } from "./brief.ts";
import type { CaseEvent, DeskCase } from "./case.ts";
import { partsOfCase, unsettledText } from "./parts.ts";
import { type ButtonAct, choiceIdOf } from "./staff-line.ts";

/** The case with brief and headline as they now are. */
export function presented(
  open: DeskCase,
  thread: Thread,
  assessment: Assessment,
  known: Pick<DeskTurn, "knowledge" | "numbers">,
): DeskCase {
  const best = assessment.match?.motors[0];
  const { wording } = known.knowledge;
  const { unsettled } = partsOfCase(open, assessment, known.knowledge);
  const speaker = createSpeaker(wording, []);
  const nothingKnown = Object.keys(assessment.facts).length === 0;
  return {
    ...open,
    partsAgain: unsettled.map((one) => unsettledText(one, speaker)),
    fits: best === undefined || best.verdict === "undecided" ? null : best.motor.sku,
    headline: headlineOf(assessment, wording),
    brief: briefOf(open, thread, assessment, known),
    // While nothing is known a card would say less than the brief; one that is there is kept up to date.
    card: open.card === "" && nothingKnown ? "" : cardOf(open, thread, assessment, known),
  };
}

/** What makes a motor out, in the order a tradesperson says it. */
const headlineRatings: readonly RatingName[] = [
  "hp",
  "totalHp",
  "volts",
  "frame",
  "modelNumbers",
  "pumpModel",
];

function headlineOf({ facts, match }: Assessment, wording: Wording): string {
  const [first, second] = headlineRatings.filter((rating) => facts[rating] !== undefined);
  if (first === undefined) return wording.say("desk", "headline.none");
  const shown = showFacts(facts, headlineRatings).slice(0, 80);
  const best = match?.motors[0];
  return best !== undefined && best.verdict !== "undecided" && second !== undefined
    ? wording.say("desk", "headline.fits", { facts: shown, sku: best.motor.sku })
    : wording.say("desk", "headline", { facts: shown });
}

/** The brief as staff get it: how the case stands, what is known, and the acts there are now. */
export function briefContent(open: DeskCase, thread: Thread, wording: Wording): Content {
  return {
    text: `${standingLine(open, wording)}\n${open.brief}`,
    choices: choicesNow(open, thread, wording),
    ...(open.card === "" ? {} : { picture: { kind: "brief", text: open.card, urgency: open.urgency } }),
  };
}

/** True when staff should see the brief again: it says something else, or another act is open. */
export function looksDifferent(before: DeskCase | undefined, after: DeskCase): boolean {
  if (before === undefined || before.brief !== after.brief || before.offered !== after.offered) return true;
  return JSON.stringify(before.standing) !== JSON.stringify(after.standing);
}

/** A case as it stands at `at` (ISO instant), with its age and history. */
export function caseContent(
  open: DeskCase,
  thread: Thread,
  events: readonly CaseEvent[],
  at: string,
  { wording, timeZone }: { readonly wording: Wording; readonly timeZone: string },
): Content {
  const age = ageInWords(open.standing.since, at, wording);
  const line = wording.say("desk", "state.age", { line: standingLine(open, wording), age });
  const history = historyText(events, wording, timeZone);
  return {
    text: [line, open.brief, history].filter((text) => text !== "").join("\n\n"),
    choices: choicesNow(open, thread, wording),
  };
}

/** "Case 12 waits": how a case stands, in one line. */
export function standingLine({ id, standing }: DeskCase, wording: Wording): string {
  switch (standing.state) {
    case "waiting":
    case "with-bot":
      return wording.say("desk", `state.${standing.state}`, { id });
    case "taken":
      return wording.say("desk", "state.taken", { id, name: standing.by.name });
    case "closed": {
      const word = wording.say("desk", `outcome.${standing.outcome}`);
      const outcome = standing.sku === null ? word : `${word}, ${standing.sku}`;
      return wording.say("desk", "state.closed", { id, outcome, name: standing.by.name });
    }
  }
}

/** The acts that make sense now, as buttons; each is checked again when it is pressed. */
export function choicesNow(open: DeskCase, thread: Thread, wording: Wording): readonly Choice[] {
  const { id, standing } = open;
  const motor = open.offered ?? open.fits;
  const button = (act: ButtonAct, label: string): Choice => ({ id: choiceIdOf(id, act), label });
  const take = button({ kind: "take" }, wording.say("desk", "choice.take"));
  switch (standing.state) {
    case "waiting":
    case "with-bot":
      return [take];
    case "closed":
      return [button({ kind: "reopen" }, wording.say("desk", "choice.reopen"))];
    case "taken": {
      if (thread.hazard !== null) {
        return [button({ kind: "all-clear" }, wording.say("desk", "choice.allclear"))];
      }
      const ending = (outcome: "not-stocked" | "no-reply") =>
        button(
          { kind: "close", outcome, sku: null },
          wording.say("desk", "choice.close", { outcome: wording.say("desk", `outcome.${outcome}`) }),
        );
      return [
        button({ kind: "hand-back" }, wording.say("desk", "choice.back")),
        button({ kind: "show-parts" }, wording.say("desk", "choice.parts")),
        ...(motor === null
          ? []
          : [button({ kind: "confirm" }, wording.say("desk", "choice.confirm", { sku: motor }))]),
        ...(motor === null
          ? []
          : [
              button(
                { kind: "close", outcome: "sold", sku: motor },
                wording.say("desk", "choice.sold", { sku: motor }),
              ),
            ]),
        ending("not-stocked"),
        ending("no-reply"),
      ].filter((choice) => fitsChoice(choice.id));
    }
  }
}

/** A case's history, one line each, in the shop's time. */
function historyText(events: readonly CaseEvent[], wording: Wording, timeZone: string): string {
  return events
    .map(({ at, by, kind, text }) =>
      wording.say("desk", "history.line", {
        at: DateTime.fromISO(at, { zone: timeZone }).toFormat("yyyy-MM-dd HH:mm"),
        name: by?.name ?? wording.say("desk", "history.bot"),
        what: wording.say("desk", `history.${kind}`, { text }),
      }),
    )
    .join("\n");
}
