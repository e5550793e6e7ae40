import { Api } from "grammy";
import { describe, expect, test } from "vitest";
import { badRequest } from "../../../src/channels/telegram/stand-in/refusal.ts";
import { openTown, saying, type Town, token, topicOf } from "./town.ts";

const wholeLabel = "HP 1.5 SF 1.1 115/230 V 19.2/9.6 A FR 56Y 3450 rpm 60 hz 1 ph, double breaker";
const label = /^Drawing of an invented motor label\. Marked on it:/;

test("a question comes with the picture that helps, once, and what the picture shows in words", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("1 hp, SF 1.65, 230V");
  await world.quiet();
  const [, picture, question] = ada.sees();
  expect(picture).toMatchObject({ kind: "photo", byBot: true, text: expect.stringMatching(label) });
  expect(picture!.text).toMatch(/speed, frame, phase/);
  expect(question!.text).toContain("To go on I need");
  // The phone buzzes for the words, not for the picture too.
  expect(world.calls.of("sendPhoto")[0]!.params).toMatchObject({ disable_notification: true });

  // What is still missing was shown already.
  ada.says("I have a 20 A breaker");
  await world.quiet();
  expect(ada.hears().at(-1)).toContain("Still missing");
  expect(world.calls.of("sendPhoto")).toHaveLength(1);
});

test("a rating that is asked about is shown on the label before it is explained", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("what is SF?");
  await world.quiet();
  const [, picture, explained] = ada.sees();
  expect(picture).toMatchObject({
    kind: "photo",
    text: expect.stringMatching(/Marked on it: service factor/i),
  });
  expect(explained!.text).toMatch(/service factor/i);
});

test("face and shaft, asked together, come as a picture each", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("1.5 hp, SF 1.1, 115/230 V, 3450 rpm, single phase, can't read the frame");
  await world.quiet();
  expect(ada.sees().map(({ kind, text }) => [kind, text.split(/[.,:]/)[0]])).toEqual([
    ["text", expect.stringContaining("1")],
    ["photo", "Drawing of motor mounts"],
    ["photo", "Drawing of two shaft ends from the side and from the end"],
    ["text", expect.anything()],
  ]);
});

test("the verdict's running costs come with their bars, and what they show in words", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says(wholeLabel);
  await world.quiet();
  const seen = ada.sees();
  const bars = seen.findIndex(({ kind }) => kind === "photo");
  // 230 V x 9.6 A x 0.85 = 1.877 kW; x 8 h x 365 = 5480 kWh; x $0.1729 = $948, told as $950 (worked by hand).
  expect(seen[bars]!.text).toMatch(
    /your motor now about \$950.*8 h a day.*17\.3 ¢ per kWh.*power factor 0\.85/,
  );
  expect(seen[bars + 1]!.text).toMatch(/Running it 8 h a day at 17\.3 ¢\/kWh/);
  expect(seen.filter(({ kind }) => kind === "photo")).toHaveLength(1);
});

test("danger is answered without any picture", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("1 hp, what is SF? there is smoke coming out of the motor");
  await world.quiet();
  expect(ada.sees().filter(({ kind }) => kind === "photo")).toEqual([]);
  expect(ada.hears()[0]).toMatch(/STOP|off/);
});

test("a picture that is refused does not keep the question back, and is not tried for ever", async () => {
  const { world, log } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  world.faults.plan("sendPhoto", {
    kind: "refused",
    refusal: badRequest("PHOTO_INVALID_DIMENSIONS"),
  });
  ada.says("1 hp, SF 1.65, 230V");
  await world.quiet();
  expect(ada.hears()).toEqual([expect.stringContaining("To go on I need")]);
  expect(world.calls.of("sendPhoto")).toHaveLength(1);
  expect(log.some(({ text }) => text === "a picture was left out")).toBe(true);
});

// Source: Bot API, "Sending files": "If the file is already stored somewhere on the Telegram servers, you don't need to
// reupload it"; an identifier is valid for the bot that got it.
describe("a picture that was uploaded once", () => {
  const uploads = ({ world }: Pick<Town, "world">) =>
    world.calls.of("sendPhoto").map((call) => call.uploads.length);
  const asks = async ({ world }: Pick<Town, "world">, name: string) => {
    const person = world.addUser({ first_name: name });
    person.says("what is SF?");
    await world.quiet();
    return person.sees().filter(({ kind }) => kind === "photo");
  };

  test("is sent by its identifier to whoever needs it next", async () => {
    const town = await openTown();
    const [first] = await asks(town, "Ada");
    const [second] = await asks(town, "Ben");
    expect(uploads(town)).toEqual([1, 0]);
    expect([second!.file, second!.text]).toEqual([first!.file, first!.text]);
  });

  test("is uploaded again, once, when Telegram does not take the identifier, and sent by the new one then", async () => {
    const town = await openTown();
    await asks(town, "Ada");
    town.world.faults.plan("sendPhoto", {
      kind: "refused",
      refusal: badRequest("wrong file identifier/HTTP URL specified"),
    });
    expect(await asks(town, "Ben")).toHaveLength(1);
    expect(await asks(town, "Cleo")).toHaveLength(1);
    expect(uploads(town)).toEqual([1, 0, 1, 0]);
    expect(town.log.filter(({ level }) => level !== "info")).toEqual([]);
  });

  test("is not tried again when something else is refused", async () => {
    const town = await openTown();
    await asks(town, "Ada");
    town.world.faults.plan("sendPhoto", {
      kind: "refused",
      refusal: badRequest("not enough rights to send photos"),
    });
    expect(await asks(town, "Ben")).toHaveLength(0);
    expect(uploads(town)).toEqual([1, 0]);
  });

  test("is not kept when it shows what a customer said", async () => {
    const town = await openTown();
    for (const name of ["Ada", "Ben"]) {
      town.world.addUser({ first_name: name }).says(wholeLabel);
      await town.world.quiet();
    }
    const bars = town.world.calls.of("sendPhoto").filter(({ params }) => params.caption?.startsWith("Bars"));
    expect(bars.map((call) => call.uploads.length)).toEqual([1, 1]);
  });
});

describe("the brief as a card", () => {
  const cardsIn = ({ group }: Pick<Town, "group">, topic: number) =>
    group.sees(topic).filter(({ kind, text }) => kind === "photo" && text.startsWith("The brief above"));
  const exchanges = ({ world }: Pick<Town, "world">) => world.calls.of("editMessageMedia").length;

  test("stands below the brief in the case's topic; the text stays", async () => {
    const town = await openTown();
    const { world, group } = town;
    world.addUser({ first_name: "Ada" }).says(wholeLabel);
    await world.quiet();
    const topic = topicOf(town, 1);
    const [brief, card] = group.sees(topic).filter(({ kind }) => kind !== "service");
    expect(brief!.text).toMatch(/Has: .*1\.5.*Said last: /s);
    expect(card).toMatchObject({
      kind: "photo",
      byBot: true,
      text: expect.stringMatching(/^The brief above/),
    });
    // One buzz for both.
    expect(
      world.calls.of("sendPhoto").find(({ params }) => params.chat_id === group.id)!.params,
    ).toMatchObject({
      disable_notification: true,
      message_thread_id: topic,
    });
  });

  test("is exchanged in place when something more is known, not with every message", async () => {
    const town = await openTown();
    const { world } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.says("I want to talk to a person. It is 1.5 hp");
    await world.quiet();
    const topic = topicOf(town, 1);
    const [before] = cardsIn(town, topic);
    ada.says("are you there?");
    await world.quiet();
    expect(exchanges(town)).toBe(0);
    ada.says("SF is 1.1, 230 V");
    await world.quiet();
    expect(exchanges(town)).toBe(1);
    const [after, another] = cardsIn(town, topic);
    expect([after!.message_id, after!.edited, another]).toEqual([before!.message_id, true, undefined]);
    expect(after!.file).not.toBe(before!.file);
  });

  test("comes anew when the old one is gone", async () => {
    const town = await openTown();
    const { world, group } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.says("I want to talk to a person. It is 1.5 hp");
    await world.quiet();
    const topic = topicOf(town, 1);
    const [before] = cardsIn(town, topic);
    await new Api(token, { apiRoot: world.apiRoot }).deleteMessage(group.id, before!.message_id);
    ada.says("SF is 1.1, 230 V");
    await world.quiet();
    const [after, another] = cardsIn(town, topic);
    expect([after!.message_id > before!.message_id, another]).toEqual([true, undefined]);
  });

  test("comes when something is known: before, the brief says all there is", async () => {
    const town = await openTown();
    const { world } = town;
    const ada = world.addUser({ first_name: "Ada" });
    ada.says("I want to talk to a person");
    await world.quiet();
    expect(cardsIn(town, topicOf(town, 1))).toEqual([]);
    ada.says("SF is 1.1");
    await world.quiet();
    expect(cardsIn(town, topicOf(town, 1))).toHaveLength(1);
    ada.says("start over");
    await world.quiet();
    expect([cardsIn(town, topicOf(town, 1))[0]!.edited, exchanges(town)]).toEqual([true, 1]);
  });

  test("does not keep the brief back when it is refused", async () => {
    const town = await openTown();
    const { world, group } = town;
    const ada = world.addUser({ first_name: "Ada" });
    world.faults.plan(
      "sendPhoto",
      { kind: "refused", refusal: badRequest("PHOTO_INVALID_DIMENSIONS") },
      { when: ({ chat_id }) => chat_id === group.id },
    );
    ada.says("I want to talk to a person. It is 1.5 hp");
    await world.quiet();
    expect(saying(group, "Case 1 waits", topicOf(town, 1)).buttons).not.toEqual([]);
    expect(cardsIn(town, topicOf(town, 1))).toEqual([]);
    ada.says("it says 1.5 hp");
    await world.quiet();
    expect(cardsIn(town, topicOf(town, 1))).toHaveLength(1);
  });

  test("is left out where all cases share one chat", async () => {
    const { world, group } = await openTown({ topics: false });
    world.addUser({ first_name: "Ada" }).says("I want to talk to a person. It is 1.5 hp");
    await world.quiet();
    expect(group.sees().some(({ text }) => text.includes("Case 1 waits"))).toBe(true);
    expect(group.sees().filter(({ kind }) => kind === "photo")).toEqual([]);
  });
});
