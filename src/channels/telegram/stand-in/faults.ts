import type { Changes } from "./changes.ts";
import type { MethodName, Params } from "./protocol.ts";
import type { Refusal } from "./refusal.ts";

/** Ways in which the line, or the other end of it, fails. */
export type Fault =
  /** 429: refused, to be tried again after that many seconds. */
  | { readonly kind: "too many requests"; readonly retryAfterSeconds: number }
  /** 502 with a web page for a body, as a proxy in front of the API answers. */
  | { readonly kind: "bad gateway" }
  /** 401: the token was withdrawn. */
  | { readonly kind: "unauthorized" }
  /** Any other refusal. */
  | { readonly kind: "refused"; readonly refusal: Refusal }
  /** The request is taken and never answered nor acted on. */
  | { readonly kind: "silence" }
  /** The connection is reset before the call is acted on. */
  | { readonly kind: "reset" }
  /** Status 200 with a body that breaks off; the call is not acted on. */
  | { readonly kind: "malformed" }
  /** The call is acted on, then the connection dies: the client cannot know. */
  | { readonly kind: "answer lost" }
  /** The call is acted on and answered once `until` settles. */
  | { readonly kind: "held"; readonly until: Promise<unknown> }
  /** The call is acted on and answered that much later. */
  | { readonly kind: "slow"; readonly ms: number };

/** When a fault strikes. */
export interface Strike<M extends MethodName> {
  /** How many calls fail; 1 unless stated, `Infinity` until cleared. */
  readonly times?: number;
  /** Calls let through before the first one fails. */
  readonly after?: number;
  /** Only calls with such parameters are counted. */
  readonly when?: (params: Params<M>) => boolean;
}

interface Planned {
  readonly method: MethodName | "every method";
  readonly fault: Fault;
  readonly matches: (params: object) => boolean;
  letThrough: number;
  left: number;
}

/** Faults planned by a test, used up in the order they were planned. */
export class Faults {
  private planned: Planned[] = [];

  constructor(private readonly changes: Changes) {}

  /** Plans a fault for the coming calls of one method. */
  plan<M extends MethodName>(method: M, fault: Fault, strike: Strike<M> = {}): void {
    const { when } = strike;
    const matches = when === undefined ? () => true : (params: object) => when(params as Params<M>);
    this.add(method, fault, matches, strike);
  }

  /** Plans a fault for the coming calls of any method. */
  planForAll(fault: Fault, strike: Omit<Strike<"getMe">, "when"> = {}): void {
    this.add("every method", fault, () => true, strike);
  }

  /** Takes back everything planned: the line is well again. */
  clear(): void {
    this.planned = [];
    this.changes.tell();
  }

  /** Faults planned that have not struck yet. */
  get outstanding(): number {
    return this.planned.length;
  }

  /** The fault that strikes this call, if any; counts it. */
  strike(method: MethodName, params: object): Fault | undefined {
    for (const planned of this.planned) {
      if (planned.method !== "every method" && planned.method !== method) continue;
      if (!planned.matches(params)) continue;
      if (planned.letThrough > 0) {
        planned.letThrough -= 1;
        continue;
      }
      planned.left -= 1;
      this.planned = this.planned.filter(({ left }) => left > 0);
      return planned.fault;
    }
    return undefined;
  }

  private add(
    method: Planned["method"],
    fault: Fault,
    matches: Planned["matches"],
    { times = 1, after = 0 }: Omit<Strike<"getMe">, "when">,
  ): void {
    this.planned.push({ method, fault, matches, letThrough: after, left: times });
  }
}
