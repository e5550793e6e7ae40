import type { Candidate } from "./candidate.ts";
import { isMark, type Token } from "./token.ts";

/** Tokens of one item of a list, at most. */
const longestItem = 40;

interface Item {
  readonly start: number;
  readonly end: number;
  readonly value: number;
  readonly mark: string;
  readonly startsLine: boolean;
}

/**
 * The numbers of a numbered list, which are no ratings: "1 - HP is 2" above "2 - volts 230", "(1) HP 2 (2) volts 230",
 * "1. 1.5 2. 230 3. 9.6". They count up by one; inside a line three are needed.
 */
export function listNumbers(tokens: readonly Token[]): Candidate[] {
  const items = tokens.flatMap((_, at) => itemAt(tokens, at) ?? []);
  const found = new Set<Item>();
  for (const [index, first] of items.entries()) {
    if (first.value > 1 || found.has(first)) continue;
    const chain = [first];
    for (const item of items.slice(index + 1, index + 40)) {
      const last = chain.at(-1) ?? first;
      if (item.start - last.start > longestItem) break;
      if (item.value === last.value + 1 && item.mark === last.mark) chain.push(item);
    }
    const enough = first.mark === "()" || chain.every(({ startsLine }) => startsLine) ? 2 : 3;
    if (chain.length >= enough) for (const item of chain) found.add(item);
  }
  return [...found].map(({ start, end }) => ({ start, end, score: 5, claims: [] }));
}

function itemAt(tokens: readonly Token[], at: number): Item | undefined {
  const [before, token, after] = [tokens[at - 1], tokens[at], tokens[at + 1]];
  if (token?.kind !== "number" || token.form !== "digits" || !/^\d{1,2}$/.test(token.norm)) return undefined;
  const bracketed = isMark(before, "(") && isMark(after, ")");
  const start = bracketed ? at - 1 : at;
  if (tokens[start]?.glued || !isMark(after, "-", ".", ":", ")") || tokens[at + 2]?.glued) return undefined;
  const startsLine = start === 0 || tokens[start - 1]?.kind === "break";
  const inline = isMark(after, ".", ")") && after?.glued === true;
  if (!startsLine && !inline) return undefined;
  return { start, end: at + 2, value: token.value, mark: bracketed ? "()" : (after?.norm ?? ""), startsLine };
}
