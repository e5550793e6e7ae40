import { describe, expect, test } from "vitest";
import { openTown } from "./town.ts";

describe("a group the bot is dragged into", () => {
  test("is told where the bot works, and left", async () => {
    const { world, store } = await openTown();
    const group = world.addGroup({ title: "Neighbours" });
    const ada = world.addUser({ first_name: "Ada" });
    const inGroup = group.has(ada);
    group.addsBot(ada);
    await world.quiet();
    expect(inGroup.hears()).toEqual([expect.stringMatching(/^Hello! I only work in a private chat/)]);
    expect(world.calls.of("leaveChat").map(({ params }) => params.chat_id)).toEqual([group.id]);
    inGroup.says("@desk_stand_in_bot 1 hp?");
    await world.quiet();
    expect(inGroup.hears()).toHaveLength(1);
    expect(await store.telegram.parkedUpdates()).toEqual([]);
  });

  test("that never let it speak is left without a word", async () => {
    const { world } = await openTown();
    const group = world.addGroup();
    const ada = world.addUser();
    group.has(ada);
    world.faults.plan("sendMessage", {
      kind: "refused",
      refusal: Object.assign(new Error("x"), { code: 403, description: "Forbidden: no rights" }) as never,
    });
    group.addsBot(ada);
    await world.quiet();
    expect(world.calls.of("leaveChat")).toHaveLength(1);
  });

  test("before a staff group is set, is told its id and not left", async () => {
    const { world, group, kim } = await openTown({ over: { staffGroup: null } });
    group.addsBot(kim);
    await world.quiet();
    expect(kim.hears("general")).toEqual([expect.stringContaining(`This group's id is ${group.id}.`)]);
    expect(world.calls.of("leaveChat")).toEqual([]);
    // Customers are served all the same, and their cases wait for the group.
    const ada = world.addUser();
    ada.says("I want a person");
    await world.quiet();
    expect(ada.hears()).toHaveLength(1);
  });
});
