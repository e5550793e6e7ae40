import { beforeEach, describe, expect, test } from "vitest";
import { caseLane, customer, type Evening, evening, kim, LABEL, lee } from "../evening.ts";

let shop: Evening;
beforeEach(async () => {
  shop = evening();
  await shop.says("ana", LABEL);
});

const heard = () => shop.texts(customer("ana"));
const last = async () => (await heard()).at(-1) ?? "";
const thread = () => shop.engine.thread("ana");
const state = async () => (await shop.store.findCase(1))?.state;
const briefs = async () =>
  (await shop.lane(caseLane(1))).filter(({ slot }) => slot === "brief").map(({ content }) => content);

describe("a case comes to the desk", () => {
  test("with the brief and one act to take it", async () => {
    const [brief] = await briefs();
    expect(brief?.text).toMatch(/^Case 1 waits\nREADY TO CONFIRM/);
    expect(brief?.text).toMatch(/Fits: BAKLAVA-498 .*drop-in/);
    expect(brief?.choices).toEqual([{ id: "1/take", label: "Take" }]);
  });
});

describe("take", () => {
  test("gives the case one owner, tells the customer, and quiets the bot", async () => {
    expect((await shop.types(kim, 1, "/take")).done).toBe(true);
    expect(await last()).toBe(
      "Kim at the desk has your case now and writes to you here. I'll keep quiet meanwhile.",
    );
    const before = (await heard()).length;
    expect(await shop.says("ana", "it is actually SF 1.1, sorry")).toEqual([]);
    expect(await heard()).toHaveLength(before);
    expect(await shop.texts(caseLane(1))).toContain("Customer: it is actually SF 1.1, sorry");
    expect((await briefs()).at(-1)?.text).toMatch(/SF 1\.1,/);
  });

  test("a second taker is told who has it and since when; nothing changes", async () => {
    await shop.types(kim, 1, "/take");
    shop.at("2026-11-24T16:12:00Z");
    const before = (await heard()).length;
    const answer = await shop.types(lee, 1, "/take");
    expect(answer.done).toBe(false);
    expect(answer.answer).toMatch(/^Kim has had this case for 12 min\./);
    expect(await heard()).toHaveLength(before);
  });

  test("can be taken over from a colleague who is not there", async () => {
    await shop.types(kim, 1, "/take");
    expect((await shop.types(lee, 1, "/takeover")).answer).toMatch(/Kim no longer has it/);
    expect((await shop.types(kim, 1, "> hello")).done).toBe(false);
    expect((await shop.types(lee, 1, "> hello")).done).toBe(true);
  });
});

describe("tell and note", () => {
  test("marked words go to the customer under the person's name, and the answer says so", async () => {
    await shop.types(kim, 1, "/take");
    const { answer } = await shop.types(kim, 1, "> Good evening, I have one here.");
    expect(answer).toBe("→ SENT TO THE CUSTOMER: Good evening, I have one here.");
    expect(await last()).toBe("Kim at the desk: Good evening, I have one here.");
  });

  test("anything else is a note, and the answer says so", async () => {
    await shop.types(kim, 1, "/take");
    const before = await heard();
    const { answer } = await shop.types(kim, 1, "sounds like he will haggle");
    expect(answer).toMatch(/^Kept as a NOTE\. The customer does not see it\./);
    expect(await heard()).toEqual(before);
    expect((await shop.engine.show(1, "2026-11-24T17:00:00Z"))?.text).toMatch(
      /2026-11-24 10:00 Kim: note: sounds like he will haggle/,
    );
  });

  test("telling takes a case nobody has, so that two do not answer at once", async () => {
    await shop.types(kim, 1, "> I'm here");
    expect(await state()).toBe("taken");
    const refused = await shop.types(lee, 1, "> me too");
    expect(refused).toMatchObject({ done: false, answer: expect.stringMatching(/^Kim has had/) });
    expect(await last()).toBe("Kim at the desk: I'm here");
  });

  test("a colleague may leave a note on another's case, also a closed one", async () => {
    await shop.types(kim, 1, "/take");
    expect((await shop.types(lee, 1, "he called me too")).done).toBe(true);
    await shop.types(kim, 1, "/close answered");
    expect((await shop.types(lee, 1, "paid cash")).done).toBe(true);
    expect((await shop.types(kim, 1, "> hello?")).answer).toMatch(/closed .* Nothing was sent/);
  });

  test("a text too long for one message is not half sent", async () => {
    const before = await heard();
    expect((await shop.types(kim, 1, `> ${"word ".repeat(900)}`)).answer).toMatch(/longer than 3500/);
    expect(await heard()).toEqual(before);
  });
});

describe("correct", () => {
  test("is read by the same reader, is marked as staff's, matches again and refreshes the brief", async () => {
    await shop.types(kim, 1, "/take");
    const { answer } = await shop.types(kim, 1, "/fix sf 1.25 and it's on 230 volts at the breaker");
    expect(answer).toMatch(/^Corrected: .*SF 1\.25/);
    expect((await thread()).facts.serviceFactor).toEqual({
      value: 1.25,
      words: "sf 1.25",
      certainty: "staff",
    });
    expect((await briefs()).at(-1)?.text).toMatch(/SF 1\.25/);
    expect((await briefs()).at(-1)?.text).not.toMatch(/BAKLAVA-498/);
  });

  test("says nothing to the customer", async () => {
    const before = await heard();
    await shop.types(kim, 1, "/fix frame 48Y");
    expect(await heard()).toEqual(before);
  });

  test("without a label detail is refused with an example", async () => {
    expect((await shop.types(kim, 1, "/fix the usual one")).answer).toMatch(/“the usual one”.*“sf 1\.65”/);
  });
});

describe("offer", () => {
  test("goes to the customer with price, reason and the cautions", async () => {
    await shop.types(kim, 1, "/take");
    const answer = await shop.types(kim, 1, "/offer muffin-806 in the shop today, yours would be next week");
    expect(answer.answer).toMatch(/^→ SENT TO THE CUSTOMER: the offer of MUFFIN-806\./);
    const [offered, cautions] = (await heard()).slice(-2);
    expect(offered).toMatch(
      /^Kim at the desk suggests MUFFIN-806 .*\$248\.50, 6 in stock\.\nWhy: in the shop today/,
    );
    expect(cautions).toMatch(/licensed electrician/);
  });

  test("of a motor the rules speak against warns the one who offers, not the customer", async () => {
    const answer = await shop.types(kim, 1, "/offer MUFFIN-713 small but here");
    expect(answer.answer).toMatch(/Mind: the rules speak against it\. .*total/);
    expect((await heard()).join("\n")).not.toMatch(/Mind:/);
  });

  test("of an unknown motor or without a reason is refused", async () => {
    const before = await heard();
    expect((await shop.types(kim, 1, "/offer NOPE-1 nice")).answer).toMatch(/no motor NOPE-1 in stock/);
    expect(await heard()).toEqual(before);
  });
});

describe("hand back", () => {
  test("tells the customer and lets the bot go on where the talk stands", async () => {
    await shop.types(kim, 1, "/take");
    await shop.types(kim, 1, "/back");
    expect(await last()).toMatch(/Kim has handed your case back to me/);
    expect(await state()).toBe("with-bot");
    expect((await shop.says("ana", "what does SF mean?")).join()).toMatch(/service factor/i);
  });

  test("after a correction that changes the answer gives the new verdict and asks to have it confirmed", async () => {
    await shop.types(kim, 1, "/take");
    await shop.types(kim, 1, "/fix sf 1.25, wired for 230 volts");
    const before = (await heard()).length;
    await shop.types(kim, 1, "/back");
    const said = (await heard()).slice(before);
    expect(said[0]).toMatch(/Kim has handed your case back/);
    expect(said[1]).toMatch(/^BAKLAVA-897 .* should fit as a drop-in/);
    expect(said.at(-1)).toMatch(/Nothing ships before a person has confirmed it/);
    expect((await thread()).case).toMatchObject({ state: "waiting", reason: "verdict-ready" });
    expect(await state()).toBe("waiting");
  });

  test("of a case nobody has is refused", async () => {
    expect((await shop.types(kim, 1, "/back")).answer).toMatch(/nothing to hand back/);
  });
});

describe("urgency", () => {
  test("can be lowered by a person", async () => {
    await shop.types(kim, 1, "/urgency planning");
    expect((await shop.engine.waiting("2026-11-24T17:00:00Z")).text).toMatch(/PLANNING AHEAD · case 1 · 1 h/);
  });
});

describe("close", () => {
  test("as sold puts the label's number on record for that motor", async () => {
    await shop.types(kim, 1, "/take");
    const { answer } = await shop.types(kim, 1, "/close sold MUFFIN-806");
    expect(answer).toBe("Closed: sold, MUFFIN-806. On record from now on: QX-4471 → MUFFIN-806.");
    expect(await shop.store.numbers()).toMatchObject([
      {
        number: "QX-4471",
        sku: "MUFFIN-806",
        caseId: 1,
        by: kim,
        at: "2026-11-24T16:00:00.000Z",
        standing: "used",
      },
    ]);
  });

  test("as sold must name the motor, unless one was offered", async () => {
    expect((await shop.types(kim, 1, "/close sold")).answer).toMatch(/Which motor was sold/);
    await shop.types(kim, 1, "/offer MUFFIN-806 it is here");
    expect((await shop.types(kim, 1, "/close sold")).answer).toMatch(/QX-4471 → MUFFIN-806/);
  });

  test("sold again as another motor takes the first one off the record", async () => {
    await shop.types(kim, 1, "/close sold MUFFIN-806");
    await shop.types(kim, 1, "/reopen");
    await shop.types(kim, 1, "/close sold BAKLAVA-498");
    expect((await shop.store.numbers()).map(({ sku, standing }) => [sku, standing])).toEqual([
      ["MUFFIN-806", "withdrawn"],
      ["BAKLAVA-498", "used"],
    ]);
  });

  test("with another outcome ends the case and records nothing", async () => {
    expect((await shop.types(kim, 1, "/close no-reply")).answer).toBe("Closed: no reply.");
    expect(await state()).toBe("closed");
    expect(await shop.store.numbers()).toEqual([]);
    expect((await shop.engine.waiting("2026-11-24T17:00:00Z")).text).toBe("Nothing waits on the desk.");
  });

  test("by somebody else than the one who has it is refused", async () => {
    await shop.types(kim, 1, "/take");
    expect((await shop.types(lee, 1, "/close no-reply")).done).toBe(false);
    expect(await state()).toBe("taken");
  });
});

describe("a closed case", () => {
  beforeEach(async () => {
    await shop.types(kim, 1, "/take");
    await shop.types(kim, 1, "/close answered");
  });

  test("waits again when the customer writes again; staff see how it had ended", async () => {
    shop.at("2026-11-25T16:00:00Z");
    const replies = await shop.says("ana", "one more thing, can you deliver?");
    expect(replies.at(-1)).toMatch(/I've told the desk that you wrote again\. The desk is open now/);
    expect(await state()).toBe("waiting");
    expect(await shop.texts(caseLane(1))).toContain(
      "The customer wrote again. This case was closed (answered, nothing sold, Kim) and now waits.",
    );
  });

  test("is not opened by a thank-you", async () => {
    await shop.says("ana", "thanks!");
    expect(await state()).toBe("closed");
  });

  test("closed for want of a reply is opened by any word", async () => {
    await shop.types(kim, 1, "/reopen");
    await shop.types(kim, 1, "/close no-reply");
    await shop.says("ana", "thanks!");
    expect(await state()).toBe("waiting");
  });

  test("gives way to a new case after two months", async () => {
    shop.at("2027-02-01T16:00:00Z");
    await shop.says("ana", "can I talk to a person");
    expect((await shop.store.cases()).map(({ id, state: now }) => [id, now])).toEqual([
      [1, "closed"],
      [2, "waiting"],
    ]);
    expect((await shop.types(kim, 1, "/reopen")).answer).toMatch(/newer case/);
  });
});

test("there is no case nobody opened", async () => {
  expect(await shop.types(kim, 99, "/take")).toEqual({
    done: false,
    answer: "There is no case 99. Nothing was done.",
  });
});
