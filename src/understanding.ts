import { readConfig } from "./config.ts";
import { loadContent } from "./content.ts";
import { createIntentMatcher } from "./conversation/intents.ts";
import { createUnderstand, type PlainUnderstanding, plainUnderstanding } from "./conversation/understand.ts";

/** Opens the `read` surface on this installation's texts: one message in, plain values out. */
export function openUnderstanding(): (text: string) => PlainUnderstanding {
  const understand = createUnderstand(createIntentMatcher(loadContent(readConfig().intentsFolder).intents));
  return (text) => plainUnderstanding(understand(text));
}
