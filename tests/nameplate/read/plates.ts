import fc from "fast-check";
import type { Nameplate } from "../../../src/nameplate/vocabulary.ts";

/** Labels a pool motor could carry. */
const drawn = fc
  .record(
    {
      hp: fc.constantFrom(0.5, 0.75, 1, 1.5, 2, 2.5, 3),
      serviceFactor: fc.constantFrom(1.04, 1.1, 1.15, 1.25, 1.27, 1.4, 1.47, 1.65),
      totalHp: fc.constantFrom(0.95, 1.25, 1.65, 2.2, 2.6),
      volts: fc.constantFrom([115], [230], [115, 230], [208, 230], [115, 208, 230]),
      amps: fc.constantFrom([9.6], [19.2, 9.6], [14.8, 7.4], [10.2, 9.4], [8.8]),
      serviceFactorAmps: fc.constantFrom([11.2], [21.6, 10.8], [12.4]),
      rpm: fc.constantFrom([3450], [3450, 1725], [1725], [2850]),
      hz: fc.constantFrom([60], [50]),
      phase: fc.constantFrom(1 as const, 3 as const),
      frame: fc.constantFrom("48Y", "56Y", "56J", "56C", "48Z"),
      ambientC: fc.constantFrom(40, 50),
      insulationClass: fc.constantFrom("B", "F", "H"),
      kvaCode: fc.constantFrom("H", "K", "L"),
      duty: fc.constantFrom("continuous" as const, 30, 60),
      modelNumbers: fc.constantFrom(["QX-7714"], ["TR115-56Y"], ["K2230B"]),
      serialNumber: fc.constantFrom("22-40318", "A9917"),
    },
    { requiredKeys: [] },
  )
  .filter((plate) => Object.keys(plate).length > 0);
/** Plain objects, as the reader gives them. */
export const nameplates: fc.Arbitrary<Nameplate> = drawn.map(
  (plate) => structuredClone(plate) as unknown as Nameplate,
);

const names: Record<string, readonly string[]> = {
  hp: ["HP", "Horsepower", "H.P."],
  serviceFactor: ["SF", "Service Factor", "S.F.", "Serv. Fact."],
  totalHp: ["THP", "Total HP", "SFHP"],
  volts: ["V", "Volts", "Voltage"],
  amps: ["A", "Amps", "FLA"],
  serviceFactorAmps: ["SFA", "SF Amps", "Max Amps"],
  rpm: ["RPM", "R.P.M."],
  hz: ["Hz", "Cycles", "Freq"],
  phase: ["PH", "Phase"],
  frame: ["FR", "Frame", "Frm"],
  ambientC: ["Amb", "Max Amb", "Ambient"],
  insulationClass: ["Ins Cl", "Insulation Class", "INS"],
  kvaCode: ["Code", "kVA Code"],
  duty: ["Duty", "Time"],
  modelNumbers: ["Model", "Mod.", "Part No.", "Cat #"],
  serialNumber: ["Serial", "S/N", "Ser. No."],
};

/** Ways to write one value; every one of them must read back to the same value. */
function written(rating: string, value: unknown): string[] {
  if (rating === "ambientC") return [`${value}C`, `${value} C`, `${value}°C`];
  if (rating === "duty")
    return value === "continuous" ? ["CONT", "Continuous"] : [`${value} MIN`, `${value} min`];
  if (rating === "frame")
    return [String(value), String(value).replace(/(\D)/, "-$1"), String(value).replace(/(\D)/, " $1")];
  if (rating === "rpm")
    return [
      (value as number[]).join("/"),
      (value as number[]).map((n) => n.toLocaleString("en-US")).join("/"),
    ];
  if (Array.isArray(value))
    return rating === "modelNumbers"
      ? [value.join(" ")]
      : [value.map(tidy).join("/"), value.map(tidy).join(" / ")];
  if (rating === "hp") return [tidy(value as number), ...fraction(value as number)];
  return [typeof value === "number" ? tidy(value) : String(value)];
}

const tidy = (value: number) => String(value);

function fraction(value: number): string[] {
  const whole = Math.floor(value);
  const part = { 0.5: ["1/2", "½"], 0.75: ["3/4", "¾"] }[value - whole] ?? [];
  return part.flatMap((text) => (whole === 0 ? [text] : [`${whole}-${text}`, `${whole} ${text}`]));
}

/** Short names for labels typed without a space between a value and the next name. */
const glued: Record<string, readonly string[]> = {
  hp: ["HP"],
  serviceFactor: ["SF"],
  totalHp: ["THP"],
  volts: ["V"],
  amps: ["A"],
  serviceFactorAmps: ["SFA"],
  rpm: ["RPM"],
  hz: ["HZ"],
  phase: ["PH"],
  frame: ["FR"],
};
/** What people put after a figure. */
const after: Record<string, readonly string[]> = {
  hp: ["HP", " hp", " horsepower", " horse"],
  serviceFactor: [" SF", " service factor"],
  totalHp: [" THP", " total hp"],
  volts: ["V", " volts", " V"],
  amps: ["A", " amps", " FLA"],
  serviceFactorAmps: [" SFA", " max amps", " SF amps"],
  rpm: ["RPM", " rpm"],
  hz: ["Hz", " hertz", " cycle"],
  phase: ["PH", " phase"],
  frame: [" frame", ""],
};

type Layout =
  | "pairs"
  | "lines"
  | "alternating lines"
  | "columns"
  | "run together"
  | "value first"
  | "sentence";

/** A label written out: order, separators, units and case as drawn. */
export function rendering(plate: Nameplate): fc.Arbitrary<string> {
  const ratings = Object.keys(plate);
  return fc
    .record({
      order: fc.shuffledSubarray(ratings, { minLength: ratings.length, maxLength: ratings.length }),
      name: fc.nat(11),
      way: fc.nat(11),
      link: fc.constantFrom(": ", " ", "=", " - ", ":"),
      gap: fc.constantFrom(", ", "; ", "  ", " | ", " / "),
      layout: fc.constantFrom<Layout>(
        "pairs",
        "lines",
        "alternating lines",
        "columns",
        "run together",
        "value first",
        "sentence",
      ),
      letters: fc.constantFrom("as is", "upper", "lower"),
    })
    .map(({ order, name, way, link, gap, layout, letters }) => {
      const cells = order.map((rating, index) => {
        const [labels, values] = [names[rating] ?? [], written(rating, plate[rating as keyof Nameplate])];
        return {
          label: labels[(name + index) % labels.length] ?? "",
          value: values[(way + index) % values.length] ?? "",
        };
      });
      // In columns a cell is one word wide, or the columns could not be told apart.
      const narrow = order.map((rating) => ({
        label: names[rating]?.find((label) => !label.includes(" ")) ?? "",
        value: written(rating, plate[rating as keyof Nameplate])[0]?.replace(/ /g, "") ?? "",
      }));
      const short = order.filter((rating) => glued[rating]);
      const rest = cells.filter((_, index) => !glued[order[index] ?? ""]);
      const plain = (rating: string) => written(rating, plate[rating as keyof Nameplate])[0] ?? "";
      const tail = rest.map(({ label, value }) => `${label} ${value}`).join(", ");
      const text = {
        "run together": () =>
          `${short.map((rating) => `${glued[rating]?.[0]}${plain(rating)}`).join("")} ${tail}`,
        "value first": () => {
          const units = short.map(
            (rating, index) => `${plain(rating)}${after[rating]?.[(name + index) % after[rating].length]}`,
          );
          return [...units, ...rest.map(({ label, value }) => `${label} ${value}`)].join(gap);
        },
        sentence: () =>
          `Hi there, ${cells.map(({ label, value }) => `the ${label} is ${value}`).join(" and ")}. Thanks`,
        pairs: () => cells.map(({ label, value }) => `${label}${link}${value}`).join(gap),
        lines: () => cells.map(({ label, value }) => `${label}${link}${value}`).join("\n"),
        "alternating lines": () => cells.map(({ label, value }) => `${label}\n${value}`).join("\n"),
        columns: () =>
          `${narrow.map(({ label }) => label).join("\t")}\n${narrow.map(({ value }) => value).join("\t")}`,
      }[layout]();
      if (letters === "upper") return text.toUpperCase();
      // A serial number is kept as typed, so it cannot be asked back from lower case.
      return letters === "lower" && !plate.serialNumber ? text.toLowerCase() : text;
    });
}

/** Sentences with figures that are no ratings of this motor. */
export const distractors: readonly string[] = [
  "My phone is 555-0142.",
  "The pool holds 20,000 gallons.",
  "The gauge reads 18 psi.",
  "My clamp meter shows 11.3 amps.",
  "My neighbor has a 2 hp 48Y motor on 230 volts.",
  "It was put in around 2011.",
  "I paid $230 for the last one.",
  "The impeller is stamped 1.5 HP.",
  "What does a service factor of 1.25 mean?",
  "I would like a 3 hp motor next time.",
  "Call me after 5:30 pm.",
  "Es 56C lo mismo que 48C?",
];
