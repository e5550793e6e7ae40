import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { motorSheet } from "../../src/catalogue/motors-csv.ts";
import type { StockMotor } from "../../src/matching/types.ts";
import { readMotorsFile } from "../../src/stock-files.ts";
import { openSqliteStore } from "../../src/store/sqlite.ts";

// Imports a large stock as a user would and measures time, memory and how long a running desk waits for the store:
// npx tsx tests/bench/import-report.ts [rows]
const rows = Number(process.argv[2] ?? 100_000);
const root = fileURLToPath(new URL("../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "import-"));
const storeFile = join(folder, "desk.sqlite");
const demo = readMotorsFile(join(root, "data/motors.csv"));

/** A motor of the demo, with currents and a price of its own. */
function variant(place: number, dearer: number): StockMotor {
  const motor = demo[place % demo.length] as StockMotor;
  const factor = 1 + ((place * 7919) % 61) / 2000;
  const vary = (amps: readonly number[]) => amps.map((one) => Math.round(one * factor * 100) / 100);
  const { label } = motor;
  return {
    ...motor,
    sku: `${motor.sku}-${place}`,
    priceUsd: 150 + ((place * 31) % 4000) / 10 + dearer,
    label: {
      ...label,
      ...(label.amps ? { amps: vary(label.amps) } : {}),
      ...(label.serviceFactorAmps ? { serviceFactorAmps: vary(label.serviceFactorAmps) } : {}),
    },
  };
}

function sheet(name: string, change: (place: number) => number): string {
  const file = join(folder, name);
  const lines = Array.from({ length: rows }, (_, place) => motorSheet.line(variant(place, change(place))));
  writeFileSync(file, [motorSheet.header, ...lines].join(""));
  return file;
}

const tellMemory =
  "data:text/javascript,process.on('exit',()=>{const u=process.resourceUsage();process.stderr.write('maxRSS '+u.maxRSS+' cpu '+(u.userCPUTime+u.systemCPUTime))})";

async function measured(what: string, ...args: readonly string[]): Promise<void> {
  const desk = openSqliteStore(storeFile);
  let longest = 0;
  let count = 0;
  const began = performance.now();
  const child = spawn(
    process.execPath,
    ["--import", "tsx", "--import", tellMemory, "src/cli.ts", ...args, "--store", storeFile],
    {
      cwd: root,
      stdio: ["ignore", "ignore", "pipe"],
    },
  );
  let said = "";
  child.stderr.on("data", (chunk: Buffer) => {
    said += chunk.toString();
  });
  const ended = new Promise<number | null>((resolve) => child.once("exit", resolve));
  let running = true;
  void ended.then(() => {
    running = false;
  });
  while (running) {
    const asked = performance.now();
    await desk.receive({
      id: `${what} ${count++}`,
      threadId: "ana",
      text: "56Y",
      at: new Date().toISOString(),
    });
    longest = Math.max(longest, performance.now() - asked);
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  const status = await ended;
  const seconds = (performance.now() - began) / 1000;
  await desk.close();
  const megabytes = Number(/maxRSS (\d+)/.exec(said)?.[1]) / 1024;
  const cpu = Number(/cpu (\d+)/.exec(said)?.[1]) / 1e6;
  process.stdout.write(
    `${what}: ${seconds.toFixed(1)} s (${cpu.toFixed(1)} s of processor time), ${Math.round(megabytes)} MB at most; a message to the desk waited ${Math.round(longest)} ms at most${status === 0 ? "" : `; FAILED: ${said}`}\n`,
  );
}

const first = sheet("first.csv", () => 0);
const second = sheet("second.csv", (place) => (place % 10 === 0 ? 5 : 0));
process.stdout.write(`${rows} rows, ${Math.round(statSync(first).size / 1e6)} MB\n`);
await measured("dry run on an empty store", "import", first);
await measured("import into an empty store", "import", first, "--write");
await measured("dry run of a sheet with a tenth changed", "import", second);
await measured("import of a sheet with a tenth changed", "import", second, "--write");
await measured("undo", "import", "--undo");
await measured("export", "export");
process.stdout.write(`the store is ${Math.round(statSync(storeFile).size / 1e6)} MB\n`);
rmSync(folder, { recursive: true, force: true });
