import type { RatingName } from "../../nameplate/vocabulary.ts";
import { readingCost, undecidedCost } from "./assumptions.ts";
import { askedTogether, awayFromLabel } from "./ladder.ts";
import type { Outlook } from "./outlook.ts";
import type { World } from "./worlds.ts";

/** A rating that may be asked, with its place among the open parts. */
interface Choice {
  readonly rating: RatingName;
  readonly part: number;
  /** Its bit among the ratings of its part. */
  readonly bit: number;
}

/** Ratings asked in one message, as bits over all choices. */
interface Message {
  readonly ratings: number;
  readonly cost: number;
}

export interface Plan {
  /** What to ask in the next message; empty when asking on is not worth its chance of a verdict. */
  readonly next: readonly RatingName[];
  /** All that may be asked, the most useful first. */
  readonly order: readonly RatingName[];
  /** Messages expected until the thread has its verdict, readings weighed in. */
  readonly expectedCost: number;
}

/**
 * The message that leads to a verdict with the fewest messages to be expected. Answers part the worlds into
 * those that still look alike; the best way on is worked out backwards, from everything told to nothing told.
 */
export function cheapestPlan(outlook: Outlook, worlds: readonly World[]): Plan {
  const choices = outlook.parts.flatMap(({ ratings }, part) =>
    ratings.map((rating, at): Choice => ({ rating, part, bit: 1 << at })),
  );
  const messages = messagesFrom(choices);
  const everything = (1 << choices.length) - 1;
  const stages: Stage[] = [];
  const isDecided = remembered(outlook);

  for (let told = everything; told >= 0; told--) {
    const stage = stageOf(told, choices, outlook, worlds);
    for (const [number, members] of stage.members.entries()) {
      const states = stage.states[number] ?? [];
      stage.cost.push(isDecided(states) ? 0 : bestMessage(told, members, messages, stages, worlds).cost);
    }
    stages[told] = stage;
  }

  const everyone = worlds.map((_, at) => at);
  const best = stages[0]?.cost[0] === 0 ? undefined : bestMessage(0, everyone, messages, stages, worlds);
  const alone = (choice: number) => costOf({ ratings: 1 << choice, cost: 0 }, 0, everyone, stages, worlds);
  const order = choices
    .map(({ rating }, at) => ({ rating, cost: alone(at) + readingCost(rating) }))
    .sort((a, b) => a.cost - b.cost)
    .map(({ rating }) => rating);
  const chosen = new Set(
    choices.filter((_, at) => (best?.message?.ratings ?? 0) & (1 << at)).map(({ rating }) => rating),
  );
  return { next: order.filter((rating) => chosen.has(rating)), order, expectedCost: best?.cost ?? 0 };
}

/** How the worlds look when the same ratings have been told in all of them. */
interface Stage {
  /** World -> number of the class of worlds that look like it. */
  readonly classOf: readonly number[];
  readonly members: readonly (readonly number[])[];
  /** States of the parts in each class. */
  readonly states: readonly (readonly number[])[];
  /** Cost still to be expected in each class. */
  readonly cost: number[];
}

function stageOf(
  told: number,
  choices: readonly Choice[],
  { parts }: Outlook,
  worlds: readonly World[],
): Stage {
  const toldIn = parts.map(() => 0);
  for (const [at, { part, bit }] of choices.entries())
    if (told & (1 << at)) toldIn[part] = (toldIn[part] ?? 0) | bit;
  const classes = new Map<number, number>();
  const members: number[][] = [];
  const states: number[][] = [];
  const stateIn = (picks: World["picks"], part: number) =>
    parts[part]?.states[picks[part] ?? 0]?.[toldIn[part] ?? 0] ?? 0;
  const classOf = worlds.map(({ picks }, at) => {
    let key = 0;
    for (let part = 0; part < parts.length; part++) key = key * 4096 + stateIn(picks, part);
    const known = classes.get(key);
    if (known !== undefined) {
      members[known]?.push(at);
      return known;
    }
    classes.set(key, members.length);
    states.push(parts.map((_, part) => stateIn(picks, part)));
    return members.push([at]) - 1;
  });
  return { classOf, members, states, cost: [] };
}

/** Every message that could be sent: up to three ratings of the label, or one from elsewhere. */
function messagesFrom(choices: readonly Choice[]): readonly Message[] {
  const messages: Message[] = [];
  const cost = (...at: readonly number[]) =>
    at.reduce((sum, choice) => sum + readingCost(choices[choice]?.rating ?? "pumpModel"), 1);
  const label = choices.flatMap(({ rating }, at) => (awayFromLabel.has(rating) ? [] : [at]));
  for (const at of choices.keys()) {
    if (!label.includes(at)) messages.push({ ratings: 1 << at, cost: cost(at) });
  }
  const add = (from: number, chosen: readonly number[]) => {
    if (chosen.length > 0) {
      messages.push({ ratings: chosen.reduce((bits, at) => bits | (1 << at), 0), cost: cost(...chosen) });
    }
    if (chosen.length === askedTogether) return;
    for (let next = from; next < label.length; next++) add(next + 1, [...chosen, label[next] ?? 0]);
  };
  add(0, []);
  return messages;
}

function bestMessage(
  told: number,
  members: readonly number[],
  messages: readonly Message[],
  stages: readonly Stage[],
  worlds: readonly World[],
): { readonly cost: number; readonly message?: Message } {
  let best: { cost: number; message?: Message } = { cost: undecidedCost };
  for (const message of messages) {
    if (told & message.ratings) continue;
    if (message.cost >= best.cost) continue;
    const cost = costOf(message, told, members, stages, worlds);
    if (cost < best.cost - 1e-9) best = { cost, message };
  }
  return best;
}

/** Cost of a message and of what follows it, to be expected over the worlds given. */
function costOf(
  { ratings, cost }: Message,
  told: number,
  members: readonly number[],
  stages: readonly Stage[],
  worlds: readonly World[],
): number {
  const after = stages[told | ratings];
  if (!after) return Number.POSITIVE_INFINITY;
  let sum = 0;
  let likelihood = 0;
  for (const at of members) {
    const share = worlds[at]?.likelihood ?? 0;
    likelihood += share;
    sum += share * (after.cost[after.classOf[at] ?? 0] ?? 0);
  }
  return cost + sum / likelihood;
}

/** Whether the thread is decided, worked out once for each combination of states. */
function remembered({ isDecided }: Outlook): (states: readonly number[]) => boolean {
  const known = new Map<string, boolean>();
  return (states) => {
    const key = states.join();
    const found = known.get(key) ?? isDecided(states);
    known.set(key, found);
    return found;
  };
}
