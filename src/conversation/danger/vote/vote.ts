import data from "../../../../intents/dangers/weights.json" with { type: "json" };
import type { Hazard, Span } from "../../../nameplate/reading.ts";
import type { Token } from "../tokens.ts";
import { clausesOf, clauseView } from "./clauseView.ts";
import { anyKind, kinds, type Linear, readLinear, speak } from "./linear.ts";
import { typeWords } from "./typed.ts";
import { wholeView } from "./wholeView.ts";
import { wordingView } from "./wordingView.ts";

/** How the three views weigh their signs. */
export interface Weights {
  readonly wording: Linear;
  readonly whole: Linear;
  readonly clause: Linear;
}

const learned: Weights = {
  wording: readLinear(data.wording),
  whole: readLinear(data.whole),
  clause: readLinear(data.clause),
};

/** How far each view is to be trusted: fitted by logistic regression on messages none of them had learned. */
const trust = { wording: 0.5, whole: 0.3, clause: 0.2 };

function weigh(wording: number, whole: number, clause: number): number {
  return trust.wording * wording + trust.whole * whole + trust.clause * clause;
}

export interface Vote {
  /** Log odds that the message tells of a present danger; 0 is even. */
  readonly odds: number;
  /** The likeliest kind, and the clause that speaks for it most. */
  readonly hazard: Hazard;
  readonly span: Span;
}

/**
 * What the labelled messages say about one like this: the mean of three views, of its wording, of what its words
 * mean together, and of its most dangerous clause. The weights are learned, see `intents/dangers/README.md`.
 */
export function vote(tokens: readonly Token[], weights: Weights = learned): Vote {
  const typed = typeWords(tokens);
  const clauses = clausesOf(typed);
  const spoken = clauseView(clauses).map((signs) => speak(weights.clause, signs));
  const worst = kinds.map((_, k) => Math.max(...spoken.map((each) => each[k] ?? 0)));
  const wording = speak(weights.wording, wordingView(tokens));
  const whole = speak(weights.whole, wholeView(typed));
  const each = kinds.map((_, k) => weigh(wording[k] ?? 0, whole[k] ?? 0, worst[k] ?? 0));
  const k = each.indexOf(Math.max(...each));
  const clause = clauses[spoken.findIndex((one) => one[k] === worst[k])];
  return {
    odds: weigh(anyKind(wording), anyKind(whole), anyKind(worst)),
    hazard: kinds[k] ?? "shock",
    span: { start: clause?.[0]?.token.start ?? 0, end: clause?.at(-1)?.token.end ?? 0 },
  };
}
