import { readFileSync, rmSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";
import type { TestProject } from "vitest/node";

// The suite starts the program some hundred times. Compiled once into a file each, it starts in half the time.

const project = (path: string) => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** Each run has a folder of its own, handed to its workers: two runs at once must not exchange programs. */
const folder = process.env["TEST_PROGRAMS"] ?? project(`node_modules/.cache/programs-${process.pid}`);
process.env["TEST_PROGRAMS"] = folder;

/** The programs that tests run in processes of their own. */
export const programs = {
  /** The command line. */
  cli: `${folder}/cli.mjs`,
  /** A desk on the Bot API stand-in, for tests that kill it. */
  deskProcess: `${folder}/desk-process.mjs`,
} as const;

/** Compiles the programs. A file still finds what lies beside its source. */
export async function compilePrograms(): Promise<void> {
  await build({
    entryPoints: {
      cli: project("src/cli.ts"),
      "desk-process": project("tests/channels/telegram/kill/desk-process.ts"),
    },
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    splitting: true,
    platform: "node",
    format: "esm",
    plugins: [sourcePlaces],
    // Compiled code, files and worker threads of their own, which a bundle cannot hold.
    external: ["better-sqlite3", "@resvg/resvg-js", "dejavu-fonts-ttf", "pino"],
    banner: {
      js: 'import{createRequire as requireBeside}from"node:module";const require=requireBeside(import.meta.url);',
    },
  });
}

/** Puts the place of the source where it asks for its own. */
const sourcePlaces: Plugin = {
  name: "source-places",
  setup: ({ onLoad }) =>
    onLoad({ filter: /\.ts$/ }, ({ path }) => ({
      contents: readFileSync(path, "utf8").replaceAll(
        "import.meta.url",
        JSON.stringify(pathToFileURL(path).href),
      ),
      loader: "ts",
    })),
};

export function removePrograms(): void {
  rmSync(folder, { recursive: true, force: true });
}

/** Before the first test, and again before those that a change starts anew; gives what to do after the last. */
export default async function setup(run: TestProject): Promise<() => void> {
  // A source that cannot be compiled fails the tests that start it, not all of them; esbuild has said why.
  const compile = () => compilePrograms().catch(removePrograms);
  await compile();
  run.onTestsRerun(compile);
  return removePrograms;
}
