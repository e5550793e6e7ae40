import { readConfig } from "../config.ts";
import { loadContent } from "../content.ts";
import { guidePage } from "../pictures/guide-page.ts";

/** Prints the label guide, one HTML page, to stdout. */
export async function runGuide(): Promise<void> {
  process.stdout.write(guidePage(loadContent(readConfig().intentsFolder).wording));
}
