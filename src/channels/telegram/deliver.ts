import type { Message } from "grammy/types";
import type { Outgoing } from "../../outgoing.ts";
import { showCard } from "./case-card.ts";
import { sendPictures } from "./drawn.ts";
import { failureOf } from "./failures.ts";
import { type CasePlace, ensureTopic, forgetPlace, placeOf, renameTopic } from "./places.ts";
import { CHANNEL, chatIdOf, messageRef } from "./refs.ts";
import { type AnswerContent, briefPart, type Part, partsOf } from "./render.ts";
import type { StaffGroup } from "./staff-group.ts";
import type { Station } from "./station.ts";

/** Where a call writes. */
interface Target {
  readonly chat: number;
  readonly topic?: number | undefined;
  readonly answers?: number | undefined;
}

/** How much of a message went out in an attempt that failed later on. */
export interface Progress {
  parts: number;
}

/** Thrown when there is nowhere to deliver to; the message waits or is parked. */
export class NoAddress extends Error {
  override readonly name = "NoAddress";
}

/** Delivers one message of the outbox. Throws what the failed call threw. */
export async function deliver(station: Station, message: Outgoing, progress: Progress): Promise<void> {
  const { lane } = message;
  const { staff } = station;
  if (lane.kind === "customer") {
    const chat = chatIdOf(lane.threadId);
    if (chat === undefined) throw new NoAddress();
    return sendParts(station, { chat }, partsOf(message.content), progress);
  }
  if (lane.kind === "on-call" && station.onCall !== null)
    return toOnCall(station, station.onCall, message, progress);
  if (staff === null) throw new NoAddress();
  if (lane.kind === "case") return toCase(station, staff, lane.caseId, message, progress);
  const { answers } = message.content as AnswerContent;
  return sendParts(station, { chat: staff.id, answers }, partsOf(message.content), progress);
}

/** The person on call; when they cannot be reached here, the staff group learns of it at once. */
async function toOnCall(
  station: Station,
  chat: number,
  { content }: Outgoing,
  progress: Progress,
): Promise<void> {
  try {
    await sendParts(station, { chat }, partsOf(content), progress);
  } catch (error) {
    const { kind } = failureOf(error);
    if ((kind !== "shut-out" && kind !== "refused") || station.staff === null) throw error;
    station.log.error({}, "the person on call cannot be reached; they must open the bot and press Start");
    const text = station.wording.say("telegram", "onCall.unreachable", { text: content.text });
    await sendParts(station, { chat: station.staff.id }, partsOf({ ...content, text }), { parts: 0 });
  }
}

async function toCase(
  station: Station,
  staff: StaffGroup,
  caseId: number,
  message: Outgoing,
  progress: Progress,
): Promise<void> {
  const found = await placeOf(station, staff.id, caseId);
  try {
    const place = await ensureTopic(station, staff, found, caseId);
    if (message.slot === "brief") {
      await showBrief(station, place, caseId, message);
      const card = message.content.picture;
      if (card !== undefined) await showCard(station, place, caseId, card);
      return await renameTopic(station, place, caseId);
    }
    // What comes without its brief before it, as after the group was upgraded, would stand there unexplained.
    const shown = place.brief === undefined ? await briefFirst(station, place, caseId) : place;
    const { answers } = message.content as AnswerContent;
    const target = {
      chat: staff.id,
      topic: shown.topic,
      answers: answers ?? (shown.topic === undefined ? shown.brief : undefined),
    };
    await sendParts(station, target, partsOf(message.content), progress, (sent) =>
      remember(station, shown, caseId, sent),
    );
  } catch (error) {
    if (topicGone(error)) await forgetPlace(station, found);
    throw error;
  }
}

async function briefFirst(station: Station, place: CasePlace, caseId: number): Promise<CasePlace> {
  const content = await station.engine.show(caseId, station.clock.now());
  if (content === undefined) return place;
  await showBrief(station, place, caseId, { lane: { kind: "case", caseId }, content });
  return placeOf(station, place.group, caseId);
}

/** Puts a new brief in the place of the old one, or sends it if there is none to edit. */
async function showBrief(
  station: Station,
  place: CasePlace,
  caseId: number,
  { content }: Outgoing,
): Promise<void> {
  const part = briefPart(content);
  if (place.brief !== undefined && (await editText(station, place.group, place.brief, part))) return;
  if (place.brief !== undefined) await station.store.unlink(CHANNEL, messageRef(place.group, place.brief));
  const [sent] = await sendPart(station, { chat: place.group, topic: place.topic }, part);
  if (sent === undefined) return;
  const theirs = messageRef(place.group, sent.message_id);
  await station.store.link(CHANNEL, { theirs, lane: { kind: "case", caseId }, kind: "brief" });
}

/** False when the message cannot be edited any more. */
async function editText(
  { api }: Station,
  chat: number,
  message: number,
  part: Extract<Part, { kind: "text" }>,
): Promise<boolean> {
  try {
    await api.editMessageText(chat, message, part.html, { ...formatting, ...markup(part) });
    return true;
  } catch (error) {
    const failure = failureOf(error);
    if (failure.kind !== "refused") throw error;
    return /not modified/i.test(failure.description);
  }
}

/** Without topics an answer to any message of a case is about that case. */
async function remember(
  { store }: Station,
  place: CasePlace,
  caseId: number,
  sent: readonly Message[],
): Promise<void> {
  if (place.topic !== undefined) return;
  for (const { message_id } of sent) {
    const theirs = messageRef(place.group, message_id);
    await store.link(CHANNEL, { theirs, lane: { kind: "case", caseId }, kind: "message" });
  }
}

const topicGone = (error: unknown): boolean => {
  const failure = failureOf(error);
  return (
    failure.kind === "refused" && /thread not found|TOPIC_(?:DELETED|ID_INVALID)/i.test(failure.description)
  );
};

async function sendParts(
  station: Station,
  target: Target,
  parts: readonly Part[],
  progress: Progress,
  onSent: (sent: readonly Message[]) => Promise<void> = async () => {},
): Promise<void> {
  for (const part of parts.slice(progress.parts)) {
    await onSent(await sendPart(station, target, part));
    progress.parts += 1;
  }
}

const formatting = { parse_mode: "HTML", link_preview_options: { is_disabled: true } } as const;

const markup = ({ keyboard }: Extract<Part, { kind: "text" }>) =>
  keyboard.length === 0 ? {} : { reply_markup: { inline_keyboard: keyboard.map((row) => [...row]) } };

async function sendPart(station: Station, target: Target, part: Part): Promise<readonly Message[]> {
  const { api } = station;
  const { chat } = target;
  const where = {
    ...(target.topic === undefined ? {} : { message_thread_id: target.topic }),
    ...(target.answers === undefined
      ? {}
      : { reply_parameters: { message_id: target.answers, allow_sending_without_reply: true } }),
  };
  if (part.kind === "text") {
    return [await api.sendMessage(chat, part.html, { ...formatting, ...where, ...markup(part) })];
  }
  if (part.kind === "picture") return sendPictures(station, chat, part.of);
  const [only, second] = part.refs;
  if (only === undefined) return [];
  if (second !== undefined) {
    return part.of === "photo"
      ? api.sendMediaGroup(
          chat,
          part.refs.map((media) => ({ type: "photo", media })),
          where,
        )
      : api.sendMediaGroup(
          chat,
          part.refs.map((media) => ({ type: "document", media })),
          where,
        );
  }
  return [
    part.of === "photo" ? await api.sendPhoto(chat, only, where) : await api.sendDocument(chat, only, where),
  ];
}
