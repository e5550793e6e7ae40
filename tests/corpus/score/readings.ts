import type { Answer, Miss, Understand } from "./answer.ts";
import type { ReadingMessage } from "./messages.ts";
import { countTags, emptyTally, type Share, type Tally } from "./tally.ts";
import { sameSet, sameValue } from "./values.ts";

export interface ReadingScore {
  readonly messages: number;
  /** Messages with every field right and none added. */
  readonly exact: number;
  /** By field; `unreadable` is one field, right when the set of names is. */
  readonly fields: ReadonlyMap<string, Tally>;
  readonly tags: ReadonlyMap<string, Share>;
  readonly misses: readonly Miss[];
}

type Gold = Pick<ReadingMessage, "nameplate" | "site" | "unreadable">;
type Verdict = "right" | "wrong" | "missing" | "added";

interface Field {
  readonly name: string;
  readonly gold: unknown;
  readonly got: unknown;
  readonly verdict: Verdict;
}

function judge(gold: unknown, got: unknown, same: boolean): Verdict {
  if (gold === undefined) return "added";
  if (got === undefined) return "missing";
  return same ? "right" : "wrong";
}

/** Every field that the gold or the answer holds, judged. */
export function compareReadings(gold: Gold, got: Answer): Field[] {
  const plain = (["nameplate", "site"] as const).flatMap((part) => {
    const wanted = stated(gold[part]);
    const given = stated(got[part]);
    const names = new Set([...Object.keys(wanted), ...Object.keys(given)]);
    return [...names].map((name) => {
      const [left, right] = [wanted[name], given[name]];
      return { name, gold: left, got: right, verdict: judge(left, right, sameValue(left, right)) };
    });
  });
  const wanted = gold.unreadable.length > 0 ? gold.unreadable : undefined;
  const given = got.unreadable.length > 0 ? got.unreadable : undefined;
  if (!wanted && !given) return plain;
  const same = sameSet(gold.unreadable, got.unreadable);
  return [...plain, { name: "unreadable", gold: wanted, got: given, verdict: judge(wanted, given, same) }];
}

const stated = (values: object): Record<string, unknown> =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

function count(tally: Tally, verdict: Verdict): void {
  if (verdict === "right") tally.truePositives += 1;
  // A wrong value is both: one that should not be there, and one that should.
  if (verdict === "wrong" || verdict === "added") tally.falsePositives += 1;
  if (verdict === "wrong" || verdict === "missing") tally.falseNegatives += 1;
}

/** Reads every message and compares field by field. */
export function scoreReadings(messages: readonly ReadingMessage[], understand: Understand): ReadingScore {
  const fields = new Map<string, Tally>();
  const tags = new Map<string, Share>();
  const misses: Miss[] = [];
  for (const message of messages) {
    const compared = compareReadings(message, understand(message.text));
    for (const { name, verdict } of compared) {
      const tally = fields.get(name) ?? emptyTally();
      count(tally, verdict);
      fields.set(name, tally);
    }
    const wrong = compared.filter(({ verdict }) => verdict !== "right");
    countTags(tags, message.tags, wrong.length === 0);
    if (wrong.length > 0) {
      const differences = wrong.map(
        ({ name, verdict, gold, got }) => `${verdict} ${name}: want ${show(gold)}, got ${show(got)}`,
      );
      misses.push({ id: message.id, text: message.text, tags: message.tags, differences });
    }
  }
  return { messages: messages.length, exact: messages.length - misses.length, fields, tags, misses };
}

const show = (value: unknown): string => (value === undefined ? "nothing" : JSON.stringify(value));
