import { describe, expect, test } from "vitest";
import { LABEL } from "../../desk/evening.ts";
import { openTown, saying, type Town, type TownOptions, topicOf } from "./town.ts";

/** A shop with one case on the desk. */
async function withCase(options: TownOptions = {}) {
  const town = await openTown(options);
  const ada = town.world.addUser({ first_name: "Ada" });
  ada.says(LABEL);
  await town.world.quiet();
  return {
    ...town,
    ada,
    topic: options.topics === false || options.basicGroup ? undefined : topicOf(town, 1),
  };
}

/** What staff see of a case, without the brief and its card: who said what. */
const told = ({ kim }: Pick<Town, "kim">, topic: number) =>
  kim
    .sees(topic)
    .filter(({ kind, text }) => kind !== "service" && !/^(?:Case 1|The brief above)/.test(text))
    .map(({ from, text }) => [from, text]);

describe("a case in its topic", () => {
  test("is opened with the brief and a button, on one phone screen", async () => {
    const { group, kim, topic } = await withCase();
    expect(group.topics().map(({ name }) => name)).toEqual([expect.stringMatching(/^1 · .*BAKLAVA-498/)]);
    const [brief] = kim.sees(topic).filter(({ byBot, kind }) => byBot && kind === "text");
    expect(brief?.text).toMatch(/^Case 1 waits\nREADY TO CONFIRM/);
    expect(brief?.buttons).toEqual([["Take"]]);
    expect(brief!.text.length).toBeLessThan(1400);
  });

  test("is taken by one; the second taker is told who has it; the brief follows in place", async () => {
    const town = await withCase();
    const { world, kim, lee, ada, topic } = town;
    const brief = saying(kim, "Case 1 waits", topic);
    const first = kim.presses("Take", brief);
    // Lee's screen still shows the button.
    const second = lee.presses("Take", brief);
    await world.quiet();
    expect(first.answer()).toEqual({ text: expect.stringContaining("It's yours."), alert: false });
    expect(second.answer()).toEqual({ text: expect.stringContaining("Kim has had this case"), alert: true });
    expect(ada.hears().filter((text) => text.includes("at the desk has your case now"))).toHaveLength(1);
    expect(town.group.topics()[0]?.name).toMatch(/^1 in hand · /);
    const after = saying(kim, "Case 1", topic);
    expect([after.message_id, after.edited, after.buttons.flat()[0]]).toEqual([
      brief.message_id,
      true,
      "Hand back to bot",
    ]);
  });

  test("the parts list is changed with buttons under it, and the brief follows", async () => {
    const town = await withCase();
    const { world, kim, ada, topic } = town;
    const heard = ada.hears().length;
    kim.presses("Take", saying(kim, "Case 1 waits", topic));
    await world.quiet();
    kim.presses("Parts list", saying(kim, "Case 1", topic));
    await world.quiet();
    const list = saying(kim, "• shaft-seal", topic);
    expect(list.buttons.flat()).toEqual([
      "No shaft-seal",
      "shaft-seal optional",
      "No gasket",
      "gasket optional",
    ]);
    kim.presses("No gasket", list);
    await world.quiet();
    expect(saying(kim, "Parts list: no gasket", topic).buttons.flat()).toContain("Undo gasket");
    expect(saying(kim, "Case 1", topic).text).toContain("Edited: no gasket (Kim)");
    // "Kim has your case" and no word of parts.
    expect(ada.hears()).toHaveLength(heard + 1);
  });

  test("a line after > goes to the customer, everything else stays; each receipt says which and answers its line", async () => {
    const town = await withCase();
    const { world, kim, ada, topic = 0 } = town;
    const heard = ada.hears().length;
    const note = kim.saysInTopic(topic, "sounds like the old Miller pump again");
    const tell = kim.saysInTopic(topic, "> I put one aside for you");
    const mark = kim.saysInTopic(topic, ">1.1 looks odd");
    await world.quiet();
    expect(ada.hears().slice(heard)).toEqual(["Kim at the desk: I put one aside for you"]);
    const receipts = kim.sees(topic).filter(({ byBot, replyTo }) => byBot && replyTo !== undefined);
    expect(receipts.map(({ replyTo, text }) => [replyTo, text.slice(0, 24)])).toEqual([
      [note.message_id, "Kept as a NOTE. The cust"],
      [tell.message_id, "→ SENT TO THE CUSTOMER: "],
      [mark.message_id, "I can't tell whether “>1"],
    ]);
  });

  test("is corrected, offered another motor, closed as sold; the number is on record", async () => {
    const town = await withCase();
    const { world, kim, ada, store, topic = 0 } = town;
    for (const line of ["/take", "/fix sf 1.6", "/offer MUFFIN-509 cheaper and on the shelf"]) {
      kim.saysInTopic(topic, line);
      await world.quiet();
    }
    expect(ada.hears()).toContainEqual(
      expect.stringMatching(/^Kim at the desk suggests MUFFIN-509[\s\S]*Why: cheaper and on the shelf/),
    );
    const sold = kim.presses("Sold MUFFIN-509");
    await world.quiet();
    expect(sold.answer()?.text).toMatch(/^Closed: sold, MUFFIN-509\..*On record/);
    expect((await store.numbers()).map(({ number, sku, by }) => [number, sku, by.name])).toEqual([
      ["QX-4471", "MUFFIN-509", "Kim"],
    ]);
    // An old button on somebody's screen does nothing and says so.
    const brief = saying(kim, "Case 1", topic);
    const stale = kim.forgesPress("1/back", brief);
    await world.quiet();
    expect(stale.answer()).toEqual({ text: expect.stringContaining("This case is closed"), alert: true });
    ada.says("one more question: does it need a new gasket?");
    await world.quiet();
    expect(saying(kim, "The customer wrote again", topic).byBot).toBe(true);
  });

  test("forged data on a button does nothing and says so", async () => {
    const { world, kim, topic, store } = await withCase();
    const brief = saying(kim, "Case 1 waits", topic);
    const presses = ["take", "1/", "1/offer BAKLAVA-498 x", "999/take", "1/tell hi", "1/note hi"].map(
      (data) => kim.forgesPress(data, brief),
    );
    await world.quiet();
    expect(presses.map((press) => press.answer()?.text)).toEqual(
      presses.map((_, index) =>
        index === 3
          ? "There is no case 999. Nothing was done."
          : "That button is no longer valid. Nothing was done.",
      ),
    );
    expect((await store.findCase(1))?.state).toBe("waiting");
  });

  test("an edit of what was sent changes nothing and is told so", async () => {
    const { world, kim, ada, topic = 0 } = await withCase();
    const message = kim.saysInTopic(topic, "> it costs $300");
    await world.quiet();
    kim.edits(message, "> it costs $3000");
    await world.quiet();
    expect(ada.hears().at(-1)).toBe("Kim at the desk: it costs $300");
    expect(kim.hears(topic).at(-1)).toContain("Editing changes nothing");
  });

  test("a picture with words after > is not half sent", async () => {
    const { world, kim, ada, topic = 0 } = await withCase();
    const heard = ada.hears().length;
    kim.sendsPhoto({ caption: "> like this one?", topic });
    await world.quiet();
    expect(ada.hears()).toHaveLength(heard);
    expect(kim.hears(topic).at(-1)).toContain("Nothing was sent to the customer");
  });

  test("two people write at once: each line goes where it should, in order", async () => {
    const town = await withCase();
    const { world, kim, lee, ada, topic = 0 } = town;
    kim.saysInTopic(topic, "/take");
    await world.quiet();
    const heard = ada.hears().length;
    lee.saysInTopic(topic, "> hi, Lee here");
    kim.saysInTopic(topic, "> one");
    lee.saysInTopic(topic, "he sounds nervous");
    kim.saysInTopic(topic, "> two");
    await world.quiet();
    expect(ada.hears().slice(heard)).toEqual(["Kim at the desk: one", "Kim at the desk: two"]);
    const answers = told(town, topic).filter(([from]) => from === "Desk");
    expect(answers.map(([, text]) => text?.slice(0, 22))).toEqual([
      "Kim has this case.",
      expect.stringContaining("It's yours"),
      "Kim has had this case ",
      "→ SENT TO THE CUSTOMER",
      "Kept as a NOTE. The cu",
      "→ SENT TO THE CUSTOMER",
    ]);
  });

  test("is opened anew when somebody deletes its topic", async () => {
    const { world, group, kim, ada, topic = 0 } = await withCase();
    const api = `${world.apiRoot}/bot${world.token}`;
    await fetch(`${api}/deleteForumTopic?chat_id=${group.id}&message_thread_id=${topic}`);
    expect(group.topics()).toEqual([]);
    ada.says("person please");
    await world.until(() => group.topics().length === 1);
    await world.until(() => group.sees(topicOf({ group }, 1)).some(({ text }) => text.includes("Case 1")));
    expect(kim.sees(topicOf({ group }, 1)).some(({ text }) => text.includes("asked for a person"))).toBe(
      true,
    );
  });

  test("goes away when its customer asks to be forgotten", async () => {
    const { world, group, kim, ada } = await withCase();
    ada.says("/erase");
    ada.says("yes");
    await world.until(() => group.topics().length === 0);
    expect(group.sees().filter(({ text }) => text.includes("QX-4471"))).toEqual([]);
    expect(kim.hears("general").at(-1)).toContain("Case 1: the customer asked to be forgotten");
  });
});

describe("the group outside the topics", () => {
  test("offers staff their commands, each of which the desk knows", async () => {
    const { world, group, kim } = await withCase();
    const commands = world.commands(`{"type":"chat","chat_id":${group.id}}`).map(({ command }) => command);
    expect(commands.length).toBeGreaterThan(10);
    for (const command of commands) kim.says(`/${command}`);
    await world.quiet();
    expect(kim.hears("general")).toHaveLength(commands.length);
    expect(kim.hears("general").filter((text) => text.startsWith("There is no /"))).toEqual([]);
  });

  test("lists what waits, shows a case, and leaves talk among colleagues alone", async () => {
    const { world, kim } = await withCase();
    kim.says("who brings the cake?");
    kim.says("/cake@another_bot now");
    await world.quiet();
    expect(kim.hears("general")).toEqual([]);
    kim.says("/waiting");
    await world.quiet();
    const list = saying(kim, "Waiting: 1", "general");
    expect(list.text).toMatch(/READY TO CONFIRM · case 1 · just now/);
    expect(list.buttons).toEqual([["Take 1"]]);
    kim.says("/case 1");
    kim.says("/case 7");
    kim.says("> hello?");
    kim.says("/take");
    kim.says("/help");
    await world.quiet();
    expect(
      kim
        .hears("general")
        .slice(1)
        .map((text) => text.slice(0, 30)),
    ).toEqual([
      expect.stringContaining("Case 1 waits"),
      "There is no case 7. Nothing wa",
      "Open a case first: /case and i",
      "Open a case first: /case and i",
      "A line that starts with > goes",
    ]);
  });

  test("a list's button takes the case", async () => {
    const { world, lee, store } = await withCase();
    lee.says("/waiting");
    await world.quiet();
    lee.presses("Take 1");
    await world.quiet();
    expect((await store.findCase(1))?.state).toBe("taken");
  });
});

describe("who is not of the staff", () => {
  test("somebody thrown out of the group acts no more, whatever their app still shows", async () => {
    const { world, group, kim, lee, store, topic } = await withCase();
    const brief = saying(kim, "Case 1 waits", topic);
    group.removes(lee, kim);
    const press = lee.forgesPress("1/take", brief);
    await world.quiet();
    expect(press.answer()).toEqual({ text: expect.stringContaining("Only members"), alert: true });
    expect((await store.findCase(1))?.state).toBe("waiting");
  });

  test("nor do their words in a case's topic, though they were of the staff a moment ago", async () => {
    const { world, group, kim, lee, ada, store, topic } = await withCase();
    lee.says("/waiting");
    await world.quiet();
    group.removes(lee, kim);
    await world.quiet();
    const heard = ada.hears().length;
    // As in a group anybody may write to: a comment from outside reaches the bot all the same.
    lee.saysInTopic(topic ?? 0, "/take");
    lee.saysInTopic(topic ?? 0, "> send me your money");
    await world.quiet();
    expect((await store.findCase(1))?.state).toBe("waiting");
    expect(ada.hears()).toHaveLength(heard);
    expect(kim.hears(topic).at(-1)).toMatch(/member/i);
  });

  test("staff commands from a customer's chat or another group do nothing", async () => {
    const { world, ada, store } = await withCase();
    const mallory = world.addUser({ first_name: "Mallory" });
    mallory.says("1/take");
    mallory.says("/close sold BAKLAVA-498");
    ada.says("/take");
    const press = ada.forgesPress("1/take", saying(ada, "Before anyone opens it"));
    await world.quiet();
    expect((await store.findCase(1))?.state).toBe("waiting");
    expect(press.answer()?.text).toContain("That question has passed");
    expect((await store.findCase(1))?.doc).toContain('"state":"waiting"');
  });
});

describe("a group without topics", () => {
  test("cases are messages; answers to any message of a case are about that case", async () => {
    const town = await withCase({ topics: false });
    const { world, kim, ada } = town;
    const bea = world.addUser({ first_name: "Bea" });
    bea.says("I want a person");
    await world.quiet();
    const [one, two] = [saying(kim, "Case 1 waits"), saying(kim, "Case 2 waits")];
    kim.repliesTo(one, "> hello Ada");
    await world.quiet();
    kim.repliesTo(two, "> hello Bea");
    await world.quiet();
    const receipt = saying(kim, "SENT TO THE CUSTOMER: hello Bea");
    kim.repliesTo(receipt, "> still there?");
    await world.quiet();
    expect(ada.hears().at(-1)).toBe("Kim at the desk: hello Ada");
    expect(bea.hears().slice(-2)).toEqual(["Kim at the desk: hello Bea", "Kim at the desk: still there?"]);
    kim.says("> to nobody");
    await world.quiet();
    expect(kim.hears().at(-1)).toContain("Open a case first");
  });

  test("a basic group that becomes a supergroup keeps working, also after a restart", async () => {
    const { world, group, kim, ada, store, engine, clock, stop } = await withCase({ basicGroup: true });
    const old = group.id;
    group.upgrades(kim);
    ada.says("I want a person");
    await world.until(
      () => group.id !== old && group.sees().some(({ text }) => text.includes("asked for a person")),
    );
    await world.quiet();
    kim.repliesTo(saying(kim, "asked for a person"), "> hello again");
    await world.quiet();
    expect(ada.hears().at(-1)).toBe("Kim at the desk: hello again");
    await stop();
    expect([await store.undelivered(), clock.now() > "", engine !== undefined]).toEqual([[], true, true]);
  });

  test("a bot that may not open topics says so and goes on with messages", async () => {
    const { world, group, kim, log, ada } = await (async () => {
      const town = await openTown();
      town.group.promotesBot(town.kim, { can_manage_topics: false });
      const ada = town.world.addUser({ first_name: "Ada" });
      ada.says(LABEL);
      await town.world.quiet();
      return { ...town, ada };
    })();
    expect(group.topics()).toEqual([]);
    await world.until(() => kim.hears("general").some((text) => text.includes("right “Manage topics”")));
    expect(log.some(({ text }) => text.includes("manage topics"))).toBe(true);
    kim.repliesTo(saying(kim, "Case 1 waits"), "> hello");
    await world.quiet();
    expect(ada.hears().at(-1)).toBe("Kim at the desk: hello");
  });
});
