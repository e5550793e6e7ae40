import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { type IntentDefinition, intentDefinitionSchema } from "./conversation/intents/definition.ts";
import { createWording, type Texts, type Wording, wordingGroups } from "./conversation/wording.ts";

/** A file under `intents/` or `data/` cannot be used; the message names file, key and what was expected. */
export class ContentError extends Error {
  override readonly name = "ContentError";
}

/** What people say and what the bot answers. */
export interface Content {
  readonly wording: Wording;
  /** What the wording was made of. */
  readonly texts: Texts;
  readonly intents: readonly IntentDefinition[];
}

const textsSchema = z.record(z.string().min(1), z.string().trim().min(1));

/**
 * Reads and validates everything under `folder` (the project's `intents/`).
 * Throws {@link ContentError} naming file and key.
 */
export function loadContent(folder: string): Content {
  const texts = Object.fromEntries(
    wordingGroups.map((group) => [group, readJson(join(folder, "answers", `${group}.json`), textsSchema)]),
  ) as unknown as Texts;
  const said = join(folder, "said");
  const intents = listJson(said).map((file) => readJson(join(said, file), intentDefinitionSchema));
  return { wording: createWording(texts), texts, intents };
}

function listJson(folder: string): string[] {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith(".json"))
      .sort();
  } catch (cause) {
    throw new ContentError(`${folder}: this folder cannot be read. Restore it from the project.`, { cause });
  }
}

/** Reads one JSON file through a schema. Throws {@link ContentError} naming file, key and expectation. */
export function readJson<T>(file: string, schema: z.ZodType<T>): T {
  let raw: string;
  try {
    raw = readFileSync(file, "utf8");
  } catch (cause) {
    throw new ContentError(`${file}: this file cannot be read. Restore it from the project.`, { cause });
  }
  let parsed: unknown;
  try {
    parsed = JSON.parse(raw);
  } catch (cause) {
    throw new ContentError(`${file}: not valid JSON (${(cause as Error).message}).`, { cause });
  }
  const checked = schema.safeParse(parsed);
  if (checked.success) return checked.data;
  const [issue] = checked.error.issues;
  const key = issue?.path.join(".") || "(top level)";
  throw new ContentError(`${file}, key "${key}": ${issue?.message ?? "not as expected"}.`);
}
