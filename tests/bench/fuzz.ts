import { fuzz } from "./fuzz-evening.ts";

// Made-up messages through the whole engine: npx tsx tests/bench/fuzz.ts [messages] [seed]
const count = Number(process.argv[2] ?? 100_000);
const seed = Number(process.argv[3] ?? 1);
const portion = 2500;

let faulty = 0;
const times: number[] = [];
for (let done = 0; done < count; done += portion) {
  const result = await fuzz(Math.min(portion, count - done), seed + done, { longest: 2000 });
  times.push(...result.times);
  faulty += result.faults.length;
  const heap = Math.round(process.memoryUsage().heapUsed / 1e6);
  process.stdout.write(
    `${done + result.messages} messages (${result.noise} of these ${result.messages} pure noise), ` +
      `${result.faults.length} faults, largest thread ${result.largestThread} characters, heap ${heap} MB\n`,
  );
  const shown = new Map(result.faults.map(({ what, text }) => [what.slice(0, 120), text]));
  for (const [what, text] of [...shown].slice(0, 20))
    process.stdout.write(`  ${what} <- ${JSON.stringify(text.slice(0, 200))}\n`);
}
times.sort((a, b) => a - b);
const at = (share: number) =>
  (times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0).toFixed(1);
process.stdout.write(
  `${count} messages, ${faulty} faults; handling p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, longest ${at(1)} ms\n`,
);
process.exitCode = faulty === 0 ? 0 : 1;
