import { isCarrier, isSetting, withGroups } from "./groups.ts";
import { split, type Typed } from "./typed.ts";

const turns = new Set("but pero anyway anyways also btw then so because cuz".split(" "));
const subjects = new Set(
  "i it the my now then she he we they there theres its today yesterday this just el la me se huele sale".split(
    " ",
  ),
);
const typedSymbol = /^[@%]/;

/** Clauses: between marks, before "but", and before "and" with a subject of its own. */
export function clausesOf(typed: readonly Typed[]): readonly (readonly Typed[])[] {
  return split(typed, (at, length) => {
    const token = typed[at]?.token;
    if (token === undefined || token.gap !== "none") return true;
    if (length >= 2 && turns.has(token.word)) return true;
    const joins = token.word === "and" || token.word === "y";
    return joins && length >= 3 && subjects.has(typed[at + 1]?.token.word ?? "");
  });
}

function bagOf(clause: readonly Typed[]): ReadonlySet<string> {
  const bag = new Set<string>();
  for (const { symbols, denied } of clause) {
    for (const x of withGroups(symbols)) {
      if (x !== "~" && x !== "#") bag.add(denied && typedSymbol.test(x) ? `!${x}` : x);
    }
  }
  return bag;
}

function sequences(clause: readonly Typed[], signs: Set<string>): void {
  const grouped = clause.map(({ symbols }) => withGroups(symbols));
  clause.forEach(({ denied }, i) => {
    for (const x of grouped[i] ?? []) {
      signs.add(x);
      if (i === 0) signs.add(`^${x}`);
      if (denied) signs.add(`!${x}`);
      for (let step = 1; step <= 3; step += 1) {
        for (const y of grouped[i + step] ?? []) {
          if (step === 1 ? x === "~" && y === "~" : !typedSymbol.test(x) || !typedSymbol.test(y)) continue;
          signs.add(step === 1 ? `${x} ${y}` : `${x} .. ${y}`);
        }
      }
    }
  });
}

/** Clauses that place this one, with the mark their signs carry. */
const neighbours = [
  [-2, "<<"],
  [-1, "<"],
  [1, ">"],
  [2, ">"],
  [3, ">"],
] as const;

function isAsked(clauses: readonly (readonly Typed[])[], at: number): boolean {
  const ends = (clause: readonly Typed[] | undefined) => (clause?.at(-1)?.token.after ?? "").includes("?");
  const next = clauses[at + 1];
  return ends(clauses[at]) || (next?.[0]?.token.gap === "comma" && ends(next));
}

/** Signs of each clause: its words, their order and company, and what the clauses around say of time and mood. */
export function clauseView(clauses: readonly (readonly Typed[])[]): readonly ReadonlySet<string>[] {
  const bags = clauses.map(bagOf);
  return clauses.map((clause, at) => {
    const signs = new Set<string>();
    sequences(clause, signs);
    const bag = [...(bags[at] ?? [])];
    const asked = isAsked(clauses, at);
    for (const x of bag) {
      if (asked) signs.add(`?${x}`);
      for (const y of bag) if (x < y && /[@%]/.test(x) && /[@%]/.test(y)) signs.add(`${x}&${y}`);
    }
    const carriers = bag.filter(isCarrier);
    for (const [step, mark] of neighbours) {
      for (const x of bags[at + step] ?? []) {
        const beside = Math.abs(step) === 1 && x.includes("%");
        if (!isSetting(x) && !beside) continue;
        signs.add(mark + x);
        for (const carrier of carriers) signs.add(`${carrier}&${mark}${x}`);
      }
    }
    signs.add(clauses.length === 1 ? "only" : "several");
    signs.add(`length ${Math.min(4, Math.floor(Math.log2(clause.length)))}`);
    return signs;
  });
}
