import type { Contact, Location, Message, User } from "grammy/types";
import { asReply, type Content, deliver, post, replace } from "../posting.ts";
import type { Room } from "../rooms.ts";
import { unixTime, type World } from "../world.ts";
import {
  contactContent,
  documentContent,
  locationContent,
  photoContent,
  type SentFile,
  stickerContent,
  textContent,
  voiceContent,
} from "./contents.ts";
import { findButton, type Press, sendPress } from "./pressing.ts";
import { type Part, type Seen, seenIn } from "./seen.ts";

/** Anything with a message number stands for that message. */
export type MessageRef = Pick<Message, "message_id">;

/** Where in a chat something is said, and what it answers. */
export interface Where {
  readonly topic?: number | undefined;
  readonly replyTo?: MessageRef | undefined;
}

/** Somebody acting in one chat: a person in their private chat, or a member in a group. */
export class Speaker {
  constructor(
    protected readonly world: World,
    readonly user: User,
    /** Asked anew each time: a group has another identity after it became a supergroup. */
    protected readonly currentRoom: () => Room,
  ) {}

  get chatId(): number {
    return this.currentRoom().chat.id;
  }

  says(text: string, where: Where = {}) {
    return this.send(textContent(text), where);
  }

  saysInTopic(topic: number, text: string) {
    return this.says(text, { topic });
  }

  /** Answers a message, in the topic that message is in. */
  repliesTo(message: MessageRef, text: string) {
    return this.says(text, { replyTo: message });
  }

  /** Rewrites an own message; a caption if it has one. */
  edits(message: MessageRef, text: string): Message {
    const room = this.currentRoom();
    const old = this.messageIn(room, message);
    if (old.from?.id !== this.user.id) throw new Error("People can edit their own messages only.");
    const { entities: _, caption_entities: __, ...kept } = old;
    const { text: words, entities } = textContent(text);
    const changed =
      old.text === undefined
        ? { caption: words, ...(entities === undefined ? {} : { caption_entities: entities }) }
        : { text: words, ...(entities === undefined ? {} : { entities }) };
    const edited = replace(this.world, room, { ...kept, ...changed, edit_date: unixTime(this.world) });
    deliver(this.world, room, edited, "edited_message");
    return edited;
  }

  sendsPhoto(file: SentFile & Where = {}) {
    return this.send(photoContent(this.world.files, file), file);
  }

  sendsDocument(file: SentFile & Where = {}) {
    return this.send(documentContent(this.world.files, file), file);
  }

  /** Several photos as one album; a caption stands under the first, as Telegram's apps do it. */
  sendsAlbum(count: number, { caption, ...where }: Pick<SentFile, "caption"> & Where = {}): Message[] {
    const media_group_id = `album-${this.user.id}-${this.currentRoom().messages.size}`;
    return Array.from({ length: count }, (_, index) => {
      const photo = photoContent(this.world.files, index === 0 && caption !== undefined ? { caption } : {});
      return this.send({ ...photo, media_group_id }, where);
    });
  }

  sendsVoice(durationSeconds = 4, where: Where = {}) {
    return this.send(voiceContent(this.world.files, durationSeconds), where);
  }

  sendsSticker(emoji = "🙂", where: Where = {}) {
    return this.send(stickerContent(this.world.files, emoji), where);
  }

  sendsLocation(location: Location, where: Where = {}) {
    return this.send(locationContent(location), where);
  }

  sendsContact(contact: Contact, where: Where = {}) {
    return this.send(contactContent(contact), where);
  }

  /** Presses a button by its label or its data; on the latest message that has it unless `on` says which. */
  presses(button: string, on?: MessageRef): Press {
    const { message, data } = findButton(this.currentRoom(), button, on?.message_id);
    return sendPress(this.world, this.user, message, data);
  }

  /** Sends callback data no button carries, as a tampered app can. */
  forgesPress(data: string, on: MessageRef): Press {
    return sendPress(this.world, this.user, this.messageIn(this.currentRoom(), on), data);
  }

  /** Everything in the chat as this person sees it now, in order. */
  sees(topic?: Part): Seen[] {
    return seenIn(this.world, this.currentRoom(), topic);
  }

  /** The words of the bot's messages, in order; pictures and what stands under them apart. */
  hears(topic?: Part): string[] {
    return this.sees(topic)
      .filter(({ byBot, kind }) => byBot && kind !== "service" && kind !== "photo")
      .map(({ text }) => text);
  }

  protected send<C extends Content>(content: C, { topic, replyTo }: Where): Message & C {
    const room = this.currentRoom();
    const answered = replyTo === undefined ? undefined : this.messageIn(room, replyTo);
    const inTopic = answered?.is_topic_message === true ? answered.message_thread_id : undefined;
    const threadId = topic ?? inTopic;
    if (threadId !== undefined && !(room.kind === "group" && room.topics.has(threadId)))
      throw new Error(`There is no topic ${threadId} to write in.`);
    const reply = answered === undefined ? undefined : asReply(answered);
    const message = post(this.world, room, { from: this.user, content, threadId, replyTo: reply });
    deliver(this.world, room, message, "message");
    return message;
  }

  private messageIn(room: Room, { message_id }: MessageRef): Message {
    const message = room.messages.get(message_id);
    if (message === undefined) throw new Error(`There is no message ${message_id} in this chat.`);
    return message;
  }
}
