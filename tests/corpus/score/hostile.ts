import type { Answer, Miss, Understand } from "./answer.ts";
import type { HostileMessage } from "./messages.ts";

export interface HostileScore {
  readonly messages: number;
  /** Messages that got an answer with at least one intent, and no exception. */
  readonly answered: number;
  /** Messages out of which a rating was read that they do not state. */
  readonly invented: number;
  /** Messages that gave a value no label can hold: not a finite number, or below nothing. */
  readonly unsound: number;
  readonly misses: readonly Miss[];
}

/** Feeds every hostile text in; an exception is counted, not passed on. */
export function scoreHostile(messages: readonly HostileMessage[], understand: Understand): HostileScore {
  let answered = 0;
  let invented = 0;
  let unsound = 0;
  const misses: Miss[] = [];
  for (const { id, text, why, states } of messages) {
    const differences: string[] = [];
    const got = attempt(text, understand);
    if (typeof got === "string") {
      differences.push(got);
    } else {
      answered += 1;
      const values = Object.entries({ ...got.nameplate, ...got.site }).filter(
        ([, value]) => value !== undefined,
      );
      const added = values.filter(([name]) => !states.includes(name));
      if (added.length > 0) {
        invented += 1;
        differences.push(
          `invented ${added.map(([name, value]) => `${name} ${JSON.stringify(value)}`).join(", ")}`,
        );
      }
      const broken = values.filter(([, value]) => !isSound(value));
      if (broken.length > 0) {
        unsound += 1;
        differences.push(`unsound ${broken.map(([name, value]) => `${name} ${String(value)}`).join(", ")}`);
      }
    }
    if (differences.length > 0) misses.push({ id, text: shorten(text), tags: [why], differences });
  }
  return { messages: messages.length, answered, invented, unsound, misses };
}

/** Adds scores of parts. */
export function sumHostile(scores: readonly HostileScore[]): HostileScore {
  const sum = (figure: (score: HostileScore) => number) =>
    scores.reduce((total, score) => total + figure(score), 0);
  return {
    messages: sum(({ messages }) => messages),
    answered: sum(({ answered }) => answered),
    invented: sum(({ invented }) => invented),
    unsound: sum(({ unsound }) => unsound),
    misses: scores.flatMap(({ misses }) => misses),
  };
}

function attempt(text: string, understand: Understand): Answer | string {
  try {
    const got = understand(text);
    return got.intents.length > 0 ? got : "no intent at all";
  } catch (error) {
    return `threw ${String(error)}`;
  }
}

function isSound(value: unknown): boolean {
  if (Array.isArray(value)) return value.length > 0 && value.every(isSound);
  return typeof value !== "number" || (Number.isFinite(value) && value >= 0);
}

const shorten = (text: string): string => (text.length > 120 ? `${text.slice(0, 117)}...` : text);
