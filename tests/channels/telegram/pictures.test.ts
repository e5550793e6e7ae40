import { expect, test } from "vitest";
import { badRequest } from "../../../src/channels/telegram/stand-in/refusal.ts";
import { openTown } from "./town.ts";

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

test("the verdict's running costs come with their bars, and what they show in words", async () => {
  const { world } = await openTown();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("HP 1.5 SF 1.1 115/230 V 19.2/9.6 A FR 56Y 3450 rpm 60 hz 1 ph, double breaker");
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
