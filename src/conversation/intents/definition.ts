import { z } from "zod";
import { intentNames } from "./names.ts";
import { isTradeTag } from "./trade-words.ts";

const sentence = z.string().trim().min(1);

/** compromise reads nested groups and unknown tags without a word of complaint, and never matches them. */
const pattern = sentence.superRefine((written, context) => {
  if (/\([^)]*\(/.test(written) || written.split("(").length !== written.split(")").length) {
    context.addIssue({
      code: "custom",
      message: `"${written}": groups in brackets must be closed and not stand inside one another; write two patterns`,
    });
  }
  for (const [tag] of written.matchAll(/#\w+/g)) {
    if (isTradeTag(tag.slice(1))) continue;
    context.addIssue({ code: "custom", message: `"${written}": there is no tag ${tag}` });
  }
});

/** One file of `intents/said/`: how people say one intent. */
export const intentDefinitionSchema = z.strictObject({
  intent: z.enum(intentNames),
  /** What somebody who says this wants, for the people who edit the file. */
  about: sentence,
  /** Patterns in compromise match syntax, tried on every sentence; lower case, contractions written out. */
  patterns: z.array(pattern),
  /** Whole messages, or whole parts between commas, that mean this and nothing else. */
  phrases: z.array(sentence).optional(),
  /** Messages whose first intent this is (for a finer intent: that have it among their intents). */
  examples: z.array(sentence).min(8),
  /** Messages of its neighbours whose first intent this must not be. */
  leaves: z.array(sentence).min(1),
});

export type IntentDefinition = z.infer<typeof intentDefinitionSchema>;
