import { list } from "../wordlist.ts";

/** Words for the facts of the place. Accents removed, numbers as digits. */
export const breakerWords = list(`
  breaker, breakers, brekaer, braker, breker, fuse, fuses, disyuntor, pastilla, interruptor, circuit
  breaker, brkr, cb, breaker box, termica, termomagnetico
`);
export const circuitWords = ["circuit", "circuito", "service", "own circuit"];
/** What carries the supply, or says how the motor is wired to it. */
export const supplyWords = list(`
  outlet, outlets, wall outlet, supply, power supply, wired, wired for, wired at, wired up for, wired to,
  wired up, hooked up for, hooked up to, hooked to, hardwired, hard wired, running on, runs on, run on,
  plugged into, plugs into, plugged in to, line voltage, supply voltage, house voltage, incoming, coming in,
  coming from the panel, feed, fed with, fed by, at the panel, at the wires, at the leads, at the whip, from
  the panel, panel is, panel, feeds it, out there, out here, on the wires, at the motor leads, lugs, disconnect, terminals, equipment room, at the pad,
  pad, at house, at home, at the building, in the building, at the property, at the site, at the house, at
  the box, at the pump, at the disconnect, to the pump, to the pad, house is, house has, receptacle,
  connected to, strapped for, set for, set to, set up for, setup for, switched to, jumpered for, voltage at
  the house, my power is, power is, house power, my house, wiring is, electrician says its, toma, contacto, contactos, tablero, centro de carga,
  tomacorriente, conectado a, conectada a, la instalacion es de, instalacion es, alimentacion, enchufe,
  cableado, cableado a, cableado para, la casa, corriente de la casa, linea de, la linea, llega, llegan, le
  llega, le llegan, casa tiene, casa es de, here at the house, power coming in, voltage here, mains
`);
export const poleWords: Readonly<Record<1 | 2 | 3, readonly string[]>> = {
  1: list(`
  single pole, 1 pole, one pole, 1 handle, one handle, single handle, un polo, 1 polo, un solo polo, 1p,
  unipolar, 1 p, monopolar
`),
  2: list(`
  double pole, 2 poles, two poles, 2 handles, two handles, double handle, 2 switches tied, handles tied, tied handles, handles
  tied together, 2 tied together, two tied together, double breaker, doubles with, those doubles, doble
  pastilla, pastilla doble, breaker doble, 2 pole, dual pole, dbl pole, doble polo, dos polos, 2 polos, dos
  polo, 2p, bipolar, 2 p, de 2 polos, double pol
`),
  3: list(`
  3 pole, three pole, triple pole, tres polos, 3 polos, tripolar
`),
};
/** What comes before the pump's own name. */
export const pumpWords = [
  ...[
    "body",
    "housing",
    "lid",
    "pot",
    "casing",
    "case",
    "basket",
    "strainer",
    "basket lid",
    "strainer lid",
    "pot lid",
  ].flatMap((part) =>
    ["says", "reads", "is marked", "is stamped", "shows"].flatMap((verb) => [
      `pump ${part} ${verb}`,
      `${part} says`,
    ]),
  ),
  ...["dice", "marca"].flatMap((verb) => [
    `la bomba ${verb}`,
    `cuerpo de la bomba ${verb}`,
    `tapa de la bomba ${verb}`,
  ]),
  ...list(`
  pump model, pump :, bomba :, pump is a, pump is an, pump is the, wet end is a, wet end model, wet end is,
  pump model is, pump model number, pump model no, pump type, pumps model, pumps model number, pumps model no, modelo de bomba, modelo de la bomba, la bomba
  es una, la bomba es un, bomba modelo, pump body says, pump says, pumps a, pumps an, its the pump, pump
  name is, pump itself is, pump itself is an, pump body is a, wet end says, pump number, model of the pump, pump is model
`),
];
/** Small words that may stand between a figure and the word for it. */
export const siteFillers = list(`
  phase, three, what, that, those, my, our, out, coming, comes, pad, double, dual, single, 2, pole, polo, polos,
  de, dos, doble, gfci, gfi, two, the, a, an, is, are, its, on, for, says, it, at, to, own, dedicated, of,
  es, un, una, el, la, rated, reads, and, i, have, with, has, volt, volts, v, 230, 240, 120, 115, 220, in,
  panel, box, main, there, here, now, up, as, only, just, about, que, hay, tiene, con, here, was, that,
  size, marked, labeled, electric, outdoor, regular, plain, straight, measured, house, coming, from, supply,
  pump, circuit, been, getting, get, current, currently, power, running, still, outlet, bomba, pool
`);
export const hoursWords = [
  ...[
    "hours per day",
    "hours a day",
    "hrs / day",
    "hours / day",
    "hours daily",
    "daily hours",
    "run time",
    "runtime",
  ],
  ...["horas por dia", "horas al dia"],
];
