import type { RatingName } from "../../nameplate/vocabulary.ts";
import type { Outlook } from "./outlook.ts";
import type { World } from "./worlds.ts";

/**
 * Tells whether a rating can matter: two of its possible values, all else equal, lead to different outcomes
 * (verdict and motors offered) once the ratings of some set have been told beside it. Tried are: nothing else
 * told, everything else told, and `together`, the ratings of the same message.
 */
export function materialIn(
  outlook: Outlook,
  worlds: readonly World[],
  together: readonly RatingName[],
): (rating: RatingName) => boolean {
  const outcomes = new Map<string, string>();
  const outcome = (states: readonly number[]) => {
    const key = states.join();
    const found = outcomes.get(key) ?? outlook.outcome(states);
    outcomes.set(key, found);
    return found;
  };
  const { parts } = outlook;
  const toldBits = (told: (rating: RatingName) => boolean) =>
    parts.map(({ ratings }) =>
      ratings.reduce((bits, rating, at) => (told(rating) ? bits | (1 << at) : bits), 0),
    );

  return (rating) => {
    const own = parts.findIndex(({ ratings }) => ratings.includes(rating));
    const part = parts[own];
    if (!part) return false;
    const contexts = [
      toldBits((name) => name === rating),
      toldBits(() => true),
      toldBits((name) => name === rating || together.includes(name)),
    ];
    return contexts.some((told) => {
      const others = part.ratings.filter((name, at) => name !== rating && (told[own] ?? 0) & (1 << at));
      return worlds.some(({ picks }) => {
        const here = part.possibilities[picks[own] ?? 0]?.values;
        const states = parts.map(({ states: of }, at) => of[picks[at] ?? 0]?.[told[at] ?? 0] ?? 0);
        const compared = new Set([states[own]]);
        return part.possibilities.some(({ values }, pick) => {
          const state = part.states[pick]?.[told[own] ?? 0] ?? 0;
          if (compared.has(state)) return false;
          if (others.some((name) => String(values[name]) !== String(here?.[name]))) return false;
          compared.add(state);
          return outcome(states.with(own, state)) !== outcome(states);
        });
      });
    });
  };
}
