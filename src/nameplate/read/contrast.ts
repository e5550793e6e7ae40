import type { Standing } from "./candidate.ts";
import { type Context, cuesIn } from "./context.ts";
import type { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { revalue } from "./revalue.ts";
import { isWord } from "./token.ts";

/** "My clamp says 7.3 amps but the plate says 9.6": the second figure is of the same kind as the first. */
export function contrasted(
  context: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  stated: Ordered<Standing>,
): Standing[] {
  const { tokens, clauses, clauseAt, sentenceAt } = context;
  const found: Standing[] = [];
  for (const claim of stated.all) {
    if (owners[claim.start] === "label" || owners[claim.start] === "asked") continue;
    const index = (clauseAt[claim.start] ?? 0) + 1;
    const next = clauses[index];
    if (!next) continue;
    const ofLabel = cuesIn(context, next.start, next.end, "home").length > 0;
    if (
      next.sentence !== sentenceAt[claim.start] &&
      !(ofLabel && next.sentence === (sentenceAt[claim.start] ?? 0) + 1)
    )
      continue;
    for (let at = next.start; at < next.end; at++) {
      if (
        tokens[at]?.kind !== "number" ||
        explained[at] ||
        owners[at] !== "label" ||
        !isWord(
          tokens[at - 1],
          "says",
          "is",
          "reads",
          "claims",
          "gives",
          "lists",
          "stamped",
          "shows",
          "dice",
          "es",
          "said",
          "de",
          "label",
          "plate",
          "nameplate",
          "placa",
          "tag",
          "sticker",
        )
      )
        continue;
      const value = revalue(tokens, at, claim);
      if (value) found.push(value);
      break;
    }
  }
  return found;
}
