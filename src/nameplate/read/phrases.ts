import { contracted } from "./contractions.ts";
import type { Token } from "./token.ts";

interface Node<T> {
  readonly next: Map<string, Node<T>>;
  readonly found: T[];
}

export interface PhraseMatch<T> {
  /** Token indices, half open. */
  readonly start: number;
  readonly end: number;
  readonly found: readonly T[];
}

/** Many phrases looked up at once: time per token is bounded by the longest phrase. */
export class PhraseBook<T> {
  readonly #root: Node<T> = { next: new Map(), found: [] };
  readonly #colons: boolean;
  readonly #columns: boolean;

  /**
   * With `colons`, a colon inside a phrase does not part it: "SPEED: SINGLE". With `columns`, a phrase does not
   * run on over a tab or a wide gap.
   */
  constructor({ colons = false, columns = false } = {}) {
    this.#colons = colons;
    this.#columns = columns;
  }

  add(phrase: string, meaning: T): this {
    let node = this.#root;
    for (const word of contracted(phrase)) {
      let next = node.next.get(word);
      if (!next) {
        next = { next: new Map(), found: [] };
        node.next.set(word, next);
      }
      node = next;
    }
    node.found.push(meaning);
    return this;
  }

  addAll(phrases: readonly string[], meaning: T): this {
    for (const phrase of phrases) this.add(phrase, meaning);
    return this;
  }

  has(word: string): boolean {
    return this.#root.next.has(word);
  }

  /** Every phrase that starts at this token, shortest first. */
  matchesAt(tokens: readonly Token[], start: number): PhraseMatch<T>[] {
    const matches: PhraseMatch<T>[] = [];
    let node: Node<T> | undefined = this.#root;
    for (let at = start; at < tokens.length && node; at++) {
      const token = tokens[at];
      if (!token || token.kind === "partial") break;
      // Another column begins here.
      if (this.#columns && at > start && token.wide) break;
      const next: Node<T> | undefined = node.next.get(token.norm);
      if (!next) {
        // An abbreviation's dot or a hyphen inside a phrase does not part it.
        const skipped =
          at > start &&
          token.kind === "mark" &&
          (token.norm === "." ||
            token.norm === "-" ||
            token.norm === "_" ||
            (this.#colons && token.norm === ":"));
        const following = tokens[at + 1];
        const abbreviated =
          token.norm !== "." ||
          following?.glued ||
          isDotted(tokens[at - 1]) ||
          (node.found.length === 0 && (tokens[at - 1]?.norm.length ?? 9) <= 5);
        // "… past the county line. Voltage: 230": a capital after the dot begins a sentence.
        const ended = token.norm === "." && beginsSentence(tokens[at - 1], following);
        if (skipped && abbreviated && !ended && token.glued && following && node.next.has(following.norm))
          continue;
        // A phrase may run over a line end on a narrow label.
        const wrapped = at > start && token.kind === "break" && !token.blank && following;
        const dotWrapped = skipped && following?.kind === "break" && !following.blank;
        if (
          (wrapped && node.next.has(following.norm)) ||
          (dotWrapped && node.next.has(tokens[at + 2]?.norm ?? ""))
        )
          continue;
        break;
      }
      node = next;
      if (node.found.length > 0) matches.push({ start, end: at + 1, found: node.found });
    }
    return matches;
  }

  longestAt(tokens: readonly Token[], start: number): PhraseMatch<T> | undefined {
    return this.matchesAt(tokens, start).at(-1);
  }
}

function beginsSentence(before: Token | undefined, after: Token | undefined): boolean {
  if (after?.kind !== "word" || after.glued || after.upper) return false;
  return /^\p{Lu}/u.test(after.chunk.text) && /^\p{Ll}/u.test(before?.chunk.text ?? "");
}

/** Written `S.F.`: the last dot belongs to the abbreviation and ends no sentence. */
function isDotted(token: Token | undefined): boolean {
  return (
    token?.kind === "word" && token.norm.length > 1 && token.end - token.start === 2 * token.norm.length - 1
  );
}
