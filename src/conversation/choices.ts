import type { RatingName } from "../nameplate/vocabulary.ts";
import type { Choice } from "../outgoing.ts";
import type { Pending } from "./thread.ts";

/** A button beside the bot's question, and the words that pressing it stands for. */
export interface CustomerChoice extends Choice {
  readonly text: string;
}

/** Questions with few answers; the words are read like any typed answer. */
const answersTo: { readonly [K in RatingName]?: readonly string[] } = {
  flange: ["square face", "round face"],
  shaft: ["threaded shaft", "keyed shaft"],
  phase: ["single phase", "three phase"],
  breakerPoles: ["single pole breaker", "double pole breaker"],
  speedKind: ["single speed", "two speed", "variable speed"],
};
const CANNOT_READ = "I can't tell";

/** The buttons for what the bot's last message asked; free text always works as well. */
export function customerChoices(pending: Pending): readonly CustomerChoice[] {
  switch (pending.kind) {
    case "ratings": {
      const [only, second] = pending.ratings;
      const answers = only !== undefined && second === undefined ? answersTo[only] : undefined;
      return answers ? choicesOf(`ask/${only}`, [...answers, CANNOT_READ]) : [];
    }
    case "doubt":
      // The proposal is part of the name: a yes to one must not be taken for a yes to the next.
      return choicesOf(`doubt/${pending.rating}/${String(pending.proposal.value)}`.slice(0, 50), [
        "yes",
        "no",
      ]);
    case "erase":
      return choicesOf("erase", ["yes", "no"]);
    case "power-off":
      return choicesOf("power", ["power is off"]);
    default:
      return [];
  }
}

/** What pressing the button says; null when the question it belonged to has passed. */
export function textOfChoice(pending: Pending, id: string): string | null {
  return customerChoices(pending).find((choice) => choice.id === id)?.text ?? null;
}

function choicesOf(about: string, texts: readonly string[]): readonly CustomerChoice[] {
  return texts.map((text, index) => ({
    id: `${about}/${index + 1}`,
    label: text.slice(0, 1).toUpperCase() + text.slice(1),
    text,
  }));
}
