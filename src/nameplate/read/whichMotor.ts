import { type Context, cuesIn, cuesOf } from "./context.ts";
import { findEntities } from "./entities.ts";
import { isWord } from "./token.ts";

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

/** For messages that number their motors ("pump 1 … pump 2"): by clause, whether it is about the broken one. */
export function clausesOfNumberedMotors(context: Context): Map<number, "label" | "other"> {
  const owners = new Map<number, "label" | "other">();
  const entities = findEntities(context.tokens);
  if (new Set(entities.map(({ key }) => key)).size < 2) return owners;
  const state = new Map<string, "alive" | "dead">();
  const about = new Map<number, string>();
  let key: string | undefined;
  let next = 0;
  for (const [index, clause] of context.clauses.entries()) {
    for (; (entities[next]?.start ?? Number.POSITIVE_INFINITY) < clause.end; next++)
      key = entities[next]?.key;
    if (key === undefined) continue;
    about.set(index, key);
    for (const cue of cuesIn(context, clause.start, clause.end, "dead", "alive"))
      if (cue.kind === "dead" || state.get(key) !== "dead")
        state.set(key, cue.kind === "dead" ? "dead" : "alive");
  }
  if (state.size === 0) return owners;
  const anyDead = [...state.values()].includes("dead");
  for (const [index, motor] of about) {
    const standing = state.get(motor);
    owners.set(index, standing === "alive" || (standing === undefined && anyDead) ? "other" : "label");
  }
  return owners;
}
