import { beforeEach, describe, expect, test } from "vitest";
import { caseLane, customer, desk, type Evening, evening, kim, LABEL } from "./evening.ts";

let shop: Evening;
beforeEach(() => {
  shop = evening();
});
const person = "can I talk to a person please";

describe("the digest at opening", () => {
  beforeEach(async () => {
    shop.at("2026-11-24T17:00:00-06:00");
    await shop.says("early", person);
    shop.at("2026-11-24T22:10:00-06:00");
    await shop.says("ana", LABEL);
    shop.at("2026-11-24T23:40:00-06:00");
    await shop.says("bo", person);
    await shop.says("cy", "burning smell from the pump motor");
    await shop.says("dee", person);
    await shop.types(kim, 5, "/take");
  });

  test("tells by urgency what came in, what each needs, with one act to take each", async () => {
    const alerts = (await shop.lane(desk)).length;
    shop.at("2026-11-25T07:59:59-06:00");
    await shop.tick();
    shop.at("2026-11-25T08:00:00-06:00");
    await shop.tick();
    const digest = (await shop.lane(desk)).find(({ content }) => content.text.startsWith("Good morning"));
    expect(digest?.content.text.split("\n")).toEqual([
      "Good morning. Since the desk closed: 3.",
      "DANGER · case 4 · 8 h · call: danger, safety text sent · nothing read yet",
      "PUMP DOWN · case 3 · 8 h · asked for a person · nothing read yet",
      expect.stringMatching(
        /^READY TO CONFIRM · case 2 · 9 h · confirm the motor before it ships · .*1 hp, 230 V, frame 56Y → BAKLAVA-498$/,
      ),
      "Waiting from before: 1.",
      "PUMP DOWN · case 1 · 15 h · asked for a person · nothing read yet",
      "Already in hand: 5 (Kim).",
    ]);
    expect(digest?.content.choices?.map(({ id }) => id)).toEqual(["4/take", "3/take", "2/take", "1/take"]);
    expect((await shop.lane(desk)).length).toBeGreaterThan(alerts);
  });

  test("comes once, also when the desk starts late, and not again until the next opening", async () => {
    const digests = async () => (await shop.texts(desk)).filter((text) => text.startsWith("Good morning"));
    shop.at("2026-11-25T09:30:00-06:00");
    await Promise.all([shop.tick(), shop.tick()]);
    shop.at("2026-11-25T12:00:00-06:00");
    await shop.tick();
    expect(await digests()).toHaveLength(1);
    // Thursday is Thanksgiving (fourth Thursday of November, 5 U.S.C. 6103(a)): the next opening is Friday's.
    shop.at("2026-11-26T10:00:00-06:00");
    await shop.tick();
    expect(await digests()).toHaveLength(1);
    shop.at("2026-11-27T08:00:00-06:00");
    await shop.tick();
    expect(await digests()).toHaveLength(2);
  });

  test("stays away when nothing waits", async () => {
    for (const id of [1, 2, 3]) await shop.types(kim, id, "/close answered");
    await shop.types(kim, 4, "/take");
    shop.at("2026-11-25T08:00:00-06:00");
    await shop.tick();
    expect((await shop.texts(desk)).filter((text) => text.startsWith("Good morning"))).toEqual([]);
  });
});

describe("the promise", () => {
  const late = async () => (await shop.texts(customer("ana"))).filter((text) => /taking longer/.test(text));
  const tickAt = async (instant: string) => {
    shop.at(instant);
    await shop.tick();
  };

  // The demo shop promises an answer within four opening hours.
  test("one honest word when it is past, and not more", async () => {
    shop.at("2026-11-24T10:00:00-06:00");
    await shop.says("ana", person);
    await tickAt("2026-11-24T14:00:00-06:00");
    expect(await late()).toEqual([]);
    await tickAt("2026-11-24T14:01:00-06:00");
    await tickAt("2026-11-24T15:00:00-06:00");
    await tickAt("2026-11-25T15:00:00-06:00");
    expect(await late()).toEqual([
      "This is taking longer than I told you: nobody at the desk has got to your case yet. It is not forgotten, and you don't have to write again. The desk is open until 5:30 pm today.",
    ]);
  });

  test("is counted in opening hours: not overnight, not on a holiday", async () => {
    shop.at("2026-11-25T16:30:00-06:00");
    await shop.says("ana", person);
    // One hour on Wednesday, none on Thanksgiving, three on Friday.
    await tickAt("2026-11-26T12:00:00-06:00");
    await tickAt("2026-11-27T11:00:00-06:00");
    expect(await late()).toEqual([]);
    await tickAt("2026-11-27T11:00:01-06:00");
    expect(await late()).toHaveLength(1);
  });

  test("nobody is woken: the word waits for opening hours", async () => {
    shop.at("2026-11-24T13:29:00-06:00");
    await shop.says("ana", person);
    await tickAt("2026-11-24T22:00:00-06:00");
    expect(await late()).toEqual([]);
    await tickAt("2026-11-25T08:00:00-06:00");
    expect(await late()).toHaveLength(1);
  });

  test("a taken case is late too, until the person has written", async () => {
    shop.at("2026-11-24T10:00:00-06:00");
    await shop.says("ana", person);
    await shop.says("bo", person);
    await shop.types(kim, 1, "/take");
    await shop.types(kim, 2, "> I'm on it");
    await tickAt("2026-11-24T17:00:00-06:00");
    await tickAt("2026-11-24T17:20:00-06:00");
    expect(await late()).toEqual([
      expect.stringMatching(/Kim at the desk has your case but hasn't got to writing/),
    ]);
    expect((await shop.texts(customer("bo"))).at(-1)).toBe("Kim at the desk: I'm on it");
  });

  test("a customer in talk with a person is not written to; the person is reminded, once", async () => {
    shop.at("2026-11-24T10:00:00-06:00");
    await shop.says("ana", person);
    await shop.types(kim, 1, "> what does the label say?");
    await shop.says("ana", "it says 56Y");
    await tickAt("2026-11-24T15:00:00-06:00");
    await tickAt("2026-11-24T16:00:00-06:00");
    expect(await late()).toEqual([]);
    const reminders = (await shop.texts(caseLane(1))).filter((text) => /has no answer yet/.test(text));
    expect(reminders).toEqual([
      "Kim: the customer wrote 5 h ago and has no answer yet. They were told nothing.",
    ]);
  });

  test("a thank-you to the person waits for nothing", async () => {
    shop.at("2026-11-24T10:00:00-06:00");
    await shop.says("ana", person);
    await shop.types(kim, 1, "> it's in the mail");
    await shop.says("ana", "thank you!");
    shop.at("2026-11-24T16:00:00-06:00");
    expect(await shop.tick()).toBe(0);
  });

  test("staff see that the customer was told", async () => {
    shop.at("2026-11-24T10:00:00-06:00");
    await shop.says("ana", person);
    await tickAt("2026-11-24T15:00:00-06:00");
    expect((await shop.engine.show(1, "2026-11-24T21:00:00Z"))?.text).toMatch(
      /bot: customer told it takes longer/,
    );
  });
});
