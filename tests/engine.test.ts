import { expect, test } from "vitest";
import { openSqliteStore } from "../src/store/sqlite.ts";
import { knowledge } from "./conversation/knowledge.ts";
import { caseLane, customer, desk, evening, kim, LABEL, lee } from "./desk/evening.ts";

const at = "2026-11-24T16:00:00.000Z";
const message = (id: string, text: string, threadId = "ana") => ({ id, threadId, text, at });

test("a message delivered twice is answered once", async () => {
  const shop = evening();
  const first = await shop.engine.handle(message("u1", LABEL));
  const again = await shop.engine.handle(message("u1", LABEL));
  expect(first.replies.length).toBeGreaterThan(0);
  expect(again).toMatchObject({ replies: [], assessment: null });
  expect(await shop.texts(customer("ana"))).toEqual(first.replies);
});

test("an act delivered twice is done once and answered alike", async () => {
  const shop = evening();
  await shop.says("ana", LABEL);
  const item = { id: "s1", caseId: 1, act: { kind: "tell", text: "hello" } as const, by: kim, at };
  const answers = [await shop.engine.staff(item), await shop.engine.staff(item)];
  expect(answers[0]).toEqual(answers[1]);
  expect((await shop.texts(customer("ana"))).filter((text) => text.endsWith("hello"))).toHaveLength(1);
});

test("two takers at the same moment: one has it, the other is told who", async () => {
  const shop = evening();
  await shop.says("ana", LABEL);
  const [first, second] = await Promise.all([shop.types(kim, 1, "/take"), shop.types(lee, 1, "/take")]);
  expect([first.done, second.done]).toEqual([true, false]);
  expect(second.answer).toMatch(/^Kim has had this case/);
});

test("messages of one customer are answered in the order they came, many customers side by side", async () => {
  const shop = evening();
  const lines = ["1 hp", "SF 1.65", "frame 56Y", "single phase"];
  const customers = Array.from({ length: 8 }, (_, index) => `c${index}`);
  await Promise.all(
    customers.flatMap((who) =>
      lines.map((text, index) => shop.engine.handle(message(`${who}:${index}`, text, who))),
    ),
  );
  for (const who of customers) {
    const said = (await shop.engine.thread(who)).lines.filter(({ from }) => from === "customer");
    expect(said.map(({ text }) => text)).toEqual(lines);
  }
});

test("two programs on one store never lose a word: the one overtaken decides again", async () => {
  const store = openSqliteStore(":memory:");
  let overtaken = false;
  const other = evening({ store });
  const shop = evening({
    store: {
      ...store,
      commit: async (change) => {
        if (!overtaken && change.handled === "u2") {
          overtaken = true;
          await other.engine.staff({ id: "s1", caseId: 1, act: { kind: "take" }, by: kim, at });
        }
        return store.commit(change);
      },
    },
  });
  await shop.engine.handle(message("u1", LABEL));
  const before = (await shop.texts(customer("ana"))).length;
  const { replies } = await shop.engine.handle(message("u2", "what does it cost?"));
  expect(overtaken).toBe(true);
  expect(replies).toEqual([]);
  expect((await shop.texts(customer("ana"))).slice(before)).toEqual([
    expect.stringMatching(/^Kim at the desk has your case now/),
  ]);
  expect(await shop.texts(caseLane(1))).toContain("Customer: what does it cost?");
});

test("what came in before a crash is answered at the next start", async () => {
  const shop = evening();
  await shop.store.receive(message("u1", LABEL));
  expect(await shop.engine.catchUp()).toBe(1);
  expect((await shop.texts(customer("ana"))).join("\n")).toMatch(/BAKLAVA-498/);
  expect(await shop.engine.catchUp()).toBe(0);
});

test("what is being answered at this moment was not left over by a crash", async () => {
  const shop = evening();
  let answered = false;
  const answering = shop.engine.handle(message("u1", LABEL)).then(() => {
    answered = true;
  });
  const seenStored: number[] = [];
  while (!answered) {
    seenStored.push((await shop.store.unhandled()).length);
    expect(await shop.engine.catchUp()).toBe(0);
    await new Promise((resolve) => setImmediate(resolve));
  }
  await answering;
  expect(seenStored).toContain(1);
});

test("a message that makes the code throw is kept, told of, and does not hold up the next one", async () => {
  let broken = true;
  const shop = evening({
    understand: (text, expecting) => {
      if (broken) throw new Error("a mistake of ours");
      return knowledge.understand(text, expecting);
    },
  });
  const replies = await shop.says("ana", "the label says 56Y");
  expect(replies).toEqual([expect.stringMatching(/went wrong on my side.*It's kept/)]);
  expect(shop.troubles).toEqual([new Error("a mistake of ours")]);
  expect((await shop.texts(caseLane(1)))[0]).toMatch(/could not be handled.*“the label says 56Y”/s);
  broken = false;
  expect((await shop.says("ana", LABEL)).join("\n")).toMatch(/BAKLAVA-498/);
  expect(await shop.store.cases()).toHaveLength(1);
});

test("a mistake of ours while a person has the case reaches that person, not the customer", async () => {
  let broken = false;
  const shop = evening({
    understand: (text, expecting) => {
      if (broken) throw new Error("a mistake of ours");
      return knowledge.understand(text, expecting);
    },
  });
  await shop.says("ana", LABEL);
  await shop.types(kim, 1, "/take");
  broken = true;
  expect(await shop.says("ana", "hello?")).toEqual([]);
  expect((await shop.store.findCase(1))?.state).toBe("taken");
  expect((await shop.texts(caseLane(1))).at(-1)).toMatch(/“hello\?”/);
  expect((await shop.types(kim, 1, "/fix sf 1.65")).answer).toMatch(/Something went wrong on our side/);
});

test("a picture makes a case, is passed on to staff, and the customer is asked for the numbers", async () => {
  const shop = evening();
  const attachments = [{ kind: "photo", ref: "file-1" }] as const;
  const [reply] = await shop.says("ana", "", { attachments });
  expect(reply).toMatch(/put that with your case.*could you type what the label says/);
  const sent = (await shop.lane(caseLane(1))).find(({ content }) => content.attachments);
  expect(sent?.content).toEqual({ text: "The customer sent this:", attachments });
  const replies = await shop.says("bo", LABEL, { attachments });
  expect(replies[0]).toMatch(/put that with your case/);
  expect(replies.join("\n")).toMatch(/BAKLAVA-498/);
});

test("a picture while a person has the case goes to that person, and the bot stays silent", async () => {
  const shop = evening();
  await shop.says("ana", LABEL);
  await shop.types(kim, 1, "/take");
  expect(await shop.says("ana", "", { attachments: [{ kind: "photo", ref: "f" }] })).toEqual([]);
  expect((await shop.lane(caseLane(1))).filter(({ content }) => content.attachments)).toHaveLength(1);
});

test("a changed message reaches the person who has the case, as changed", async () => {
  const shop = evening();
  await shop.says("ana", LABEL, { message: "m1" });
  await shop.types(kim, 1, "/take");
  await shop.says("ana", LABEL.replace("SF 1.65", "SF 1.25"), { message: "m1", edited: true });
  expect((await shop.texts(caseLane(1))).at(-1)).toMatch(
    /^Customer changed an earlier message to: .*SF 1\.25/,
  );
  expect((await shop.store.latestCase("ana"))?.doc).toMatch(/SF 1\.25/);
});

test("a customer who asks to be forgotten leaves nothing; staff are told to delete their own notes", async () => {
  const shop = evening();
  await shop.says("ana", LABEL);
  await shop.types(kim, 1, "lives on Mill Lane");
  await shop.says("ana", "delete my data");
  const replies = await shop.says("ana", "yes");
  expect(replies.join()).toMatch(/erased/);
  expect(await shop.store.cases()).toEqual([]);
  expect(await shop.store.findThread("ana")).toBeUndefined();
  expect(await shop.texts(customer("ana"))).toEqual(replies);
  expect(await shop.texts(caseLane(1))).toEqual([]);
  expect(await shop.texts(desk)).toEqual([
    expect.stringMatching(/^Case 1: the customer asked to be forgotten/),
  ]);
  expect((await shop.types(kim, 1, "> hello?")).answer).toBe("There is no case 1. Nothing was done.");
});

test("the last reply carries buttons for a question with few answers", async () => {
  const shop = evening();
  await shop.says("ana", LABEL);
  await shop.says("ana", "delete my data");
  expect((await shop.lane(customer("ana"))).at(-1)?.content.choices).toEqual([
    { id: "erase/1", label: "Yes" },
    { id: "erase/2", label: "No" },
  ]);
});
