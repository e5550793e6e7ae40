import type { Pending } from "../conversation/thread.ts";
import type { Understood } from "../conversation/understand.ts";
import { namedRating } from "../nameplate/named-rating.ts";
import type { Pictured } from "../outgoing.ts";

/** A picture and which of several replies it helps with. */
export interface Picturing {
  readonly with: "first" | "last";
  readonly picture: Pictured;
}

/**
 * What to draw beside the replies: the word asked about, else what is asked now. A question that was asked before has
 * shown its picture already.
 */
export function picturing(
  { intents }: Pick<Understood, "intents">,
  text: string,
  before: Pending,
  after: Pending,
): Picturing | null {
  if (intents.some(({ intent }) => intent === "explain")) {
    const named = namedRating(text);
    return { with: "first", picture: named === undefined ? (asked(before) ?? "label") : [named] };
  }
  const picture = asked(after);
  if (picture === undefined || JSON.stringify(before) === JSON.stringify(after)) return null;
  return { with: "last", picture };
}

function asked(pending: Pending): Pictured | undefined {
  switch (pending.kind) {
    case "ratings":
      return pending.ratings;
    case "doubt": {
      const { also } = pending.proposal;
      return also ? [pending.rating, also.rating] : [pending.rating];
    }
    case "number":
      return ["modelNumbers"];
    default:
      return undefined;
  }
}
