import type { Played } from "./play.ts";

export interface Differences {
  /** Customers who heard something else, or in another order; a repeat of the last one apart. */
  readonly missing: readonly {
    readonly who: string;
    readonly calm: readonly string[];
    readonly rough: readonly string[];
  }[];
  /** Messages that were sent a second time right after the first. */
  readonly repeats: number;
}

/** What customers of a disturbed evening heard against those of an undisturbed one. */
export function differences(calm: Played, rough: Played): Differences {
  const missing: Differences["missing"][number][] = [];
  let repeats = 0;
  for (const [who, heard] of calm.heard) {
    const roughly = rough.heard.get(who) ?? [];
    const [once, onceRoughly] = [withoutRepeats(heard), withoutRepeats(roughly)];
    repeats += roughly.length - onceRoughly.length - (heard.length - once.length);
    if (JSON.stringify(once) !== JSON.stringify(onceRoughly))
      missing.push({ who, calm: once, rough: onceRoughly });
  }
  return { missing, repeats };
}

const withoutRepeats = (texts: readonly string[]) => texts.filter((text, index) => text !== texts[index - 1]);
