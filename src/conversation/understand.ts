import { auditNameplate } from "../nameplate/audit.ts";
import { readMessage, valuesOf } from "../nameplate/read.ts";
import type { Doubt, Hazard, MessageReading } from "../nameplate/reading.ts";
import type { Nameplate, RatingName, Site } from "../nameplate/vocabulary.ts";
import { detectDanger } from "./danger.ts";
import type { IntentMatch, IntentName } from "./intents.ts";

/** Everything one message says, before anything known about the thread is added. */
export interface Understood {
  readonly hazard: Hazard | null;
  readonly reading: MessageReading;
  /** Most likely first; never empty. */
  readonly intents: readonly IntentMatch[];
}

/** Understands one message; `expecting` are the ratings just asked for. */
export type Understand = (text: string, expecting?: readonly RatingName[]) => Understood;

/** Longer messages are read up to here: no label needs more, and a flood must not cost time. */
export const READ_CHARACTERS = 12_000;

/** Joins danger, reader and intents into one look at a message. Danger is looked for before anything else. */
export function createUnderstand(
  matchIntents: (text: string, seen: MessageReading) => readonly IntentMatch[],
): Understand {
  return (text, expecting = []) => {
    const read = text.slice(0, READ_CHARACTERS);
    const hazard = detectDanger(text)?.hazard ?? null;
    const reading = readMessage(read, { expecting });
    return { hazard, reading, intents: matchIntents(read, reading) };
  };
}

/** The `read` surface's view of one message: plain values and names. */
export interface PlainUnderstanding {
  readonly nameplate: Nameplate;
  readonly site: Site;
  readonly unreadable: readonly RatingName[];
  readonly intents: readonly IntentName[];
  readonly hazard: Hazard | null;
  readonly doubts: readonly Doubt[];
}

/** What a message states in plain values, with the audit's doubts of exactly these values. */
export function plainUnderstanding(understood: Understood): PlainUnderstanding {
  const { nameplate, site, unreadable } = valuesOf(understood.reading);
  return {
    nameplate,
    site,
    unreadable,
    intents: understood.intents.map(({ intent }) => intent),
    hazard: understood.hazard,
    doubts: auditNameplate(nameplate, site),
  };
}
