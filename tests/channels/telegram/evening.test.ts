import { expect, test } from "vitest";
import { customer, evening } from "../../desk/evening.ts";
import { chance } from "./kill/script.ts";
import { openTown, type Town, topicOf } from "./town.ts";

// An evening in the shop: 50 customers, 3 people of staff, all at once.

const talks: readonly (readonly string[])[] = [
  ["1 hp, SF 1.65, 230V", "frame 56Y, single phase, 3450 rpm, model QX-4471", "person please"],
  ["hello", "1.5hp 230V 48Y sf 1.1", "3450 rpm, single phase", "I want a person"],
  ["I want to talk to a person", "it says 1 horse and 56Y"],
  ["my pump is dead", "2 hp sf 1.3 230V 56J 3450 rpm 1 phase", "talk to a human please"],
  ["there is smoke coming out of the motor", "the power is off", "hp 1, 230V, 56Y"],
];

/** What customers would be told without any channel in between. */
async function toldPlainly(scripts: readonly (readonly string[])[], start: string) {
  const plain = evening();
  plain.at(start);
  return Promise.all(
    scripts.map(async (script, n) => {
      for (const text of script) await plain.says(`c${n}`, text);
      return plain.texts(customer(`c${n}`));
    }),
  );
}

test("50 customers and 3 staff interleaved: everybody sees their own talk, all of it, in order", async () => {
  const town = await openTown({ pace: { lanesAtOnce: 8 } });
  const { world, group, kim, lee, clock, store } = town;
  const mo = group.has(world.addUser({ first_name: "Mo" }));
  const staff = [kim, lee, mo];
  const people = Array.from({ length: 50 }, (_, n) => world.addUser({ first_name: `C${n}` }));
  const scripts = people.map((_, n) => talks[n % talks.length]!);

  // All talk at once, in any order between them.
  const random = chance(1);
  const left = scripts.map((script) => [...script]);
  while (left.some((script) => script.length > 0)) {
    const n = random.below(people.length);
    const text = left[n]!.shift();
    if (text !== undefined) people[n]!.says(text);
    if (random.below(10) === 0) await new Promise((resolve) => setTimeout(resolve, 2));
  }
  await world.quiet({ withinMs: 60_000, stillForMs: 100 });
  const expected = await toldPlainly(scripts, clock.now());
  for (const [n, person] of people.entries()) expect(person.hears()).toEqual(expected[n]);

  // One topic for each customer, each with one brief.
  const caseOf = await Promise.all(
    people.map(async (person) => (await store.latestCase(`telegram:${person.id}`))!.id),
  );
  expect(new Set(caseOf).size).toBe(50);
  expect(group.topics()).toHaveLength(50);

  // Each case is taken by one, tried by another, and both write; customers write in between.
  const ownerOf = (n: number) => staff[n % 3]!;
  const otherOf = (n: number) => staff[(n + 1) % 3]!;
  const heard = people.map((person) => person.hears().length);
  const topics = people.map((_, n) => topicOf(town, caseOf[n]!));
  for (const [n] of people.entries()) ownerOf(n).saysInTopic(topics[n]!, "/take");
  await world.quiet({ withinMs: 60_000, stillForMs: 100 });
  for (const [n, person] of people.entries()) {
    ownerOf(n).saysInTopic(topics[n]!, `> hello number ${n}`);
    person.says(`I am number ${n}`);
    otherOf(n).saysInTopic(topics[n]!, `> wrong ${n}`);
    otherOf(n).saysInTopic(topics[n]!, `note on ${n}`);
    ownerOf(n).saysInTopic(topics[n]!, `> bye number ${n}`);
  }
  await world.quiet({ withinMs: 60_000, stillForMs: 100 });

  for (const [n, person] of people.entries()) {
    const name = ownerOf(n).user.first_name;
    expect(person.hears().slice(heard[n])).toEqual([
      `${name} at the desk has your case now and writes to you here. I'll keep quiet meanwhile.`,
      `${name} at the desk: hello number ${n}`,
      `${name} at the desk: bye number ${n}`,
    ]);
    expect(answersIn(town, topics[n]!)).toEqual([
      ["/take", expect.stringContaining("It's yours.")],
      [`> hello number ${n}`, `→ SENT TO THE CUSTOMER: hello number ${n}`],
      [`> wrong ${n}`, expect.stringContaining(`${name} has had this case`)],
      [`note on ${n}`, expect.stringContaining("Kept as a NOTE.")],
      [`> bye number ${n}`, `→ SENT TO THE CUSTOMER: bye number ${n}`],
    ]);
    const passedOn = group.sees(topics[n]!).filter(({ text }) => text.startsWith("Customer: "));
    expect(passedOn.map(({ text }) => text)).toEqual([`Customer: I am number ${n}`]);
  }
  expect([await store.undelivered(), await store.parked(), await store.telegram.parkedUpdates()]).toEqual([
    [],
    [],
    [],
  ]);
}, 60_000);

/** Each line of staff in a topic with the bot's answer to it, in the order of the answers. */
function answersIn({ group }: Pick<Town, "group">, topic: number): readonly (readonly [string, string])[] {
  const seen = group.sees(topic);
  return seen.flatMap(({ byBot, replyTo, text }) => {
    const line =
      byBot && replyTo !== undefined ? seen.find(({ message_id }) => message_id === replyTo) : undefined;
    return line === undefined ? [] : [[line.text, text] as const];
  });
}
