import type { RatingName } from "../vocabulary.ts";
import type { Standing } from "./candidate.ts";
import { type Context, cuesIn } from "./context.ts";
import type { Ordered } from "./ordered.ts";
import type { Owner } from "./owner.ts";
import { suits } from "./plausible.ts";
import { revalue } from "./revalue.ts";
import { isMark, isWord, type Token } from "./token.ts";
import { parseValue } from "./values.ts";

const papers = ["label", "plate", "nameplate", "placa", "tag", "sticker", "etiqueta", "motor", "mine"];
const saying = [
  "says",
  "is",
  "its",
  "reads",
  "claims",
  "gives",
  "lists",
  "shows",
  "dice",
  "es",
  "said",
  "has",
  ...["stamped", "rated", "marked", "labeled", "labelled", "printed", "marcado", "marca", "trae"],
];

/** What a label calls by the same unit. */
const kin: Partial<Record<RatingName, RatingName>> = { supplyVolts: "volts", breakerAmps: "amps" };

/** "My clamp says 7.3 amps but the plate says 9.6": the second figure is of the same kind as the first. */
export function contrasted(
  context: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  stated: Ordered<Standing>,
): Standing[] {
  const { tokens, clauses, clauseAt, sentenceAt } = context;
  const found: Standing[] = [];
  for (const claim of stated.all) {
    const owner = owners[claim.start];
    if (owner === "label" || (owner === "asked" && !lettered.has(claim.rating))) continue;
    const index = (clauseAt[claim.start] ?? 0) + 1;
    const next = clauses[index];
    if (!next) continue;
    const ofLabel = cuesIn(context, next.start, next.end, "home").length > 0;
    if (
      next.sentence !== sentenceAt[claim.start] &&
      !(ofLabel && next.sentence === (sentenceAt[claim.start] ?? 0) + 1)
    )
      continue;
    for (let at = next.start; at < next.end; at++) {
      // "class B vs class F? mine is B"
      if (
        lettered.has(claim.rating) &&
        ofLabel &&
        isLetter(tokens[at]) &&
        isWord(tokens[at - 1], ...saying)
      ) {
        const value = tokens[at]?.norm.toUpperCase();
        found.push({ ...claim, value, start: at, end: at + 1, from: at, to: at + 1 });
        break;
      }
      if (
        tokens[at]?.kind !== "number" ||
        explained[at] ||
        owners[at] !== "label" ||
        !isWord(tokens[at - 1], ...saying, "de", ...papers)
      )
        continue;
      const rating = ofLabel ? (kin[claim.rating] ?? claim.rating) : claim.rating;
      const value = revalue(tokens, at, { ...claim, rating });
      if (value) found.push(value);
      break;
    }
  }
  return found;
}

const lettered: ReadonlySet<RatingName> = new Set<RatingName>(["insulationClass", "kvaCode"]);

const isLetter = (token: Token | undefined) =>
  token?.kind === "word" && token.upper && /^[a-hj-z]$/.test(token.norm);

const reach = 24;

/** "He swears it's a 2 hp. The label says 1.5": a bare figure quoted from the label is of the kind spoken of. */
export function quoted(
  { tokens }: Context,
  owners: readonly Owner[],
  explained: readonly boolean[],
  stated: Ordered<Standing>,
): Standing[] {
  return tokens.flatMap((token, at): Standing[] => {
    if (token.kind !== "number" || explained[at] || owners[at] !== "label") return [];
    const after = isWord(tokens[at + 2], "the", "its", "my", "la") ? at + 3 : at + 2;
    // "the motor is marked 230"
    const last = isWord(tokens[at - 1], "at", "for", "as") || isMark(tokens[at - 1], ":") ? at - 2 : at - 1;
    let verb = last;
    while (verb > last - 2 && isWord(tokens[verb], ...saying)) verb -= 1;
    const ahead = (verb < last || isMark(tokens[at - 1], ":")) && isWord(tokens[verb], ...papers);
    const behind = isWord(tokens[at + 1], "on", "per", "en") && isWord(tokens[after], ...papers);
    if (!ahead && !behind) return [];
    const [before] = stated.before(at, 1);
    if (before && at - before.end < reach && owners[before.start] !== "asked") {
      const rating = kin[before.rating] ?? before.rating;
      const again = revalue(tokens, at, { ...before, rating });
      if (again) return [again];
    }
    if (suits("volts", token.value) < 2) return [];
    const volts = parseValue("volts", tokens, at).at(-1);
    const next = volts ? tokens[volts.end] : undefined;
    const alone =
      next === undefined ||
      next.kind === "break" ||
      next.kind === "mark" ||
      isWord(next, "and", "y", "so", "but");
    if (!volts || !alone) return [];
    return [
      { rating: "volts", value: volts.value, start: at, end: volts.end, from: at, to: volts.end, score: 1 },
    ];
  });
}
