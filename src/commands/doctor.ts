import { readConfig } from "../config.ts";
import { examine } from "../ops/doctor.ts";

const marks = { good: "ok    ", note: "note  ", bad: "WRONG " } as const;

/** Looks at configuration, files, store and reachability; exit status 1 when something is wrong. */
export async function runDoctor({ store }: { readonly store?: string }): Promise<void> {
  const config = readConfig();
  const findings = await examine({ ...config, storeFile: store ?? config.storeFile });
  for (const { state, about, text } of findings)
    process.stdout.write(`${marks[state]}${about}: ${text.replaceAll("\n", "\n      ")}\n`);
  const wrong = findings.filter(({ state }) => state === "bad").length;
  process.stdout.write(
    wrong === 0 ? "Nothing is wrong.\n" : `${wrong} of ${findings.length} need mending.\n`,
  );
  if (wrong > 0) process.exitCode = 1;
}
