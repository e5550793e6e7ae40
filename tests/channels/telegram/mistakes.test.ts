import { expect, test } from "vitest";
import { openSqliteStore } from "../../../src/store/sqlite.ts";
import { StoreError } from "../../../src/store/store.ts";
import { evening } from "../../desk/evening.ts";
import { openTown } from "./town.ts";

// A mistake in the program, and a store that fails for a while, as a customer and staff see them.

test("a message that makes the code throw is set aside; the customer, staff and the next message are served", async () => {
  const store = openSqliteStore(":memory:");
  const { engine } = evening({ store });
  const { world, kim } = await openTown({
    store,
    over: {
      engine: {
        ...engine,
        handle: async (item) => {
          if (item.text.includes("poison")) throw new TypeError("x is not a function");
          return engine.handle(item);
        },
      },
    },
  });
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("poison");
  ada.says("1 hp, SF 1.65");
  await world.quiet();
  expect(ada.hears()).toEqual([
    expect.stringContaining("Something went wrong on my side"),
    expect.stringMatching(/^Got it: 1 hp, SF 1\.65/),
  ]);
  expect(kim.hears("general")).toEqual([expect.stringContaining("because of a mistake in the program")]);
  kim.says("/undelivered");
  await world.quiet();
  expect(kim.hears("general").at(-1)).toMatch(/could not be handled: update \d+ · TypeError/);
});

test("a store that fails for a while holds everything up and loses nothing", async () => {
  const store = openSqliteStore(":memory:");
  const { engine } = evening({ store });
  const { world, log } = await openTown({ store, over: { engine } });
  const ada = world.addUser({ first_name: "Ada" });
  ada.starts();
  await world.quiet();
  let failing = 6;
  const { commit } = store;
  const { finishUpdates } = store.telegram;
  const full = () => {
    if (failing-- > 0) throw new StoreError("desk.sqlite: the disk is full");
  };
  Object.assign(store, {
    commit: async (...given: Parameters<typeof commit>) => {
      full();
      return commit(...given);
    },
  });
  Object.assign(store.telegram, {
    finishUpdates: async (...given: Parameters<typeof finishUpdates>) => {
      full();
      return finishUpdates(...given);
    },
  });
  ada.says("1 hp, SF 1.65");
  ada.sendsSticker();
  ada.says("230V");
  await world.until(() => ada.hears().length === 4);
  await world.quiet({ stillForMs: 100 });
  expect(ada.hears().slice(1)).toEqual([
    expect.stringMatching(/^Got it: 1 hp, SF 1\.65/),
    expect.stringContaining("Now the label"),
    expect.stringMatching(/^Got it: 230 V/),
  ]);
  expect(log.some(({ about }) => JSON.stringify(about).includes("the disk is full"))).toBe(true);
});
