import type { Token } from "./tokens.ts";

/**
 * A small pattern language over typed words, compiled once:
 *   `word`        that word                     `@concept`   any word of that concept
 *   `(a|@b|c d)`  one of them, phrases allowed   `x?`         may be missing
 *   `~3`          up to three words of any kind, not across a comma (`~~3`: not across the end of a sentence)
 *   `^x`          marks the word that carries the danger (default: the first)
 *   `!x`          a word that is not x, or the end of the sentence; takes no room
 */
export interface Pattern {
  readonly source: string;
  readonly steps: readonly Step[];
}

/** A place where a pattern holds: token indices, `to` exclusive. */
export interface Found {
  readonly from: number;
  readonly to: number;
  readonly head: number;
}

type Step =
  | { readonly kind: "gap"; readonly most: number; readonly commas: boolean }
  | {
      readonly kind: "one";
      readonly words: ReadonlySet<string>;
      readonly concepts: readonly string[];
      readonly phrases: readonly (readonly string[])[];
      readonly optional: boolean;
      readonly head: boolean;
    }
  | { readonly kind: "not"; readonly words: ReadonlySet<string>; readonly concepts: readonly string[] };

function compileStep(part: string): Step {
  if (part.startsWith("~")) {
    return { kind: "gap", most: Number(part.replaceAll("~", "")), commas: part.startsWith("~~") };
  }
  const head = part.startsWith("^");
  const not = part.startsWith("!");
  let body = head || not ? part.slice(1) : part;
  const optional = body.endsWith("?");
  if (optional) body = body.slice(0, -1);
  const choices = body.startsWith("(") ? body.slice(1, -1).split("|") : [body];
  const concepts = choices.filter((choice) => choice.startsWith("@")).map((choice) => choice.slice(1));
  const literal = choices.filter((choice) => !choice.startsWith("@"));
  const words = new Set(literal.filter((choice) => !choice.includes(" ")));
  if (not) return { kind: "not", words, concepts };
  const phrases = literal.filter((choice) => choice.includes(" ")).map((choice) => choice.split(" "));
  return { kind: "one", words, concepts, phrases, optional, head };
}

/** Compiles one pattern. */
export function pattern(source: string): Pattern {
  const parts = source.match(/[!^]?\([^)]*\)\??|\S+/g) ?? [];
  return { source, steps: parts.map(compileStep) };
}

/** Compiles a list of patterns. */
export function patterns(...sources: string[]): readonly Pattern[] {
  return sources.map(pattern);
}

function isOne(token: Token, words: ReadonlySet<string>, concepts: readonly string[]): boolean {
  return words.has(token.word) || concepts.some((concept) => token.concepts.has(concept));
}

function matchSteps(
  tokens: readonly Token[],
  steps: readonly Step[],
  step: number,
  at: number,
  start: number,
  head: number,
): Found | undefined {
  const current = steps[step];
  if (current === undefined) return { from: start, to: at, head };
  const token = tokens[at];
  const open = token !== undefined && (at === start || token.gap !== "sentence");
  if (current.kind === "not") {
    if (open && token.gap === "none" && isOne(token, current.words, current.concepts)) return undefined;
    return matchSteps(tokens, steps, step + 1, at, start, head);
  }
  if (current.kind === "gap") {
    for (let skip = 0; skip <= current.most; skip += 1) {
      const next = tokens[at + skip];
      // At the end of the sentence only steps that may be missing can still hold.
      if (next === undefined || next.gap === "sentence") {
        return matchSteps(tokens, steps, step + 1, at + skip, start, head);
      }
      if (next.gap === "comma" && !current.commas) return undefined;
      const found = matchSteps(tokens, steps, step + 1, at + skip, start, head);
      if (found) return found;
    }
    return undefined;
  }
  const nextHead = current.head ? at : head;
  if (open) {
    for (const phrase of current.phrases) {
      const fits = phrase.every((word, k) => {
        const part = tokens[at + k];
        return part?.word === word && (k === 0 || part.gap !== "sentence");
      });
      const found = fits
        ? matchSteps(tokens, steps, step + 1, at + phrase.length, start, nextHead)
        : undefined;
      if (found) return found;
    }
    if (isOne(token, current.words, current.concepts)) {
      const found = matchSteps(tokens, steps, step + 1, at + 1, start, nextHead);
      if (found) return found;
    }
  }
  return current.optional ? matchSteps(tokens, steps, step + 1, at, start, head) : undefined;
}

/** Whether and where the pattern holds from this word on. Work is bounded by the pattern, not the message. */
export function matchAt({ steps }: Pattern, tokens: readonly Token[], at: number): Found | undefined {
  return matchSteps(tokens, steps, 0, at, at, at);
}

/** The first place from `from` to before `to` where one of the patterns starts. */
export function findFirst(
  list: readonly Pattern[],
  tokens: readonly Token[],
  from: number,
  to: number,
): Found | undefined {
  for (let at = Math.max(0, from); at < to; at += 1) {
    for (const one of list) {
      const found = matchAt(one, tokens, at);
      if (found) return found;
    }
  }
  return undefined;
}

/** Every place where one of the patterns holds, in text order; the same head is given once. */
export function findAll(list: readonly Pattern[], tokens: readonly Token[]): readonly Found[] {
  const byHead = new Map<number, Found>();
  for (let at = 0; at < tokens.length; at += 1) {
    for (const one of list) {
      const found = matchAt(one, tokens, at);
      if (found && !byHead.has(found.head)) byHead.set(found.head, found);
    }
  }
  return [...byHead.values()];
}

/** The concepts a pattern relies on. */
export function conceptNamesIn({ steps }: Pattern): readonly string[] {
  return steps.flatMap((step) => (step.kind === "gap" ? [] : step.concepts));
}
