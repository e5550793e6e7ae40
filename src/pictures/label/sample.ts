import type { Nameplate, NameplateRating } from "../../nameplate/vocabulary.ts";

/**
 * The label in the pictures: nobody's. The figures are invented but agree with each other (total = hp x SF,
 * amps halve as volts double, slip of a 2-pole motor), so that the picture teaches nothing false.
 */
export const sampleLabel = {
  hp: 1.5,
  serviceFactor: 1.1,
  totalHp: 1.65,
  volts: [115, 230],
  amps: [16.4, 8.2],
  serviceFactorAmps: [18, 9],
  rpm: [3450],
  hz: [60],
  phase: 1,
  frame: "56Y",
  ambientC: 50,
  duty: "continuous",
  insulationClass: "B",
  kvaCode: "F",
  kw: 1.12,
  capacitorUf: 30,
  modelNumbers: ["TEASPOON-9"],
  serialNumber: "B 0042",
} as const satisfies Nameplate;

/** A rating that the drawn label shows. */
export type DrawnRating = keyof typeof sampleLabel;

/** One field of the label: the words printed beside the value, and the value as a label prints it. */
export interface Field {
  readonly rating: DrawnRating;
  readonly caption: string;
  readonly value: string;
  /** Columns it takes, of six. */
  readonly span: number;
}

const field = (rating: DrawnRating, caption: string, value: string, span = 2): Field => ({
  rating,
  caption,
  value,
  span,
});

/** Rows of the label, each six columns wide. Captions are those that labels print; they are not translated. */
export const sampleRows: readonly (readonly Field[])[] = [
  [field("hp", "HP", "1.5"), field("serviceFactor", "SF", "1.10"), field("totalHp", "THP", "1.65")],
  [
    field("volts", "VOLTS", "115/230"),
    field("amps", "AMPS", "16.4/8.2"),
    field("serviceFactorAmps", "MAX AMPS", "18.0/9.0"),
  ],
  [field("rpm", "RPM", "3450"), field("hz", "HZ", "60"), field("phase", "PH", "1")],
  [field("frame", "FR", "56Y"), field("ambientC", "AMB", "50 °C"), field("duty", "DUTY", "CONT")],
  [field("insulationClass", "INS CL", "B"), field("kvaCode", "CODE", "F"), field("kw", "kW", "1.12")],
  [
    field("modelNumbers", "MODEL", "TEASPOON-9", 2.7),
    field("serialNumber", "SER", "B 0042", 1.8),
    field("capacitorUf", "µF", "30", 1.5),
  ],
];

/** True for a rating that the drawn label shows. */
export function isDrawn(rating: string): rating is DrawnRating {
  return Object.hasOwn(sampleLabel, rating);
}

/** Every rating of the drawn label, in the order a reader meets them. */
export const drawnRatings: readonly DrawnRating[] = sampleRows.flat().map(({ rating }) => rating);

/** Where a rating that has no field of its own can be read off: two figures beside RPM mean two speeds. */
export const readFrom: { readonly [K in Exclude<NameplateRating, DrawnRating>]?: DrawnRating } = {
  speedKind: "rpm",
};
