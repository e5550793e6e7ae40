import type { Engine, Handled, StaffAnswer, StaffItem } from "../engine/types.ts";
import type { InboxItem } from "../store/store.ts";

/** Told of what the engine did; must not throw. */
export interface Watch {
  readonly handled: (item: InboxItem, ms: number, handled: Handled) => void;
  readonly acted: (item: StaffItem, ms: number, answer: StaffAnswer) => void;
  /** The engine could not even store what came of it. */
  readonly failed: (item: InboxItem, error: unknown) => void;
}

/** The same engine, watched. */
export function observed(engine: Engine, watches: readonly Watch[]): Engine {
  if (watches.length === 0) return engine;
  return {
    ...engine,
    handle: async (item) => {
      const began = performance.now();
      try {
        const handled = await engine.handle(item);
        const ms = performance.now() - began;
        for (const watch of watches) watch.handled(item, ms, handled);
        return handled;
      } catch (error) {
        for (const watch of watches) watch.failed(item, error);
        throw error;
      }
    },
    staff: async (item) => {
      const began = performance.now();
      const answer = await engine.staff(item);
      const ms = performance.now() - began;
      for (const watch of watches) watch.acted(item, ms, answer);
      return answer;
    },
  };
}
