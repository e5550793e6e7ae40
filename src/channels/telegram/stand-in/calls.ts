import type { Changes } from "./changes.ts";
import type { Fault } from "./faults.ts";
import type { MethodName, Params } from "./protocol.ts";

/** What became of a call. */
export type Outcome =
  | { readonly kind: "under way" }
  | { readonly kind: "done" }
  | { readonly kind: "refused"; readonly code: number; readonly description: string }
  | { readonly kind: "fault"; readonly fault: Fault["kind"] }
  | { readonly kind: "client hung up" };

/** One call of the bot, as it came in. */
export interface Call<M extends MethodName = MethodName> {
  readonly method: M;
  readonly params: Params<M>;
  /** Instant it came in, ISO 8601, by the stand-in's clock. */
  readonly at: string;
  /** Names of files it brought. */
  readonly uploads: readonly string[];
  readonly outcome: Outcome;
}

/** Every call the bot made, in the order the calls came in. */
export class Calls {
  private kept: Call[] = [];
  private readonly open = new Set<Call>();

  constructor(private readonly changes: Changes) {}

  get all(): readonly Call[] {
    return this.kept;
  }

  /** Calls of one method. */
  of<M extends MethodName>(method: M): readonly Call<M>[] {
    return this.kept.filter((call): call is Call<M> => call.method === method);
  }

  /** Calls that have had no answer yet. A long poll with nothing to fetch is one of them. */
  get underWay(): readonly Call[] {
    return [...this.open];
  }

  /** Forgets the calls so far; for long runs, where keeping them all would fill the memory. */
  forget(): void {
    this.kept = [...this.open];
  }

  /** Notes a call; the function returned says what became of it, and is heard once. */
  begin(call: Omit<Call, "outcome">): (outcome: Outcome) => void {
    const entry = { ...call, outcome: { kind: "under way" } as Outcome };
    this.kept.push(entry);
    this.open.add(entry);
    this.changes.tell();
    return (outcome) => {
      if (!this.open.delete(entry)) return;
      entry.outcome = outcome;
      this.changes.tell();
    };
  }
}
