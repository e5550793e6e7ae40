import type { CallbackQuery, Message, Update, User } from "grammy/types";
import { helpText, unclearText } from "../../desk/staff-help.ts";
import { actOfChoice, readStaffLine, type StaffLine } from "../../desk/staff-line.ts";
import type { StaffAnswer } from "../../engine.ts";
import type { Content, Lane, Outgoing } from "../../outgoing.ts";
import type { StaffMember } from "../../staff.ts";
import { answerPress, TOAST_CHARACTERS } from "./buttons.ts";
import { commandIn, contentsOf } from "./contents.ts";
import { itemIdOf } from "./intake.ts";
import { caseAt } from "./places.ts";
import { staffIdOf } from "./refs.ts";
import type { AnswerContent } from "./render.ts";
import type { StaffGroup } from "./staff-group.ts";
import type { Station } from "./station.ts";
import { undelivered } from "./undelivered.ts";

/** What staff can type, in the order of a case's life; the desk reads them, except the one that is this channel's. */
export const staffCommands = [
  "waiting",
  "take",
  "takeover",
  "fix",
  "offer",
  "parts",
  "part",
  "confirm",
  "back",
  "close",
  "reopen",
  "allclear",
  "urgency",
  "case",
  "undelivered",
  "help",
] as const;

/** Something written in the staff group, by somebody, about a case or about none. */
interface Written {
  readonly update: Update;
  readonly message: Message;
  readonly caseId: number | undefined;
}

/** A message in the staff group. The group is checked by the caller, the person here. */
export async function fromStaff(
  station: Station,
  staff: StaffGroup,
  update: Update,
): Promise<readonly Outgoing[]> {
  const message = update.message ?? update.edited_message;
  if (message === undefined) return [];
  const written: Written = { update, message, caseId: await caseOfMessage(station, staff, message) };
  const { wording, me } = station;
  const text = wordsOf(message);
  if (text === undefined || commandIn(text, me.username)?.forOther === true) return [];
  const line = readStaffLine(text);
  // Among themselves staff talk as they like; only what could be meant for the bot is answered.
  if (written.caseId === undefined && line.kind === "act" && line.act.kind === "note") return [];

  if (message.sender_chat !== undefined || message.from === undefined || message.from.is_bot) {
    const asGroup = message.sender_chat?.id === staff.id;
    return asGroup ? answer(written, { text: wording.say("telegram", "staff.anonymous") }) : [];
  }
  if (!(await staff.has(message.from.id)))
    return answer(written, { text: wording.say("telegram", "staff.notMember") });
  if (update.message === undefined)
    return written.caseId === undefined
      ? []
      : answer(written, { text: wording.say("telegram", "staff.edited") });
  return obey(station, written, memberOf(message.from), line);
}

/** A button pressed by staff; what it does is decided again, so one that is old or forged does nothing. */
export async function pressedByStaff(
  station: Station,
  staff: StaffGroup,
  update: Update,
  query: CallbackQuery,
): Promise<readonly Outgoing[]> {
  const { engine, wording, clock } = station;
  if (!(await staff.has(query.from.id))) {
    await answerPress(station, query, wording.say("telegram", "button.notStaff"), true);
    return [];
  }
  const asked = actOfChoice(query.data ?? "");
  if (asked === null) {
    await answerPress(station, query, wording.say("desk", "unclear.oldButton"), true);
    return [];
  }
  const by = memberOf(query.from);
  const answered = await engine.staff({ id: itemIdOf(update), ...asked, by, at: clock.now() });
  await answerPress(station, query, answered.answer, !answered.done);
  if (answered.choices === undefined && answered.answer.length <= TOAST_CHARACTERS) return [];
  return [{ lane: { kind: "case", caseId: asked.caseId }, content: contentOf(answered) }];
}

function contentOf({ answer: text, choices }: StaffAnswer): Content {
  return choices === undefined ? { text } : { text, choices };
}

/** What may be meant for the bot: text, or the words under a picture. */
function wordsOf(message: Message): string | undefined {
  const contents = contentsOf(message);
  if (contents.kind === "words") return contents.text;
  return contents.kind === "file" && contents.caption.trim() !== "" ? contents.caption : undefined;
}

async function obey(
  station: Station,
  written: Written,
  by: StaffMember,
  line: StaffLine,
): Promise<readonly Outgoing[]> {
  const { engine, wording, clock, me } = station;
  const { update, message, caseId } = written;
  const at = clock.now();
  const reply = (content: Content) => answer(written, content);
  const isFile = contentsOf(message).kind === "file";
  switch (line.kind) {
    case "list":
      return reply(await engine.waiting(at));
    case "help":
      return reply({ text: helpText(wording) });
    case "show": {
      const shown = await engine.show(line.caseId, at);
      return reply(shown ?? { text: wording.say("desk", "refused.noCase", { id: line.caseId }) });
    }
    case "unclear": {
      if (commandIn(message.text ?? "", me.username)?.name === "undelivered")
        return reply(await undelivered(station));
      const outside = caseId === undefined && message.text?.trim().startsWith(">") === true;
      return reply({
        text: outside ? wording.say("desk", "unclear.noCaseOpen") : unclearText(line, wording),
      });
    }
    case "act": {
      if (caseId === undefined) return reply({ text: wording.say("desk", "unclear.noCaseOpen") });
      if (isFile && line.act.kind !== "note")
        return reply({ text: wording.say("telegram", "staff.fileToCustomer") });
      return reply(contentOf(await engine.staff({ id: itemIdOf(update), caseId, act: line.act, by, at })));
    }
  }
}

/** The case of the topic it stands in, or of the message it answers. */
function caseOfMessage(station: Station, staff: StaffGroup, message: Message): Promise<number | undefined> {
  const inTopic = message.is_topic_message === true;
  return caseAt(station, staff.id, {
    topic: inTopic ? message.message_thread_id : undefined,
    answered: inTopic ? undefined : message.reply_to_message?.message_id,
  });
}

function answer({ message, caseId }: Written, content: Content): readonly Outgoing[] {
  const lane: Lane = caseId === undefined ? { kind: "desk" } : { kind: "case", caseId };
  const answering: AnswerContent = { ...content, answers: message.message_id };
  return [{ lane, content: answering }];
}

/** Names come from Telegram's account of who wrote, and are cut: they are shown to customers. */
const memberOf = ({ id, first_name }: User): StaffMember => ({
  id: staffIdOf(id),
  name: first_name.replace(/\s+/g, " ").trim().slice(0, 40) || "Desk",
});
