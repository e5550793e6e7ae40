import type { EngineParts } from "../../src/engine/types.ts";
import type { Store } from "../../src/store/store.ts";
import { type Evening, evening, kim, lee } from "../desk/evening.ts";

/** A talk: what the customer writes, and what the desk types into the case afterwards. */
interface Talk {
  readonly says: readonly string[];
  /** Minutes from the last message until a person takes it; null: nobody has. */
  readonly takenAfter: number | null;
  readonly types?: readonly string[];
}

/** A label without a number, so that no sale is remembered and the rules speak alike all month. */
const inOne = ["1 hp, SF 1.65, 230V, frame 56Y, single phase, 3450 rpm"];
const inThree = [
  "hello, my pump motor died",
  "it says 1 1/2 HP and SF 1.10, 115/230 volts",
  "frame 56Y, 3450 rpm, single phase, we have 230",
];
const tooStrong = ["3 hp, service factor 1.3, 230V, frame 56Y, single phase, 3450 rpm"];
const threePhase = ["2 hp SF 1.15, three phase, 230/460 volts, frame 56C, 3450 rpm, wired 460"];
const twoSpeed = ["1 hp SF 1.4, 1725 rpm, 115V single phase, frame 56C"];
const smallRound = ["hi there", "3/4 HP, SF 1.0, 115 volts", "48J, 3450, single phase"];
const handOver = [
  "the label is all rust",
  "can't read any of it",
  "no idea what pump it is",
  "nothing on the pump either",
];
const halfRead = [
  "1.5 hp 230V single phase 3450 rpm SF 1.1, the frame is scratched off",
  "can't tell, the frame is gone",
  "I don't know",
  "no idea",
];

/** What becomes of fourteen customers; a month is several of these. */
const talks: readonly Talk[] = [
  { says: inOne, takenAfter: 6, types: ["/close sold BAKLAVA-498"] },
  {
    says: inThree,
    takenAfter: 22,
    types: ["/offer BAKLAVA-851 the customer wants it today", "/close sold BAKLAVA-851"],
  },
  { says: tooStrong, takenAfter: 41, types: ["/close not-stocked"] },
  { says: halfRead, takenAfter: 3, types: ["/close sold BAKLAVA-498"] },
  { says: inOne, takenAfter: 5, types: ["/close sold BAKLAVA-498"] },
  { says: threePhase, takenAfter: 31, types: ["/close not-stocked"] },
  { says: tooStrong, takenAfter: 75, types: ["/close went-elsewhere"] },
  { says: inThree, takenAfter: 11, types: ["/close sold BAKLAVA-498"] },
  { says: ["can I talk to a person please"], takenAfter: 17, types: ["/close answered"] },
  { says: twoSpeed, takenAfter: 9, types: ["/close not-stocked"] },
  { says: handOver, takenAfter: 14, types: ["/close answered"] },
  { says: smallRound, takenAfter: 4, types: ["/close not-stocked"] },
  { says: inOne, takenAfter: null },
  { says: ["there is smoke coming out of the motor"], takenAfter: 2 },
];

export const MINUTE = 60_000;

/** A shop's month from `from` (ISO instant) on: one round of talks every `daysApart` days, some after closing. */
export async function aMonth(
  from: string,
  rounds: number,
  { daysApart = 3, ...parts }: Partial<EngineParts> & { readonly daysApart?: number } = {},
): Promise<{ readonly store: Store; readonly shop: Evening }> {
  const shop = evening(parts);
  let caseId = 0;
  for (let round = 0; round < rounds; round++) {
    // Later rounds are shorter, so that not everything is asked for equally often.
    for (const [place, talk] of talks.slice(0, talks.length - (round % 4) * 3).entries()) {
      const late = place % 5 === 2 ? 9 * 60 : 0;
      let at = Date.parse(from) + round * daysApart * 1440 * MINUTE + (place * 13 + late) * MINUTE;
      for (const text of talk.says) {
        shop.at(new Date(at).toISOString());
        await shop.says(`r${round}c${place}`, text);
        at += 2 * MINUTE;
      }
      const open = await shop.store.latestCase(`r${round}c${place}`);
      if (open === undefined || talk.takenAfter === null) continue;
      caseId = open.id;
      at += (talk.takenAfter + round * 3 + (late > 0 ? 13 * 60 : 0)) * MINUTE;
      shop.at(new Date(at).toISOString());
      const person = place % 2 === 0 ? kim : lee;
      await shop.types(person, caseId, "/take");
      for (const line of talk.types ?? []) await shop.types(person, caseId, line);
    }
  }
  return { store: shop.store, shop };
}
