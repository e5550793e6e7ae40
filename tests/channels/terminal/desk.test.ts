import { PassThrough, Readable } from "node:stream";
import { beforeEach, expect, test } from "vitest";
import { deskInTerminal } from "../../../src/channels/terminal/desk.ts";
import { knowledge } from "../../conversation/knowledge.ts";
import { customer, type Evening, evening, kim, LABEL, lee } from "../../desk/evening.ts";

let shop: Evening;
beforeEach(async () => {
  shop = evening();
  await shop.says("ana", LABEL);
});

/** What Kim's terminal shows while these lines are typed. */
async function sitting(lines: readonly string[], delivers = true): Promise<string> {
  const output = new PassThrough();
  await deskInTerminal({
    engine: shop.engine,
    store: shop.store,
    wording: knowledge.wording,
    input: Readable.from(lines.map((line) => `${line}\n`)),
    output,
    interactive: false,
    columns: 100,
    now: () => "2026-11-24T16:30:00.000Z",
    by: kim,
    delivers,
  });
  return String(output.read() ?? "");
}

test("list, open, take, answer, note and close a case", async () => {
  const shown = await sitting([
    "/waiting",
    "/case 1",
    "/take",
    "> I have one here",
    "he sounds nice",
    "/close sold BAKLAVA-498",
    "/waiting",
  ]);
  const order = [
    "Waiting: 1",
    "Case 1 waits, 30 min",
    "Fits: BAKLAVA-498",
    "It's yours.",
    "SENT TO THE CUSTOMER: I have one here",
    "Kept as a NOTE.",
    "On record from now on: QX-4471",
    "Nothing waits on the desk.",
  ].map((text) => shown.indexOf(text));
  expect(order).not.toContain(-1);
  expect(order).toEqual(order.toSorted((a, b) => a - b));
  const heard = (await shop.texts(customer("ana"))).join("\n");
  expect(heard).toMatch(/Kim at the desk: I have one here/);
  expect(heard).not.toMatch(/he sounds nice/);
});

test("without an open case nothing is sent or kept", async () => {
  const before = await shop.texts(customer("ana"));
  const shown = await sitting(["> hello", "a note", "/take"]);
  expect(shown.match(/Open a case first/g)).toHaveLength(3);
  expect(await shop.texts(customer("ana"))).toEqual(before);
});

test("what happens on the desk is shown and marked delivered; the customers' messages are not touched", async () => {
  await shop.says("bo", "smoke is coming out of the motor");
  const waiting = (await shop.store.undelivered()).length;
  const shown = await sitting(["/help"]);
  expect(shown).toMatch(/DANGER \(fire\), case 2/);
  const left = await shop.store.undelivered();
  expect(left.length).toBeLessThan(waiting);
  expect(left.every(({ lane }) => lane.kind === "customer")).toBe(true);
});

test("beside another channel it delivers nothing", async () => {
  await shop.types(lee, 1, "/take");
  const before = await shop.store.undelivered();
  expect(await sitting(["/case 1"], false)).not.toMatch(/Lee has this case\./);
  expect(await shop.store.undelivered()).toEqual(before);
});

test("a doubtful mark and an unknown command do nothing and say so", async () => {
  const shown = await sitting(["/case 1", ">1.1 hm", "/sell", "/case 9"]);
  expect(shown).toMatch(/can't tell whether “>1\.1 hm” is for the customer/);
  expect(shown).toMatch(/There is no \/sell/);
  expect(shown).toMatch(/There is no case 9/);
});
