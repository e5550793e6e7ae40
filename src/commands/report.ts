import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { ConfigError, readConfig } from "../config.ts";
import { ContentError, readJson } from "../content.ts";
import { deskHoursSchema } from "../desk/hours.ts";
import { renderPng } from "../pictures/render.ts";
import { gather } from "../report/gather.ts";
import { reportPicture } from "../report/picture.ts";
import { requestColumns, requestRows } from "../report/rows.ts";
import { summaryOf } from "../report/summary.ts";
import { reportText } from "../report/text.ts";
import { csvOf } from "./csv.ts";
import { withStore } from "./with-store.ts";

export interface ReportOptions {
  readonly days?: string;
  readonly csv?: boolean;
  readonly svg?: string;
  readonly png?: string;
  readonly store?: string;
}

const PNG_WIDTH_PX = 2000;

/** What was asked for and not found, where the desk overruled the rules, and how long people waited. */
export function runReport({ days = "30", csv = false, svg, png, store: file }: ReportOptions): Promise<void> {
  if (!/^[1-9]\d{0,3}$/.test(days))
    throw new ConfigError(`--days takes a whole number of days, 1 to 9999, not "${days}".`);
  const hours = readJson(join(readConfig().dataFolder, "desk-hours.json"), deskHoursSchema);
  return withStore(file, async (store) => {
    const data = await gather(store, hours, Number(days), new Date().toISOString());
    const summary = summaryOf(data);
    if (svg !== undefined) save(svg, reportPicture(summary).svg);
    if (png !== undefined) save(png, renderPng(reportPicture(summary), PNG_WIDTH_PX));
    if (csv) process.stdout.write(csvOf(requestColumns, requestRows(data)));
    else if (svg === undefined && png === undefined) process.stdout.write(reportText(summary));
  });
}

function save(file: string, content: string | Buffer): void {
  try {
    writeFileSync(file, content);
  } catch (cause) {
    throw new ContentError(`${file}: this file cannot be written. Check the folder and its permissions.`, {
      cause,
    });
  }
  process.stderr.write(`Written: ${file}\n`);
}
