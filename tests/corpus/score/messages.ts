import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { hazards } from "../../../src/nameplate/reading.ts";
import { nameplateSchema, ratingNames, siteSchema } from "../../../src/nameplate/vocabulary.ts";

/** Folder of the labelled messages. */
const corpusFolder = fileURLToPath(new URL("..", import.meta.url));

/** Every intent a gold label may name: the fixed names of the `read` surface. */
export const intentNames = [
  "person",
  "restart",
  "explain",
  "bigger",
  "savings",
  "price",
  "unreadable",
  "correction",
  "thanks",
  "greeting",
  "yes",
  "no",
  "dont-know",
  "forget",
  "hours",
  "ratings",
  "other",
] as const;

const common = { id: z.string().min(1), text: z.string(), tags: z.array(z.string().min(1)).min(1) };

const readingSchema = z.strictObject({
  ...common,
  nameplate: nameplateSchema,
  site: siteSchema,
  unreadable: z.array(z.enum(ratingNames as [string, ...string[]])),
});
const dangerSchema = z.strictObject({ ...common, hazard: z.enum(hazards).nullable() });
const intentSchema = z.strictObject({
  ...common,
  /** Must come first. */
  intent: z.enum(intentNames),
  /** What the message also carries; first place for one of these is a matter of taste. */
  also: z.array(z.enum(intentNames)),
});
const hostileSchema = z
  .strictObject({
    id: z.string().min(1),
    text: z.string().optional(),
    /** Stands for a text too long to write down. */
    repeat: z.strictObject({ text: z.string(), times: z.int().positive() }).optional(),
    why: z.string().min(1),
    /** Ratings the text does state; any other reading of it is invented. */
    states: z.array(z.enum(ratingNames as [string, ...string[]])).optional(),
  })
  .refine((line) => (line.text === undefined) !== (line.repeat === undefined), "needs either text or repeat");

type InFile = { readonly file: string };
export type ReadingMessage = z.infer<typeof readingSchema> & InFile;
export type DangerMessage = z.infer<typeof dangerSchema> & InFile;
export type IntentMessage = z.infer<typeof intentSchema> & InFile;
export interface HostileMessage extends InFile {
  readonly id: string;
  readonly text: string;
  readonly why: string;
  readonly states: readonly string[];
}

/** Checks the lines of one JSONL file; throws with file and line of the first bad one or repeated id. */
export function parseLines<T extends { id: string }>(
  file: string,
  content: string,
  schema: z.ZodType<T>,
): (T & InFile)[] {
  const seen = new Set<string>();
  return content.split("\n").flatMap((line, index) => {
    if (line.trim() === "") return [];
    const where = `${file}.jsonl line ${index + 1}`;
    let raw: unknown;
    try {
      raw = JSON.parse(line);
    } catch (error) {
      throw new Error(`${where} is not JSON: ${(error as Error).message}`);
    }
    const parsed = schema.safeParse(raw);
    if (!parsed.success) throw new Error(`${where}: ${z.prettifyError(parsed.error)}`);
    if (seen.has(parsed.data.id)) throw new Error(`${where}: id ${parsed.data.id} is used twice`);
    seen.add(parsed.data.id);
    return [{ ...parsed.data, file }];
  });
}

function load<T extends { id: string }>(path: string, schema: z.ZodType<T>): (T & InFile)[] {
  return parseLines(basename(path, ".jsonl"), readFileSync(join(corpusFolder, path), "utf8"), schema);
}

/** Every JSONL file of a folder whose name starts so, by name. */
function loadAll<T extends { id: string }>(
  folder: string,
  start: string,
  schema: z.ZodType<T>,
): (T & InFile)[] {
  return readdirSync(join(corpusFolder, folder))
    .filter((name) => name.startsWith(start) && name.endsWith(".jsonl"))
    .sort()
    .flatMap((name) => load(join(folder, name), schema));
}

/** Messages with the ratings they state, all files of `readings/`. */
export function loadReadings(): ReadingMessage[] {
  return loadAll("readings", "", readingSchema);
}

/** Harder ones, written to mislead about whose a figure is: learned from, and too many to score with every test run. */
export function loadLessons(): ReadingMessage[] {
  return loadAll("lessons", "", readingSchema);
}

/** Messages with the danger they tell of, or none: all files `danger*.jsonl`. */
export function loadDanger(): DangerMessage[] {
  return loadAll(".", "danger", dangerSchema);
}

/** Messages with what the person wants: all files `intents*.jsonl`. */
export function loadIntents(): IntentMessage[] {
  return loadAll(".", "intents", intentSchema);
}

/** Input nobody should send, spelled out. */
export function loadHostile(): HostileMessage[] {
  return load("hostile.jsonl", hostileSchema).map(({ id, text, repeat, why, states, file }) => ({
    id,
    file,
    text: repeat ? repeat.text.repeat(repeat.times) : (text ?? ""),
    why,
    states: states ?? [],
  }));
}
