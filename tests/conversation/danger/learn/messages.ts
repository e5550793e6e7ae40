import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import type { Hazard } from "../../../../src/nameplate/reading.ts";
import { loadDanger, loadIntents, loadReadings } from "../../../corpus/score/messages.ts";
import { dangers, harmless, pairs } from "../sentences.ts";

/** A message the vote learns from. */
export interface Labelled {
  readonly id: string;
  /** Who wrote it, or of which set it is. */
  readonly source: string;
  readonly text: string;
  readonly hazard: Hazard | null;
  /** How much it counts; near-dangers of the corpus teach more than label copies. */
  readonly weight: number;
}

const folder = new URL("../", import.meta.url);

function loadVoices(file: string, source: string, weight: number): readonly Labelled[] {
  const voices = JSON.parse(readFileSync(new URL(file, folder), "utf8")) as Record<string, readonly string[]>;
  return Object.entries(voices).flatMap(([hazard, texts]) =>
    texts.map((text, i) => ({
      id: `${source}-${hazard}-${i}`,
      source,
      text,
      hazard: hazard === "none" ? null : (hazard as Hazard),
      weight,
    })),
  );
}

/** Every labelled message; readings and intents tell of no danger. */
export function loadLabelled(): readonly Labelled[] {
  const corpus = loadDanger().map(({ id, text, hazard }) => ({
    id,
    source: id.split("-")[0] ?? "",
    text,
    hazard: hazard as Hazard | null,
    // Written to mislead: a little of it teaches, much of it would make people who say it plainly be misheard.
    weight: id.startsWith("t3d-") ? 0.4 : 1,
  }));
  const plain = [...loadIntents(), ...loadReadings()].map(({ id, text }) => ({
    id,
    source: "plain",
    text,
    hazard: null,
    weight: 0.5,
  }));
  const sentences = [
    ...dangers.map(([text, hazard], i) => ({ id: `sentence-${i}`, text, hazard: hazard as Hazard })),
    ...harmless.map(([, text], i) => ({ id: `sentence-none-${i}`, text, hazard: null })),
    ...pairs.map(([, text], i) => ({ id: `pair-none-${i}`, text, hazard: null })),
  ].map((one) => ({ ...one, source: "sentences", weight: 2 }));
  return [
    ...corpus,
    ...sentences,
    ...loadVoices("voices.json", "voices", 1),
    ...loadVoices("letters.json", "letters", 1),
    ...loadVoices("families.json", "families", 1),
    ...plain,
  ];
}

/** The fold of a message; all messages of one invented writer (`dp-07-*`) share one. */
export function foldOf({ id }: Labelled, folds: number, salt = "fold"): number {
  const writer = id.startsWith("dp-") ? id.split("-").slice(0, 2).join("-") : id;
  return (
    (createHash("sha256")
      .update(salt + writer)
      .digest()[0] ?? 0) % folds
  );
}
