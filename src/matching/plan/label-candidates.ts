import type { RatingName } from "../../nameplate/vocabulary.ts";
import { faceOf, ratedHpOf, shaftOf, totalHpOf } from "../deduced.ts";
import { figure } from "../finding.ts";
import type { Question } from "../types.ts";
import { usualFrames, usualHp, usualMounts, usualRpm, usualServiceFactors } from "./assumptions.ts";
import { type Candidate, only, type Stocked } from "./candidates.ts";

/** Frames, where face and shaft follow from the letter. */
export function frameCandidates({ nameplate }: Question, stocked: readonly Stocked[]): readonly Candidate[] {
  const fromStock = stocked.flatMap(({ label, alike }) =>
    label.frame === undefined ? [] : [{ values: { frame: label.frame }, alike }],
  );
  const all = [...fromStock, ...usualFrames.map((frame) => ({ values: { frame }, alike: 0 }))];
  const fits = all.filter(({ values: { frame } }) => {
    const face = faceOf({ frame })?.value;
    const shaft = shaftOf({ frame })?.value;
    const faceFits =
      face === undefined ||
      nameplate.flange === undefined ||
      face === nameplate.flange ||
      (face === "square" && nameplate.flange === "through-bolt");
    return faceFits && (shaft === undefined || nameplate.shaft === undefined || shaft === nameplate.shaft);
  });
  return fits.length > 0 ? fits : all;
}

/** Face and shaft as seen on the motor itself. */
export function faceCandidates(
  asked: readonly RatingName[],
  { nameplate }: Question,
  stocked: readonly Stocked[],
) {
  const known = { flange: faceOf(nameplate)?.value, shaft: shaftOf(nameplate)?.value };
  const mounts = [
    ...stocked.map(({ label, alike }) => ({
      flange: faceOf(label)?.value,
      shaft: shaftOf(label)?.value,
      alike,
    })),
    ...usualMounts.map((mount) => ({ ...mount, alike: 0 })),
  ];
  const fits = mounts.filter(
    ({ flange, shaft }) =>
      (known.flange === undefined || flange === known.flange) &&
      (known.shaft === undefined || shaft === known.shaft),
  );
  return (fits.length > 0 ? fits : mounts).flatMap(({ flange, shaft, alike }): Candidate[] =>
    flange === undefined || shaft === undefined ? [] : [{ values: only(asked, { flange, shaft }), alike }],
  );
}

/** Horsepower and service factor, or what stands in for them. */
export function powerCandidates(
  asked: readonly RatingName[],
  { nameplate }: Question,
  stocked: readonly Stocked[],
) {
  const known = { hp: ratedHpOf(nameplate)?.value, serviceFactor: nameplate.serviceFactor };
  const pairs = [
    ...stocked.flatMap(({ label, alike }) => {
      const hp = ratedHpOf(label)?.value;
      const total = totalHpOf(label)?.value;
      if (hp === undefined || total === undefined) return [];
      return [{ hp, serviceFactor: label.serviceFactor ?? figure(total / hp), alike }];
    }),
    ...usualHp.flatMap((hp) => usualServiceFactors.map((serviceFactor) => ({ hp, serviceFactor, alike: 0 }))),
  ];
  const fits = pairs.filter(
    ({ hp, serviceFactor }) =>
      (known.hp === undefined || hp === known.hp) &&
      (known.serviceFactor === undefined || serviceFactor === known.serviceFactor),
  );
  // A size the trade does not know: any service factor may stand on it.
  const loose = pairs.map((pair) => ({
    ...pair,
    hp: known.hp ?? pair.hp,
    serviceFactor: known.serviceFactor ?? pair.serviceFactor,
  }));
  return (fits.length > 1 ? fits : loose).map(
    ({ hp, serviceFactor, alike }): Candidate => ({
      values: only(asked, {
        hp,
        serviceFactor,
        totalHp: figure(hp * serviceFactor),
        kw: figure(hp * 0.7457),
      }),
      alike,
    }),
  );
}

/** Label speeds. */
export function rpmCandidates(
  { nameplate: { speedKind } }: Question,
  stocked: readonly Stocked[],
): readonly Candidate[] {
  const all = [
    ...stocked.flatMap(({ label: { rpm }, alike }) => (rpm ? [{ values: { rpm }, alike }] : [])),
    ...usualRpm.map((rpm) => ({ values: { rpm: [...rpm] }, alike: 0 })),
  ];
  const figures = { single: 1, two: 2, variable: undefined };
  const wanted = speedKind && figures[speedKind];
  const fits = all.filter(({ values: { rpm } }) => wanted === undefined || rpm.length === wanted);
  return fits.length > 0 ? fits : all;
}

/** Kinds of speed, where the figures leave it open. */
export function speedKindCandidates({ nameplate: { rpm } }: Question): readonly Candidate[] {
  const kinds =
    rpm && rpm.length > 2 ? (["two", "variable"] as const) : (["single", "two", "variable"] as const);
  return kinds.map((speedKind) => ({ values: { speedKind }, alike: 1 }));
}
