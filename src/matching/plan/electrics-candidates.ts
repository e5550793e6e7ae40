import { supplySystems } from "../../engineering/voltage.ts";
import type { Nameplate, RatingName, Site } from "../../nameplate/vocabulary.ts";
import { phaseOf } from "../deduced.ts";
import { possibleSupplies } from "../supplies.ts";
import type { Question } from "../types.ts";
import { supplyShare, threePhaseShare, usualVolts } from "./assumptions.ts";
import { type Candidate, only, type Stocked } from "./candidates.ts";

interface Plate {
  readonly volts: Nameplate["volts"];
  readonly phase: 1 | 3;
  readonly alike: number;
}

/** Rated volts, phase and wired supply, or poles of the breaker for the supply. */
export function electricsCandidates(
  asked: readonly RatingName[],
  { nameplate, site }: Question,
  stocked: readonly Stocked[],
) {
  const plates: Plate[] = [];
  const add = (volts: Nameplate["volts"], phase: 1 | 3, alike: number) => {
    const same = (a: Nameplate["volts"], b: Nameplate["volts"]) => a?.join() === b?.join();
    if (nameplate.volts && !same(nameplate.volts, volts)) return;
    if (nameplate.phase !== undefined && nameplate.phase !== phase) return;
    if (phase === 3 && phaseOf({ volts }) === 1) return;
    plates.push({ volts, phase, alike });
  };
  for (const { label, alike } of stocked) {
    const phase = phaseOf(label);
    if (label.volts) add(label.volts, phase ?? 1, alike);
  }
  const stockedAlike = plates.reduce((sum, { alike }) => sum + alike, 0);
  for (const volts of nameplate.volts ? [nameplate.volts] : usualVolts) {
    add([...volts], 1, 0);
    add([...volts], 3, stockedAlike * threePhaseShare);
  }

  // A plate that contradicts itself: nothing in the trade is like it.
  if (plates.length === 0) plates.push({ volts: nameplate.volts, phase: nameplate.phase ?? 1, alike: 0 });
  if (site.supplyVolts !== undefined) {
    return plates.map(({ volts, phase, alike }) => ({ values: only(asked, { volts, phase }), alike }));
  }
  const wired = plates.flatMap((plate) => wiredTo(asked, plate, suppliesOf(plate, site)));
  if (wired.length > 0) return wired;
  // Plate and breaker contradict each other: only the supply itself can settle it.
  return plates.flatMap((plate) => wiredTo(asked, plate, supplySystems));
}

/** Supplies a plate may be wired to; the rules do not say that three phases never come at 120 V, the trade does. */
function suppliesOf({ volts, phase }: Plate, site: Site): readonly number[] {
  const { volts: systems } = possibleSupplies({ nameplate: { volts, phase }, site, on: "" });
  return systems.filter((system) => phase === 1 || system !== 120);
}

function wiredTo(
  asked: readonly RatingName[],
  { volts, phase, alike }: Plate,
  systems: readonly number[],
): readonly Candidate[] {
  const shares = systems.reduce((sum, system) => sum + supplyShare(system), 0);
  return systems.map((supplyVolts) => ({
    values: only(asked, { volts, phase, supplyVolts, breakerPoles: polesFor(supplyVolts, phase) }),
    alike: (alike * supplyShare(supplyVolts)) / shares,
  }));
}

/** Poles of the breaker of a circuit: one for 120 V, two for 208 and 240 V, three for three-phase (common practice). */
function polesFor(supplyVolts: number, phase: 1 | 3): 1 | 2 | 3 {
  if (phase === 3) return 3;
  return supplyVolts < 150 ? 1 : 2;
}
