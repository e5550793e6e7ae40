import type { Speaker } from "../speaker.ts";

const bullets = ["powerOff", "capacitor", "bonding", "gfci", "voltage"] as const;

/** The cautions that every verdict carries; the last word is the electrician's. */
export function cautionText(speaker: Speaker): string {
  return [
    speaker.say("cautions", "intro"),
    ...bullets.map((key) => `• ${speaker.say("cautions", key)}`),
    speaker.say("cautions", "localCode"),
  ].join("\n");
}
