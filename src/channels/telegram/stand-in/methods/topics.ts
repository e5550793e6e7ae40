import { openTopic, post } from "../posting.ts";
import type { Methods } from "../protocol.ts";
import { forum, topicOf } from "../reach.ts";
import { badRequest } from "../refusal.ts";
import { botUser, type World } from "../world.ts";

/** Names of topics are 1 to 128 characters (Bot API, createForumTopic). */
const nameLimit = 128;
const defaultIconColor = 0x6fb9f0;

/** Topics of a forum supergroup. */
export const topicMethods = (
  world: World,
): Pick<
  Methods,
  "createForumTopic" | "editForumTopic" | "closeForumTopic" | "reopenForumTopic" | "deleteForumTopic"
> => ({
  createForumTopic({ chat_id, name, icon_color = defaultIconColor }) {
    const room = forum(world, chat_id, "create a topic");
    const checked = topicName(name);
    const { message_id } = openTopic(world, room, botUser(world), { name: checked, icon_color });
    return { message_thread_id: message_id, name: checked, icon_color };
  },

  editForumTopic({ chat_id, message_thread_id, name }) {
    const room = forum(world, chat_id, "edit the topic");
    const topic = topicOf(room, message_thread_id);
    if (name === undefined || name.trim() === topic.name) throw badRequest("TOPIC_NOT_MODIFIED");
    topic.name = topicName(name);
    const content = { forum_topic_edited: { name: topic.name } };
    post(world, room, { from: botUser(world), threadId: topic.threadId, content });
    return true;
  },

  closeForumTopic({ chat_id, message_thread_id }) {
    const room = forum(world, chat_id, "close the topic");
    const topic = topicOf(room, message_thread_id);
    if (topic.closed) throw badRequest("TOPIC_NOT_MODIFIED");
    topic.closed = true;
    const content = { forum_topic_closed: {} };
    post(world, room, { from: botUser(world), threadId: topic.threadId, content });
    return true;
  },

  reopenForumTopic({ chat_id, message_thread_id }) {
    const room = forum(world, chat_id, "reopen the topic");
    const topic = topicOf(room, message_thread_id);
    if (!topic.closed) throw badRequest("TOPIC_NOT_MODIFIED");
    topic.closed = false;
    const content = { forum_topic_reopened: {} };
    post(world, room, { from: botUser(world), threadId: topic.threadId, content });
    return true;
  },

  deleteForumTopic({ chat_id, message_thread_id }) {
    const room = forum(world, chat_id, "delete the topic");
    const { threadId } = topicOf(room, message_thread_id);
    for (const message of room.messages.values())
      if (message.message_thread_id === threadId) room.messages.delete(message.message_id);
    room.topics.delete(threadId);
    world.changes.tell();
    return true;
  },
});

function topicName(name: string | undefined): string {
  const trimmed = name?.trim() ?? "";
  if (trimmed === "") throw badRequest("topic name must be non-empty");
  // Telegram cuts over-long names silently; refusing them shows the mistake to whoever made it.
  if (trimmed.length > nameLimit) throw badRequest("TOPIC_TITLE_TOO_LONG");
  return trimmed;
}
