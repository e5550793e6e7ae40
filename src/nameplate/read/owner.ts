import type { CueKind } from "./findCues.ts";

/**
 * Whose figure a token carries. `measured` covers only what an instrument measures, `part` a piece of the pump
 * that the shaft and the face are described by, `place` a fitting of the house that carries the same supply.
 */
export type Owner = "label" | "other" | "neighbour" | "measured" | "asked" | "part" | "place";

/** The owner a cue of this kind points to. */
export const foreign: Partial<Record<CueKind, Owner>> = {
  thing: "other",
  person: "neighbour",
  earlier: "other",
  wish: "other",
  measured: "measured",
};
/** Words that place a figure on a thing. */
export const linking = ["on", "of", "from", "off", "in", "by", "for", "del", "de", "en"];
