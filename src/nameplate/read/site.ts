import type { Candidate } from "./candidate.ts";
import { circuit } from "./circuit.ts";
import { nameBeforePump } from "./nameBeforePump.ts";
import { pump } from "./pumpName.ts";
import { hours, keyed, price } from "./running.ts";
import { isWord, type Token } from "./token.ts";

/** Facts of the place: breaker and supply, price of electricity, hours a day, the pump's own name. */
export function site(tokens: readonly Token[]): Candidate[] {
  const priced = tokens.some((token) => isWord(token, "kwh", "kilowatt", "cents", "centavos"));
  return tokens.flatMap((_, at) => [
    ...circuit(tokens, at),
    ...keyed(tokens, at),
    ...price(tokens, at),
    ...hours(tokens, at, priced),
    ...pump(tokens, at),
    ...nameBeforePump(tokens, at),
  ]);
}
