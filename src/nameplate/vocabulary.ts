import { z } from "zod";

/**
 * The one vocabulary of ratings. The zod schema, the JSON key, the reader's label words, the planner's
 * reading effort, the plausibility check and the lines shown to people are all derived from these entries.
 */
export interface RatingDefinition<Value> {
  /** What a tradesperson calls it, lower case, without its unit. */
  readonly title: string;
  /** Unit shown after the value; empty when the rating has none. */
  readonly unit: string;
  /** Canonical value; numbers are in `unit`. */
  readonly schema: z.ZodType<Value>;
  /** Values outside are kept as typed but doubted (each entry of a list is judged). */
  readonly plausible?: { readonly min: number; readonly max: number };
  /** Words that name it on a label or in a message, lower case, English and Spanish. */
  readonly words: readonly string[];
  /** Effort for a homeowner to read it off, 1 (a glance) to 5 (opens something); the planner's weight. */
  readonly effort: number;
}

const positive = z.number().positive();
const list = z.array(positive).min(1);

/** Ratings printed on the motor's own label. */
export const nameplateRatings = {
  hp: {
    title: "horsepower",
    unit: "hp",
    schema: positive,
    plausible: { min: 0.25, max: 5 },
    effort: 1,
    words: [
      "hp",
      "h.p.",
      "horsepower",
      "horse power",
      "horse",
      "horses",
      "caballos",
      "caballo",
      "caballos de fuerza",
    ],
  },
  serviceFactor: {
    title: "service factor",
    unit: "",
    schema: positive,
    plausible: { min: 1, max: 2 },
    effort: 2,
    words: [
      "sf",
      "s.f.",
      "s/f",
      "serv fact",
      "service factor",
      "serv. factor",
      "svc fctr",
      "factor de servicio",
    ],
  },
  totalHp: {
    title: "total horsepower",
    unit: "hp",
    schema: positive,
    plausible: { min: 0.25, max: 5.5 },
    effort: 2,
    words: ["thp", "sfhp", "total hp", "total horsepower", "sf hp"],
  },
  kw: {
    title: "output power",
    unit: "kW",
    schema: positive,
    plausible: { min: 0.15, max: 4 },
    effort: 2,
    words: ["kw", "kilowatt", "kilowatts"],
  },
  volts: {
    title: "volts",
    unit: "V",
    schema: list,
    plausible: { min: 100, max: 480 },
    effort: 1,
    words: ["v", "volt", "volts", "voltage", "vac", "voltios", "voltaje"],
  },
  amps: {
    title: "amps",
    unit: "A",
    schema: list,
    plausible: { min: 0.8, max: 40 },
    effort: 1,
    words: ["a", "amp", "amps", "amperes", "fla", "full load amps", "full load", "amperios", "amperaje"],
  },
  serviceFactorAmps: {
    title: "service-factor amps",
    unit: "A",
    schema: list,
    plausible: { min: 0.8, max: 45 },
    effort: 2,
    words: ["sfa", "sf amps", "s.f. amps", "max amps", "max. amps", "service factor amps", "max load amps"],
  },
  rpm: {
    title: "speed",
    unit: "rpm",
    schema: list,
    plausible: { min: 300, max: 3600 },
    effort: 1,
    words: ["rpm", "r.p.m.", "speed", "r/min", "rev/min", "revolutions", "revoluciones"],
  },
  hz: {
    title: "frequency",
    unit: "Hz",
    schema: list,
    plausible: { min: 50, max: 60 },
    effort: 1,
    words: ["hz", "hertz", "cycles", "cyc", "freq", "frequency", "ciclos"],
  },
  phase: {
    title: "phase",
    unit: "",
    schema: z.union([z.literal(1), z.literal(3)]),
    effort: 1,
    words: ["ph", "phase", "phases", "fase", "fases"],
  },
  frame: {
    title: "frame",
    unit: "",
    // A letter before the number is the maker's own.
    schema: z.string().regex(/^(?:[A-Z](?=[0-9]+[A-Z]))?[0-9]{2,3}[A-Z]{0,3}$/),
    effort: 1,
    words: ["fr", "frame", "frm", "armazon", "armazón", "marco"],
  },
  flange: {
    title: "mounting face",
    unit: "",
    schema: z.enum(["square", "round", "through-bolt"]),
    effort: 2,
    words: ["flange", "face", "mount", "brida"],
  },
  shaft: {
    title: "shaft end",
    unit: "",
    schema: z.enum(["threaded", "keyed"]),
    effort: 4,
    words: ["shaft", "eje", "flecha"],
  },
  speedKind: {
    title: "speeds",
    unit: "",
    schema: z.enum(["single", "two", "variable"]),
    effort: 1,
    words: ["speed", "speeds", "velocidad", "velocidades"],
  },
  ambientC: {
    title: "ambient temperature",
    unit: "°C",
    schema: z.number(),
    plausible: { min: 25, max: 65 },
    effort: 2,
    words: ["amb", "ambient", "max amb", "ambiente"],
  },
  duty: {
    title: "duty",
    unit: "",
    schema: z.union([z.literal("continuous"), positive]),
    effort: 2,
    words: ["duty", "time", "cont", "continuous", "servicio", "continuo"],
  },
  insulationClass: {
    title: "insulation class",
    unit: "",
    schema: z.string().regex(/^[A-Z]$/),
    effort: 2,
    words: ["ins", "insul", "insulation", "ins cl", "class", "clase", "aislamiento"],
  },
  kvaCode: {
    title: "kVA code",
    unit: "",
    schema: z.string().regex(/^[A-Z]$/),
    effort: 2,
    words: ["code", "kva code", "kva", "codigo", "código"],
  },
  capacitorUf: {
    title: "capacitor",
    unit: "µF",
    schema: positive,
    plausible: { min: 2, max: 1000 },
    effort: 5,
    words: ["cap", "capacitor", "mfd", "uf", "µf", "microfarad", "microfarads"],
  },
  modelNumbers: {
    title: "model or part number",
    unit: "",
    schema: z.array(z.string().min(1)).min(1),
    effort: 2,
    words: [
      "model",
      "mod",
      "part",
      "part no",
      "cat",
      "catalog",
      "catalogue",
      "type",
      "modelo",
      "parte",
      "tipo",
    ],
  },
  serialNumber: {
    title: "serial number",
    unit: "",
    schema: z.string().min(1),
    effort: 2,
    words: ["serial", "ser", "s/n", "sn", "serial no", "serie"],
  },
} as const satisfies Record<string, RatingDefinition<unknown>>;

/** Facts of the place, never to be mixed with the label. */
export const siteRatings = {
  supplyVolts: {
    title: "wired supply",
    unit: "V",
    schema: positive,
    plausible: { min: 100, max: 480 },
    effort: 3,
    words: ["supply", "wired for", "outlet", "running on"],
  },
  breakerAmps: {
    title: "breaker size",
    unit: "A",
    schema: positive,
    plausible: { min: 10, max: 100 },
    effort: 3,
    words: ["breaker", "fuse", "disyuntor", "pastilla"],
  },
  breakerPoles: {
    title: "breaker poles",
    unit: "",
    schema: z.union([z.literal(1), z.literal(2), z.literal(3)]),
    effort: 3,
    words: ["single pole", "double pole", "two pole", "2 pole", "three pole"],
  },
  pumpModel: {
    title: "pump model",
    unit: "",
    schema: z.string().min(1),
    effort: 3,
    words: ["pump model", "pump is a", "wet end"],
  },
  pricePerKwh: {
    title: "electricity price",
    unit: "$/kWh",
    schema: positive,
    plausible: { min: 0.03, max: 1.5 },
    effort: 4,
    words: ["cents", "per kwh", "a kwh", "centavos"],
  },
  hoursPerDay: {
    title: "hours a day",
    unit: "h",
    schema: positive,
    plausible: { min: 0.5, max: 24 },
    effort: 2,
    words: ["hours a day", "hours per day", "hrs/day", "horas al dia"],
  },
} as const satisfies Record<string, RatingDefinition<unknown>>;

export const ratings = { ...nameplateRatings, ...siteRatings };

export type NameplateRating = keyof typeof nameplateRatings;
export type SiteRating = keyof typeof siteRatings;
export type RatingName = keyof typeof ratings;

/** Canonical value of one rating. */
export type RatingValue<K extends RatingName> = z.infer<(typeof ratings)[K]["schema"]>;

/** Plain values of what a label states; a missing key is not stated. */
export type Nameplate = { [K in NameplateRating]?: RatingValue<K> | undefined };
/** Plain values of what is known of the place. */
export type Site = { [K in SiteRating]?: RatingValue<K> | undefined };

export const nameplateRatingNames = Object.keys(nameplateRatings) as NameplateRating[];
export const siteRatingNames = Object.keys(siteRatings) as SiteRating[];
export const ratingNames = [...nameplateRatingNames, ...siteRatingNames] as RatingName[];

/** True for a key of the vocabulary, wherever the string came from. */
export function isRatingName(key: string): key is RatingName {
  return Object.hasOwn(ratings, key);
}

/** True for a rating that stands on the motor's label (false: a fact of the site). */
export function isNameplateRating(key: string): key is NameplateRating {
  return Object.hasOwn(nameplateRatings, key);
}

const optionalShape = (definitions: Record<string, RatingDefinition<unknown>>) =>
  Object.fromEntries(Object.entries(definitions).map(([key, { schema }]) => [key, schema.optional()]));

/** Validates a nameplate from outside; unknown keys are refused by name. */
export const nameplateSchema = z.strictObject(
  optionalShape(nameplateRatings),
) as unknown as z.ZodType<Nameplate>;
/** Validates site facts from outside; unknown keys are refused by name. */
export const siteSchema = z.strictObject(optionalShape(siteRatings)) as unknown as z.ZodType<Site>;

/** A rating's value as people write it, with its unit: `115/230 V`, `1.5 hp`, `square`. */
export function showRating<K extends RatingName>(name: K, value: RatingValue<K>): string {
  const { unit } = ratings[name];
  const text = Array.isArray(value) ? value.join(name === "modelNumbers" ? ", " : "/") : String(value);
  if (name === "duty" && typeof value === "number") return `${text} min`;
  return unit ? `${text} ${unit}` : text;
}
