import type { Act } from "./acts/act.ts";

/** What staff typed, in a case's topic or at the terminal. */
export type StaffLine =
  | { readonly kind: "act"; readonly act: Act }
  | { readonly kind: "list" }
  | { readonly kind: "show"; readonly caseId: number | null }
  | { readonly kind: "help" }
  /** Nothing is done; `problem` is a key of `intents/answers/desk.json`. */
  | { readonly kind: "unclear"; readonly problem: string; readonly words: string };
