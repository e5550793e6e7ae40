import { InlineKeyboard } from "grammy";
import { describe, expect, test } from "vitest";
import { open, refusal } from "./world.ts";

// Source: Bot API, "Message", "CallbackQuery", "answerCallbackQuery", "setMyCommands".
describe("people", () => {
  test("send what a support chat gets, and the bot receives each in its own shape", async () => {
    const { world, api } = await open();
    const ada = world.addUser({ first_name: "Ada", language_code: "es" });
    ada.starts("shop42");
    ada.sendsDocument({ fileName: "label.pdf", caption: "see page 2" });
    ada.sendsVoice(7);
    ada.sendsSticker("👍");
    ada.sendsLocation({ latitude: 1.5, longitude: -2.5 });
    ada.sendsContact({ phone_number: "+1 555 0100", first_name: "Ada" });
    ada.sendsAlbum(3, { caption: "three sides" });
    const messages = (await api.getUpdates()).map(({ message }) => message);
    expect(messages[0]).toMatchObject({
      text: "/start shop42",
      entities: [{ type: "bot_command", offset: 0, length: 6 }],
      from: { language_code: "es", is_bot: false },
      chat: { id: ada.id, type: "private", first_name: "Ada" },
    });
    expect(messages[1]).toMatchObject({ document: { file_name: "label.pdf" }, caption: "see page 2" });
    expect(messages[2]?.voice?.duration).toBe(7);
    expect(messages[3]?.sticker?.emoji).toBe("👍");
    expect(messages[4]?.location).toEqual({ latitude: 1.5, longitude: -2.5 });
    expect(messages[5]?.contact?.phone_number).toBe("+1 555 0100");
    const album = messages.slice(6);
    expect(album.map((message) => message?.caption)).toEqual(["three sides", undefined, undefined]);
    expect(new Set(album.map((message) => message?.media_group_id)).size).toBe(1);
  });

  test("rewrite their messages; what was already queued stays as it was", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    const message = ada.says("15 hp");
    ada.edits(message, "1.5 hp");
    const [first, second] = await api.getUpdates();
    expect(first?.message?.text).toBe("15 hp");
    expect(second?.edited_message).toMatchObject({ message_id: message.message_id, text: "1.5 hp" });
    expect(second?.edited_message?.edit_date).toBeGreaterThan(0);
    expect(ada.sees()).toMatchObject([{ text: "1.5 hp", edited: true }]);
  });

  test("press a button they can see, by its label or its data, and read the answer once", async () => {
    const { world, api } = await open();
    const ada = world.addUser({ first_name: "Ada" });
    ada.starts();
    const reply_markup = new InlineKeyboard().text("Square", "face:square").text("Round", "face:round");
    await api.sendMessage(ada.id, "Which face?", { reply_markup });
    const press = ada.presses("Square");
    ada.presses("face:round");
    expect(() => ada.presses("Oval")).toThrow('no button "Oval" to press. Buttons in sight: Square, Round');
    const [first, second] = (await api.getUpdates()).flatMap(({ callback_query }) => callback_query ?? []);
    expect(first).toMatchObject({
      data: "face:square",
      from: { first_name: "Ada" },
      message: { text: "Which face?" },
    });
    expect(second?.data).toBe("face:round");
    expect(press.answer()).toBeUndefined();
    await api.answerCallbackQuery(first!.id, { text: "Noted" });
    expect(press.answer()).toEqual({ text: "Noted", alert: false });
    const tooLate = "400 Bad Request: query is too old and response timeout expired or query ID is invalid";
    expect(await refusal(api.answerCallbackQuery(first!.id))).toBe(tooLate);
    expect(await refusal(api.answerCallbackQuery("made-up"))).toBe(tooLate);
  });

  test("with a tampered app send data no button carries", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const plain = await api.sendMessage(ada.id, "no buttons here");
    ada.forgesPress("close:case:1", plain);
    const queries = (await api.getUpdates()).flatMap(({ callback_query }) => callback_query ?? []);
    expect(queries.map(({ data }) => data)).toEqual(["close:case:1"]);
  });

  test("see the commands the bot published", async () => {
    const { world, api } = await open();
    await api.setMyCommands([{ command: "readings", description: "What I have read so far" }]);
    expect(world.commands()).toEqual([{ command: "readings", description: "What I have read so far" }]);
    expect(await refusal(api.setMyCommands([{ command: "Start over", description: "x" }]))).toBe(
      "400 Bad Request: BOT_COMMAND_INVALID",
    );
  });
});

describe("two stand-ins", () => {
  test("side by side know nothing of each other", async () => {
    const [one, two] = [await open(), await open()];
    const ada = one.world.addUser();
    two.world.addUser();
    ada.says("only here");
    expect(await one.api.getUpdates()).toHaveLength(1);
    expect(await two.api.getUpdates()).toHaveLength(0);
    expect(two.world.calls.all.map(({ method }) => method)).toEqual(["getUpdates"]);
  });

  test("free their port when they close", async () => {
    const { world } = await open();
    const port = Number(new URL(world.apiRoot).port);
    const waiting = fetch(`${world.apiRoot}/bot${world.token}/getUpdates?timeout=30`);
    await world.until(() => world.calls.underWay.length === 1);
    await Promise.all([expect(waiting).rejects.toThrow(), world.close()]);
    const again = await open({ port });
    expect(again.world.apiRoot).toBe(world.apiRoot);
  });
});
