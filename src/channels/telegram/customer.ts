import type { CallbackQuery, Message, Update } from "grammy/types";
import { textOfChoice } from "../../conversation/choices.ts";
import { showFacts } from "../../conversation/speaker.ts";
import type { Attachment, Outgoing } from "../../outgoing.ts";
import { answerPress, removeButtons } from "./buttons.ts";
import { commandIn, contentsOf, type UselessKind } from "./contents.ts";
import { itemIdOf, messageOf } from "./intake.ts";
import { threadIdOf } from "./refs.ts";
import type { Station } from "./station.ts";

/** Own commands beside /start and /help; each says what a customer could as well type. */
export const customerCommands = ["sofar", "fresh", "person", "erase"] as const;
const isOwn = (name: string): name is (typeof customerCommands)[number] =>
  (customerCommands as readonly string[]).includes(name);

/**
 * A customer's message, or the messages of one album. What it leads to is committed by the engine; given back is
 * what the channel itself has to say.
 */
export async function fromCustomer(
  station: Station,
  updates: readonly [Update, ...Update[]],
): Promise<readonly Outgoing[]> {
  const [first] = updates;
  const message = messageOf(first);
  if (message === undefined || message.from?.is_bot === true) return [];
  const contents = contentsOf(message);
  const threadId = threadIdOf(message.chat.id);
  switch (contents.kind) {
    case "words": {
      const command = commandIn(contents.text, station.me.username);
      if (command === undefined) return say(station, first, threadId, contents.text);
      // A command that was edited was obeyed when it came.
      return first.message === undefined ? [] : obey(station, first, threadId, command.name);
    }
    case "file": {
      const { files, words } = filesOf(updates);
      // Of an edited picture the words are new; the picture is with the case already.
      return say(station, first, threadId, words, first.message === undefined ? [] : files);
    }
    case "useless":
      return first.message === undefined ? [] : kindLine(station, threadId, contents.what);
    case "nothing":
      return [];
  }
}

/** A button under the bot's question; one whose question has passed does nothing and says so. */
export async function pressedByCustomer(
  station: Station,
  update: Update,
  query: CallbackQuery,
): Promise<readonly Outgoing[]> {
  const { engine, wording } = station;
  const { message, data = "" } = query;
  if (message === undefined) return [];
  const threadId = threadIdOf(message.chat.id);
  const { pending } = await engine.thread(threadId);
  const text = textOfChoice(pending, data);
  await answerPress(station, query, text === null ? wording.say("telegram", "button.passed") : "");
  await removeButtons(station, message.chat.id, message.message_id);
  return text === null ? [] : say(station, update, threadId, text);
}

async function say(
  { engine, clock }: Station,
  update: Update,
  threadId: string,
  text: string,
  attachments: readonly Attachment[] = [],
): Promise<readonly Outgoing[]> {
  if (text.trim() === "" && attachments.length === 0) return [];
  const message = messageOf(update);
  await engine.handle({
    id: itemIdOf(update),
    threadId,
    text,
    at: clock.now(),
    ...(message === undefined ? {} : { message: String(message.message_id) }),
    ...(update.edited_message === undefined ? {} : { edited: true }),
    ...(attachments.length === 0 ? {} : { attachments }),
  });
  return [];
}

async function obey(
  station: Station,
  update: Update,
  threadId: string,
  name: string,
): Promise<readonly Outgoing[]> {
  const { wording } = station;
  if (isOwn(name)) return say(station, update, threadId, wording.say("telegram", `says.${name}`));
  if (name === "start") return greet(station, update, threadId);
  // For whoever sets up who is on call; not in the list of commands.
  if (name === "myid")
    return toCustomer(threadId, wording.say("telegram", "myId", { id: update.message?.chat.id ?? "" }));
  return toCustomer(threadId, wording.say("telegram", name === "help" ? "help" : "unknownCommand"));
}

async function greet(station: Station, update: Update, threadId: string): Promise<readonly Outgoing[]> {
  const { engine, wording, shopName } = station;
  const { facts, lines, hazard, case: open } = await engine.thread(threadId);
  // A danger or a person comes before any greeting: the talk itself knows what to say then.
  if (hazard !== null || open.state === "taken")
    return say(station, update, threadId, wording.say("telegram", "says.hello"));
  if (lines.length === 0) return toCustomer(threadId, wording.say("replies", "hello", { shop: shopName }));
  const known = showFacts(facts);
  return toCustomer(
    threadId,
    known === ""
      ? wording.say("replies", "opening")
      : wording.say("replies", "welcomeBack", { facts: known }),
  );
}

/** While a person talks with the customer, that person is told instead. */
async function kindLine(
  { engine, store, wording }: Station,
  threadId: string,
  what: UselessKind,
): Promise<readonly Outgoing[]> {
  const thread = await engine.thread(threadId);
  const open = thread.case.state === "taken" ? await store.latestCase(threadId) : undefined;
  if (open === undefined) return toCustomer(threadId, wording.say("telegram", `cannot.${what}`));
  const text = wording.say("telegram", "cannot.staff", { kind: wording.say("telegram", `kind.${what}`) });
  return [{ lane: { kind: "case", caseId: open.id }, content: { text } }];
}

function filesOf(updates: readonly Update[]): {
  readonly files: readonly Attachment[];
  readonly words: string;
} {
  const messages = updates.map(messageOf).filter((message): message is Message => message !== undefined);
  const contents = messages.map(contentsOf).filter((found) => found.kind === "file");
  return {
    files: contents.map(({ file }) => file),
    words: contents
      .map(({ caption }) => caption)
      .filter((caption) => caption.trim() !== "")
      .join("\n"),
  };
}

const toCustomer = (threadId: string, text: string): readonly Outgoing[] => [
  { lane: { kind: "customer", threadId }, content: { text } },
];
