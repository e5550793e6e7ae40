import { type Step, step } from "../../src/conversation/step.ts";
import { newThread } from "../../src/conversation/thread.ts";
import type { OverallVerdict } from "../../src/matching/types.ts";
import { type RatingName, ratings } from "../../src/nameplate/vocabulary.ts";
import { AT, knowledge } from "./knowledge.ts";

/** Somebody with a dead pump: what they type first, and what they can find when they are asked. */
export interface Homeowner {
  readonly who: string;
  readonly first: string;
  /** Their words for a rating they are asked for; what is missing they can't read. */
  readonly finds: Readonly<Partial<Record<RatingName, string>>>;
  /** What they say when a value is doubted. */
  readonly aboutDoubt?: string;
  readonly ends: OverallVerdict | "photo";
}

export interface Talk {
  readonly steps: readonly Step[];
  /** Messages the customer had to send, the first one included. */
  readonly messages: number;
  readonly readingsAsked: number;
}

const PATIENCE = 12;

/** Plays the talk until the bot gives a verdict or passes it to the desk. */
export function play(homeowner: Homeowner): Talk {
  const steps: Step[] = [];
  let text: string | undefined = homeowner.first;
  while (text !== undefined && steps.length < PATIENCE) {
    steps.push(step(steps.at(-1)?.thread ?? newThread, { text, at: AT }, knowledge));
    text = answerTo(homeowner, steps);
  }
  const asked = Object.values(steps.at(-1)?.thread.asked ?? {}).reduce(
    (sum: number, times) => sum + (times ?? 0),
    0,
  );
  return { steps, messages: steps.length, readingsAsked: asked };
}

function answerTo({ finds, aboutDoubt = "yes" }: Homeowner, steps: readonly Step[]): string | undefined {
  const thread = steps.at(-1)?.thread;
  if (!thread || thread.answered !== null) return undefined;
  if (thread.pending.kind === "doubt") return aboutDoubt;
  if (thread.pending.kind !== "ratings") return "hello?";
  return thread.pending.ratings
    .map((rating) => finds[rating] ?? `can't read the ${ratings[rating].title}`)
    .join(", ");
}
