import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { programs } from "../programs.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
  /** stdout as JSON lines. */
  readonly lines: readonly Record<string, unknown>[];
}

/** Runs the command line as a user would, in a process of its own. */
export function nameplate(
  args: readonly string[],
  input = "",
  environment: Record<string, string> = {},
): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [programs.cli, ...args], {
    cwd: root,
    input,
    encoding: "utf8",
    env: { ...process.env, ...environment },
  });
  return {
    status,
    stdout,
    stderr,
    get lines() {
      return stdout
        .split("\n")
        .filter((line) => line !== "")
        .map((line) => JSON.parse(line) as Record<string, unknown>);
    },
  };
}

export const jsonLines = (...values: readonly unknown[]): string =>
  values.map((value) => `${JSON.stringify(value)}\n`).join("");
