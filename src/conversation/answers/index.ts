import { ratings } from "../../nameplate/vocabulary.ts";
import { toDesk } from "../cases.ts";
import type { IntentName } from "../intents.ts";
import type { Reply } from "../reply.ts";
import { showFacts } from "../speaker.ts";
import type { Thread } from "../thread.ts";
import type { TalkTurn } from "../turn.ts";
import { asOfText } from "../verdict/motor.ts";
import { partsOf, partsText, workText } from "../verdict/parts.ts";
import { explain } from "./explain.ts";
import { legal } from "./legal.ts";
import { price, savings } from "./money.ts";
import { bigger, otherSpeeds } from "./options.ts";

/** Answers one kind of question beside the main line; undefined when it has nothing to say here. */
export type Answer = (turn: TalkTurn) => Reply | undefined;

/** In this order; a message may be answered by more than one. */
const answers: readonly (readonly [IntentName, Answer])[] = [
  ["explain", explain],
  ["summary", summary],
  ["price", price],
  ["savings", savings],
  // "Upgrade to variable speed" asks for other speeds, not for more power.
  ["bigger", (turn) => (turn.wants("two-speed") ? undefined : bigger(turn))],
  ["two-speed", otherSpeeds],
  ["parts", parts],
  ["legal", legal],
  ["wiring", ({ speaker }) => speaker.say("replies", "wiring")],
  ["fault", fault],
  ["photo", ({ speaker }) => speaker.say("replies", "photo.words")],
  ["order", order],
  ["service", (turn) => (turn.wants("order") ? undefined : turn.speaker.say("replies", "forDesk"))],
  ["hours", ({ speaker, when }) => speaker.say("replies", "hours", { when })],
  ["thanks", ({ speaker }) => speaker.say("replies", "thanks")],
];

/** More than two answers in one message is more than anybody asked. */
const ANSWERED_TOGETHER = 2;

/** Answers the message's own questions; asking for a person also puts the thread on the desk. */
export function sideAnswers(turn: TalkTurn): { readonly thread: Thread; readonly replies: readonly Reply[] } {
  const replies = answers
    .filter(([intent]) => turn.wants(intent))
    .map(([, answer]) => answer(turn))
    .filter((reply) => reply !== undefined)
    .slice(0, ANSWERED_TOGETHER);
  if (!turn.wants("person")) {
    const other =
      replies.length === 0 && asksSomethingElse(turn) ? [turn.speaker.say("replies", "forDesk")] : [];
    return { thread: turn.thread, replies: [...replies, ...other] };
  }
  const urgent = turn.thread.case.state !== "none" && turn.thread.case.reason === "danger";
  const text = turn.speaker.say("replies", urgent ? "person.danger" : "person", { when: turn.when });
  return { thread: toDesk(turn.thread, "asked-for-person"), replies: [text, ...replies] };
}

const smallTalk: ReadonlySet<IntentName> = new Set(["greeting", "thanks", "other"]);

/** How a question begins that is typed without its mark. */
const opensQuestion =
  /^(?:how|what|when|where|which|who|why|do|does|did|can|could|should|would|will|is|are|may|como|cuando|donde|cual|quien|puedo|puede)\s+\p{L}/iu;

/** A question that none of the answers is for: shipping, chlorine, the weather. */
function asksSomethingElse(turn: TalkTurn): boolean {
  const { text, understood } = turn;
  return (
    !readsSomething(turn) &&
    (/[?¿]/.test(text) || opensQuestion.test(text.trim())) &&
    understood.intents.every(({ intent }) => smallTalk.has(intent))
  );
}

const readsSomething = ({ understood: { reading } }: TalkTurn) =>
  reading.readings.length > 0 || reading.unreadable.length > 0;

/** Nobody orders from a bot: the desk confirms first, and before a verdict there is nothing to order. */
function order({ assessment, speaker, when }: TalkTurn): string {
  const best = assessment.match?.motors[0];
  if (!best || best.verdict === "undecided") return speaker.say("replies", "order.later");
  return speaker.say("replies", "order", { motor: best.motor.sku, when });
}

/** What ails the motor is not judged from afar; whoever tells it on the way to the label has asked nothing. */
function fault(turn: TalkTurn): string | undefined {
  return readsSomething(turn) ? undefined : turn.speaker.say("replies", "fault");
}

function parts(turn: TalkTurn): string {
  const { assessment, speaker } = turn;
  const best = assessment.match?.motors[0];
  if (!best || best.verdict === "undecided") return speaker.say("replies", "parts.later");
  const list = partsOf(turn, best);
  const values = { motor: best.motor.sku, parts: partsText(list, speaker) };
  const asOf = asOfText(turn.knowledge.catalogue, speaker);
  return [speaker.say("replies", "parts.best", values), ...workText(list, speaker), asOf].join("\n");
}

function summary({ thread, assessment, speaker }: TalkTurn): string {
  const facts = showFacts(assessment.facts);
  const known =
    facts === "" ? speaker.say("replies", "summary.none") : speaker.say("replies", "summary", { facts });
  if (thread.unreadable.length === 0) return known;
  const names = thread.unreadable.map((rating) => ratings[rating].title).join(", ");
  return `${known} ${speaker.say("replies", "summary.unreadable", { ratings: names })}`;
}
