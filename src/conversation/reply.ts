import type { Pictured } from "./pictured.ts";

/** A text for the customer, with the picture that helps with it where there is one. */
export type Reply = string | { readonly text: string; readonly picture: Pictured };

export const textOf = (reply: Reply): string => (typeof reply === "string" ? reply : reply.text);

/** The same picture beside other words. */
export function reworded(reply: Reply, text: string): Reply {
  return typeof reply === "string" ? text : { ...reply, text };
}
