import type { Understood } from "../../src/conversation/understand.ts";
import type { RatingName } from "../../src/nameplate/vocabulary.ts";
import { fitsChoice } from "../../src/outgoing.ts";
import { chance } from "../channels/telegram/kill/script.ts";
import { knowledge } from "../conversation/knowledge.ts";
import { evening, kim } from "../desk/evening.ts";
import { madeUp } from "./fuzz-messages.ts";

/** What went wrong with one message. */
export interface Fault {
  readonly what: string;
  readonly text: string;
}

export interface FuzzResult {
  readonly messages: number;
  readonly noise: number;
  readonly faults: readonly Fault[];
  /** Handling times in milliseconds. */
  readonly times: readonly number[];
  readonly slowest: string;
  /** Characters of the largest thread kept. */
  readonly largestThread: number;
}

/** What a message was understood as, and the ratings that had just been asked for. */
interface Heard extends Understood {
  readonly asked: readonly RatingName[];
}

/** Whoever is asked for one of these may answer with any word: makers number their motors as they like. */
const mayBeAnything: readonly RatingName[] = ["modelNumbers", "serialNumber"];
const CUSTOMERS = 300;
/** Far above what any thread needs; a thread that grows with each message would pass it. */
const LARGEST_THREAD = 100_000;

export interface FuzzOptions {
  /** The longest message, in characters. */
  readonly longest: number;
  /** Of the demo stock only so many motors: the engine's work grows with them, what it may do wrong does not. */
  readonly motors?: number;
}

/** Sends made-up messages of many customers, with pictures, edits, staff and time in between, through the whole engine. */
export async function fuzz(count: number, seed: number, options: FuzzOptions): Promise<FuzzResult> {
  const next = madeUp(seed, options.longest);
  const random = chance(seed + 1);
  let understood: Heard | undefined;
  const catalogue = { ...knowledge.catalogue, motors: knowledge.catalogue.motors.slice(0, options.motors) };
  const shop = evening({
    catalogue: () => catalogue,
    understand: (text, expecting) => {
      const now = knowledge.understand(text, expecting);
      understood = { ...now, asked: expecting ?? [] };
      return now;
    },
  });
  const faults: Fault[] = [];
  const times: number[] = [];
  const result = { noise: 0, slowest: "", largestThread: 0 };
  const known = new Set<unknown>();
  let longestMs = 0;
  let now = Date.parse("2026-11-24T16:00:00.000Z");
  for (let n = 0; n < count; n += 1) {
    const { text, noise } = next();
    const fault = (what: string) => void faults.push({ what, text });
    const who = `c${random.below(CUSTOMERS)}`;
    now += random.below(120_000);
    shop.at(new Date(now).toISOString());
    const began = performance.now();
    let heard: Heard | undefined;
    understood = undefined;
    try {
      const extra = {
        ...(random.below(20) === 0 ? { attachments: [{ kind: "photo", ref: text.slice(0, 50) }] } : {}),
        message: `${who}:${random.below(50)}`,
        ...(random.below(20) === 0 ? { edited: true } : {}),
      };
      for (const reply of await shop.says(who, text, extra)) {
        if (reply.trim() === "") fault("an empty reply");
        if (reply.length > 8000) fault("an endless reply");
        if (/\{[a-zA-Z]{1,40}\}/.test(reply) && !text.includes("{")) fault(`an unfilled blank: ${reply}`);
        if (/\b(?:undefined|NaN)\b|\[object/.test(reply) && !/undefined|NaN|object/.test(text))
          fault(`nonsense: ${reply}`);
      }
      heard = understood;
      if (random.below(25) === 0) await desks(shop, random, text);
    } catch (error) {
      fault(`thrown: ${String(error)}`);
    }
    const ms = performance.now() - began;
    if (ms > longestMs) {
      longestMs = ms;
      result.slowest = text.slice(0, 200);
    }
    times.push(ms);
    for (const trouble of shop.troubles)
      if (!known.has(trouble) && known.add(trouble)) fault(`trouble: ${String(trouble)}`);
    if (noise) {
      result.noise += 1;
      // A picture without words is not read.
      if (heard === undefined && text.trim() !== "") fault("noise was not even looked at");
      if (heard?.hazard) fault(`danger in noise: ${heard.hazard}`);
      for (const { rating, value } of heard?.reading.readings ?? [])
        if (!mayBeAnything.includes(rating) || !heard?.asked.includes(rating))
          fault(`a reading from noise: ${rating} ${String(value)}`);
    }
    if (n % 50 === 0) {
      const state = (await shop.store.findThread(who))?.state ?? "";
      result.largestThread = Math.max(result.largestThread, state.length);
      if (state.length > LARGEST_THREAD) fault("an endless thread");
      // What waits is delivered, as a channel would.
      for (const { id, content } of await shop.store.undelivered()) {
        for (const choice of content.choices ?? [])
          if (!fitsChoice(choice.id)) fault(`a choice too long: ${choice.id}`);
        await shop.store.delivered(id);
      }
    }
  }
  await shop.store.close();
  return { messages: count, faults, times, ...result };
}

/** Staff read the list, and do something with a case or other, in the words of the message or in their own. */
async function desks(
  shop: ReturnType<typeof evening>,
  random: ReturnType<typeof chance>,
  text: string,
): Promise<void> {
  await shop.tick();
  const open = await shop.store.openCases();
  const row = open[random.below(Math.max(1, open.length))];
  if (row === undefined) return;
  const lines = [
    "/take",
    "/back",
    `> ${text}`,
    text,
    "/close answered",
    `/fix sf ${text.slice(0, 20)}`,
    "/allclear",
  ];
  const line = lines[random.below(lines.length)] ?? "/take";
  await shop.types(kim, row.id, line).catch((error: unknown) => {
    if (!(error instanceof Error) || !error.message.startsWith("not an act")) throw error;
  });
}
