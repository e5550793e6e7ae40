/** What a request came to: no customer's words, nothing that names anybody. */
export interface VerdictRow {
  /** The case it led to; null once that customer's data was erased. */
  readonly caseId: number | null;
  readonly verdict: string;
  /** Stock number of the motor put first; null where none was. */
  readonly sku: string | null;
  /** What was asked for, as JSON the store does not look into. */
  readonly request: string;
}

/** A verdict as it was given. */
export interface GivenVerdict extends VerdictRow {
  /** ISO instant. */
  readonly at: string;
  /** Messages of the customer until then, since their last matter was closed. */
  readonly messages: number;
}
