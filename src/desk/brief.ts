import { motorBySku } from "../catalogue/catalogue.ts";
import { plainNumber } from "../catalogue/numbers.ts";
import type { Assessment } from "../conversation/assess.ts";
import type { Knowledge } from "../conversation/knowledge.ts";
import { costOfLabel, costOfMotor, roundUsd, useOf } from "../conversation/money.ts";
import { createSpeaker, showFact, showFacts, terms } from "../conversation/speaker.ts";
import type { Thread } from "../conversation/thread.ts";
import { asOfText, motorName, priceText, stockText } from "../conversation/verdict/motor.ts";
import type { Wording } from "../conversation/wording.ts";
import { motorCircuit } from "../engineering/circuits.ts";
import { labelTotalHp } from "../engineering/power.ts";
import { centsFromUsd } from "../engineering/units.ts";
import { decisiveFinding } from "../matching/explain.ts";
import { judgeMotor } from "../matching/match.ts";
import type { JudgedMotor } from "../matching/types.ts";
import { isRatingName, ratings } from "../nameplate/vocabulary.ts";
import type { DeskTurn } from "./acts/act.ts";
import type { DeskCase } from "./case.ts";
import { editLine, parcelTexts, partsOfCase, unsettledText } from "./parts.ts";

/** A brief is read on a phone: longer ones are cut at a line. */
export const BRIEF_CHARACTERS = 1500;

type BriefedCase = Pick<DeskCase, "urgency" | "reason" | "offered" | "partEdits">;

/** What staff need to pick a thread up cold, one phone screen; with the evidence of any number on record. */
export function briefOf(
  open: BriefedCase,
  thread: Thread,
  assessment: Assessment,
  { knowledge, numbers }: Pick<DeskTurn, "knowledge" | "numbers">,
): string {
  return cut([
    ...matters(open, thread, assessment, { knowledge, numbers }),
    ...lastWords(thread, knowledge.wording),
  ]);
}

/** The brief without the last words: it changes when something is known or decided, not with every message. */
export function cardOf(
  open: BriefedCase,
  thread: Thread,
  assessment: Assessment,
  known: Pick<DeskTurn, "knowledge" | "numbers">,
): string {
  return cut(matters(open, thread, assessment, known));
}

function matters(
  open: BriefedCase,
  thread: Thread,
  assessment: Assessment,
  { knowledge, numbers }: Pick<DeskTurn, "knowledge" | "numbers">,
): readonly string[] {
  const { wording } = knowledge;
  return [
    ...headLines(open, thread, wording),
    ...labelLines(thread, assessment, wording),
    ...motorLines(assessment, knowledge),
    ...(open.offered === null ? [] : [wording.say("brief", "offered", { sku: open.offered })]),
    ...changeLines(open, assessment, knowledge),
    ...moneyLines(assessment, knowledge),
    ...recordLines(assessment, knowledge, numbers),
    ...openLines(assessment, wording),
  ];
}

function headLines(open: BriefedCase, { hazard }: Thread, wording: Wording): readonly string[] {
  const urgency = wording.say("brief", `urgency.${open.urgency}`);
  const reason = wording.say("brief", `reason.${open.reason}`);
  const head = wording.say("brief", "head", { urgency, reason });
  return hazard === null ? [head] : [head, wording.say("brief", "hazard", { hazard })];
}

function labelLines(thread: Thread, assessment: Assessment, wording: Wording): readonly string[] {
  const { facts, doubts, stubborn, contradictions } = assessment;
  const known = showFacts(facts);
  const unreadable = thread.unreadable.map((rating) => ratings[rating].title).join(", ");
  return [
    known === "" ? wording.say("brief", "has.nothing") : wording.say("brief", "has", { facts: known }),
    ...(unreadable === "" ? [] : [wording.say("brief", "unreadable", { ratings: unreadable })]),
    ...doubts.map(({ reason, values }) =>
      wording.say("brief", "doubted", { doubt: wording.say("doubts", reason, values) }),
    ),
    ...stubborn.map(({ reason, values }) =>
      wording.say("brief", "stubborn", { doubt: wording.say("doubts", reason, values) }),
    ),
    ...contradictions.map(({ rating, label, pump }) =>
      wording.say("brief", "contradiction", {
        rating: ratings[rating].title,
        label: showFact(rating, label),
        pump: showFact(rating, pump),
      }),
    ),
  ];
}

function motorLines(assessment: Assessment, knowledge: Knowledge): readonly string[] {
  const { match, nearest } = assessment;
  const { wording } = knowledge;
  const speaker = createSpeaker(wording, terms);
  if (match === null) return [];
  const best = match.motors[0];
  if (!best) {
    const none = wording.say("brief", "fits.none");
    if (nearest === null) return [none];
    const { judged, why } = nearest;
    const reason = speaker.say("reasons", why.reason, why.values);
    return [none, wording.say("brief", "nearest", { motor: motorName(judged.motor), reason })];
  }
  const why = decisiveFinding(best);
  const others = match.motors.slice(1, 3).map(({ motor }) => motor.sku);
  return [
    speaker.say("brief", `fits.${best.verdict}`, {
      motor: motorName(best.motor),
      price: priceText(best.motor, speaker),
      stock: stockText(best.motor, speaker),
    }),
    ...(why ? [speaker.say("brief", "why", { reason: speaker.say("reasons", why.reason, why.values) })] : []),
    ...(others.length > 0 ? [speaker.say("brief", "next", { motors: others.join(", ") })] : []),
  ];
}

/** What the motor takes: what there is to do, what goes into the parcel, and what staff changed of that. */
function changeLines(open: BriefedCase, assessment: Assessment, knowledge: Knowledge): readonly string[] {
  const { wording } = knowledge;
  const speaker = createSpeaker(wording, terms);
  const list = partsOfCase(open, assessment, knowledge);
  // Parts that were told apart by hand stand in the parcel only.
  const edited = new Set(list.ruled.flatMap(({ work, edit }) => (edit ? work : [])));
  const work = list.items
    .filter((item) => !edited.has(item))
    .map(({ key, values, need }) => {
      const text = speaker.say("work", key, values);
      return need === "optional" ? speaker.say("brief", "work.optional", { work: text }) : text;
    });
  const parts = parcelTexts(list, speaker);
  const edits = open.partEdits.map((edit) => editLine(edit, speaker));
  return [
    ...(work.length > 0 ? [speaker.say("brief", "work", { work: work.join("; ") })] : []),
    ...(parts.length > 0 ? [speaker.say("brief", "parts", { parts: parts.join("; ") })] : []),
    ...(edits.length > 0 ? [speaker.say("brief", "partEdits", { edits: edits.join("; ") })] : []),
    ...list.unsettled.map((one) => unsettledText(one, speaker)),
  ];
}

function moneyLines(assessment: Assessment, knowledge: Knowledge): readonly string[] {
  const best = assessment.match?.motors[0];
  if (!best) return [];
  return [
    asOfText(knowledge.catalogue, createSpeaker(knowledge.wording, terms)),
    ...costLine(best, assessment, knowledge),
    ...circuitLine(best, knowledge.wording),
  ];
}

function costLine(
  best: JudgedMotor,
  { nameplate, site }: Assessment,
  { wording, shop }: Knowledge,
): readonly string[] {
  const use = useOf(site, shop);
  const before = costOfLabel(nameplate, use);
  const after = costOfMotor(best.motor, use, labelTotalHp(nameplate));
  if (!before || !after) return [];
  return [
    wording.say("brief", "cost", {
      before: roundUsd(before.usdPerYear),
      after: roundUsd(after.usdPerYear),
      hours: use.hoursPerDay,
      cents: centsFromUsd(use.pricePerKwh),
    }),
  ];
}

/** Figures for the electrician's talk go to staff only, never into a customer's message. */
function circuitLine({ motor: { label } }: JudgedMotor, wording: Wording): readonly string[] {
  const volts = label.volts && Math.max(...label.volts);
  if (label.hp === undefined || volts === undefined || label.phase === undefined) return [];
  const circuit = motorCircuit(label.hp, volts, label.phase);
  if (!circuit) return [];
  return [
    wording.say("brief", "circuit", {
      table: circuit.tableAmps,
      volts,
      wire: circuit.conductorMinAmps,
      breaker: circuit.breakerNextStandardAmps ?? circuit.breakerMaxAmps,
    }),
  ];
}

/** Who put the label's number on record and when, also where the ratings speak against it. */
function recordLines(
  { nameplate, site }: Assessment,
  knowledge: Knowledge,
  numbers: DeskTurn["numbers"],
): readonly string[] {
  const typed = new Set((nameplate.modelNumbers ?? []).map(plainNumber));
  const speaker = createSpeaker(knowledge.wording, terms);
  return numbers
    .filter(({ number }) => typed.has(plainNumber(number)))
    .slice(-RECORDS_SHOWN)
    .flatMap(({ number, sku, by, at, caseId }) => {
      const motor = motorBySku(knowledge.catalogue, sku);
      if (!motor) return [];
      const judged = judgeMotor({ nameplate, site, on: knowledge.on }, motor);
      const against = judged.verdict === "no-fit" ? decisiveFinding(judged) : undefined;
      if (against) {
        const reason = speaker.say("reasons", against.reason, against.values);
        return [speaker.say("brief", "record.contradicted", { number, sku, reason })];
      }
      const evidence = { number, sku, name: by.name, date: at.slice(0, 10) };
      return caseId === null
        ? [speaker.say("brief", "record.erased", evidence)]
        : [speaker.say("brief", "record", { ...evidence, case: caseId })];
    });
}

const RECORDS_SHOWN = 2;

function openLines({ match, ask }: Assessment, wording: Wording): readonly string[] {
  const unsettled = (match?.motors[0]?.findings ?? []).flatMap(({ outcome, needs }) =>
    outcome === "not-known" ? needs : [],
  );
  const names = [...new Set([...ask, ...unsettled])]
    .filter(isRatingName)
    .map((rating) => ratings[rating].title);
  return names.length > 0 ? [wording.say("brief", "open", { ratings: names.join(", ") })] : [];
}

function lastWords({ lines }: Thread, wording: Wording): readonly string[] {
  const last = lines.findLast(({ from }) => from === "customer");
  return last ? [wording.say("brief", "said", { words: oneLine(last.text) })] : [];
}

function oneLine(text: string): string {
  const flat = text.replace(/\s+/g, " ").trim();
  return flat.length > 160 ? `${flat.slice(0, 159)}…` : flat;
}

function cut(lines: readonly string[]): string {
  const kept: string[] = [];
  let length = 0;
  for (const line of lines) {
    length += line.length + 1;
    if (length > BRIEF_CHARACTERS) return [...kept, "…"].join("\n");
    kept.push(line);
  }
  return kept.join("\n");
}
