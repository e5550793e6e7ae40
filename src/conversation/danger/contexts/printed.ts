import { type Context, sentenceStart, words } from "../mention.ts";
import type { Token } from "../tokens.ts";

const headers = words("warning warnings caution danger peligro advertencia precaucion aviso");
/** The writer's own experience, not print. */
const lived = words("me my us i we our it keeps got when is was im ive keep every me nos mi");

function isLived(tokens: readonly Token[], from: number, to: number): boolean {
  return tokens.slice(Math.max(0, from), to).some(({ word }) => lived.has(word));
}

/** True when what stands before "says" is print, not a person, a breaker or a meter. */
function printSpeaks(tokens: readonly Token[], says: number, start: number): boolean {
  for (let at = says - 1; at >= Math.max(start, says - 7); at -= 1) {
    const token = tokens[at];
    if (!token) break;
    if (token.concepts.has("printedThing")) return true;
    if (token.concepts.has("person") || token.concepts.has("device")) return false;
    if (/^(meter|tester|multimeter|kids|tenant|electrician)$/.test(token.word)) return false;
    if (token.word === "it" && at === says - 1) return true;
  }
  return says === start;
}

/** "Label says RISK OF ELECTRIC SHOCK", `sticker: "DANGER ..."`, "WARNING SHOCK HAZARD". */
export const printed: Context = (tokens, { head, to }) => {
  const start = sentenceStart(tokens, head, 40);
  // A printed warning may have sentences of its own: look one further back when a colon or quote opened it.
  const opened = start > 0 && /[:"“]/.test(tokens[start - 1]?.after ?? "");
  const from = opened ? sentenceStart(tokens, start - 1, 20) : start;
  for (let at = head - 1; at >= from; at -= 1) {
    const token = tokens[at];
    if (!token) break;
    const quoted = /[:"“]/.test(token.after);
    if (headers.has(token.word) && head - at <= 14 && !isLived(tokens, at, head + 2)) return true;
    if (token.concepts.has("printedThing") && quoted && !isLived(tokens, at + 1, to + 1)) return true;
    if (token.concepts.has("saying") && printSpeaks(tokens, at, from)) {
      return !isLived(tokens, Math.max(at + 1, head - 4), to + 1);
    }
  }
  return false;
};
