import type { Candidate } from "./candidate.ts";
import { circuit } from "./circuit.ts";
import { pump } from "./pumpName.ts";
import { hours, keyed, price } from "./running.ts";
import type { Token } from "./token.ts";

/** Facts of the place: breaker and supply, price of electricity, hours a day, the pump's own name. */
export function site(tokens: readonly Token[]): Candidate[] {
  return tokens.flatMap((_, at) => [
    ...circuit(tokens, at),
    ...keyed(tokens, at),
    ...price(tokens, at),
    ...hours(tokens, at),
    ...pump(tokens, at),
  ]);
}
