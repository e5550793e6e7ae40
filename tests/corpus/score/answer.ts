/** What the scorer looks at of an understood message: the plain values of the `read` surface. */
export interface Answer {
  readonly nameplate: Readonly<Record<string, unknown>>;
  readonly site: Readonly<Record<string, unknown>>;
  readonly unreadable: readonly string[];
  readonly intents: readonly string[];
  readonly hazard: string | null;
}

/** The program under test. */
export type Understand = (text: string) => Answer;

/** One message that came out wrong, ready to print. */
export interface Miss {
  readonly id: string;
  readonly text: string;
  readonly tags: readonly string[];
  /** What was wanted and what came, one line for each difference. */
  readonly differences: readonly string[];
}
