import { englishNoun, englishVerb, spanishNoun, spanishVerb } from "./inflect.ts";

/** Words of one concept; inflections are made, irregular forms and phrases (`j_box`) listed under `as`. */
export interface Terms {
  readonly verbs?: string;
  readonly nouns?: string;
  readonly verbos?: string;
  readonly nombres?: string;
  readonly as?: string;
}

const makers = {
  verbs: englishVerb,
  nouns: englishNoun,
  verbos: spanishVerb,
  nombres: spanishNoun,
  as: (term: string): readonly string[] => [term],
} as const;

/** A phrase inflects in its last word if a noun (`breaker_boxes`), in its first if a verb (`went_dark`). */
function forms(term: string, kind: keyof typeof makers): readonly string[] {
  const parts = term.split("_");
  if (parts.length === 1 || kind === "as") return makers[kind](term);
  const verbal = kind === "verbs" || kind === "verbos";
  const at = verbal ? 0 : parts.length - 1;
  return makers[kind](parts[at] ?? "").map((form) =>
    parts.map((part, i) => (i === at ? form : part)).join("_"),
  );
}

/** Every written form of the words of a concept. */
export function expand(terms: Terms): readonly string[] {
  return (Object.keys(makers) as (keyof typeof makers)[]).flatMap((kind) =>
    (terms[kind] ?? "")
      .split(/\s+/)
      .filter((term) => term !== "")
      .flatMap((term) => forms(term, kind)),
  );
}
