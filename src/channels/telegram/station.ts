import type { Api } from "grammy";
import type { UserFromGetMe } from "grammy/types";
import type { Wording } from "../../conversation/wording.ts";
import type { Engine } from "../../engine/types.ts";
import type { Store } from "../../store/store.ts";
import type { Clock } from "./clock.ts";
import type { Log } from "./log.ts";
import type { Pace } from "./pace.ts";
import type { StaffGroup } from "./staff-group.ts";

/** What everybody in the channel works with. */
export interface Station {
  readonly api: Api;
  readonly me: UserFromGetMe;
  readonly engine: Engine;
  readonly store: Store;
  readonly wording: Wording;
  readonly shopName: string;
  /** Null until the operator has named one. */
  readonly staff: StaffGroup | null;
  readonly onCall: number | null;
  readonly clock: Clock;
  readonly pace: Pace;
  readonly log: Log;
  /** The mark each case's topic bears now, as far as this run has set it. */
  readonly titles: Map<number, string>;
  /** A thread's name in the log, the same as in the engine's lines. */
  readonly nameOf: (threadId: string) => string;
}
