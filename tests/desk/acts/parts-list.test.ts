import { beforeEach, describe, expect, test } from "vitest";
import { knowledge } from "../../conversation/knowledge.ts";
import { caseLane, customer, type Evening, evening, kim, lee } from "../evening.ts";

// What a change of motor takes: common practice, no source.
const LABEL = "1.5 hp, SF 1.1, 230V, frame 56Y, single phase, 3450 rpm, wired for 240 volts";

let shop: Evening;
beforeEach(async () => {
  shop = evening();
  await shop.says("ana", `my pump is a Marmalade F5. motor: ${LABEL}`);
});

const types = (text: string, by = kim) => shop.types(by, 1, text);
const brief = async () => (await shop.engine.show(1, "2026-11-24T16:00:00.000Z"))?.text ?? "";
const heard = async () => (await shop.texts(customer("ana"))).join("\n");
const confirmed = async () =>
  (await shop.texts(customer("ana"))).find((text) => text.includes("confirms")) ?? "";

describe("a part is left out, made optional, added", () => {
  test("in the brief, by whom, and in the history with its time; the customer hears nothing of it", async () => {
    const before = await heard();
    const { answer } = await types("/part drop gasket");
    expect(answer).toMatch(/^Parts list: no gasket HOOP-974\. The customer has not been told\./);
    expect(answer).toContain("• gasket HOOP-974 ($9.64, 9 in stock): left out (Kim)");
    expect(await brief()).toMatch(
      /Parts: shaft-seal SIMMER-436 \([^)]*\)\nEdited: no gasket HOOP-974 \(Kim\)/,
    );
    expect(await brief()).toContain("2026-11-24 10:00 Kim: parts list: no gasket HOOP-974");
    expect(await shop.texts(caseLane(1))).toContain("Kim changed the parts list: no gasket HOOP-974.");
    expect(await heard()).toBe(before);
  });

  test("a spare by its number, with a note that stays at the desk", async () => {
    const { answer } = await types("/part add hoop 327");
    expect(answer).toMatch(/There is no part hoop among the spares/);
    await types("/part add hoop-327 theirs is torn");
    expect(await brief()).toContain("gasket HOOP-327 ($13.44, 9 in stock)");
    expect(await brief()).toContain("HOOP-327 added (Kim: theirs is torn)");
    await types("/confirm");
    expect(await confirmed()).toContain(
      "Housing gasket and O-ring set for Hullabaloo: HOOP-327 ($13.44, 9 in stock)",
    );
    expect(await heard()).not.toContain("torn");
  });

  test("a spare for another pump is added with a word of warning", async () => {
    expect((await types("/part add HOOP-327")).answer).toContain(
      "doesn't name HOOP-327 for the pump Marmalade F5",
    );
    expect((await types("/part add SIMMER-436")).answer).toMatch(/stands like that already/);
  });

  test("what we don't stock, in words", async () => {
    await types("/part other two hose clamps: rusted");
    await types("/part optional two hose clamps");
    await types("/confirm");
    expect(await confirmed()).toMatch(/It takes a new shaft seal .*; two hose clamps \(optional\)\./);
    expect(await heard()).not.toContain("rusted");
    await types("/part drop two hose clamps");
    expect(await brief()).not.toMatch(/Parts:.*hose clamps/);
    expect(await brief()).toMatch(
      /two hose clamps added: rusted\n.*: two hose clamps optional\n(?:.*\n)*.*: no two hose clamps$/,
    );
  });

  test("the impeller a person wants brings the check of filter and pipes", async () => {
    const motors = knowledge.catalogue.motors.filter(({ sku }) => sku === "BAKLAVA-578");
    shop = evening({ catalogue: () => ({ ...knowledge.catalogue, motors }) });
    await shop.says("ana", `my pump is a Marmalade F5. motor: ${LABEL}`);
    await types("/confirm");
    expect(await confirmed()).not.toContain("filter and pipes");
    await types("/part needed impeller");
    expect((await types("/confirm")).answer).toMatch(
      /an impeller matched to 2\.2 total hp: TWIRL-712 \([^)]*\); a diffuser .* \(optional\)/,
    );
    expect(await heard()).toMatch(/filter and pipes stand more flow/);
  });
});

describe("edits are laid over what the rules call for", () => {
  test("a corrected reading does not undo them", async () => {
    await types("/part drop gasket");
    await types("/part other a strap wrench");
    await types("/fix sf 1.3");
    expect(await brief()).toMatch(/Fits.*\n(?:.*\n)*Parts: shaft-seal SIMMER-436 .*; a strap wrench/);
    expect(await brief()).not.toMatch(/Parts:.*HOOP-974/);
  });

  test("what the verdict no longer calls for is told once, and is back when it does again", async () => {
    await types("/part optional gasket");
    const again = async () =>
      (await shop.texts(caseLane(1))).filter((text) => text.startsWith("Look at the parts"));
    expect(await again()).toEqual([]);
    await types("/fix 5 hp");
    await types("/fix 3450 rpm");
    expect(await again()).toEqual([
      "Look at the parts list again. gasket HOOP-974 optional (Kim): the verdict no longer calls for one.",
    ]);
    expect(await brief()).toContain("the verdict no longer calls for one");
    await types("/fix 1.5 hp");
    expect(await brief()).toMatch(/gasket HOOP-974 \([^)]*\), optional/);
  });

  test("another spare under the edit is told", async () => {
    await types("/part optional gasket");
    await shop.says("ana", "sorry, my pump is a Hullabaloo B7");
    expect(await brief()).toContain("gasket HOOP-974 optional (Kim): the list now names HOOP-327.");
  });

  test("a spare that leaves the stock list is told", async () => {
    let { catalogue } = knowledge;
    shop = evening({ catalogue: () => catalogue });
    await shop.says("ana", LABEL);
    await types("/part add HOOP-327");
    catalogue = { ...catalogue, spares: catalogue.spares.filter(({ sku }) => sku !== "HOOP-327") };
    await shop.says("ana", "60 hz");
    expect(await shop.texts(caseLane(1))).toContain(
      "Look at the parts list again. HOOP-327 added (Kim): no longer among the spares.",
    );
  });

  test("undo takes the rules' word again", async () => {
    await types("/part drop seal");
    await types("/part undo seal");
    expect(await brief()).not.toContain("Edited:");
    expect((await types("/part undo seal")).done).toBe(false);
  });

  test("the bot tells them too, once it has the word again, also to who starts over", async () => {
    await types("/take");
    await types("/part drop gasket");
    await types("/back");
    expect((await shop.says("ana", "what parts does it need?")).join()).toMatch(
      /it takes a new shaft seal: SIMMER-436 \([^)]*\)\.\n/,
    );
    await shop.says("ana", "start over");
    await shop.says("ana", `my pump is a Marmalade F5. motor: ${LABEL}`);
    expect((await shop.says("ana", "what parts does it need?")).join()).not.toContain("HOOP-974");
  });

  test("a motor that a person offers is told with its parts", async () => {
    await types("/part drop gasket");
    await types("/offer MUFFIN-509 it is here");
    expect(await heard()).toMatch(
      /suggests MUFFIN-509 .*\nWhy: it is here\nIt takes a new shaft seal: SIMMER-436/,
    );
  });
});

describe("confirming", () => {
  test("tells motor, parts, day of the prices and the cautions, and is kept", async () => {
    await types("/confirm");
    const told = await heard();
    expect(told).toMatch(
      /Kim at the desk confirms BAKLAVA-498 \(.*\): \$325\.00, 5 in stock\.\nIt takes a new shaft seal/,
    );
    expect(told).toContain("power off and locked out at the breaker");
    expect(await confirmed()).toMatch(/Prices and stock as of 2026-11-24\.$/);
    expect(await brief()).toContain("Kim: confirmed: BAKLAVA-498");
  });

  test("nothing while nothing fits, nor in danger, nor on a colleague's case", async () => {
    await types("/fix 5 hp");
    expect((await types("/confirm")).answer).toMatch(/nothing to confirm/);
    await types("/fix 1.5 hp");
    await types("/take");
    expect((await types("/confirm", lee)).done).toBe(false);
    expect((await types("/part drop gasket", lee)).done).toBe(false);
    await shop.says("ana", "there is smoke coming from it");
    expect((await types("/confirm")).answer).toMatch(/unresolved danger/);
  });
});

test("the list comes with a button for each thing that can be done, each as typed", async () => {
  await types("/part other une pièce spéciale");
  const { answer, choices } = await types("/parts", lee);
  expect(answer).toMatch(
    /^• shaft-seal SIMMER-436 .*: needed\n• gasket HOOP-974 .*: needed\n• une pièce spéciale: needed \(Kim\)$/,
  );
  expect(choices?.map(({ id, label }) => [id, label])).toEqual([
    ["1/part drop shaft-seal", "No shaft-seal"],
    ["1/part optional shaft-seal", "shaft-seal optional"],
    ["1/part drop gasket", "No gasket"],
    ["1/part optional gasket", "gasket optional"],
  ]);
});
