import { expect, test } from "vitest";
import { loopTurns } from "../../../src/channels/telegram/loop-turns.ts";
import { openSqliteStore } from "../../../src/store/sqlite.ts";
import { openTown } from "./town.ts";

test("each turn of the event loop goes to one, in the order they asked", async () => {
  const turn = loopTurns();
  const said: string[] = [];
  const loop = () => {
    said.push("loop");
    if (said.length < 8) setImmediate(loop);
  };
  const all = ["a", "b", "c"].map(async (name) => {
    await turn();
    said.push(name);
  });
  setImmediate(loop);
  await Promise.all(all);
  expect(said.slice(0, 5)).toEqual(["a", "loop", "b", "loop", "c"]);
  await turn();
  expect(said.length).toBeGreaterThan(5);
});

test("when many write at once the first have their answer while the last still wait to be read", async () => {
  const bare = openSqliteStore(":memory:");
  let handled = 0;
  const store = {
    ...bare,
    commit: async (change: Parameters<typeof bare.commit>[0]) => {
      const committed = await bare.commit(change);
      if (change.handled !== undefined) handled += 1;
      return committed;
    },
  };
  const { world } = await openTown({ store });
  const people = Array.from({ length: 40 }, (_, n) => world.addUser({ first_name: `C${n}` }));
  let readAtFirstAnswer = 0;
  world.onChange(() => {
    if (
      readAtFirstAnswer === 0 &&
      world.calls.of("sendMessage").some(({ outcome }) => outcome.kind === "done")
    )
      readAtFirstAnswer = handled;
  });
  for (const person of people) person.says("hello");
  await world.quiet();
  expect(handled).toBe(people.length);
  expect(readAtFirstAnswer).toBeGreaterThan(0);
  // Usually 1 to 3; 16, as many as are handled side by side, where handling keeps its turn.
  expect(readAtFirstAnswer).toBeLessThan(12);
});
