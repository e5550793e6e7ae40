import { tokenize } from "../../../../src/conversation/danger/tokens.ts";
import { clausesOf, clauseView } from "../../../../src/conversation/danger/vote/clauseView.ts";
import { typeWords } from "../../../../src/conversation/danger/vote/typed.ts";
import type { Weights } from "../../../../src/conversation/danger/vote/vote.ts";
import { wholeView } from "../../../../src/conversation/danger/vote/wholeView.ts";
import { wordingView } from "../../../../src/conversation/danger/vote/wordingView.ts";
import { compose } from "./compose.ts";
import { learnWeights, type Settings } from "./fit.ts";
import type { Labelled } from "./messages.ts";

const usual: Settings = { atLeast: 4, most: 8_000, damping: 0.5, rounds: 20, rate: 0.12, pull: 1e-3 };
const clauseSettings: Settings = { ...usual, damping: 0.3, rate: 0.1 };

/** Signs of a message are taken once, they do not change from fold to fold. */
interface Views {
  readonly wording: ReadonlySet<string>;
  readonly whole: ReadonlySet<string>;
  readonly clauses: readonly ReadonlySet<string>[];
}

const known = new WeakMap<Labelled, Views>();

function viewsOf(message: Labelled): Views {
  const before = known.get(message);
  if (before) return before;
  const tokens = tokenize(message.text);
  const typed = typeWords(tokens);
  const views = {
    wording: wordingView(tokens),
    whole: wholeView(typed),
    clauses: clauseView(clausesOf(typed)),
  };
  known.set(message, views);
  return views;
}

/** Learns the weights of every view. */
export function teach(messages: readonly Labelled[]): Weights {
  const lessons = [...messages, ...compose(messages, 0.3)];
  const seen = (bagsOf: (views: Views) => readonly ReadonlySet<string>[]) =>
    lessons.map((message) => ({
      ...message,
      bags: bagsOf(viewsOf(message)),
      composed: message.source === "composed",
    }));
  return {
    wording: learnWeights(
      seen(({ wording }) => [wording]),
      usual,
    ),
    whole: learnWeights(
      seen(({ whole }) => [whole]),
      usual,
    ),
    clause: learnWeights(
      seen(({ clauses }) => clauses),
      clauseSettings,
    ),
  };
}
