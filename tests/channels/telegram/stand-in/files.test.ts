import { InputFile, InputMediaBuilder } from "grammy";
import { describe, expect, test } from "vitest";
import { open, refusal } from "./world.ts";

const bytes = Uint8Array.from({ length: 3000 }, (_, n) => (n * 37) % 256);

// Source: Bot API, "Sending files" and "getFile".
describe("files", () => {
  test("a photo uploaded by the bot can be sent again by its identifier", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const sent = await api.sendPhoto(ada.id, new InputFile(bytes, "faces.png"), {
      caption: "<b>Which</b>?",
      parse_mode: "HTML",
    });
    expect(sent.caption).toBe("Which?");
    await api.sendPhoto(ada.id, sent.photo.at(-1)!.file_id);
    expect(
      ada
        .sees()
        .slice(1)
        .map(({ kind, text }) => [kind, text]),
    ).toEqual([
      ["photo", "Which?"],
      ["photo", ""],
    ]);
    expect(world.calls.of("sendPhoto").map(({ uploads }) => uploads)).toEqual([["faces.png"], []]);
  });

  test("what was uploaded comes back byte for byte, whatever it holds", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const { document } = await api.sendDocument(ada.id, new InputFile(bytes, "stock list.csv"));
    expect([document.file_name, document.file_size]).toEqual(["stock list.csv", 3000]);
    const { file_path } = await api.getFile(document.file_id);
    const answer = await fetch(`${world.apiRoot}/file/bot${world.token}/${file_path}`);
    expect(new Uint8Array(await answer.arrayBuffer())).toEqual(bytes);
  });

  // An independent writer of multipart bodies: the FormData of the platform (RFC 7578).
  test("multipart bodies of another client are read alike", async () => {
    const { world } = await open();
    const ada = world.addUser();
    ada.starts();
    const form = new FormData();
    form.set("chat_id", String(ada.id));
    form.set("caption", "line one\r\nline two");
    form.set("document", new Blob([bytes]), 'a "quoted" name.bin');
    const answer = await fetch(`${world.apiRoot}/bot${world.token}/sendDocument`, {
      method: "POST",
      body: form,
    });
    expect(await answer.json()).toMatchObject({ ok: true, result: { document: { file_size: 3000 } } });
    expect(ada.sees().at(-1)?.text).toBe("line one\r\nline two");
  });

  test("a person's photo can be fetched, an unknown one not", async () => {
    const { world, api } = await open();
    const photo = world.addUser().sendsPhoto({ bytes, caption: "my label" });
    expect(photo.photo.map(({ width }) => width)).toEqual([90, 1280]);
    const { file_path } = await api.getFile(photo.photo[1]!.file_id);
    const answer = await fetch(`${world.apiRoot}/file/bot${world.token}/${file_path}`);
    expect(new Uint8Array(await answer.arrayBuffer())).toEqual(bytes);
    expect(await refusal(api.getFile("made-up"))).toBe(
      "400 Bad Request: wrong file_id or the file is temporarily unavailable",
    );
    expect((await fetch(`${world.apiRoot}/file/bot${world.token}/photos/../secret`)).status).toBe(404);
  });

  test("an album arrives whole or not at all", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const picture = (name: string) => InputMediaBuilder.photo(new InputFile(bytes, name));
    const sent = await api.sendMediaGroup(ada.id, [picture("a.jpg"), picture("b.jpg")]);
    expect(sent).toHaveLength(2);
    const albums = ada.sees().flatMap(({ album }) => album ?? []);
    expect([albums.length, new Set(albums).size]).toEqual([2, 1]);
    const broken = [picture("c.jpg"), InputMediaBuilder.photo("made-up")];
    expect(await refusal(api.sendMediaGroup(ada.id, broken))).toBe(
      "400 Bad Request: wrong file identifier/HTTP URL specified",
    );
    expect(ada.sees().filter(({ kind }) => kind === "photo")).toHaveLength(2);
  });

  // Source: Bot API, editMessageMedia.
  test("the bot's own photo can be exchanged, by upload or identifier, unless nothing would change", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const { message_id, photo } = await api.sendPhoto(ada.id, new InputFile(bytes, "old.png"), {
      caption: "Old",
    });
    const edited = await api.editMessageMedia(
      ada.id,
      message_id,
      InputMediaBuilder.photo(new InputFile(bytes, "new.png")),
    );
    expect(ada.sees().at(-1)).toMatchObject({ message_id, kind: "photo", text: "", edited: true });
    const now = edited !== true && "photo" in edited ? edited.photo!.at(-1)!.file_id : "";
    expect(now).not.toBe(photo.at(-1)!.file_id);
    const exchange = (media: string, message: number = message_id) =>
      refusal(api.editMessageMedia(ada.id, message, InputMediaBuilder.photo(media)));
    expect(await exchange(now)).toMatch(/^400 Bad Request: message is not modified/);
    expect(await exchange(photo.at(-1)!.file_id)).toBe("accepted");
    expect(await exchange("made-up")).toBe("400 Bad Request: wrong file identifier/HTTP URL specified");
    expect(await exchange(now, 777)).toBe("400 Bad Request: message to edit not found");
  });

  test("an identifier sends its own kind of file only, and a caption has 1024 characters", async () => {
    const { world, api } = await open();
    const ada = world.addUser();
    ada.starts();
    const { document } = await api.sendDocument(ada.id, new InputFile(bytes, "a.bin"));
    expect(await refusal(api.sendPhoto(ada.id, document.file_id))).toBe(
      "400 Bad Request: wrong file identifier/HTTP URL specified",
    );
    expect(await refusal(api.sendDocument(ada.id, document.file_id, { caption: "x".repeat(1025) }))).toBe(
      "400 Bad Request: message caption is too long",
    );
  });
});
