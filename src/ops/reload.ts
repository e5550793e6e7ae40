import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Texts } from "../conversation/wording.ts";
import { blanksOf, type WordingGroup, wordingGroups } from "../conversation/wording.ts";

/** What a reload came to; a refused one has changed nothing. */
export type Reloaded = { readonly kind: "taken" } | { readonly kind: "refused"; readonly problem: string };

/**
 * What would go wrong with new texts in a program that runs on the old ones: a key that is gone, or a blank that nothing
 * fills. Null when they can be used.
 */
export function lossIn(before: Texts, after: Texts): string | null {
  for (const group of wordingGroups) {
    const problem = lossInGroup(group, before[group], after[group]);
    if (problem !== null) return problem;
  }
  return null;
}

type Group = Texts[WordingGroup];

function lossInGroup(group: WordingGroup, before: Group, after: Group): string | null {
  for (const [key, text] of Object.entries(before)) {
    const next = Object.hasOwn(after, key) ? after[key] : undefined;
    if (next === undefined) return `intents/answers/${group}.json: the key "${key}" is missing`;
    const known = blanksOf(text);
    const unknown = blanksOf(next).find((blank) => !known.includes(blank));
    if (unknown !== undefined)
      return `intents/answers/${group}.json, key "${key}": nothing fills the blank {${unknown}}`;
  }
  return null;
}

export interface WatchOptions {
  readonly folders: readonly string[];
  readonly everyMs: number;
  readonly onChange: () => void;
}

/**
 * Looks at the files every so often; a change counts once two looks in a row agree, so that a file that is being
 * written is not read half. Looking survives editors and file systems that events do not. Gives the function that ends it.
 */
export function watchFiles({ folders, everyMs, onChange }: WatchOptions): () => void {
  let settled = signatureOf(folders);
  let seen = settled;
  const timer = setInterval(() => {
    const now = signatureOf(folders);
    const calm = now === seen;
    seen = now;
    if (!calm || now === settled) return;
    settled = now;
    onChange();
  }, everyMs);
  timer.unref();
  return () => clearInterval(timer);
}

/** Names, sizes and times of the files, as one string. */
function signatureOf(folders: readonly string[]): string {
  return folders.map(signatureOfFolder).join("\n");
}

function signatureOfFolder(folder: string): string {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .map((entry) => {
        const path = join(folder, entry.name);
        if (entry.isDirectory()) return signatureOfFolder(path);
        const { size, mtimeMs, ino } = statSync(path);
        return `${path} ${size} ${mtimeMs} ${ino}`;
      })
      .join("\n");
  } catch {
    return `${folder} cannot be read`;
  }
}
