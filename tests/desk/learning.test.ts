import { beforeEach, expect, test } from "vitest";
import { LABEL as BARE_LABEL, type Evening, evening, kim, lee } from "./evening.ts";

/** With the supply known, MUFFIN-806 (115/230 V) is one of several drop-ins. */
const LABEL = `${BARE_LABEL}, it is wired for 230 volts`;

const AT = "2026-11-24T17:00:00Z";
let shop: Evening;
beforeEach(async () => {
  shop = evening();
  await shop.says("ana", LABEL);
  await shop.types(kim, 1, "/close sold MUFFIN-806");
});
const brief = async (caseId: number) => (await shop.engine.show(caseId, AT))?.text ?? "";

test("the next customer with that number is offered the motor that was sold, with the evidence for staff", async () => {
  const replies = await shop.says("bo", LABEL.replace("QX-4471", "qx4471"));
  expect(replies.join("\n")).toMatch(/^(Got it.*\n)?MUFFIN-806 /m);
  expect(await brief(2)).toMatch(/On record: QX-4471 → MUFFIN-806, Kim, 2026-11-24, case 1/);
});

test("without the sale another motor would have come first", async () => {
  const fresh = evening();
  expect((await fresh.says("bo", LABEL)).join("\n")).toMatch(/BAKLAVA-498 /);
});

test("where the ratings speak against it, the customer never hears of it and staff read why", async () => {
  // A motor of 2.47 total hp where MUFFIN-806 gives 1.65: it would be overloaded.
  const replies = await shop.says("bo", LABEL.replace("1 hp", "1.5 hp"));
  expect(replies.join("\n")).not.toMatch(/MUFFIN-806/);
  expect(await brief(2)).toMatch(
    /On record but the ratings speak against it: QX-4471 → MUFFIN-806\. .*total/,
  );
});

test("a second sale of the same pair says that it is known already", async () => {
  await shop.says("bo", LABEL);
  expect((await shop.types(lee, 2, "/close sold muffin-806")).answer).toMatch(
    /Already on record: QX-4471 → MUFFIN-806/,
  );
  expect(await shop.store.numbers()).toHaveLength(1);
});

test("a wrong part that comes back takes the number off and keeps what had spoken for the motor", async () => {
  const { answer } = await shop.types(lee, 1, "/close wrong-part");
  expect(answer).toMatch(/No longer on record: QX-4471 → MUFFIN-806\./);
  expect(answer).toMatch(/Kept for checking: .*mount.* had spoken for MUFFIN-806/);
  expect(await shop.store.numbers()).toMatchObject([{ standing: "withdrawn", ended: { by: lee } }]);
  const doubted = await shop.store.doubted();
  expect(doubted.map(({ finding }) => JSON.parse(finding).rule)).toContain("total-horsepower");
  expect(
    doubted.every(({ sku, caseId, by }) => sku === "MUFFIN-806" && caseId === 1 && by.name === "Lee"),
  ).toBe(true);
  const replies = await shop.says("bo", LABEL);
  expect(replies.join("\n")).toMatch(/BAKLAVA-498 /);
});

test("the findings kept are those of the sale, though a reading was corrected since", async () => {
  await shop.types(kim, 1, "/reopen");
  await shop.types(kim, 1, "/fix frame 56C");
  await shop.types(kim, 1, "/close wrong-part");
  const mount = (await shop.store.doubted())
    .map(({ finding }) => JSON.parse(finding))
    .find(({ rule }) => rule === "mount");
  expect(mount).toMatchObject({ outcome: "holds" });
});

test("a part sold before there was a case can come back too, by its stock number", async () => {
  await shop.says("bo", LABEL);
  expect((await shop.types(kim, 2, "/close wrong-part")).answer).toMatch(/Which motor came back/);
  expect((await shop.types(kim, 2, "/close wrong-part MUFFIN-806")).answer).toMatch(/No longer on record/);
});

test("a customer without a model number teaches nothing, and staff are told", async () => {
  await shop.says("cy", LABEL.replace("model QX-4471, ", ""));
  expect((await shop.types(kim, 2, "/close sold MUFFIN-806")).answer).toMatch(/No number on record/);
});
