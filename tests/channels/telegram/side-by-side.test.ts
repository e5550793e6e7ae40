import { expect, test } from "vitest";
import { SideBySide } from "../../../src/channels/telegram/side-by-side.ts";
import { gate } from "./stand-in/world.ts";

const turn = () => new Promise<void>((resolve) => setImmediate(resolve));

test("one key is worked on by one worker at a time, and again when it was woken meanwhile", async () => {
  const said: string[] = [];
  const first = gate();
  const work = new SideBySide(4, async (key) => {
    said.push(`${key} begins`);
    if (said.length === 1) await first.opened;
    said.push(`${key} ends`);
  });
  work.wake("a");
  await turn();
  work.wake("a");
  work.wake("a");
  await turn();
  expect(said).toEqual(["a begins"]);
  first.open();
  await work.stop();
  expect(said.slice(0, 2)).toEqual(["a begins", "a ends"]);
});

test("no more keys than the limit at once; the others follow in the order they were woken", async () => {
  const begun: string[] = [];
  const gates = new Map(["a", "b", "c", "d"].map((key) => [key, gate()]));
  const work = new SideBySide(2, async (key) => {
    begun.push(key);
    await gates.get(key)?.opened;
  });
  for (const key of gates.keys()) work.wake(key);
  await turn();
  expect(begun).toEqual(["a", "b"]);
  gates.get("b")?.open();
  await turn();
  expect(begun).toEqual(["a", "b", "c"]);
  for (const { open } of gates.values()) open();
  await turn();
  await turn();
  expect(begun).toEqual(["a", "b", "c", "d"]);
  await work.stop();
});

test("after a stop what is under way is waited for and nothing new begins", async () => {
  const begun: string[] = [];
  const held = gate();
  const work = new SideBySide(1, async (key) => {
    begun.push(key);
    await held.opened;
  });
  work.wake("a");
  work.wake("b");
  await turn();
  let stopped = false;
  const stopping = work.stop().then(() => {
    stopped = true;
  });
  await turn();
  expect(stopped).toBe(false);
  held.open();
  await stopping;
  work.wake("c");
  await turn();
  expect(begun).toEqual(["a"]);
});
