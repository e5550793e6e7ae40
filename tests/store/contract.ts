import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { CaseRow, Change, InboxItem, Store } from "../../src/store/store.ts";

/** A store, and the same state opened again as after a restart. */
export interface Opened {
  readonly store: Store;
  readonly reopen: () => Store;
  readonly cleanUp: () => void;
}

const at = "2026-11-25T16:00:00.000Z";
const kim = { id: "staff:1", name: "Kim" };
const item = (id: string, text = "56Y"): InboxItem => ({ id, threadId: "ana", text, at });
const customer = { kind: "customer", threadId: "ana" } as const;
const told = (text: string) => ({ lane: customer, content: { text } });
const row = (id: number, over: Partial<CaseRow> = {}): CaseRow => ({
  id,
  threadId: "ana",
  state: "waiting",
  urgency: "pump-down",
  doc: '{"brief":"Has: 56Y"}',
  openedAt: at,
  updatedAt: at,
  ...over,
});

/** What every store must do, whatever stands behind it. */
export function storeContract(name: string, open: () => Opened): void {
  describe(name, () => {
    let opened: Opened;
    let store: Store;
    beforeEach(() => {
      opened = open();
      store = opened.store;
    });
    afterEach(async () => {
      await store.close();
      opened.cleanUp();
    });
    const version = async (thread = "ana") => (await store.findThread(thread))?.version ?? 0;
    const change = async (over: Partial<Change> = {}): Promise<Change> => ({
      at,
      thread: { id: "ana", state: '{"facts":{}}', version: await version() },
      outgoing: [],
      ...over,
    });

    test("a message is taken once, however often it is delivered", async () => {
      expect(await store.receive(item("update:1"))).toBe(true);
      expect(await store.receive(item("update:1"))).toBe(false);
      expect(await store.unhandled()).toHaveLength(1);
    });

    test("what was received and not handled is there after a restart, pictures too", async () => {
      const picture = { ...item("update:1", ""), attachments: [{ kind: "photo", ref: "file-9" }] as const };
      await store.receive(picture);
      await store.close();
      store = opened.reopen();
      expect(await store.unhandled()).toEqual([picture]);
    });

    test("message, thread, case, history and replies of one turn are kept together", async () => {
      await store.receive(item("update:1"));
      const id = await store.newCaseId();
      const done = await store.commit(
        await change({
          handled: "update:1",
          case: row(id),
          events: [{ caseId: id, at, by: kim, kind: "took", text: "" }],
          outgoing: [told("Got it.")],
        }),
      );
      expect(done).toBe("done");
      expect((await store.findThread("ana"))?.state).toBe('{"facts":{}}');
      expect(await store.latestCase("ana")).toEqual(row(id));
      expect(await store.events(id)).toEqual([{ caseId: id, at, by: kim, kind: "took", text: "" }]);
      expect(await store.undelivered()).toMatchObject([{ lane: customer, content: { text: "Got it." } }]);
      expect(await store.unhandled()).toEqual([]);
    });

    test("a change that cannot be stored leaves nothing behind", async () => {
      await store.receive(item("update:1"));
      const broken = await change({
        handled: "update:1",
        thread: { id: "ana", state: "not json", version: 0 },
        outgoing: [told("lost?")],
      });
      await expect(store.commit(broken)).rejects.toThrow();
      expect(await store.findThread("ana")).toBeUndefined();
      expect(await store.undelivered()).toEqual([]);
      expect(await store.unhandled()).toHaveLength(1);
    });

    test("a message handled twice is handled once", async () => {
      await store.receive(item("update:1"));
      await store.commit(await change({ handled: "update:1", outgoing: [told("once")] }));
      expect(await store.commit(await change({ handled: "update:1", outgoing: [told("twice")] }))).toBe(
        "seen",
      );
      expect((await store.undelivered()).map(({ content }) => content.text)).toEqual(["once"]);
    });

    test("a thread that somebody changed since it was read is not written over", async () => {
      const read = await change({ outgoing: [told("first")] });
      expect(await store.commit(read)).toBe("done");
      expect(await store.commit({ ...read, outgoing: [told("from an old view")] })).toBe("stale");
      expect((await store.undelivered()).map(({ content }) => content.text)).toEqual(["first"]);
    });

    test("an act and a notice are done once, and an act's answer is kept", async () => {
      const acted = { id: "staff:77", caseId: 1, done: true, answer: "It's yours." };
      expect(await store.commit({ at, acted, outgoing: [] })).toBe("done");
      expect(await store.commit({ at, acted, outgoing: [told("again")] })).toBe("seen");
      expect(await store.actAnswer("staff:77")).toEqual({ done: true, answer: "It's yours." });
      expect(await store.actAnswer("staff:78")).toBeUndefined();
      expect(await store.commit({ at, notice: "digest:1", outgoing: [] })).toBe("done");
      expect(await store.commit({ at, notice: "digest:1", outgoing: [told("again")] })).toBe("seen");
      expect(await store.noticed("digest:1")).toBe(true);
      expect(await store.noticed("digest:2")).toBe(false);
      expect(await store.undelivered()).toEqual([]);
    });

    test("case numbers are never given twice, also after a restart", async () => {
      const first = await store.newCaseId();
      await store.close();
      store = opened.reopen();
      expect(await store.newCaseId()).toBeGreaterThan(first);
    });

    test("a customer has one case that is not closed, and as many closed ones as there were", async () => {
      const [a, b] = [await store.newCaseId(), await store.newCaseId()];
      await store.commit(await change({ case: row(a) }));
      await expect(store.commit(await change({ case: row(b) }))).rejects.toThrow();
      await store.commit(await change({ case: row(a, { state: "closed" }) }));
      await store.commit(await change({ case: row(b) }));
      expect((await store.openCases()).map(({ id }) => id)).toEqual([b]);
      expect((await store.cases()).map(({ id }) => id)).toEqual([a, b]);
    });

    test("messages of a lane come out in order, until they are delivered or parked", async () => {
      const desk = { lane: { kind: "desk" }, content: { text: "Good morning" } } as const;
      await store.commit({ at, outgoing: [told("one"), desk, told("two"), told("three")] });
      const [one, two] = await store.undelivered(customer);
      expect((await store.undelivered(customer)).map(({ content }) => content.text)).toEqual([
        "one",
        "two",
        "three",
      ]);
      await store.delivered(one!.id);
      await store.park(two!.id, "blocked by the customer");
      const [three] = await store.undelivered(customer);
      await store.postponed(three!.id, "2026-11-25T16:00:07Z");
      expect(await store.undelivered(customer)).toMatchObject([
        { content: { text: "three" }, attempts: 1, retryAt: "2026-11-25T16:00:07Z" },
      ]);
      expect(await store.parked()).toMatchObject([
        { content: { text: "two" }, error: "blocked by the customer" },
      ]);
      expect(await store.undelivered({ kind: "desk" })).toHaveLength(1);
    });

    test("buttons, pictures and slots come out as they went in", async () => {
      const message = {
        lane: { kind: "case", caseId: 3 },
        content: {
          text: "Case 3 waits",
          choices: [{ id: "3/take", label: "Take" }],
          attachments: [{ kind: "photo", ref: "f" }],
        },
        slot: "brief",
      } as const;
      await store.commit({ at, outgoing: [message] });
      expect(await store.undelivered({ kind: "case", caseId: 3 })).toMatchObject([message]);
    });

    test("numbers are recorded, withdrawn and struck, with who and when", async () => {
      const id = await store.newCaseId();
      const before = await store.numbersVersion();
      const add = { kind: "add", number: "QX-4471", sku: "MUFFIN-1", caseId: id } as const;
      await store.commit(
        await change({ case: row(id), numbers: { by: kim, edits: [add, { ...add, number: "B-2" }] } }),
      );
      const [first, second] = await store.numbers();
      expect(first).toMatchObject({
        number: "QX-4471",
        sku: "MUFFIN-1",
        caseId: id,
        by: kim,
        at,
        standing: "used",
      });
      expect(await store.numbersVersion()).not.toBe(before);
      const end = (edit: "withdraw" | "strike", number: number) =>
        store.commit({ at, numbers: { by: kim, edits: [{ kind: edit, id: number }] }, outgoing: [] });
      await end("withdraw", first!.id);
      await end("strike", second!.id);
      await end("strike", first!.id);
      expect((await store.numbers()).map(({ standing, ended }) => [standing, ended])).toEqual([
        ["withdrawn", { by: kim, at }],
        ["struck", { by: kim, at }],
      ]);
    });

    test("erasing takes everything of the customer; what the shop learned stays without them", async () => {
      const id = await store.newCaseId();
      await store.receive(item("update:1", "my number is 555-0100"));
      await store.commit(
        await change({
          handled: "update:1",
          acted: { id: "staff:1", caseId: id, done: true, answer: "sent 555-0100" },
          case: row(id, { doc: '{"brief":"555-0100"}' }),
          events: [{ caseId: id, at, by: kim, kind: "noted", text: "555-0100" }],
          numbers: { by: kim, edits: [{ kind: "add", number: "QX", sku: "M", caseId: id }] },
          doubted: [{ caseId: id, sku: "M", finding: "{}", by: kim, at }],
          outgoing: [
            told("call 555-0100"),
            { lane: { kind: "case", caseId: id }, content: { text: "555-0100" } },
          ],
        }),
      );
      await store.link("chat", { theirs: "topic:5", lane: { kind: "case", caseId: id }, kind: "topic" });
      expect(await store.orphans("chat")).toEqual([]);
      await store.receive(item("update:2", "delete my data"));
      await store.commit(await change({ handled: "update:2", erase: true, outgoing: [told("Done.")] }));
      expect(await store.findThread("ana")).toBeUndefined();
      expect(await store.cases()).toEqual([]);
      expect(await store.events(id)).toEqual([]);
      expect((await store.undelivered()).map(({ content }) => content.text)).toEqual(["Done."]);
      expect(await store.actAnswer("staff:1")).toEqual({ done: true, answer: "" });
      expect(await store.numbers()).toMatchObject([{ number: "QX", caseId: null }]);
      expect(await store.doubted()).toMatchObject([{ caseId: null }]);
      expect(await store.orphans("chat")).toMatchObject([{ theirs: "topic:5" }]);
      // The same update delivered once more stays erased.
      expect(await store.receive(item("update:1", "my number is 555-0100"))).toBe(false);
    });

    test("verdicts are kept with the messages they took, and without the customer after an erasure", async () => {
      const id = await store.newCaseId();
      const verdict = { caseId: id, verdict: "drop-in", sku: "A-1", request: '{"totalHp":1.65}' };
      await store.receive({ ...item("update:1"), threadId: "ben" });
      await store.receive(item("update:2"));
      await store.receive({ ...item("update:3"), edited: true });
      await store.commit(await change({ handled: "update:2", case: row(id), verdict }));
      expect(await store.verdicts(at)).toEqual([{ ...verdict, at, messages: 1 }]);
      expect(await store.verdicts("2026-11-25T17:30:00.000+01:00")).toEqual([]);
      await store.commit(await change({ erase: true }));
      expect(await store.verdicts(at)).toEqual([{ ...verdict, caseId: null, at, messages: 1 }]);
    });

    test("after an erasure nothing that was read before can be written back", async () => {
      await store.commit(await change());
      const old = await change({ outgoing: [told("from before")] });
      await store.commit(await change({ erase: true }));
      await store.commit(await change());
      expect(await store.commit(old)).toBe("stale");
    });

    test("a channel finds its places again, both ways", async () => {
      const lane = { kind: "case", caseId: 9 } as const;
      await store.link("chat", { theirs: "topic:5", lane, kind: "topic" });
      await store.link("chat", { theirs: "message:8", lane, kind: "brief" });
      expect(await store.linkOf("chat", "topic:5")).toEqual({ theirs: "topic:5", lane, kind: "topic" });
      expect((await store.links("chat", lane)).map(({ kind }) => kind)).toEqual(["topic", "brief"]);
      expect(await store.linkOf("other", "topic:5")).toBeUndefined();
      await store.unlink("chat", "topic:5");
      expect(await store.links("chat", lane)).toHaveLength(1);
    });

    test("a picture's name in a channel is kept for each account, the latest of them", async () => {
      const { sentPictures } = store;
      expect(await sentPictures.find("chat:1", "abc")).toBeUndefined();
      await sentPictures.keep("chat:1", "abc", "file-1");
      await sentPictures.keep("chat:1", "abc", "file-2");
      await store.close();
      store = opened.reopen();
      expect(await store.sentPictures.find("chat:1", "abc")).toBe("file-2");
      expect(await store.sentPictures.find("chat:2", "abc")).toBeUndefined();
    });
  });
}
