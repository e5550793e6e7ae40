import { fileURLToPath } from "node:url";
import { readJson } from "../../src/content.ts";
import { type DeskHours, deskHoursSchema } from "../../src/desk/hours.ts";
import { readStaffLine } from "../../src/desk/staff-line.ts";
import type { EngineParts, StaffAnswer } from "../../src/engine/types.ts";
import { createEngine, type Engine } from "../../src/engine.ts";
import { type Lane, laneKey } from "../../src/outgoing.ts";
import type { StaffMember } from "../../src/staff.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";
import type { OutboxItem, Store } from "../../src/store/store.ts";
import { knowledge } from "../conversation/knowledge.ts";

export const kim: StaffMember = { id: "staff:1", name: "Kim" };
export const lee: StaffMember = { id: "staff:2", name: "Lee" };

const dataFolder = fileURLToPath(new URL("../../data/", import.meta.url));
/** The demo shop's hours: weekdays 8:00 to 17:30, Saturdays 9:00 to 13:00, Chicago time. */
export const hours: DeskHours = readJson(`${dataFolder}desk-hours.json`, deskHoursSchema);

/** A label that reads straight to a drop-in. */
export const LABEL = "model QX-4471, 1 hp, SF 1.65, 230V, frame 56Y, single phase, 3450 rpm";

/** A shop with its desk, in memory, and a clock that only moves when told. */
export interface Evening {
  readonly engine: Engine;
  readonly store: Store;
  /** Sets the clock; ISO instant. */
  readonly at: (instant: string) => void;
  /** A customer writes. */
  readonly says: (thread: string, text: string, extra?: object) => Promise<readonly string[]>;
  /** Staff type into the place of a case. */
  readonly types: (by: StaffMember, caseId: number, text: string) => Promise<StaffAnswer>;
  readonly tick: () => Promise<number>;
  /** All that was ever put into a lane, in order. */
  readonly lane: (lane: Lane) => Promise<readonly OutboxItem[]>;
  readonly texts: (lane: Lane) => Promise<readonly string[]>;
  readonly troubles: unknown[];
}

export function evening(over: Partial<EngineParts> = {}): Evening {
  const store = over.store ?? openSqliteStore(":memory:");
  const troubles: unknown[] = [];
  const engine = createEngine({
    store,
    understand: knowledge.understand,
    wording: knowledge.wording,
    catalogue: () => knowledge.catalogue,
    shop: knowledge.shop,
    hours,
    onTrouble: (_, error) => troubles.push(error),
    ...over,
  });
  // A Tuesday, 10:00 in the morning in Chicago.
  let now = "2026-11-24T16:00:00.000Z";
  let count = 0;
  const lane = async (wanted: Lane) =>
    (await store.undelivered()).filter((item) => laneKey(item.lane) === laneKey(wanted));
  return {
    engine,
    store,
    troubles,
    at: (instant) => {
      now = new Date(instant).toISOString();
    },
    says: async (threadId, text, extra = {}) =>
      (await engine.handle({ id: `m${++count}`, threadId, text, at: now, ...extra })).replies,
    types: async (by, caseId, text) => {
      const line = readStaffLine(text);
      if (line.kind !== "act") throw new Error(`not an act: ${text}`);
      return engine.staff({ id: `s${++count}`, caseId, act: line.act, by, at: now });
    },
    tick: () => engine.tick(now),
    lane,
    texts: async (wanted) => (await lane(wanted)).map(({ content }) => content.text),
  };
}

export const customer = (threadId: string): Lane => ({ kind: "customer", threadId });
export const caseLane = (caseId: number): Lane => ({ kind: "case", caseId });
export const desk: Lane = { kind: "desk" };
export const onCall: Lane = { kind: "on-call" };
