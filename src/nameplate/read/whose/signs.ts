import type { Standing } from "../candidate.ts";
import type { Context } from "../context.ts";
import type { Token } from "../token.ts";

/** So many tokens on either side may speak; more would make the time grow with the square of the length. */
const REACH = 40;
const CLOSE_BEFORE = 10;
const CLOSE_AFTER = 8;

/** Figures differ, what is said around them does not. */
function word({ kind, norm }: Token): string {
  if (kind === "number") return "#";
  if (kind === "code" || kind === "partial") return "@";
  return kind === "break" ? "\\n" : norm;
}

/**
 * What the words around a figure may tell about whose it is: those before (`b:`) and after it (`a:`) in its clause, in
 * its sentence (`s:`, `sb:`, `sa:`), in the sentences beside it (`p:`, `n:`), and how the message is built.
 */
export function signsOf(context: Context, claim: Standing): ReadonlySet<string> {
  const { tokens, clauses, sentences } = context;
  const signs = new Set<string>();
  const { from, to } = claim;
  const clause = clauses[context.clauseAt[claim.start] ?? 0];
  const sentence = context.sentenceAt[claim.start] ?? 0;
  const said = sentences[sentence] ?? [];
  const first = Math.max(said[0]?.start ?? 0, from - REACH);
  const last = Math.min(said.at(-1)?.end ?? tokens.length, to + REACH);
  const at = (index: number) => word(tokens[index] as Token);

  for (let i = Math.max(clause?.start ?? 0, from - CLOSE_BEFORE); i < from; i += 1) {
    signs.add(`b:${at(i)}`);
    if (i + 1 < from) signs.add(`bb:${at(i)} ${at(i + 1)}`);
  }
  if (from - 1 >= first) signs.add(`b1:${at(from - 1)}`);
  if (from - 2 >= first) signs.add(`b2:${at(from - 2)} ${at(from - 1)}`);
  const end = Math.min(clause?.end ?? tokens.length, to + CLOSE_AFTER);
  for (let i = to; i < end; i += 1) {
    signs.add(`a:${at(i)}`);
    if (i + 1 < end) signs.add(`aa:${at(i)} ${at(i + 1)}`);
  }
  if (to < last) signs.add(`a1:${at(to)}`);
  for (let i = first; i < last; i += 1) {
    if (i >= from && i < to) continue;
    signs.add(`s:${at(i)}`);
    signs.add(`${i < from ? "sb" : "sa"}:${at(i)}`);
  }
  const opening = said[0]?.start ?? 0;
  if (opening + 1 < tokens.length) signs.add(`o:${at(opening)} ${at(opening + 1)}`);
  const before = sentences[sentence - 1] ?? [];
  const beforeEnd = before.at(-1)?.end ?? 0;
  for (let i = Math.max(before[0]?.start ?? 0, beforeEnd - REACH); i < beforeEnd; i += 1)
    signs.add(`p:${at(i)}`);
  const after = sentences[sentence + 1] ?? [];
  const afterStart = after[0]?.start ?? 0;
  for (let i = afterStart; i < Math.min(after.at(-1)?.end ?? 0, afterStart + REACH); i += 1)
    signs.add(`n:${at(i)}`);

  if (said.at(-1)?.closing === "?") signs.add("asked");
  signs.add(`closing:${clause?.closing ?? ""}`);
  signs.add(`rating:${claim.rating}`);
  signs.add(claim.bare ? "bare" : "named");
  const together = context.stated.within(said[0]?.start ?? 0, said.at(-1)?.end ?? tokens.length).length;
  signs.add(`together:${Math.min(4, together)}`);
  signs.add(`stated:${Math.min(6, context.stated.all.length)}`);
  signs.add(`sentence:${Math.min(3, sentence)}`);
  signs.add(clauses.length === 1 ? "only" : "several");
  return signs;
}
