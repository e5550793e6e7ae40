import { readdirSync, readFileSync } from "node:fs";
import { intentDefinitionSchema } from "../../../src/conversation/intents/definition.ts";
import {
  createIntentMatcher,
  type IntentDefinition,
  type IntentName,
} from "../../../src/conversation/intents.ts";
import { readMessage } from "../../../src/nameplate/read.ts";

const folder = new URL("../../../intents/said/", import.meta.url);

/** Every file of `intents/said/`, validated. */
export const definitions: readonly IntentDefinition[] = readdirSync(folder)
  .filter((file) => file.endsWith(".json"))
  .map((file) => intentDefinitionSchema.parse(JSON.parse(readFileSync(new URL(file, folder), "utf8"))));

export const match = createIntentMatcher(definitions);

/** Names of what a message wants, most likely first, as the bot sees it. */
export function intentsOf(text: string): readonly IntentName[] {
  return match(text, readMessage(text)).map(({ intent }) => intent);
}
