import type { Standing } from "./candidate.ts";
import { isMark, isWord, type Token } from "./token.ts";

const papers = ["label", "plate", "tag", "sticker", "nameplate", "placa", "etiqueta"];

/** How many tokens after the figure the label may be named. */
const reach = 6;

/** "Runs on 230 volts per the tag": quoted from the label, so the motor's volts and not the wiring's. */
export function quotedVolts(tokens: readonly Token[], claim: Standing): Standing {
  if (claim.rating !== "supplyVolts" || typeof claim.value !== "number") return claim;
  for (let at = claim.end; at < Math.min(tokens.length, claim.end + reach); at++) {
    const token = tokens[at];
    if (token?.kind === "break" || isMark(token, ".", ",", ";", "?", "!")) return claim;
    if (!isWord(token, "per", "to", "segun")) continue;
    const quoted =
      isWord(tokens[at + 1], ...papers) ||
      (isWord(tokens[at + 1], "the", "its", "my", "la", "motor") && isWord(tokens[at + 2], ...papers));
    if (quoted && (!isWord(token, "to") || isWord(tokens[at - 1], "according")))
      return { ...claim, rating: "volts", value: [claim.value] };
  }
  return claim;
}
