import { describe, expect, test } from "vitest";
import { open, refusal } from "./world.ts";

// Sources: Bot API, "Forum topics", "ChatMember", "Message" (message_thread_id, is_topic_message, migrate_to_chat_id)
// and the page on privacy mode; descriptions and the fields of topic messages from memory.
describe("a staff group with topics", () => {
  test("a topic opens, takes messages from both sides, closes, reopens and goes with all it held", async () => {
    const { world, api } = await open();
    const staff = world.addStaffGroup({ title: "Desk" });
    const rosa = staff.has(world.addUser({ first_name: "Rosa" }));
    const topic = await api.createForumTopic(staff.id, "Ada, 1.5 hp");
    const thread = { message_thread_id: topic.message_thread_id };
    const brief = await api.sendMessage(staff.id, "Brief", thread);
    expect(brief).toMatchObject({ ...thread, is_topic_message: true });
    rosa.saysInTopic(topic.message_thread_id, "I take it");
    rosa.says("lunch?");
    expect(staff.sees(topic.message_thread_id).map(({ from, text }) => [from, text])).toEqual([
      ["Desk", "topic opened: Ada, 1.5 hp"],
      ["Desk", "Brief"],
      ["Rosa", "I take it"],
    ]);
    expect(staff.sees("general").map(({ text }) => text)).toEqual(["lunch?"]);

    await api.closeForumTopic(staff.id, topic.message_thread_id);
    expect(staff.topics()).toMatchObject([{ name: "Ada, 1.5 hp", closed: true }]);
    expect(await refusal(api.closeForumTopic(staff.id, topic.message_thread_id))).toBe(
      "400 Bad Request: TOPIC_NOT_MODIFIED",
    );
    await api.reopenForumTopic(staff.id, topic.message_thread_id);
    await api.editForumTopic(staff.id, topic.message_thread_id, { name: "Ada, sold" });
    expect(staff.topics()).toMatchObject([{ name: "Ada, sold", closed: false }]);
    await api.deleteForumTopic(staff.id, topic.message_thread_id);
    expect(await refusal(api.sendMessage(staff.id, "late", thread))).toBe(
      "400 Bad Request: message thread not found",
    );
    expect(staff.sees().map(({ text }) => text)).toEqual(["lunch?"]);
  });

  test("a plain message in a topic points at the opening of the topic, an answer at what it answers", async () => {
    const { world, api } = await open();
    const staff = world.addStaffGroup();
    const rosa = staff.has(world.addUser({ first_name: "Rosa" }));
    const { message_thread_id } = await api.createForumTopic(staff.id, "case 1");
    const brief = await api.sendMessage(staff.id, "Brief", { message_thread_id });
    rosa.saysInTopic(message_thread_id, "plain");
    rosa.repliesTo(brief, "answer");
    const [plain, answer] = (await api.getUpdates()).map(({ message }) => message);
    expect(plain).toMatchObject({ message_thread_id, is_topic_message: true });
    expect(plain?.reply_to_message?.forum_topic_created?.name).toBe("case 1");
    expect(answer).toMatchObject({ message_thread_id, is_topic_message: true });
    expect(answer?.reply_to_message?.text).toBe("Brief");
    expect(
      staff
        .sees()
        .map(({ text, replyTo }) => [text, replyTo])
        .slice(2),
    ).toEqual([
      ["plain", undefined],
      ["answer", brief.message_id],
    ]);
  });

  test("without the right to manage topics none can be opened; without topics neither", async () => {
    const { world, api } = await open();
    const poor = world.addGroup({
      type: "supergroup",
      topics: true,
      bot: { administrator: { can_manage_topics: false } },
    });
    expect(await refusal(api.createForumTopic(poor.id, "case"))).toBe(
      "400 Bad Request: not enough rights to create a topic",
    );
    const flat = world.addStaffGroup({ topics: false });
    expect(await refusal(api.createForumTopic(flat.id, "case"))).toBe(
      "400 Bad Request: the chat is not a forum",
    );
  });
});

describe("members", () => {
  test("getChatMember tells who is in, who left and who was thrown out", async () => {
    const { world, api } = await open();
    const staff = world.addStaffGroup();
    const [boss, rosa, ben, stranger] = ["Bo", "Rosa", "Ben", "Zed"].map((first_name) =>
      world.addUser({ first_name }),
    );
    staff.has(boss!, "creator");
    staff.joins(rosa!);
    staff.joins(ben!);
    const status = async (id: number) => (await api.getChatMember(staff.id, id)).status;
    expect(await Promise.all([boss!, rosa!, stranger!].map(({ id }) => status(id)))).toEqual([
      "creator",
      "member",
      "left",
    ]);
    staff.leaves(rosa!);
    staff.removes(ben!, boss!);
    expect(await Promise.all([rosa!, ben!].map(({ id }) => status(id)))).toEqual(["left", "kicked"]);
    expect(await status(424242)).toBe("administrator");
    expect(() => staff.as(rosa!)).toThrow("not in this group");
    expect(staff.sees().map(({ text }) => text)).toEqual([
      "joined: Rosa",
      "joined: Ben",
      "left: Rosa",
      "left: Ben",
    ]);
  });

  test("changes of members come to an administrator who asked for them", async () => {
    const { world, api } = await open();
    await api.getUpdates({ allowed_updates: ["chat_member"] });
    const staff = world.addStaffGroup();
    staff.joins(world.addUser({ first_name: "Rosa" }));
    const updates = await api.getUpdates();
    expect(
      updates.map(({ chat_member: c }) => [c?.old_chat_member.status, c?.new_chat_member.status]),
    ).toEqual([["left", "member"]]);
  });
});

describe("a group the bot is dragged into", () => {
  test("does not let it write to members who never wrote to it", async () => {
    const { world, api } = await open();
    const zed = world.addUser();
    world.addGroup({ bot: "member" }).has(zed);
    expect(await refusal(api.sendMessage(zed.id, "hi"))).toBe(
      "403 Forbidden: bot can't initiate conversation with a user",
    );
  });

  test("is announced; there the bot hears only what is meant for it, until it leaves", async () => {
    const { world, api } = await open({ bot: { username: "helper_bot" } });
    const group = world.addGroup({ title: "Neighbours" });
    const zed = group.has(world.addUser({ first_name: "Zed" }));
    expect(await refusal(api.sendMessage(group.id, "hi"))).toBe("400 Bad Request: chat not found");
    group.addsBot(zed);
    zed.says("nice weather");
    zed.says("/start");
    zed.says("/start@other_bot");
    zed.says("ask @helper_bot");
    const hello = await api.sendMessage(group.id, "I work in private chats.");
    zed.repliesTo(hello, "ok");
    const updates = await api.getUpdates();
    expect(updates[0]?.my_chat_member?.new_chat_member.status).toBe("member");
    expect(updates[1]?.message?.new_chat_members?.map(({ id }) => id)).toEqual([424242]);
    expect(updates.slice(2).map(({ message }) => message?.text)).toEqual(["/start", "ask @helper_bot", "ok"]);

    await api.leaveChat(group.id);
    expect(await refusal(api.sendMessage(group.id, "hi"))).toBe(
      "403 Forbidden: bot is not a member of the group chat",
    );
    group.addsBot(zed);
    group.removesBot(zed);
    expect(await refusal(api.sendMessage(group.id, "hi"))).toBe(
      "403 Forbidden: bot was kicked from the group chat",
    );
  });

  test("refuses its old identifier once it became a supergroup, and names the new one", async () => {
    const { world, api } = await open();
    const group = world.addGroup({ bot: { administrator: {} } });
    const zed = group.has(world.addUser());
    const old = group.id;
    group.upgrades(zed);
    const error = await api.sendMessage(old, "hi").catch((caught: unknown) => caught);
    expect(error).toMatchObject({
      error_code: 400,
      description: "Bad Request: group chat was upgraded to a supergroup chat",
      parameters: { migrate_to_chat_id: group.id },
    });
    await api.sendMessage(group.id, "hi again");
    zed.says("after");
    const told = (await api.getUpdates()).map(({ message }) => [
      message?.chat.id,
      message?.migrate_to_chat_id,
      message?.migrate_from_chat_id,
    ]);
    expect(told).toEqual([
      [old, group.id, undefined],
      [group.id, undefined, old],
      [group.id, undefined, undefined],
    ]);
  });

  test("in a supergroup without topics an answer carries its thread, and is no topic message", async () => {
    const { world, api } = await open();
    const staff = world.addStaffGroup({ topics: false });
    const rosa = staff.has(world.addUser());
    const brief = await api.sendMessage(staff.id, "Brief of case 7");
    rosa.repliesTo(brief, "mine");
    const [update] = await api.getUpdates();
    expect(update?.message).toMatchObject({ message_thread_id: brief.message_id, text: "mine" });
    expect(update?.message?.is_topic_message).toBeUndefined();
    expect(update?.message?.reply_to_message?.message_id).toBe(brief.message_id);
    await api.pinChatMessage(staff.id, brief.message_id);
    expect((await api.getChat(staff.id)).pinned_message?.text).toBe("Brief of case 7");
    expect(staff.sees().at(-1)).toMatchObject({ kind: "service", text: "pinned: Brief of case 7" });
  });
});
