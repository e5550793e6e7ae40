import { z } from "zod";

/** Who does something, and where: a homeowner in their chat, or staff in a case's topic or beside all cases. */
const doer = z.discriminatedUnion("side", [
  z.strictObject({ side: z.literal("home"), person: z.number().int() }),
  z.strictObject({
    side: z.literal("desk"),
    person: z.number().int(),
    topic: z.number().int().nullable(),
  }),
]);
export type Doer = z.infer<typeof doer>;

// Bot API: a message has up to 4096 characters, a caption up to 1024.
const words = z.string().max(4096).regex(/\S/, "some words");

/** What a page may ask for. */
export const actSchema = z.discriminatedUnion("do", [
  z.strictObject({ do: z.literal("write"), as: doer, text: words }),
  z.strictObject({ do: z.literal("edit"), as: doer, message: z.number().int(), text: words }),
  z.strictObject({ do: z.literal("photo"), as: doer, caption: z.string().max(1024).default("") }),
  z.strictObject({
    do: z.literal("press"),
    as: doer,
    message: z.number().int(),
    button: z.string().min(1).max(200),
  }),
  /** Moves on to the next time it is that time of day at the shop. */
  z.strictObject({ do: z.literal("clock"), to: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/) }),
  z.strictObject({ do: z.literal("another-homeowner") }),
  /** Forgets everything and begins afresh. */
  z.strictObject({ do: z.literal("afresh") }),
]);
export type TryAct = z.infer<typeof actSchema>;

/** What an act led to, besides what is seen. */
export type Outcome =
  /** `said`: what the bot answers to a press, as a word on the screen; `person`: who has come. */
  | { readonly kind: "done"; readonly said?: string; readonly person?: number }
  | { readonly kind: "refused"; readonly problem: string };
