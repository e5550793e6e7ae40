import { nameplateRatingNames, type RatingName, ratings } from "../nameplate/vocabulary.ts";
import { sideAnswers } from "./answers/index.ts";
import { assessThread } from "./assess.ts";
import { type Absorbed, absorb, setFact } from "./facts.ts";
import { goOn } from "./go-on.ts";
import { recordLine, resolveNumber } from "./old-number.ts";
import { type Reply, reworded, textOf } from "./reply.ts";
import { showFact, showFacts } from "./speaker.ts";
import type { Proposal, Thread } from "./thread.ts";
import type { Response, TalkTurn, Turn } from "./turn.ts";

/** Talk about the motor: take in what was said, answer what was asked, then go on to question or verdict. */
export function talk(turn: Turn): Response {
  const absorbed = absorb(turn.thread, turn.understood.reading);
  const thread = planningOf(turn, resolvePending(turn, absorbed));
  const talked: TalkTurn = { ...turn, thread, absorbed, assessment: assessThread(thread, turn.knowledge) };

  const answered = sideAnswers(talked);
  const next = goOn({ ...talked, thread: answered.thread }, answered.replies.length > 0);
  return { thread: next.thread, replies: [...answered.replies, ...withEcho(talked, next.replies)] };
}

/** "Got it" and the first reply make one message, so the phone buzzes once. */
function withEcho(turn: TalkTurn, replies: readonly Reply[]): readonly Reply[] {
  const echo = echoOf(turn);
  if (echo === "") return replies;
  const [first, ...rest] = replies;
  return first === undefined ? [echo] : [reworded(first, `${echo}\n${textOf(first)}`), ...rest];
}

/** What was taken from this message, so that a wrong reading is seen at once. */
function echoOf(turn: TalkTurn): string {
  const { absorbed, speaker, understood } = turn;
  const changed = absorbed.changes.map(({ rating, before, after }) =>
    speaker.say("replies", "changed", {
      rating: ratings[rating].title,
      before: showFact(rating, before),
      after: showFact(rating, after),
    }),
  );
  const fresh = absorbed.news.filter(
    (rating) => rating !== "serialNumber" && !absorbed.changes.some((change) => change.rating === rating),
  );
  const got =
    fresh.length > 0
      ? [speaker.say("replies", "got", { facts: showFacts(absorbed.thread.facts, fresh) })]
      : [];
  const serial = understood.reading.readings.some(({ rating }) => rating === "serialNumber");
  return [
    ...got,
    ...changed,
    ...recordLine(turn, speaker),
    ...(serial ? [speaker.say("replies", "noSerial")] : []),
  ].join("\n");
}

/** What a bare "yes", "no" or "can't read it" means depends on what was asked. */
function resolvePending(turn: Turn, { thread, news }: Absorbed): Thread {
  const { pending } = thread;
  switch (pending.kind) {
    case "doubt":
      return resolveDoubt(thread, pending.rating, pending.proposal, news, turn.wants);
    case "number":
      return resolveNumber(thread, turn.text, turn.wants);
    case "ratings":
      return cannotRead(turn, news)
        ? withoutAnswer(
            thread,
            pending.ratings.filter((rating) => !news.includes(rating)),
          )
        : thread;
    default:
      return labelGone(turn, thread) ? withoutAnswer(thread, printedRatings) : thread;
  }
}

/** What only the label can tell; face, shaft and speeds can be seen without it. */
const printedRatings = nameplateRatingNames.filter(
  (rating) => !["flange", "shaft", "speedKind"].includes(rating),
);

/** "There's no label", said before anything was read from it. */
function labelGone({ understood, wants }: Turn, thread: Thread): boolean {
  if (!wants("unreadable") || understood.reading.unreadable.length > 0) return false;
  return !printedRatings.some((rating) => thread.facts[rating] !== undefined);
}

/** "Can't read it" about none of the ratings asked for is about all of them. */
function cannotRead({ understood, wants, thread }: Turn, news: readonly RatingName[]): boolean {
  const cannot = wants("unreadable") || wants("dont-know") || (wants("no") && news.length === 0);
  const asked = thread.pending.kind === "ratings" ? thread.pending.ratings : [];
  return cannot && !understood.reading.unreadable.some(({ rating }) => asked.includes(rating));
}

/** The ratings asked for can't be read; a doubted value among them is taken back. */
function withoutAnswer(thread: Thread, asked: readonly RatingName[]): Thread {
  const facts = { ...thread.facts };
  for (const rating of asked) delete facts[rating];
  return { ...thread, facts, unreadable: [...new Set([...thread.unreadable, ...asked])] };
}

function resolveDoubt(
  thread: Thread,
  rating: RatingName,
  proposal: Proposal,
  news: readonly RatingName[],
  wants: Turn["wants"],
): Thread {
  const answered: Thread = { ...thread, pending: { kind: "nothing" } };
  if (news.includes(rating)) return answered;
  if (wants("yes")) {
    const set = setFact(answered, proposal.rating, proposal.value, "confirmed");
    const { also } = proposal;
    return also ? setFact(set, also.rating, also.value, "confirmed") : set;
  }
  if (wants("no")) return { ...answered, confirmed: [...new Set([...answered.confirmed, rating])] };
  return answered;
}

/** "It still runs, I'm only planning" lets the case wait behind dead pumps. */
function planningOf({ wants }: Turn, thread: Thread): Thread {
  return wants("planning") ? { ...thread, planning: true } : thread;
}
