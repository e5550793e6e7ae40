import { z } from "zod";
import { ConfigError, readConfig } from "../config.ts";
import { loadContent } from "../content.ts";
import { matchStock } from "../matching/match.ts";
import { planQuestions } from "../matching/plan.ts";
import { nameplateSchema, siteSchema } from "../nameplate/vocabulary.ts";
import { readMotorsFile } from "../stock-files.ts";
import { answerJsonLines, lineId } from "./json-lines.ts";
import { showMatch } from "./show-match.ts";

const lineSchema = z.object({
  id: lineId,
  nameplate: nameplateSchema.default({}),
  site: siteSchema.default({}),
});

export interface MatchOptions {
  readonly catalogue: string;
  readonly all?: boolean;
  readonly on?: string;
}

/** The `match` surface: nameplates in, verdicts on a stock out. */
export async function runMatch({ catalogue, all = false, on }: MatchOptions): Promise<void> {
  const day = z.iso.date().safeParse(on ?? new Date().toISOString().slice(0, 10));
  if (!day.success) throw new ConfigError(`--on takes a date like 2026-11-25, not "${on}".`);
  const { wording } = loadContent(readConfig().intentsFolder);
  const motors = readMotorsFile(catalogue);
  await answerJsonLines(lineSchema, ({ id, nameplate, site }) => {
    const question = { nameplate, site, on: day.data };
    const ask = planQuestions(question, motors, { unaskable: new Set() });
    return { id: id ?? null, ...showMatch(matchStock(question, motors, { all }), ask, wording) };
  });
}
