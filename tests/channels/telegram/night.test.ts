import { expect, test } from "vitest";
import { later } from "../../../src/channels/telegram/clock.ts";
import { laneKey } from "../../../src/outgoing.ts";
import { openSqliteStore } from "../../../src/store/sqlite.ts";
import type { Store } from "../../../src/store/store.ts";
import { LABEL } from "../../desk/evening.ts";
import { gate } from "./stand-in/world.ts";
import { NIGHT, openTown, saying, topicOf } from "./town.ts";

test("a danger at night: safety text first, the person on call and the desk alerted at once", async () => {
  const town = await openTown({ start: NIGHT, over: { onCall: 500_000_003 } });
  const { world, kim } = town;
  const onCall = world.addUser({ first_name: "Noor" });
  expect(onCall.id).toBe(500_000_003);
  onCall.starts();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("I got a shock when I touched the ladder in the pool");
  await world.quiet();
  expect(ada.hears()).toHaveLength(1);
  expect(ada.hears()[0]).toMatch(/out of the water|main panel/i);
  expect(onCall.hears()).toContainEqual(expect.stringMatching(/^DANGER \(shock\), case 1\./));
  expect(kim.hears("general")).toEqual([expect.stringMatching(/^DANGER \(shock\), case 1\./)]);
  expect(kim.hears(topicOf(town, 1))[0]).toMatch(/^Case 1 waits\nDANGER/);
});

test("the person on call takes the case from their own chat only while they are of the staff", async () => {
  const town = await openTown({ start: NIGHT, over: { onCall: 500_000_003 } });
  const { world, group, store } = town;
  const noor = world.addUser({ first_name: "Noor" });
  noor.starts();
  const ada = world.addUser({ first_name: "Ada" });
  ada.says("there is smoke coming out of the motor");
  await world.quiet();
  const refused = noor.presses("Take 1");
  await world.quiet();
  expect(refused.answer()).toEqual({ text: expect.stringContaining("Only members"), alert: true });
  group.joins(noor);
  noor.presses("Take 1");
  await world.quiet();
  expect((await store.findCase(1))?.state).toBe("taken");
  expect(ada.hears().at(-1)).toContain("Noor at the desk");
});

test("a person on call who never opened the bot: the desk is told to call them", async () => {
  const town = await openTown({ start: NIGHT, over: { onCall: 500_000_003 } });
  town.world.addUser({ first_name: "Noor" });
  const ada = town.world.addUser({ first_name: "Ada" });
  ada.says("there is smoke coming out of the motor");
  await town.world.quiet();
  expect(town.kim.hears("general").some((text) => text.includes("CALL THEM"))).toBe(true);
  expect(await town.store.undelivered()).toEqual([]);
});

test("an evening, a night, one digest at opening, one tap to take", async () => {
  const town = await openTown({ start: NIGHT });
  const { world, kim, clock, store } = town;
  const [ada, bea] = [world.addUser({ first_name: "Ada" }), world.addUser({ first_name: "Bea" })];
  ada.says(LABEL);
  bea.says("sparks at the motor!");
  await world.quiet();
  expect(ada.hears().at(-1)).toContain(
    "The desk is closed now; a person is there tomorrow, Wednesday, at 8 am",
  );
  const before = kim.hears("general").length;
  clock.skipTo("2026-11-25T13:59:00.000Z");
  await world.quiet();
  expect(
    kim
      .hears("general")
      .slice(before)
      .filter((text) => text.startsWith("Good morning")),
  ).toEqual([]);
  clock.skipTo("2026-11-25T14:00:30.000Z");
  await world.until(() => kim.hears("general").some((text) => text.startsWith("Good morning")));
  await world.quiet();
  const digest = saying(kim, "Good morning", "general");
  const lines = digest.text.split("\n");
  expect(lines[0]).toContain("2");
  expect(lines[1]).toMatch(/^DANGER · case \d/);
  expect(lines[2]).toMatch(/^READY TO CONFIRM · case \d/);
  clock.skipTo("2026-11-25T15:00:00.000Z");
  await world.quiet();
  expect(kim.hears("general").filter((text) => text.startsWith("Good morning"))).toHaveLength(1);
  const danger = /case (\d)/.exec(lines[1]!)![1]!;
  kim.presses(`Take ${danger}`, digest);
  await world.quiet();
  expect((await store.findCase(Number(danger)))?.state).toBe("taken");
  expect(bea.hears().at(-1)).toContain("Kim at the desk");
});

test("a group that is told to wait does not keep the alert from the person on call", async () => {
  const { world, group } = await openTown({ start: NIGHT, over: { onCall: 500_000_003 } });
  const noor = world.addUser({ first_name: "Noor" });
  noor.starts();
  await world.quiet();
  world.faults.plan(
    "sendMessage",
    { kind: "too many requests", retryAfterSeconds: 3 },
    { times: 2, when: ({ chat_id }) => chat_id === group.id },
  );
  const began = performance.now();
  world.addUser({ first_name: "Ada" }).says("there is smoke coming out of the motor");
  await world.until(() => noor.hears().some((text) => text.startsWith("DANGER (fire)")));
  expect(performance.now() - began).toBeLessThan(2500);
  expect(group.sees("general").filter(({ byBot }) => byBot)).toEqual([]);
});

test("a danger is told to the desk at once, however many cases wait to be shown", async () => {
  const { world, group } = await openTown({ pace: { casesAtOnce: 1 } });
  const line = gate();
  world.faults.plan("createForumTopic", { kind: "held", until: line.opened });
  for (let n = 0; n < 3; n += 1) world.addUser({ first_name: `C${n}` }).says(LABEL);
  await world.until(() => world.calls.of("createForumTopic").length === 1);
  world.addUser({ first_name: "Ada" }).says("there is smoke coming out of the motor");
  await world.until(() => group.sees("general").some(({ text }) => text.startsWith("DANGER")));
  expect(group.topics().length).toBeLessThanOrEqual(1);
  line.open();
});

test("a group that is told to wait is left alone by all its cases, which wait without being looked at", async () => {
  const bare = openSqliteStore(":memory:");
  const looks = new Map<string, number>();
  const store: Store = {
    ...bare,
    undelivered: (lane) => {
      if (lane?.kind === "case") looks.set(laneKey(lane), (looks.get(laneKey(lane)) ?? 0) + 1);
      return bare.undelivered(lane);
    },
  };
  const { world, group, clock } = await openTown({ store, pace: { casesAtOnce: 1 } });
  const held = { kind: "too many requests", retryAfterSeconds: 60 } as const;
  world.faults.plan("createForumTopic", held, { times: 1 });
  const people = Array.from({ length: 5 }, (_, n) => world.addUser({ first_name: `C${n}` }));
  for (const person of people) person.says("1 hp, SF 1.65, 230V, 56Y, single phase, 3450 rpm");
  await world.until(() => looks.size === people.length);
  for (let n = 0; n < 10; n += 1) {
    const other = world.addUser({ first_name: `D${n}` });
    other.says("hello");
    await world.until(() => other.hears().length > 0);
  }
  expect(world.calls.of("createForumTopic")).toHaveLength(1);
  expect(group.topics()).toEqual([]);
  // A few looks at the start; none for each message of somebody else.
  expect(Math.max(...looks.values())).toBeLessThan(6);
  clock.skipTo(later(clock.now(), 60_000));
  await world.until(() => group.topics().length === people.length);
});
