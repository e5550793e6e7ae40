import { beforeEach, expect, test } from "vitest";
import { caseLane, customer, desk, type Evening, evening, kim, LABEL, onCall } from "./evening.ts";

let shop: Evening;
beforeEach(() => {
  shop = evening();
  // A Sunday, a quarter to midnight: nobody is there.
  shop.at("2026-11-22T23:45:00-06:00");
});
const SHOCK = "my wife got a shock from the ladder in the water";

test("danger reaches the person on call and all staff at once, at any hour, with an act to take it", async () => {
  await shop.says("ana", SHOCK);
  const [called] = await shop.lane(onCall);
  expect(called?.content.text).toMatch(/^DANGER \(shock\), case 1\..*“my wife got a shock from the ladder/);
  expect(called?.content.text).toMatch(/555-0142/);
  expect(called?.content.choices?.[0]?.id).toBe("1/take");
  expect(await shop.texts(desk)).toEqual([called?.content.text]);
  expect((await shop.engine.waiting("2026-11-23T05:50:00Z")).text).toMatch(
    /^Waiting: 1\nDANGER · case 1 · 5 min/,
  );
});

test("the safety text is all the customer gets, before the alert leaves", async () => {
  const [first, ...rest] = await shop.says("ana", SHOCK);
  expect(first).toMatch(/^STOP\. Everybody out of the water/);
  expect(rest).toEqual([]);
});

test("a hazard that is not the on-call person's goes to the desk alone", async () => {
  await shop.says("ana", "the breaker keeps tripping when I turn the pump on");
  expect(await shop.lane(onCall)).toEqual([]);
  expect(await shop.texts(desk)).toEqual([expect.stringMatching(/^DANGER \(trip\)/)]);
});

test("told three times it rings once; a worse danger rings again", async () => {
  await shop.says("ana", "the breaker keeps tripping when I turn the pump on");
  await shop.says("ana", "it tripped again, the breaker tripped");
  expect(await shop.lane(desk)).toHaveLength(1);
  await shop.says("ana", SHOCK);
  expect(await shop.lane(desk)).toHaveLength(2);
  expect(await shop.lane(onCall)).toHaveLength(1);
});

test("nobody took it for ten minutes: it rings once more, and only once", async () => {
  await shop.says("ana", SHOCK);
  shop.at("2026-11-22T23:54:59-06:00");
  expect(await shop.tick()).toBe(0);
  shop.at("2026-11-22T23:55:00-06:00");
  await shop.tick();
  await shop.tick();
  expect(await shop.texts(onCall)).toEqual([
    expect.stringMatching(/^DANGER/),
    expect.stringMatching(/^DANGER \(shock\), case 1: nobody has taken it for 10 min\./),
  ]);
});

test("a taken danger does not ring again", async () => {
  await shop.says("ana", SHOCK);
  await shop.types(kim, 1, "/take");
  shop.at("2026-11-23T00:10:00-06:00");
  expect(await shop.tick()).toBe(0);
});

test("the bot, silent while a person has the case, still answers danger, and the person sees it", async () => {
  await shop.says("ana", LABEL);
  await shop.types(kim, 1, "/take");
  expect(await shop.says("ana", "ok I'll wait")).toEqual([]);
  const replies = await shop.says("ana", "there's smoke coming out of the motor!");
  expect(replies).toEqual([expect.stringMatching(/breaker/)]);
  expect((await shop.texts(caseLane(1))).at(-1)).toMatch(/^DANGER \(fire\)\..*“there's smoke/);
  expect(await shop.lane(onCall)).toHaveLength(1);
});

test("while a danger is open nothing about parts leaves the desk, and the case is neither handed back nor closed", async () => {
  await shop.says("ana", SHOCK);
  await shop.types(kim, 1, "/take");
  for (const line of ["/back", "/offer MUFFIN-806 it is here", "/close no-reply", "/urgency planning"]) {
    expect((await shop.types(kim, 1, line)).answer, line).toMatch(/unresolved danger \(shock\)/);
  }
  expect((await shop.types(kim, 1, "> Is everybody out of the water?")).done).toBe(true);
});

test("a person who has dealt with it says so; the customer is told nothing by that", async () => {
  await shop.says("ana", SHOCK);
  await shop.types(kim, 1, "/take");
  const before = await shop.texts(customer("ana"));
  expect((await shop.types(kim, 1, "/allclear")).answer).toMatch(/The customer was told nothing/);
  expect(await shop.texts(customer("ana"))).toEqual(before);
  expect((await shop.types(kim, 1, "/back")).done).toBe(true);
  expect((await shop.types(kim, 1, "/allclear")).answer).toMatch(/no open danger/);
});
