/**
 * What a message may want, in the order in which the first of several is chosen: what must be obeyed, then
 * questions, then statements about the label, then small talk. The list is pinned by a test.
 */
export const intentNames = [
  "forget",
  "restart",
  "person",
  "hours",
  "savings",
  "price",
  "bigger",
  "explain",
  "correction",
  "ratings",
  "unreadable",
  "dont-know",
  "no",
  "yes",
  "thanks",
  "greeting",
  "other",
  // Finer kinds of question: never first, they follow `other` when nothing else was said.
  "two-speed",
  "legal",
  "summary",
  "parts",
  "power-off",
  "planning",
  "wiring",
  "start",
  "fault",
  "photo",
  "service",
  "order",
] as const;

export type IntentName = (typeof intentNames)[number];

/** Intents that never come first. */
export const finerIntents: ReadonlySet<IntentName> = new Set([
  "two-speed",
  "legal",
  "summary",
  "parts",
  "power-off",
  "planning",
  "wiring",
  "start",
  "fault",
  "photo",
  "service",
  "order",
]);
