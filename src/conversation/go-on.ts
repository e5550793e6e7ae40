import type { Doubt } from "../nameplate/reading.ts";
import type { RatingName } from "../nameplate/vocabulary.ts";
import { ASKED_AT_MOST } from "./assess.ts";
import { toDesk } from "./cases.ts";
import { askNumber } from "./old-number.ts";
import { ASKED_TOGETHER, ask, nextQuestion, remind } from "./questions.ts";
import type { Response, TalkTurn } from "./turn.ts";
import { costReplies } from "./verdict/cost.ts";
import { verdictReplies, verdictSignature } from "./verdict/index.ts";

/**
 * The one next thing: clear a doubt, ask what can change the answer, or give the answer and pass it to the
 * desk. `answeredAside` is true when the message's own question has been answered already.
 */
export function goOn(turn: TalkTurn, answeredAside: boolean): Response {
  const { thread, assessment, absorbed, understood, speaker, wants } = turn;
  const nothingNew = absorbed.news.length === 0 && absorbed.changes.length === 0;
  const settledSomething =
    !nothingNew ||
    understood.reading.unreadable.length > 0 ||
    thread.pending.kind === "doubt" ||
    thread !== absorbed.thread;

  // A side question that was answered leaves the open question above it standing.
  if (answeredAside && !settledSomething) return { thread, replies: invitation(turn) };
  // Somebody who asked for a person is not kept talking.
  if (wants("person") && nothingNew) return { thread, replies: [] };

  if (assessment.stubborn.length > 0) return handOver(turn, "stubborn");
  const doubt = assessment.doubts[0];
  if (doubt) return askDoubt(turn, doubt);

  if (assessment.match === null) return beginning(turn, nothingNew);

  const undecided = assessment.match.verdict === "undecided";
  const number = undecided ? askNumber(turn) : null;
  if (number) return number;

  const question = undecided ? nextQuestion(assessment.ask) : [];
  if (question.length > 0) {
    const missed = nothingNew && !settledSomething && thread.pending.kind === "ratings";
    const fruitless = missed ? thread.fruitless + 1 : 0;
    if (fruitless >= PATIENCE) return handOver(turn, "pause");
    const lost = missed ? [speaker.say("replies", "notUnderstood")] : [];
    const rest = restOfQuestion(turn);
    const asked = rest.length > 0 ? remind(thread, rest, speaker) : ask(thread, question, speaker);
    return { thread: { ...asked.thread, fruitless }, replies: [[...lost, asked.text].join(" ")] };
  }

  const signature = verdictSignature(assessment);
  if (thread.answered === signature) {
    const costs = absorbed.news.some((rating) => rating === "pricePerKwh" || rating === "hoursPerDay");
    const best = assessment.match.motors[0];
    if (costs && best && !undecided && !answeredAside)
      return { thread: calm(thread), replies: costReplies(turn, best.motor) };
    const settled = wants("yes") || wants("no") || wants("dont-know") || wants("greeting");
    const key = !nothingNew ? "noted" : settled ? "ok" : "unsure";
    return { thread: calm(thread), replies: [speaker.say("replies", key, { when: turn.when })] };
  }
  return {
    thread: { ...calm(toDesk(thread, deskReason(assessment.match.verdict))), answered: signature },
    replies: verdictReplies(turn),
  };
}

/** After so many fruitless messages in a row the desk takes over. */
const PATIENCE = 4;

/** What is still worth knowing of a question that this message answered in part. */
function restOfQuestion({ thread, assessment, absorbed }: TalkTurn): readonly RatingName[] {
  const { pending } = thread;
  if (pending.kind !== "ratings" || !pending.ratings.some((rating) => absorbed.news.includes(rating)))
    return [];
  return pending.ratings.filter((rating) => assessment.ask.includes(rating));
}

const calm = (thread: TalkTurn["thread"]) => ({ ...thread, pending: { kind: "nothing" } as const });

function deskReason(verdict: NonNullable<TalkTurn["assessment"]["match"]>["verdict"]) {
  if (verdict === "none-fits") return "nothing-fits";
  return verdict === "undecided" ? "cannot-decide" : "verdict-ready";
}

/** Who begins with a question is told, after its answer, how to begin; who asks for a person waits for one. */
function invitation({ thread, assessment, speaker, wants }: TalkTurn): readonly string[] {
  const begun = assessment.match !== null || thread.unreadable.length > 0 || !isFirst(thread);
  return begun || wants("person") ? [] : [speaker.say("replies", "opening")];
}

const isFirst = ({ lines }: TalkTurn["thread"]) => lines.every(({ from }) => from === "customer");

/** Nothing about the motor is known yet: ask for the label, then for the pump, then for a photo. */
function beginning(turn: TalkTurn, nothingNew: boolean): Response {
  const { thread, speaker, knowledge } = turn;
  if (thread.unreadable.length > 0) {
    const noPump = thread.unreadable.includes("pumpModel") || (thread.asked.pumpModel ?? 0) >= ASKED_AT_MOST;
    if (noPump) return handOver(turn, "photo");
    const asked = ask(thread, ["pumpModel"], speaker);
    return { thread: asked.thread, replies: [asked.text] };
  }
  const key = isFirst(thread) ? "hello" : nothingNew ? "opening" : "noted";
  return { thread, replies: [speaker.say("replies", key, { shop: knowledge.shop.name })] };
}

/**
 * Asks about a doubted value, with what it may have been; about what the customer stands by, no more. After
 * two questions about the same value the desk takes it.
 */
function askDoubt(turn: TalkTurn, doubt: Doubt): Response {
  const { thread, speaker } = turn;
  const open = doubt.ratings.filter((rating) => !thread.confirmed.includes(rating));
  const [first] = open;
  if (first === undefined || (thread.asked[first] ?? 0) >= ASKED_AT_MOST) return handOver(turn, "stubborn");
  const asked = countAsked(thread, first);
  const { proposal } = doubt;
  if (proposal && open.includes(proposal.rating)) {
    const text = speaker.say("doubts", doubt.reason, doubt.values);
    return {
      thread: { ...asked, pending: { kind: "doubt", rating: first, proposal } },
      replies: [`${text} ${speaker.say("replies", "doubt.yesno")}`],
    };
  }
  return {
    thread: { ...asked, pending: { kind: "ratings", ratings: open.slice(0, ASKED_TOGETHER) } },
    replies: [speaker.say("doubts", withoutProposal(doubt.reason), doubt.values)],
  };
}

/** The audit names the text that offers a value `<reason>-proposed`. */
function withoutProposal(reason: string): string {
  return reason.replace(/-proposed$/, "");
}

function countAsked(thread: TalkTurn["thread"], rating: Doubt["ratings"][number]): TalkTurn["thread"] {
  return { ...thread, asked: { ...thread.asked, [rating]: (thread.asked[rating] ?? 0) + 1 } };
}

/** Why the words alone do not settle it: values stood by that can't be true, nothing readable, no more answers. */
type HandOver = "stubborn" | "photo" | "pause";

/** To the desk, said once. */
function handOver(turn: TalkTurn, why: HandOver): Response {
  const { thread, speaker, when } = turn;
  const signature = `desk:${why}`;
  const handed = { ...calm(toDesk(thread, "cannot-decide")), fruitless: 0, answered: signature };
  if (thread.answered === signature) return { thread: handed, replies: [speaker.say("replies", "noted")] };
  return { thread: handed, replies: [`${speaker.say("replies", why)} ${when}`] };
}
