import { createHash } from "node:crypto";

/** The part the reader is tuned on, and the part that is only scored. */
export const splits = ["tune", "held"] as const;
export type Split = (typeof splits)[number];

/** Where a message belongs: about three fifths tune, for ever the same for one id. */
export function splitOf(id: string): Split {
  const firstByte = createHash("sha256").update(id).digest()[0] ?? 0;
  return firstByte < 0x99 ? "tune" : "held";
}
