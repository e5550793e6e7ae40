import type { Labelled } from "./messages.ts";

const joints = [". ", "\n", "! ", ", ", " ", ". also ", "... ", ". Anyway "];

/**
 * Pairs of messages told in one breath: a danger stays one beside anything harmless, and two harmless messages make
 * no danger. Teaches the views not to drown a danger in other matters. The same pairs on every run.
 */
export function compose(messages: readonly Labelled[], weight: number): readonly Labelled[] {
  const short = messages.filter(({ text }) => text.length < 160);
  const harmless = short.filter(({ hazard }) => hazard === null);
  if (harmless.length === 0) return [];
  return short.map((first, i) => {
    // A stride prime to the count visits every harmless message before it repeats one.
    const second = harmless[(i * 1_009 + 7) % harmless.length] ?? first;
    const joint = joints[i % joints.length] ?? " ";
    const text = i % 2 === 0 ? first.text + joint + second.text : second.text + joint + first.text;
    return { id: `${first.id}+${second.id}`, source: "composed", text, hazard: first.hazard, weight };
  });
}
