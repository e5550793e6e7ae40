/** A repeatable source of chance (mulberry32, public domain). */
export function chance(seed: number): { readonly below: (limit: number) => number } {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return { below: (limit) => Math.floor(next() * limit) };
}

/** One thing somebody does. */
export type Deed =
  | { readonly kind: "says"; readonly text: string }
  /** Rewrites the own message before. */
  | { readonly kind: "edits"; readonly text: string }
  | { readonly kind: "photo" }
  | { readonly kind: "album"; readonly count: number }
  | { readonly kind: "sticker" }
  /** Waits for the button, then presses it. */
  | { readonly kind: "presses"; readonly button: string };

const says = (text: string): Deed => ({ kind: "says", text });

/** What customers of an evening do, before anybody of the staff comes in. */
export const talks: readonly (readonly Deed[])[] = [
  [
    says("/start"),
    says("1 hp, SF 1.65, 230V"),
    says("frame 56Y, single phase, 3450 rpm, model QX-4471"),
    says("thanks!"),
  ],
  [
    says("hi"),
    says("1.5hp 115V 48Y"),
    { kind: "edits", text: "1.5hp 230V 48Y" },
    says("sf 1.1"),
    says("3450 rpm, single phase"),
  ],
  [
    says("my pump is dead"),
    { kind: "album", count: 3 },
    says("hp 2 sf 1.25 volts 230 56J"),
    says("what do you have so far?"),
  ],
  [
    says("there is smoke coming out of the motor"),
    says("what now?"),
    says("the power is off"),
    says("hp 1, 230V, 56Y"),
  ],
  [
    says("delete my data"),
    { kind: "presses", button: "No" },
    says("3/4 hp, 115V"),
    { kind: "sticker" },
    says("can't read the rest"),
  ],
  [
    says("I want to talk to a person"),
    { kind: "photo" },
    says("it says 1 horse and 56Y"),
    says("is anybody there?"),
  ],
  [
    says("1 hp"),
    says("start over"),
    says("2 hp, sf 1.3, 230V, 56J, 3450, 1 phase"),
    says("will it save money?"),
    says("/sofar"),
  ],
];

/** What staff do in the topic of a case, and what its customer says in between. */
export const deskTalk: readonly (readonly [who: "staff" | "customer", text: string])[] = [
  ["staff", "/take"],
  ["staff", "called before, friendly"],
  ["staff", "> hello, I am looking at it now"],
  ["customer", "great, it is the one by the fence"],
  ["staff", "/fix sf 1.5"],
  ["staff", "> is the face square?"],
  ["customer", "yes it is square"],
  ["staff", "/back"],
  ["customer", "frame 56Y"],
  ["staff", "/take"],
  ["staff", "/close answered"],
];
