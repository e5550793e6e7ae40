import type { Homeowner } from "./homeowner.ts";

/** Twenty-five evenings: invented people, labels that the demo stock's kinds of motor could carry. */
export const homeowners: readonly Homeowner[] = [
  {
    who: "reads nearly everything at once",
    first: "its a 1 1/2 horse, sf 1.1, 115/230 v 19.2/9.6 amps, frame 56y",
    finds: { rpm: "3450 rpm" },
    ends: "drop-in",
  },
  {
    who: "tired, at 23:40",
    first: "its a 1 1/2 horse 230v 56y i think, cant read the sf",
    finds: { rpm: "3450", phase: "phase 1", totalHp: "it says thp 1.65" },
    ends: "drop-in",
  },
  {
    who: "copies the label line by line",
    first: "HP 1\nSF 1.65\nVOLTS 115/230\nMAX AMPS 20.6/10.3\nRPM 3450\nFR 56J\nPH 1\nHZ 60",
    finds: {},
    ends: "drop-in",
  },
  {
    who: "answers one thing at a time",
    first: "frame 56Y",
    finds: {
      hp: "hp is 1",
      serviceFactor: "sf 1.65",
      rpm: "rpm 3450",
      volts: "115/230 volts",
      phase: "ph 1",
    },
    ends: "drop-in",
  },
  {
    who: "has a decimal slip",
    first: "HP 15 SF 1.1 VOLTS 115/230 AMPS 19.2/9.6 FR 56Y RPM 3450",
    finds: {},
    ends: "drop-in",
  },
  {
    who: "writes Spanish",
    first: "es de uno y medio caballos, 230 voltios, armazon 56Y, factor de servicio 1.1, 3450 rpm",
    finds: { phase: "monofasico" },
    ends: "drop-in",
  },
  {
    who: "has a two-speed",
    first: "two speed motor 3450/1725 rpm, 1.5 hp, sf 1.1, 230 volts, 56Y, single phase",
    finds: {},
    ends: "drop-in",
  },
  {
    who: "knows the total only",
    first: "THP 1.65, 208-230 volts, 3450 rpm, frame 56Y, 1 phase",
    finds: {},
    ends: "drop-in",
  },
  {
    who: "round face, no letter seen",
    first: "1 hp sf 1.65 115/230 volts 3450 rpm, it bolts to a round face, threaded shaft",
    finds: { frame: "frame says 56J" },
    ends: "drop-in",
  },
  {
    who: "has only the pump's name",
    first: "the label is gone, pump model is Marmalade F5",
    finds: {
      speedKind: "single speed",
      breakerPoles: "double pole breaker",
      supplyVolts: "it's wired for 240",
    },
    ends: "drop-in",
  },
  {
    who: "has no label and no pump name",
    first: "can't read anything on the label, it's all rust",
    finds: {},
    ends: "photo",
  },
  {
    who: "can't find the phase, looks at the breaker",
    first: "1.5 hp sf 1.1 230 v 3450 rpm 56Y",
    finds: { breakerPoles: "two pole breaker" },
    ends: "drop-in",
  },
  {
    who: "has a through-bolt motor",
    first: "0.75 hp sf 1.5 115 volts 3450 rpm frame 48Y, long bolts run through the whole motor",
    finds: { supplyVolts: "120" },
    ends: "fits-with-work",
  },
  {
    who: "has a three-phase motor",
    first: "2 hp sf 1.15 230/460 volts 3 phase 3450 rpm 56J",
    finds: { supplyVolts: "it's wired for 240 volts" },
    ends: "fits-with-work",
  },
  { who: "has a 4-pole motor", first: "1/2 hp sf 1.25 115 v 1725 rpm 56Y", finds: {}, ends: "none-fits" },
  {
    who: "has a very large one",
    first: "3 hp sf 1.3 230 volts 3450 rpm 56J single phase",
    finds: {},
    ends: "none-fits",
  },
  { who: "runs words together", first: "HP1SF1.65V115/230RPM3450FR56Y", finds: {}, ends: "drop-in" },
  {
    who: "lower case no punctuation",
    first: "motor says 2 hp sf 1 point 1 volts 208 230 rpm 3450 frame 56y single phase",
    finds: {},
    ends: "drop-in",
  },
  {
    who: "asks the price first",
    first: "how much is a new motor? mine is 1 hp 56J",
    finds: { rpm: "3450 rpm", serviceFactor: "sf 1.65", volts: "115/230 volts", phase: "1 phase" },
    ends: "drop-in",
  },
  {
    who: "worn plate, look-alikes",
    first: "HP l.5 SF 1.1 VOLTS ll5/23O RPM 345O FR S6Y",
    finds: {},
    ends: "drop-in",
  },
  {
    who: "can't read the frame, describes it",
    first: "1.5 hp sf 1.1 115/230 volts 3450 rpm frame is worn off",
    finds: { flange: "square with four bolts at the corners", shaft: "threaded shaft" },
    ends: "photo",
  },
  {
    who: "keyed shaft",
    first: "1.5 hp, sf 1.15, 56C, 208-230 volts, 3450 rpm, single phase",
    finds: { supplyVolts: "wired for 240 volts" },
    ends: "fits-with-work",
  },
  {
    who: "50 hertz",
    first: "1.1 kW, 220-240 V, 50 Hz, 2850 rpm, 1 phase, 56J, sf 1.0",
    finds: { supplyVolts: "240", hp: "1.5 hp" },
    ends: "fits-with-work",
  },
  {
    who: "an unsure corrector",
    first: "1 hp sf 1.65, no wait the hp is 1.5 and sf 1.1, 115/230, 56y",
    finds: { rpm: "3450" },
    ends: "drop-in",
  },
  {
    who: "tells the site too",
    first:
      "1 hp sf 1.65 56J 115/230 v 3450 rpm, wired for 230 on a double pole 20 amp breaker, i pay 31 cents",
    finds: {},
    ends: "drop-in",
  },
];
