import type { Claim } from "./candidate.ts";
import type { Context } from "./context.ts";
import { suits } from "./plausible.ts";
import { isMark, isWord, type Token } from "./token.ts";

const sources = [
  "pump",
  "motor",
  "disconnect",
  "bomba",
  "desconexion",
  "terminals",
  "slab",
  "pad",
  "house",
  "casa",
  "it",
  ...["box", "panel", "outlet", "wall", "plug", "receptacle", "breaker", "switch", "timer"],
  ...["caja", "tablero", "enchufe", "contacto", "pared", "toma", "tomacorriente"],
];
const arrives =
  /^(?:fed|feeds|feeding|supplying|supplies|powering|entering|gets|get|getting|reaching|reaches|arriving|arrives|coming|llega|llegan|llegando|alimenta|alimentan|alimentando|gives)$/;
const measures = /^(?:hots|legs|measured|measures|reporta|reports|midio|medi|leads)$/;
const ofLabel =
  /^(?:label|plate|nameplate|tag|sticker|placa|etiqueta|rated|says|dice|trae|stamped|hp|amps|or|want|wants)$/;

const siteWords =
  /^(?:breaker|breakers|circuit|pad|timer|panel|subpanel|outlet|disconnect|shed|wall|plug|receptacle|fuse|wire|wires|wiring|hookup|equipment|equipo|pole|polo|polos|pastilla|tablero|circuito|caja|contacto)$/;
const ownWords =
  /^(?:label|plate|nameplate|tag|sticker|placa|etiqueta|motor|hp|horse|rated|rating|stamped|says|reads|dice|amps|sf|frame|or|rpm|phase|heater|dryer|light|oven)$/;
/** Voltages houses have and labels seldom carry alone (common practice, no source). */
const houseVoltages = new Set([120, 208, 220, 240]);

const supplyAt = (at: number, value: number): Claim => ({
  rating: "supplyVolts",
  value,
  start: at,
  end: at + 1,
  score: 1,
});

/** "two pole 30 amp breaker feeding it, 240 volts", "got 240 out at the equipment pad": told with the circuit. */
export function withCircuit({ tokens, sentences }: Context): Claim[] {
  const found: Claim[] = [];
  for (const clauses of sentences) {
    const [start, end] = [clauses?.[0]?.start ?? 0, clauses?.at(-1)?.end ?? 0];
    if (clauses?.at(-1)?.closing === "?" || end - start > 40) continue;
    const at = voltageIn(tokens, start, end);
    const figure = at === undefined ? undefined : tokens[at];
    if (at === undefined || figure?.kind !== "number" || !houseVoltages.has(figure.value)) continue;
    const clause = clauses?.find((one) => one.start <= at && at < one.end);
    const own = tokens.slice(clause?.start ?? at, clause?.end ?? at);
    if (own.some((token) => token.kind === "word" && ownWords.test(token.norm))) continue;
    const near = tokens.slice(Math.max(start, at - 14), Math.min(end, at + 14));
    const words = near.filter((token) => token.kind === "word" && siteWords.test(token.norm));
    const named = isWord(tokens[at - 1], "volts", "v", "voltage", "voltios", "vac");
    if (words.length > 0 && !named) found.push(supplyAt(at, figure.value));
  }
  return found;
}

/**
 * "There's 120 volts at it", "my pump is fed 240", "le llegan 240 voltios", "236 volts between the two hots at the
 * pump": a single voltage that arrives somewhere or was measured there, told without a word of the label.
 */
export function arriving({ tokens, clauses }: Context): Claim[] {
  const found: Claim[] = [];
  for (const { start, end } of clauses) {
    const at = voltageIn(tokens, start, end);
    const figure = at === undefined ? undefined : tokens[at];
    if (at === undefined || figure?.kind !== "number") continue;
    const words = tokens.slice(start, Math.min(end, at + 12));
    if (isMetered(tokens, start, end)) {
      found.push(supplyAt(at, figure.value));
      continue;
    }
    // "my electrician says we have 208": a person says it, no label.
    const told = words.some(
      (token, i) =>
        token.kind === "word" &&
        ofLabel.test(token.norm) &&
        !(isWord(token, "says") && isPerson(words[i - 1])),
    );
    if (end - start > 24 || told) continue;
    const said = words.some(
      (token) => token.kind === "word" && (arrives.test(token.norm) || measures.test(token.norm)),
    );
    const unit = isWord(tokens[at + 1], "v", "volt", "volts", "voltios", "vac");
    const after = unit ? at + 2 : at + 1;
    const here =
      isWord(tokens[after], "here", "aqui", "aca") ||
      (isWord(tokens[after], "out") && isWord(tokens[after + 1], "here", "there"));
    if (here && (hasOnly(tokens, start, at) || ofHouse(tokens, start, at, after))) {
      found.push(supplyAt(at, figure.value));
      continue;
    }
    const placed = isPlaced(tokens, after, end);
    if (placed ? unit || said : isFed(tokens, start, at, after)) {
      found.push(supplyAt(at, figure.value));
    }
  }
  return found;
}

/** "we only have 115 here" */
function hasOnly(tokens: readonly Token[], start: number, at: number): boolean {
  const words = tokens.slice(Math.max(start, at - 5), at);
  const only = words.some((token) => isWord(token, "only", "just", "solo", "nomas"));
  return (
    only && words.some((token) => isWord(token, "have", "got", "ive", "weve", "tengo", "tenemos", "hay"))
  );
}

const isPerson = (token: Token | undefined) =>
  isWord(
    token,
    "electrician",
    "husband",
    "wife",
    "guy",
    "he",
    "she",
    "tech",
    "technician",
    "electricista",
    "they",
  );

/** "we have 208 volts here at the condo": voltages of houses that few labels name alone. */
function ofHouse(tokens: readonly Token[], start: number, at: number, after: number): boolean {
  const figure = tokens[at];
  const house = figure?.kind === "number" && houseVoltages.has(figure.value);
  const have = tokens
    .slice(Math.max(start, at - 4), at)
    .some((token) => isWord(token, "have", "got", "weve", "tenemos", "hay", "get"));
  return house && have && isWord(tokens[after + 1], "at", "in", "en");
}

const instruments = /^(?:multimeter|voltmeter|tester|meter|multimetro|voltimetro|probador|dmm)$/;
const notVolts =
  /^(?:label|plate|nameplate|tag|sticker|placa|etiqueta|rated|stamped|amps|amp|a|hp|rpm|ohms|clamp|motor|hz|uf|mfd)$/;

/** "wires say 240 with my tester", "the multimeter reads 238": told of nothing else. */
function isMetered(tokens: readonly Token[], start: number, end: number): boolean {
  const words = tokens.slice(start, Math.min(end, start + 16));
  return (
    words.some((token) => token.kind === "word" && instruments.test(token.norm)) &&
    !words.some((token, at) => token.kind === "word" && notVolts.test(token.norm) && !isArticle(words, at))
  );
}

/** "a" before a word is no unit. */
const isArticle = (words: readonly Token[], at: number) =>
  words[at]?.norm === "a" && words[at - 1]?.kind !== "number";

/** "at it", "at the pump's disconnect", "between the two hots", "there". */
function isPlaced(tokens: readonly Token[], from: number, end: number): boolean {
  if (isWord(tokens[from], "there", "alla", "ahi")) return true;
  if (!isWord(tokens[from], "at", "between", "en", "entre")) return false;
  return tokens
    .slice(from + 1, Math.min(end, from + 6))
    .some((token) => isWord(token, "hots", "legs", ...sources));
}

/** "my pump is fed 240", "power at that pump is 240", "240 volts is reaching it". */
function isFed(tokens: readonly Token[], start: number, at: number, after: number): boolean {
  const before = tokens.slice(start, at);
  const place = before.findIndex((token) => isWord(token, ...sources));
  const told = before.slice(0, place).some((token) => isWord(token, "power", "voltage", "voltaje"));
  if (place >= 0 && told && isWord(tokens[at - 1], "is", "es")) return true;
  const isVerb = (token: Token) => token.kind === "word" && arrives.test(token.norm);
  return (place >= 0 && before.slice(-2).some(isVerb)) || tokens.slice(after, after + 3).some(isVerb);
}

/** The token of the only voltage here that a house is wired for; undefined if there is none or a pair. */
export function voltageIn(tokens: readonly Token[], from: number, to: number): number | undefined {
  for (let at = from; at < to; at++) {
    const token = tokens[at];
    if (token?.kind !== "number" || suits("supplyVolts", token.value) < 2) continue;
    return isMark(tokens[at + 1], "/", "-") || isMark(tokens[at - 1], "/", "-") ? undefined : at;
  }
  return undefined;
}
