/**
 * The matching rules once more, written apart from the engine and from the rules' text alone: plain, slow,
 * nothing shared but the types. Where the engine and this file disagree, one of them has misread a rule.
 */
import type {
  MotorVerdict,
  Outcome,
  OverallVerdict,
  Question,
  RuleName,
  StockMotor,
} from "../../src/matching/types.ts";
import type { Nameplate } from "../../src/nameplate/vocabulary.ts";

/** Room for binary fractions: 1.5 x 1.1 is not exactly 1.65. */
const HAIR = 1e-9;

export type Outcomes = Record<RuleName, Outcome>;

export function oracleOutcomes(question: Question, motor: StockMotor): Outcomes {
  const old = question.nameplate;
  const fresh = motor.label;
  const outcomes: Outcomes = {
    mount: mountOutcome(old, fresh),
    shaft: shaftOutcome(old, fresh),
    "total-horsepower": totalHorsepowerOutcome(old, fresh),
    supply: supplyOutcome(question, fresh),
    phase: phaseOutcome(old, fresh),
    frequency: frequencyOutcome(old, fresh),
    speed: speedOutcome(old, fresh),
    current: currentOutcome(question, fresh),
    duty: fresh.duty === undefined ? "not-known" : fresh.duty === "continuous" ? "holds" : "rules-out",
    ambient: ambientOutcome(old, fresh),
    sale: saleOutcome(motor, question.on),
    record: "not-known",
  };
  if (isOnRecord(old, motor)) {
    const contradicted =
      outcomes.mount === "rules-out" ||
      outcomes.shaft === "rules-out" ||
      outcomes["total-horsepower"] === "rules-out" ||
      outcomes.supply === "rules-out" ||
      outcomes.phase === "rules-out" ||
      outcomes.speed === "rules-out";
    outcomes.record = contradicted ? "rules-out" : "holds";
  }
  return outcomes;
}

export function oracleVerdict(outcomes: Outcomes): MotorVerdict {
  for (const rule in outcomes) if (outcomes[rule as RuleName] === "rules-out") return "no-fit";
  if (outcomes.mount === "not-known") return "undecided";
  if (outcomes.shaft === "not-known") return "undecided";
  if (outcomes["total-horsepower"] === "not-known") return "undecided";
  if (outcomes.supply === "not-known") return "undecided";
  if (outcomes.phase === "not-known") return "undecided";
  if (outcomes.speed === "not-known") return "undecided";
  for (const rule in outcomes) if (outcomes[rule as RuleName] === "needs-work") return "fits-with-work";
  return "drop-in";
}

export function oracleOverall(verdicts: readonly MotorVerdict[]): OverallVerdict {
  if (verdicts.includes("drop-in")) return "drop-in";
  if (verdicts.includes("undecided")) return "undecided";
  if (verdicts.includes("fits-with-work")) return "fits-with-work";
  return "none-fits";
}

// mount and shaft ------------------------------------------------------------------------------------------

function lettersOf(frame: string | undefined): string {
  return (frame ?? "").replace(/[0-9]/g, "");
}

function digitsOf(frame: string | undefined): string {
  return (frame ?? "").replace(/[^0-9]/g, "");
}

function faceOf(label: Nameplate): string | undefined {
  if (label.flange) return label.flange;
  switch (lettersOf(label.frame)) {
    case "Y":
    case "YZ":
      return "square";
    case "J":
    case "JZ":
    case "C":
    case "CZ":
    case "TC":
      return "round";
    default:
      return undefined;
  }
}

function shaftOf(label: Nameplate): string | undefined {
  if (label.shaft) return label.shaft;
  switch (lettersOf(label.frame)) {
    case "Y":
    case "J":
      return "threaded";
    case "C":
    case "TC":
      return "keyed";
    default: // a Z behind the letter says that the shaft is not the usual one
      return undefined;
  }
}

function mountOutcome(old: Nameplate, fresh: Nameplate): Outcome {
  const oldFace = faceOf(old);
  const freshFace = faceOf(fresh);
  if (!oldFace || !freshFace) return "not-known";
  if (oldFace !== freshFace) return "rules-out";
  const oldBody = digitsOf(old.frame);
  const freshBody = digitsOf(fresh.frame);
  if (oldBody === "" || freshBody === "") return "not-known";
  if (oldBody === freshBody) return "holds";
  const pair = [oldBody, freshBody].sort().join(" ");
  return pair === "48 56" ? "needs-work" : "not-known";
}

function shaftOutcome(old: Nameplate, fresh: Nameplate): Outcome {
  const oldShaft = shaftOf(old);
  const freshShaft = shaftOf(fresh);
  if (!oldShaft || !freshShaft) return "not-known";
  return oldShaft === freshShaft ? "holds" : "rules-out";
}

// total horsepower -----------------------------------------------------------------------------------------

function totalOf(label: Nameplate): number | undefined {
  if (label.totalHp !== undefined) return label.totalHp;
  let hp = label.hp;
  if (hp === undefined && label.kw !== undefined) hp = label.kw / 0.7457;
  if (hp === undefined || label.serviceFactor === undefined) return undefined;
  return hp * label.serviceFactor;
}

function totalHorsepowerOutcome(old: Nameplate, fresh: Nameplate): Outcome {
  const oldTotal = totalOf(old);
  const freshTotal = totalOf(fresh);
  if (oldTotal === undefined || freshTotal === undefined) return "not-known";
  const ratio = freshTotal / oldTotal;
  if (ratio < 0.98 - HAIR) return "rules-out";
  if (ratio > 1.1 + HAIR) return "needs-work";
  return "holds";
}

// supply, phase, frequency ---------------------------------------------------------------------------------

function phaseOf(label: Nameplate): number | undefined {
  if (label.phase !== undefined) return label.phase;
  for (const volts of label.volts ?? []) if (volts <= 127) return 1;
  return undefined;
}

function phaseOutcome(old: Nameplate, fresh: Nameplate): Outcome {
  const oldPhase = phaseOf(old);
  const freshPhase = phaseOf(fresh);
  if (oldPhase === undefined || freshPhase === undefined) return "not-known";
  return oldPhase === freshPhase ? "holds" : "rules-out";
}

function ratedFor(ratedVolts: readonly number[], wired: number): boolean {
  for (const rated of ratedVolts) {
    if (wired >= rated * 0.9 - HAIR && wired <= rated * 1.1 + HAIR) return true;
  }
  return false;
}

function onThisSupply(ratedVolts: readonly number[], wired: number): Outcome {
  if (!ratedFor(ratedVolts, wired)) return "rules-out";
  if (wired >= 198 && wired < 220) {
    return ratedVolts.includes(200) || ratedVolts.includes(208) ? "holds" : "needs-work";
  }
  return "holds";
}

function supplyOutcome(question: Question, fresh: Nameplate): Outcome {
  const { nameplate: old, site } = question;
  const ratedVolts = fresh.volts;
  if (!ratedVolts) return "not-known";
  if (site.supplyVolts !== undefined) return onThisSupply(ratedVolts, site.supplyVolts);

  const tried: Outcome[] = [];
  for (const wired of [120, 208, 240, 480]) {
    if (wired === 480 && phaseOf(old) === 1) continue;
    if (site.breakerPoles === 1 && wired !== 120) continue;
    if (site.breakerPoles === 2 && wired !== 208 && wired !== 240) continue;
    if (old.volts && !ratedFor(old.volts, wired)) continue;
    tried.push(onThisSupply(ratedVolts, wired));
  }
  const [first] = tried;
  if (first === undefined) return "not-known";
  return tried.every((outcome) => outcome === first) ? first : "not-known";
}

function frequencyOutcome(old: Nameplate, fresh: Nameplate): Outcome {
  const oldHz = old.hz ?? [60];
  const freshHz = fresh.hz ?? [60];
  let covered = 0;
  for (const hz of oldHz) if (freshHz.includes(hz)) covered += 1;
  if (covered === oldHz.length) return "holds";
  if (covered === 0) return "rules-out";
  return "not-known";
}

// speed ----------------------------------------------------------------------------------------------------

/** Poles whose field is as fast as the shaft or a little faster, at most a quarter. */
function polesAt(rpm: number, hz: number): { poles: number; slip: number } | undefined {
  for (const poles of [8, 6, 4, 2]) {
    const field = (120 * hz) / poles;
    if (field < rpm) continue;
    const slip = (field - rpm) / field;
    return slip <= 0.25 ? { poles, slip } : undefined;
  }
  return undefined;
}

function polesOf(label: Nameplate): number | undefined {
  if (!label.rpm) return undefined;
  return polesOfSpeed(Math.max(...label.rpm), label.hz);
}

function polesOfSpeed(rpm: number, statedHz: readonly number[] | undefined): number | undefined {
  const byLeastSlip = (frequencies: readonly number[]) => {
    let best: { poles: number; slip: number } | undefined;
    for (const hz of frequencies) {
      const found = polesAt(rpm, hz);
      if (found && (!best || found.slip < best.slip)) best = found;
    }
    return best;
  };
  // A label speed that its own frequency explains badly was meant for the other one.
  const own = byLeastSlip(statedHz ?? [60]);
  if (own && own.slip <= 0.1) return own.poles;
  const any = byLeastSlip([50, 60]);
  if (any && any.slip <= 0.1) return any.poles;
  return own?.poles;
}

function kindOf(label: Nameplate): string | undefined {
  if (label.speedKind) return label.speedKind;
  if (!label.rpm) return undefined;
  if (label.rpm.length === 1) return "single";
  if (label.rpm.length !== 2) return undefined;
  // 50/60 Hz with 2850/3450 rpm is one speed at two frequencies.
  const [rpmA = 0, rpmB = 0] = [...label.rpm].sort((a, b) => a - b);
  const [hzA, hzB] = [...(label.hz ?? [])].sort((a, b) => a - b);
  if (label.hz?.length === 2 && hzA !== undefined && hzB !== undefined && hzA !== hzB) {
    const poles = polesAt(rpmA, hzA);
    const polesToo = polesAt(rpmB, hzB);
    if (poles && polesToo && poles.slip <= 0.1 && polesToo.slip <= 0.1 && poles.poles === polesToo.poles) {
      return "single";
    }
  }
  return "two";
}

function speedOutcome(old: Nameplate, fresh: Nameplate): Outcome {
  const oldPoles = polesOf(old);
  const freshPoles = polesOf(fresh);
  if (oldPoles === undefined || freshPoles === undefined) return "not-known";
  if (oldPoles !== freshPoles) return "rules-out";
  const oldKind = kindOf(old);
  const freshKind = kindOf(fresh);
  if (oldKind === undefined || freshKind === undefined) return "not-known";
  return oldKind === freshKind ? "holds" : "needs-work";
}

// current, ambient -----------------------------------------------------------------------------------------

function ampsNearest(
  volts: readonly number[] | undefined,
  amps: readonly number[] | undefined,
  wired: number,
): number | undefined {
  if (!volts || !amps || volts.length !== amps.length) return undefined;
  let nearest = 0;
  for (let i = 1; i < volts.length; i++) {
    if (Math.abs(volts[i]! - wired) < Math.abs(volts[nearest]! - wired)) nearest = i;
  }
  return amps[nearest];
}

function currentOutcome(question: Question, fresh: Nameplate): Outcome {
  const wired = question.site.supplyVolts;
  if (wired === undefined) return "not-known";
  const old = question.nameplate;
  const pairs = [
    [ampsNearest(old.volts, old.amps, wired), ampsNearest(fresh.volts, fresh.amps, wired)],
    [
      ampsNearest(old.volts, old.serviceFactorAmps, wired),
      ampsNearest(fresh.volts, fresh.serviceFactorAmps, wired),
    ],
  ];
  let compared = false;
  for (const [oldAmps, freshAmps] of pairs) {
    if (oldAmps === undefined || freshAmps === undefined) continue;
    compared = true;
    if (freshAmps / oldAmps > 1.02 + HAIR) return "needs-work";
  }
  return compared ? "holds" : "not-known";
}

function ambientOutcome(old: Nameplate, fresh: Nameplate): Outcome {
  if (old.ambientC === undefined || fresh.ambientC === undefined) return "not-known";
  return fresh.ambientC < old.ambientC - HAIR ? "needs-work" : "holds";
}

// may be sold ----------------------------------------------------------------------------------------------

/** Day number, so that dates are compared as days and not as text. */
const dayOf = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

function saleOutcome(motor: StockMotor, on: string): Outcome {
  const total = totalOf(motor.label);
  if (total === undefined) return "not-known";
  if (total > 5 + HAIR) return "holds";

  let from: string;
  let enough: boolean | undefined;
  if (total < 0.5 - HAIR) {
    from = "2025-09-29";
    enough = motor.efficiencyPct === undefined ? undefined : motor.efficiencyPct >= 69;
  } else {
    from = total < 1.15 - HAIR ? "2027-09-28" : "2025-09-29";
    const kind = kindOf(motor.label);
    enough = kind === undefined ? undefined : kind === "variable";
  }
  if (enough) return "holds";
  if (motor.madeOn === undefined) return dayOf(on) > dayOf(from) ? "needs-work" : "holds";
  if (dayOf(motor.madeOn) < dayOf(from)) return "holds";
  if (phaseOf(motor.label) === 3) return "needs-work";
  return enough === undefined ? "not-known" : "rules-out";
}

// number on record -----------------------------------------------------------------------------------------

function isOnRecord(old: Nameplate, motor: StockMotor): boolean {
  const plain = (code: string) =>
    code
      .toUpperCase()
      .split(/[ \t-]/)
      .join("");
  for (const asked of old.modelNumbers ?? []) {
    for (const replaced of motor.replaces) {
      if (plain(asked) !== "" && plain(asked) === plain(replaced)) return true;
    }
  }
  return false;
}
