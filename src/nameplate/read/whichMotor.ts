import { type Context, cuesOf } from "./context.ts";
import type { Entity } from "./entities.ts";
import type { Cue } from "./findCues.ts";
import type { Ordered } from "./ordered.ts";
import { isWord, type Token } from "./token.ts";

/** Sentences about a motor that still works, where another one in the message is the broken one. */
export function sentencesOfWorkingMotors(context: Context): Set<number> {
  const { tokens, sentenceAt } = context;
  const working = new Set<number>();
  const broken = new Set<number>();
  for (const cue of cuesOf(context, "alive", "dead", "home")) {
    const sentence = sentenceAt[cue.start] ?? 0;
    if (
      cue.kind === "dead" ||
      (cue.kind === "home" && /dead|bad|burn|broke|died|quit|need|fail/.test(cue.phrase))
    )
      broken.add(sentence);
    if (cue.kind !== "alive" || /^(?:good|great|ok|running|working|runs|no problem)$/.test(cue.phrase))
      continue;
    const around = tokens.slice(Math.max(0, cue.start - 6), cue.end + 3);
    const named = around.some((token) =>
      isWord(token, "one", "pump", "motor", "other", "left", "right", "unit", "1", "2", "bomba"),
    );
    if (named) working.add(sentence);
  }
  for (const sentence of broken) working.delete(sentence);
  return broken.size > 0 ? working : new Set();
}

/** "Not the one by the hot tub" */
function isDenied(tokens: readonly Token[], start: number): boolean {
  const article = isWord(tokens[start - 1], "the", "my", "el", "la", "mi");
  return isWord(tokens[start - (article ? 2 : 1)], "not", "no");
}

const needing = ["need", "needs", "necesito"];

/** One of several motors told apart in a message, the tokens that are about it, and whether it is the broken one. */
export interface ToldApart {
  readonly start: number;
  /** Where the words that name it end. */
  readonly named: number;
  readonly end: number;
  readonly owner: "label" | "other";
}

/** For messages that tell their motors apart ("left one … right one"): the stretches about each, in text order. */
export function motorsToldApart(
  tokens: readonly Token[],
  cues: Ordered<Cue>,
  entities: Ordered<Entity>,
): ToldApart[] {
  const about = entities.all.map(({ start, end: named, key }, index) => ({
    start,
    named,
    key,
    end: entities.all[index + 1]?.start ?? tokens.length,
  }));
  const state = new Map<string, "alive" | "dead">();
  for (const { start, named, end, key } of about) {
    const said = cues
      .within(named, end)
      .filter((cue) => (cue.kind === "dead" || cue.kind === "alive") && cue.end <= end);
    const alive = said.filter(({ kind }) => kind === "alive");
    // "humming along" runs; "humming" does not.
    const isDead = (cue: Cue) =>
      cue.kind === "dead" &&
      !(cue.phrase === "the one" && isWord(tokens[cue.start - 1], "not", "isnt", "aint")) &&
      !alive.some((other) => other.start <= cue.start && cue.end <= other.end);
    const needs = tokens.slice(start, end).some((token) => isWord(token, ...needing));
    // "What I need is for the main pump": what is needed is named next.
    const lead = isWord(tokens[end - 1], "the", "my", "a", "el", "la", "mi") ? end - 2 : end - 1;
    const ofNext =
      isWord(tokens[lead], "for", "is", "es", "para", "de") &&
      tokens.slice(Math.max(named, end - 6), end).some((token) => isWord(token, ...needing));
    const before = tokens.slice(Math.max(0, start - 6), start);
    const asked = before.findLastIndex((token) => isWord(token, ...needing));
    const led = asked >= 0 && before.slice(asked).every(({ kind }) => kind === "word");
    const needed = (needs && !(ofNext && end < tokens.length)) || led;
    if (needed || said.some(isDead)) state.set(key, "dead");
    else if (isDenied(tokens, start)) state.set(key, "alive");
    else if (said.length > 0 && state.get(key) !== "dead") state.set(key, "alive");
  }
  if (state.size === 0) return [];
  const anyDead = [...state.values()].includes("dead");
  return about.map(({ start, named, end, key }) => {
    const standing = state.get(key);
    return {
      start,
      named,
      end,
      owner: standing === "alive" || (standing === undefined && anyDead) ? "other" : "label",
    };
  });
}
