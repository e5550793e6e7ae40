import type { Finding, JudgedMotor, MotorVerdict, Outcome, RuleName } from "./types.ts";

/** The outcome that carries each verdict. */
const carriedBy: Readonly<Record<MotorVerdict, Outcome>> = {
  "drop-in": "holds",
  "fits-with-work": "needs-work",
  undecided: "not-known",
  "no-fit": "rules-out",
};

/** Which reason says most to a customer: what can never be changed before what an adjustment could reach. */
const mostTelling: Readonly<Record<MotorVerdict, readonly RuleName[]>> = {
  "drop-in": ["total-horsepower"],
  "fits-with-work": ["total-horsepower", "speed", "mount", "supply", "current", "ambient", "sale"],
  undecided: ["mount", "shaft", "total-horsepower", "supply", "speed", "phase"],
  // A contradicted record is for the desk: the rating that contradicts it is what the customer hears.
  "no-fit": [
    "phase",
    "mount",
    "shaft",
    "speed",
    "supply",
    "frequency",
    "total-horsepower",
    "duty",
    "sale",
    "record",
  ],
};

/**
 * The one finding that says why a motor got its verdict. Of several unknowns it is the one the customer can
 * settle, before one that only the desk can look up.
 */
export function decisiveFinding({ verdict, findings }: JudgedMotor): Finding | undefined {
  const carrying = mostTelling[verdict].flatMap((name) =>
    findings.filter(({ rule, outcome }) => rule === name && outcome === carriedBy[verdict]),
  );
  return carrying.find(({ needs }) => needs.length > 0) ?? carrying[0];
}
