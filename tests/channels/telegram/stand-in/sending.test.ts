import { InlineKeyboard } from "grammy";
import { describe, expect, test } from "vitest";
import { open, refusal } from "./world.ts";

// Sources: Bot API, "sendMessage", "InlineKeyboardButton", "Formatting options"; descriptions from memory of what
// the open-source Bot API server answers.
describe("sendMessage", () => {
  test("reaches a person who wrote before, dated by the given clock", async () => {
    const { world, api } = await open();
    const ada = world.addUser({ first_name: "Ada" });
    ada.says("hi");
    const sent = await api.sendMessage(ada.id, "  What does the label say? ");
    expect(sent.date).toBe(Date.parse("2031-03-04T20:15:00Z") / 1000);
    expect(ada.sees().map(({ from, text, at }) => [from, text, at])).toEqual([
      ["Ada", "hi", "2031-03-04T20:15:00.000Z"],
      ["Desk", "What does the label say?", "2031-03-04T20:15:00.000Z"],
    ]);
  });

  test("takes 4096 characters after the tags are read, not one more", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const html = { parse_mode: "HTML" as const };
    const longest = "x".repeat(4096);
    expect(await refusal(api.sendMessage(ada.id, `<b>${longest}</b>&amp;`, html))).toBe(
      "400 Bad Request: message is too long",
    );
    expect(await refusal(api.sendMessage(ada.id, `${longest}x`))).toBe(
      "400 Bad Request: message is too long",
    );
    expect((await api.sendMessage(ada.id, `<b>${longest}</b>`, html)).text).toBe(longest);
  });

  test.each([
    ["", "400 Bad Request: message text is empty"],
    [" \n ", "400 Bad Request: text must be non-empty"],
  ])("refuses %j", async (text, expected) => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    expect(await refusal(api.sendMessage(ada.id, text))).toBe(expected);
    expect(ada.hears()).toEqual([]);
  });

  test("is refused for people who never wrote, blocked the bot or are gone", async () => {
    const { world, api } = await open();
    const [stranger, blocker, gone] = [world.addUser(), world.addUser(), world.addUser()];
    blocker.starts();
    blocker.blocks();
    gone.starts();
    gone.deletesAccount();
    expect(await refusal(api.sendMessage(stranger.id, "hi"))).toBe("400 Bad Request: chat not found");
    expect(await refusal(api.sendMessage(blocker.id, "hi"))).toBe(
      "403 Forbidden: bot was blocked by the user",
    );
    expect(await refusal(api.sendMessage(gone.id, "hi"))).toBe("403 Forbidden: user is deactivated");
    blocker.unblocks();
    await api.sendMessage(blocker.id, "welcome back");
    expect(blocker.hears()).toEqual(["welcome back"]);
    const changes = (await api.getUpdates()).flatMap(({ my_chat_member }) => my_chat_member ?? []);
    expect(changes.map((change) => change.new_chat_member.status)).toEqual(["kicked", "member"]);
  });

  test("answers a message, and refuses to answer one that is gone unless told to go on", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    const question = ada.says("does it fit?");
    const answer = await api.sendMessage(ada.id, "yes", {
      reply_parameters: { message_id: question.message_id },
    });
    expect(answer.reply_to_message?.text).toBe("does it fit?");
    expect(ada.sees().at(-1)?.replyTo).toBe(question.message_id);
    const missing = { message_id: 9999 };
    expect(await refusal(api.sendMessage(ada.id, "yes", { reply_parameters: missing }))).toBe(
      "400 Bad Request: message to be replied not found",
    );
    const goOn = { reply_parameters: { ...missing, allow_sending_without_reply: true } };
    expect((await api.sendMessage(ada.id, "anyway", goOn)).reply_to_message).toBeUndefined();
  });

  test("shows buttons, and refuses callback data over 64 bytes", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const fits = new InlineKeyboard()
      .text("Square", "é".repeat(32))
      .text("Round", "r")
      .row()
      .text("Not sure", "n");
    await api.sendMessage(ada.id, "Which face?", { reply_markup: fits });
    expect(ada.sees().at(-1)?.buttons).toEqual([["Square", "Round"], ["Not sure"]]);
    const tooMuch = new InlineKeyboard().text("Square", "é".repeat(33));
    expect(await refusal(api.sendMessage(ada.id, "Which face?", { reply_markup: tooMuch }))).toBe(
      "400 Bad Request: BUTTON_DATA_INVALID",
    );
  });

  test("shows the typing line to those who can be written to only", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    expect(await api.sendChatAction(ada.id, "typing")).toBe(true);
    ada.blocks();
    expect(await refusal(api.sendChatAction(ada.id, "typing"))).toBe(
      "403 Forbidden: bot was blocked by the user",
    );
  });

  test("takes a URL-encoded form and a query string as well as JSON", async () => {
    const { world } = await open();
    const ada = world.addUser();
    ada.starts();
    const base = `${world.apiRoot}/bot${world.token}/SENDMESSAGE`;
    const keyboard = JSON.stringify({ inline_keyboard: [[{ text: "Yes", callback_data: "y" }]] });
    const form = new URLSearchParams({ chat_id: String(ada.id), text: "by form", reply_markup: keyboard });
    expect((await fetch(base, { method: "POST", body: form })).status).toBe(200);
    expect((await fetch(`${base}?chat_id=${ada.id}&text=by%20query`)).status).toBe(200);
    expect(ada.hears()).toEqual(["by form", "by query"]);
    expect(ada.sees()[1]?.buttons).toEqual([["Yes"]]);
  });
});

describe("a message already sent", () => {
  test("can be rewritten, loses its buttons unless they are given again, and not rewritten the same", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const reply_markup = new InlineKeyboard().text("Yes", "y");
    const { message_id } = await api.sendMessage(ada.id, "Is it 1.5 hp?", { reply_markup });
    const unchanged =
      "400 Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message";
    expect(await refusal(api.editMessageText(ada.id, message_id, "Is it 1.5 hp?", { reply_markup }))).toBe(
      unchanged,
    );
    await api.editMessageText(ada.id, message_id, "It is 1.5 hp.");
    expect(ada.sees().at(-1)).toMatchObject({ text: "It is 1.5 hp.", buttons: [], edited: true });
    await api.editMessageReplyMarkup(ada.id, message_id, { reply_markup });
    expect(ada.sees().at(-1)?.buttons).toEqual([["Yes"]]);
    await api.editMessageReplyMarkup(ada.id, message_id);
    expect(await refusal(api.editMessageReplyMarkup(ada.id, message_id))).toBe(unchanged);
    expect(ada.hears()).toEqual(["It is 1.5 hp."]);
  });

  test("of another person cannot be rewritten; none can where there is none", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    const hers = ada.says("mine");
    expect(await refusal(api.editMessageText(ada.id, hers.message_id, "yours"))).toBe(
      "400 Bad Request: message can't be edited",
    );
    expect(await refusal(api.editMessageText(ada.id, 777, "x"))).toBe(
      "400 Bad Request: message to edit not found",
    );
  });

  test("can be deleted for 48 hours", async () => {
    let now = "2031-03-04T20:00:00.000Z";
    const { world, api } = await open({ now: () => now });
    const ada = world.addUser();
    ada.starts();
    const [one, two] = [await api.sendMessage(ada.id, "one"), await api.sendMessage(ada.id, "two")];
    await api.deleteMessage(ada.id, one.message_id);
    expect(ada.hears()).toEqual(["two"]);
    now = "2031-03-06T20:00:00.000Z";
    expect(await refusal(api.deleteMessage(ada.id, two.message_id))).toBe(
      "400 Bad Request: message can't be deleted",
    );
    expect(await refusal(api.deleteMessage(ada.id, one.message_id))).toBe(
      "400 Bad Request: message to delete not found",
    );
  });

  test("can be copied without its author and forwarded with him", async () => {
    const { world, api } = await open();
    const [ada, staff] = [world.addUser({ first_name: "Ada" }), world.addStaffGroup({ topics: false })];
    const photo = ada.sendsPhoto({ caption: "the label" });
    await api.copyMessage(staff.id, ada.id, photo.message_id);
    await api.forwardMessage(staff.id, ada.id, photo.message_id);
    expect(staff.sees().map(({ kind, text, forwardedFrom }) => [kind, text, forwardedFrom])).toEqual([
      ["photo", "the label", undefined],
      ["photo", "the label", "Ada"],
    ]);
    expect(await refusal(api.copyMessage(staff.id, ada.id, 12345))).toBe(
      "400 Bad Request: message to copy not found",
    );
  });
});
