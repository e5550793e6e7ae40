import { z } from "zod";
import { plainText } from "./plain.ts";

const count = z.int().min(1).max(12);
const lengths = z
  .tuple([count, count])
  .refine(([least, most]) => least <= most, "the first must not be larger");

const word = z.string().regex(/^[A-Z0-9]{1,20}$/, "must be capitals and digits only");

const partSchema = z
  .strictObject({
    means: z.string().min(1),
    identifies: z.boolean(),
    optional: z.boolean().default(false),
    /** A word that stands before it and belongs to it. */
    mark: word.optional(),
    /** What may stand there: one of these words, or between so many and so many digits, letters, or either. */
    words: z.array(word).min(1).optional(),
    digits: lengths.optional(),
    letters: lengths.optional(),
    characters: lengths.optional(),
  })
  .refine(
    ({ words, digits, letters, characters }) =>
      [words, digits, letters, characters].filter(Boolean).length === 1,
    "needs exactly one of words, digits, letters, characters",
  );

type Part = z.infer<typeof partSchema>;

const formatSchema = z
  .strictObject({
    maker: z.string().min(1),
    name: z.string().min(1),
    kind: z.enum(["model", "serial", "date-code"]),
    means: z.string().min(1),
    parts: z.array(partSchema).min(1).max(8),
  })
  .refine(({ kind, parts }) => kind !== "model" || parts.some(({ identifies }) => identifies), {
    message: "a model number needs a part that identifies the motor",
  })
  // Bounds the ways a text can be shared out among the parts, and so the time of a comparison.
  .refine(({ parts }) => parts.reduce((ways, part) => ways * waysOf(part), 1) <= 1000, {
    message: "has too many parts of loose length; give narrower lengths",
  });

/** The file of number formats: maker by maker, what a number is made of and what of it identifies the motor. */
export const numberFormatsSchema = z.array(formatSchema);

/** One way a maker writes numbers. Parts stand without the spaces and hyphens between them. */
export type NumberFormat = z.infer<typeof formatSchema>;

/** One part of a number as typed (plain form), with what its format says of it. */
export interface ReadPart {
  readonly text: string;
  readonly means: string;
  readonly identifies: boolean;
}

/** A number taken apart by the format it follows. */
export interface FormattedNumber {
  readonly format: NumberFormat;
  readonly parts: readonly ReadPart[];
}

/** Takes a number apart by the first format it follows; undefined when it follows none. */
export type FormatReader = (number: string) => FormattedNumber | undefined;

/** Compiles formats into one reader. A look-alike letter typed in a run of digits does not hide the format. */
export function createFormatReader(formats: readonly NumberFormat[]): FormatReader {
  if (formats.length === 0) return () => undefined;
  const compiled = formats.map((format) => ({ format, pattern: patternOf(format) }));
  return (number) => {
    const plain = plainText(number);
    for (const { format, pattern } of compiled) {
      const match = pattern.exec(plain);
      if (match) return { format, parts: partsOf(format, match) };
    }
    return undefined;
  };
}

function patternOf({ parts }: NumberFormat): RegExp {
  const sources = parts.map((part) => `(${sourceOf(part)})${part.optional ? "?" : ""}`);
  return new RegExp(`^${sources.join("")}$`);
}

function sourceOf({ mark = "", words, digits, letters, characters }: Part): string {
  if (words) return `${mark}(?:${[...words].sort((a, b) => b.length - a.length).join("|")})`;
  if (digits) return `${mark}[0-9OILSBZG]{${digits[0]},${digits[1]}}`;
  if (letters) return `${mark}[A-Z]{${letters[0]},${letters[1]}}`;
  const [least, most] = characters ?? [1, 1];
  return `${mark}[A-Z0-9]{${least},${most}}`;
}

function waysOf({ words, digits, letters, characters, optional }: Part): number {
  const [least, most] = digits ?? letters ?? characters ?? [1, 1];
  return (words?.length ?? most - least + 1) + Number(optional ?? false);
}

function partsOf({ parts }: NumberFormat, match: RegExpExecArray): ReadPart[] {
  return parts.flatMap(({ means, identifies }, index) => {
    const text = match[index + 1] ?? "";
    return text === "" ? [] : [{ text, means, identifies }];
  });
}
