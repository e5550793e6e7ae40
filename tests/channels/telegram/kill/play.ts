import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import type { Group } from "../../../../src/channels/telegram/stand-in/people/group.ts";
import type { Person } from "../../../../src/channels/telegram/stand-in/people/person.ts";
import type { Speaker } from "../../../../src/channels/telegram/stand-in/people/speaker.ts";
import { openStandIn, type StandIn } from "../../../../src/channels/telegram/stand-in/stand-in.ts";
import { programs } from "../../../programs.ts";
import { chance, type Deed, deskTalk, talks } from "./script.ts";
import { Onlooker } from "./state.ts";

const project = fileURLToPath(new URL("../../../../", import.meta.url));
const token = "424242:invented-token-of-nobody";
/** A Tuesday, 18:00 in the evening at the shop. */
const EVENING = "2026-11-25T00:00:00.000Z";

export interface Plan {
  readonly folder: string;
  readonly customers: number;
  readonly kills: number;
  /** Decides who says what when, the same for every run. */
  readonly seed: number;
  /** Decides when the desk is killed. */
  readonly killSeed: number;
}

export interface Played {
  /** What each customer heard, in order. */
  readonly heard: ReadonlyMap<string, readonly string[]>;
  readonly everything: Readonly<Record<string, unknown>>;
  readonly parked: number;
  readonly integrity: string;
  /** Lives of the desk that ended with a kill. */
  readonly kills: number;
  /** Of these, while it was still starting. */
  readonly killedAtStart: number;
  readonly deeds: number;
  readonly ms: number;
}

/** Plays a recorded evening to a desk that is killed and started again on the way. */
export async function playEvening(plan: Plan): Promise<Played> {
  const began = performance.now();
  const aheadMs = Date.parse(EVENING) - Date.now();
  const now = () => new Date(Date.now() + aheadMs).toISOString();
  const world = await openStandIn({ token, now });
  const group = world.addStaffGroup();
  const kim = group.has(world.addUser({ first_name: "Kim" }), "creator");
  const people = Array.from({ length: plan.customers }, (_, n) => world.addUser({ first_name: `C${n}` }));
  const storeFile = join(plan.folder, `desk-${plan.killSeed}-${plan.kills}.sqlite`);
  const start = () =>
    spawn(
      process.execPath,
      [programs.deskProcess, world.apiRoot, token, String(group.id), storeFile, String(aheadMs), project],
      {
        stdio: ["ignore", "inherit", "inherit"],
      },
    );
  const killer = new Killer(world, start, plan);
  try {
    const stage = { world, group, kim, people, storeFile, killer };
    const deeds = await Promise.race([play(plan, stage), killer.endedByItself]);
    await killer.finish();
    const onlooker = await settled(world, storeFile);
    const played: Played = {
      heard: new Map(people.map((person) => [person.user.first_name, person.hears()])),
      everything: onlooker.everything(),
      parked: onlooker.parked(),
      integrity: onlooker.integrity(),
      kills: killer.kills,
      killedAtStart: killer.killedAtStart,
      deeds,
      ms: performance.now() - began,
    };
    onlooker.close();
    return played;
  } finally {
    await killer.end();
    await world.close();
  }
}

interface Stage {
  readonly world: StandIn;
  readonly group: Group;
  readonly kim: Speaker;
  readonly people: readonly Person[];
  readonly storeFile: string;
  readonly killer: Killer;
}

/** Customers talk; then staff work on the cases with them. Gives the number of deeds. */
async function play({ seed, customers }: Plan, stage: Stage): Promise<number> {
  const { world, people, kim, killer, storeFile } = stage;
  const random = chance(seed);
  const scripts = people.map((_, n) => [...(talks[n % talks.length] ?? [])]);
  const total = scripts.flat().length + customers * deskTalk.length;
  killer.expect(total);
  let deeds = 0;
  const last = new Map<Person, { message_id: number }>();
  while (scripts.some((script) => script.length > 0)) {
    const open = people.filter((_, n) => (scripts[n] ?? []).length > 0);
    const person = open[random.below(open.length)];
    const deed = person && scripts[people.indexOf(person)]?.shift();
    if (!person || !deed) continue;
    await killer.allows(++deeds);
    await doDeed(world, person, deed, last);
  }
  const onlooker = await settled(world, storeFile);
  const cases = people.flatMap((person) => {
    const topic = onlooker.topicOf(`telegram:${person.id}`);
    return topic === undefined ? [] : [{ person, topic }];
  });
  onlooker.close();
  // Line by line over all cases, so that chats of many customers and the group are busy at once.
  for (const [who, text] of deskTalk) {
    for (const { person, topic } of cases) {
      await killer.allows(++deeds);
      if (who === "staff") kim.saysInTopic(topic, text);
      else person.says(text);
    }
    (await settled(world, storeFile)).close();
  }
  return deeds;
}

async function doDeed(
  world: StandIn,
  person: Person,
  deed: Deed,
  last: Map<Person, { message_id: number }>,
): Promise<void> {
  switch (deed.kind) {
    case "says":
      last.set(person, person.says(deed.text));
      return;
    case "edits":
      person.edits(last.get(person) ?? { message_id: 0 }, deed.text);
      return;
    case "photo":
      person.sendsPhoto();
      return;
    case "album":
      person.sendsAlbum(deed.count);
      return;
    case "sticker":
      person.sendsSticker();
      return;
    case "presses":
      await world.until(() => person.sees().some(({ buttons }) => buttons.flat().includes(deed.button)), {
        withinMs: 240_000,
      });
      person.presses(deed.button);
  }
}

/** Resolves when the desk has done all it can; throws when it does not get there. */
async function settled(world: StandIn, storeFile: string): Promise<Onlooker> {
  const deadline = Date.now() + 240_000;
  while (!existsSync(storeFile)) await pause(20);
  for (;;) {
    // A file of which the schema is not there yet cannot be asked.
    const onlooker = new Onlooker(storeFile);
    try {
      if (world.pendingUpdates() === 0 && onlooker.settled()) return onlooker;
    } catch (error) {
      if (Date.now() > deadline) throw error;
    }
    onlooker.close();
    if (Date.now() > deadline) throw new Error("The desk did not get done.");
    await pause(15);
  }
}

/** Starts the desk, kills it at a random point of its work, starts it again, as often as planned. */
class Killer {
  kills = 0;
  killedAtStart = 0;
  private child: ChildProcess | undefined;
  private allowed = 0;
  private total = 0;
  private waiting: (() => void)[] = [];
  private readonly lives: Promise<void>;
  private fail: (error: Error) => void = () => {};
  /** Rejects when a desk ended that nobody had killed. */
  readonly endedByItself = new Promise<never>((_, reject) => {
    this.fail = reject;
  });
  private ended = false;

  constructor(
    private readonly world: StandIn,
    private readonly spawn: () => ChildProcess,
    private readonly plan: Plan,
  ) {
    this.endedByItself.catch(() => {});
    this.lives = this.live();
  }

  /** How many deeds the evening has: each life gets its share of them. */
  expect(total: number): void {
    this.total = total;
    this.grant();
  }

  /** Resolves when the evening may go on to this deed. */
  async allows(deed: number): Promise<void> {
    while (deed > this.allowed && !this.ended)
      await new Promise<void>((resolve) => this.waiting.push(resolve));
  }

  /** Resolves when the last life, which nobody ends, has begun. */
  finish(): Promise<void> {
    return this.lives;
  }

  async end(): Promise<void> {
    this.ended = true;
    const { child } = this;
    if (child === undefined || child.exitCode !== null || child.signalCode !== null) return;
    child.kill("SIGKILL");
    await once(child, "exit");
  }

  private start(): ChildProcess {
    const child = this.spawn();
    child.once("exit", (code) => {
      if (code !== null) this.fail(new Error(`The desk ended by itself, with status ${code}.`));
    });
    return child;
  }

  private grant(): void {
    const { kills } = this.plan;
    this.allowed =
      this.kills >= kills ? this.total : Math.ceil((this.total * (this.kills + 1)) / (kills + 1));
    for (const go of this.waiting.splice(0)) go();
  }

  private async live(): Promise<void> {
    const random = chance(this.plan.killSeed);
    while (this.kills < this.plan.kills && !this.ended) {
      const child = this.start();
      this.child = child;
      const atStart = random.below(12) === 0;
      if (atStart) await pause(random.below(700));
      else await this.worksUntil(1 + random.below(40), child);
      // Between two events of the outside world as well as right at one.
      await pause(random.below(4));
      child.kill("SIGKILL");
      await once(child, "exit");
      this.kills += 1;
      if (atStart) this.killedAtStart += 1;
      this.grant();
    }
    if (!this.ended) this.child = this.start();
    this.grant();
  }

  /** Resolves after so many events since the desk began to work, or when nothing happens any more. */
  private async worksUntil(events: number, child: ChildProcess): Promise<void> {
    const { world } = this;
    const polls = world.calls.of("getUpdates").length;
    await world.until(() => world.calls.of("getUpdates").length > polls || child.exitCode !== null, {
      withinMs: 30_000,
    });
    await new Promise<void>((resolve) => {
      let left = events;
      let idle = setTimeout(() => end(), 150);
      const stop = world.onChange(() => {
        left -= 1;
        clearTimeout(idle);
        if (left <= 0) return end();
        idle = setTimeout(() => end(), 150);
      });
      const end = () => {
        clearTimeout(idle);
        stop();
        resolve();
      };
    });
  }
}
