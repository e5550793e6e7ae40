import { describe, expect, test } from "vitest";
import { LABEL } from "../../desk/evening.ts";
import { openTown, saying, topicOf } from "./town.ts";

describe("a customer in a private chat", () => {
  test("is greeted, tells the label in two messages and gets a verdict, in order", async () => {
    const { world } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    ada.starts();
    await world.quiet();
    expect(ada.hears()).toEqual([expect.stringContaining("motor desk of The Soggy Towel")]);
    ada.says("1 hp, SF 1.65, 230V");
    await world.quiet();
    expect(ada.hears().at(-1)).toMatch(/^Got it: 1 hp, SF 1\.65, 230 V\./);
    ada.says("frame 56Y, single phase, 3450 rpm, model QX-4471");
    await world.quiet();
    const [, , verdict, running, cautions] = ada.hears();
    expect(verdict).toMatch(/^Got it: frame 56Y[\s\S]*should fit as a drop-in/);
    expect(running).toMatch(/^Running it 8 h a day/);
    expect(cautions).toMatch(/^Before anyone opens it:[\s\S]*licensed electrician/);
  });

  test("finds the commands, and each does what it says", async () => {
    const { world, store } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    await world.until(() => world.commands('{"type":"all_private_chats"}').length > 0);
    expect(world.commands('{"type":"all_private_chats"}').map(({ command }) => command)).toEqual([
      "sofar",
      "fresh",
      "person",
      "erase",
      "help",
    ]);
    const answersTo = async (text: string) => {
      const before = ada.hears().length;
      ada.says(text);
      await world.quiet();
      return ada.hears().slice(before).join("\n");
    };
    expect(await answersTo("/help")).toContain("/erase  delete everything kept of this chat");
    await answersTo("1 hp, SF 1.65");
    expect(await answersTo("/sofar")).toContain("So far I have: 1 hp, SF 1.65");
    expect(await answersTo("/start")).toContain("Welcome back. So far I have: 1 hp, SF 1.65");
    expect(await answersTo("/fresh")).toContain("Fresh start");
    expect(await answersTo("/sofar@desk_stand_in_bot")).toContain("I have nothing from the label yet");
    expect(await answersTo("/person")).toContain("I've passed this to a person at the desk");
    expect(await answersTo("/myid")).toBe(`Your id here is ${ada.id}.`);
    expect(await answersTo("/orders")).toContain("I don't know that command");
    expect(await answersTo("/erase")).toContain("Reply YES to erase it");
    expect(await answersTo("YES")).toContain("everything I kept of this chat is erased");
    expect(await store.findThread(`telegram:${ada.id}`)).toBeUndefined();
  });

  test("may press a button instead of typing; the button goes and its question is answered once", async () => {
    const { world } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    ada.says("delete my data");
    await world.quiet();
    const question = saying(ada, "Reply YES");
    expect(question.buttons.flat()).toEqual(["Yes", "No"]);
    const no = ada.presses("No");
    const again = ada.presses("Yes");
    await world.quiet();
    expect(ada.hears().at(-1)).toBe("Nothing was erased.");
    expect(no.answer()?.text).toBe("");
    expect(again.answer()?.text).toBe("That question has passed. Just type your answer.");
    expect(saying(ada, "Reply YES").buttons).toEqual([]);
  });

  test("answers a question of few answers by a button, and the match goes on from there", async () => {
    const { world, engine } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    ada.says("1 hp, SF 1.65, 230V, frame 56Y, 3450 rpm");
    await world.quiet();
    const question = ada.sees().at(-1)!;
    expect(question.buttons.flat()).toEqual(["Single phase", "Three phase", "I can't tell"]);
    ada.presses("Single phase");
    await world.quiet();
    expect((await engine.thread(`telegram:${ada.id}`)).facts.phase?.value).toBe(1);
    expect(ada.hears().join("\n")).toContain("should fit as a drop-in");
  });

  test("with a tampered app gets nowhere: data no button carries does nothing and is told so", async () => {
    const { world, store } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    ada.says(LABEL);
    await world.quiet();
    const before = ada.hears();
    const presses = ["1/take", "erase/1", "ask/hp/99", "", "x".repeat(64), '{"__proto__":1}'].map((data) =>
      ada.forgesPress(data, saying(ada, "Before anyone opens it")),
    );
    await world.quiet();
    expect(presses.map((press) => press.answer()?.text)).toEqual(
      presses.map(() => "That question has passed. Just type your answer."),
    );
    expect(ada.hears()).toEqual(before);
    expect((await store.findCase(1))?.state).toBe("waiting");
  });

  test("corrects a slip by editing the message", async () => {
    const { world, engine } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    const message = ada.says("1 hp, SF 1.65, 115V");
    await world.quiet();
    ada.edits(message, "1 hp, SF 1.65, 230V");
    await world.quiet();
    expect(ada.hears().at(-1)).toContain("Changed volts from 115 V to 230 V.");
    ada.edits(message, "SF 1.65, 230V");
    await world.quiet();
    const { facts } = await engine.thread(`telegram:${ada.id}`);
    expect(facts.volts?.value).toEqual([230]);
    expect(facts.hp).toBeUndefined();
  });

  test("sends a photo: it goes to the case, and the numbers are asked for meanwhile", async () => {
    const town = await openTown();
    const { world, kim } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.sendsPhoto();
    await world.quiet();
    expect(ada.hears()).toEqual([expect.stringMatching(/put that with your case[\s\S]*HP, SF, volts/)]);
    const topic = topicOf(town, 1);
    expect(kim.sees(topic).filter(({ kind }) => kind === "photo")).toHaveLength(1);
  });

  test("sends an album with a caption: one answer, one album for staff, the words are read", async () => {
    const town = await openTown();
    const { world, kim, engine } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.sendsAlbum(3, { caption: "1 hp, SF 1.65, frame 56Y" });
    await world.until(() => ada.hears().length > 0);
    await world.quiet();
    expect(ada.hears().filter((text) => text.includes("put that with your case"))).toHaveLength(1);
    const photos = kim.sees(topicOf(town, 1)).filter(({ album }) => album !== undefined);
    expect(photos).toHaveLength(3);
    expect(new Set(photos.map(({ album }) => album)).size).toBe(1);
    expect((await engine.thread(`telegram:${ada.id}`)).facts.hp?.value).toBe(1);
  });

  test("sends a file of any name; it reaches staff as a file", async () => {
    const town = await openTown();
    const ada = town.world.addUser({ first_name: "Ada" });
    ada.sendsDocument({ fileName: "../../etc/label.pdf", caption: "the label" });
    await town.world.quiet();
    expect(town.kim.sees(topicOf(town, 1)).filter(({ kind }) => kind === "document")).toHaveLength(1);
  });

  test("sends a voice message, a sticker, a place, a contact: a kind line each", async () => {
    const { world } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    ada.sendsVoice();
    ada.sendsSticker();
    ada.sendsLocation({ latitude: 1, longitude: 2 });
    ada.sendsContact({ phone_number: "555-0101", first_name: "Bo" });
    await world.quiet();
    expect(ada.hears()).toEqual([
      expect.stringContaining("can't listen to voice messages"),
      expect.stringContaining("Now the label"),
      expect.stringContaining("don't need to know where you are"),
      expect.stringContaining("don't keep contacts"),
    ]);
  });

  test("whose words look like markup is shown as typed, to staff and in the echo", async () => {
    const town = await openTown();
    const ada = town.world.addUser({ first_name: "<b>Ada</b>" });
    ada.says("I want a person <a href='x'>& <b>now</i> please");
    await town.world.quiet();
    expect(ada.hears()).toHaveLength(1);
    const brief = saying(town.kim, "Case 1 waits", topicOf(town, 1));
    expect(brief.text).toContain("<a href='x'>& <b>now</i> please");
  });

  test("is shown that the bot is at work when it takes longer than a moment", async () => {
    const { world } = await openTown({ pace: { typingAfter: 10, albumGap: 200 } });
    const ada = world.addUser({ first_name: "Ada" });
    ada.sendsAlbum(2);
    await world.until(() => ada.hears().length > 0);
    expect(world.calls.of("sendChatAction").map(({ params }) => [params.chat_id, params.action])).toEqual([
      [ada.id, "typing"],
    ]);
  });
});

describe("what another program on the same store leaves for a customer", () => {
  test("is delivered, in parts where it is long, with the buttons under the last", async () => {
    const { world, store, clock } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    ada.starts();
    await world.quiet();
    const lines = Array.from({ length: 400 }, (_, n) => `line ${n} <of & many>`);
    await store.commit({
      at: clock.now(),
      outgoing: [
        {
          lane: { kind: "customer", threadId: `telegram:${ada.id}` },
          content: { text: lines.join("\n"), choices: [{ id: "power/1", label: "Power is off" }] },
        },
      ],
    });
    await world.until(() => ada.hears().some((text) => text.includes("line 399")));
    const parts = ada.sees().slice(2);
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.map(({ text }) => text).join("\n")).toBe(lines.join("\n"));
    for (const { text } of parts) expect(text.length).toBeLessThanOrEqual(4096);
    expect(parts.map(({ buttons }) => buttons.flat().length)).toEqual([...parts.slice(1).map(() => 0), 1]);
  });

  test("in parts is not begun anew when a later part has to wait", async () => {
    const { world, store, clock } = await openTown();
    const ada = world.addUser({ first_name: "Ada" });
    ada.starts();
    await world.quiet();
    world.faults.plan("sendMessage", { kind: "bad gateway" }, { after: 1, times: 2 });
    const text = `${"a".repeat(4000)}\n${"b".repeat(4000)}`;
    const lane = { kind: "customer", threadId: `telegram:${ada.id}` } as const;
    await store.commit({ at: clock.now(), outgoing: [{ lane, content: { text } }] });
    await world.until(() => ada.hears().length === 3);
    expect(
      ada
        .hears()
        .slice(1)
        .map((part) => part[0]),
    ).toEqual(["a", "b"]);
  });
});

describe("a customer who cannot be reached", () => {
  test("after blocking the bot: what waits is set aside and staff are told in the case", async () => {
    const town = await openTown();
    const { world, kim, store } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.says(LABEL);
    await world.quiet();
    const topic = topicOf(town, 1);
    ada.blocks();
    kim.saysInTopic(topic, "> it is on the shelf");
    await world.until(() => kim.hears(topic).some((text) => text.includes("NOT DELIVERED")));
    await world.quiet();
    expect(kim.hears(topic).at(-1)).toMatch(/NOT DELIVERED to the customer \(they blocked the bot/);
    expect(await store.parked()).toHaveLength(1);
    expect((await store.undelivered()).length).toBe(0);
    kim.says("/undelivered");
    await world.quiet();
    expect(kim.hears("general").at(-1)).toMatch(
      /Could never be delivered: 1\n.*customer of case 1 · sendMessage: 403 Forbidden: bot was blocked by the user/,
    );
    // Another customer is served meanwhile, and this one again when they come back.
    ada.says("sorry, are you there?");
    await world.quiet();
    expect(await store.undelivered()).toEqual([]);
    expect(kim.hears(topic).at(-1)).toContain("Customer: sorry, are you there?");
  });

  test("with several messages waiting: all are set aside together, and staff are told once", async () => {
    const town = await openTown();
    const { world, kim, store, clock } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.says(LABEL);
    await world.quiet();
    const topic = topicOf(town, 1);
    ada.blocks();
    const lane = { kind: "customer", threadId: `telegram:${ada.user.id}` } as const;
    const outgoing = ["one", "two", "three"].map((text) => ({ lane, content: { text } }));
    await store.commit({ at: clock.now(), outgoing });
    await world.until(() => kim.hears(topic).some((text) => text.includes("NOT DELIVERED")));
    await world.quiet();
    expect(kim.hears(topic).filter((text) => text.includes("NOT DELIVERED"))).toHaveLength(1);
    expect(await store.parked()).toHaveLength(3);
  });

  test("because the account is gone: the same", async () => {
    const town = await openTown();
    const { world, kim, store } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.says(LABEL);
    await world.quiet();
    ada.deletesAccount();
    kim.saysInTopic(topicOf(town, 1), "> it is on the shelf");
    await world.until(() => kim.hears().some((text) => text.includes("NOT DELIVERED")));
    expect(await store.parked()).toHaveLength(1);
  });
});

describe("a customer in talk with a person", () => {
  test("writes to that person, and what cannot be passed on is told to staff only", async () => {
    const town = await openTown();
    const { world, kim } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.says(LABEL);
    await world.quiet();
    const topic = topicOf(town, 1);
    kim.saysInTopic(topic, "/take");
    await world.quiet();
    const heard = ada.hears().length;
    ada.says("is it loud?");
    ada.sendsVoice();
    ada.starts();
    await world.quiet();
    expect(ada.hears()).toHaveLength(heard);
    expect(kim.hears(topic).slice(-3)).toEqual([
      "Customer: is it loud?",
      "The customer sent something I can't pass on (a voice message). Ask them to type it or send a photo.",
      "Customer: hello",
    ]);
  });
});
