import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import recognizers from "@microsoft/recognizers-text-number-with-unit";
import { bench, describe } from "vitest";
import { readMessage, valuesOf } from "../../src/nameplate/read.ts";

/**
 * Time against length for text made to be awkward, and a comparison with a general number-with-unit recogniser
 * on the one rating both can read. Run: npx vitest bench --run tests/bench/read.bench.ts
 */
const awkward: Record<string, string> = {
  "an ordinary message":
    "my neighbor has a 2 hp motor, mine says 1.5 hp 115/230 volts 19.2/9.6 amps, can't read the sf. ",
  "one run of digits": "1",
  "slashes without end": "1/",
  "names without values": "SF AMPS HP ",
  "values without names": "115 230 ",
  "nested brackets": "((((a1(",
  "corrections of corrections": "no wait 1.5 sorry not 2 ",
  "misspelled names": "volst 115, frme 56Y, ",
  "number words": "one point oh and a half ",
  "run-together labels": "HP1.5SF1.1V115/230A19.2/9.6",
  "question marks and dots": "?.?.",
};

describe.each([2_500, 5_000, 10_000, 20_000])("%d characters", (length) => {
  for (const [name, piece] of Object.entries(awkward)) {
    const text = piece.repeat(Math.ceil(length / piece.length)).slice(0, length);
    bench(name, () => void readMessage(text), { time: 200, warmupTime: 100 });
  }
});

interface Labelled {
  readonly id: string;
  readonly text: string;
  readonly nameplate: { readonly ambientC?: number };
}

/** The part of the corpus that is tuned on: the first byte of the id's hash is below 0x99. */
function corpus(): Labelled[] {
  const folder = new URL("../corpus/readings/", import.meta.url);
  return readdirSync(folder)
    .filter((file) => file.endsWith(".jsonl"))
    .flatMap((file) => readFileSync(new URL(file, folder), "utf8").split("\n"))
    .filter((line) => line.trim() !== "")
    .map((line) => JSON.parse(line) as Labelled)
    .filter(({ id }) => (createHash("sha256").update(id).digest()[0] ?? 0) < 0x99);
}

/** The recogniser's first temperature, in °C to one decimal. */
function recognised(text: string): number | undefined {
  const [first] = recognizers.recognizeTemperature(text, "en-us");
  const { value, unit } = first?.resolution ?? {};
  if (value === undefined) return undefined;
  return unit === "F" ? Number((((Number(value) - 32) * 5) / 9).toFixed(1)) : Number(value);
}

function measured(read: (text: string) => number | undefined): string {
  let [right, given, wanted] = [0, 0, 0];
  for (const { text, nameplate } of messages) {
    const value = read(text);
    if (value !== undefined) given += 1;
    if (nameplate.ambientC !== undefined) wanted += 1;
    if (value !== undefined && value === nameplate.ambientC) right += 1;
  }
  const share = (part: number, whole: number) => (whole === 0 ? "-" : (part / whole).toFixed(3));
  return `precision ${share(right, given)}, recall ${share(right, wanted)} (${wanted} messages state it)`;
}

const messages = corpus();
const ours = (text: string) => valuesOf(readMessage(text)).nameplate.ambientC;
console.log(
  [
    "Ambient temperature, the only rating the general recogniser has a unit for (of hp, kW, V, A, rpm, Hz it finds none):",
    `  reader:     ${measured(ours)}`,
    `  recogniser: ${measured(recognised)}`,
  ].join("\n"),
);

describe("one corpus message after another", () => {
  let next = 0;
  const message = () => messages[next++ % messages.length]?.text ?? "";
  bench("reader, every rating", () => void readMessage(message()), { time: 500 });
  bench("recogniser, temperatures only", () => void recognised(message()), { time: 500 });
});
