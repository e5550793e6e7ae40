import type { RatingName } from "../../vocabulary.ts";
import { list } from "../wordlist.ts";

const currentWords = ["amps", "amperes", "amperios", "amperaje", "amperajes", "corriente"];

/**
 * Words and phrases that name a rating, accents removed, numbers as digits. `.` after a word and `-` between
 * words need not be written here; other marks do.
 */
export const names: Partial<Record<RatingName, readonly string[]>> = {
  hp: list(`
  hp, hps, horsepower, horse power, horse, horses, hrs power, power hp, caballo, caballos, caballos de
  fuerza, caballaje, cv, h p, hpower
`),
  serviceFactor: list(`
  sf, s f, s / f, service factor, serv factor, serv fact, serv fac, svc factor, svc fctr, serv fctr, srv
  fctr, svc fact, srv factor, serv f, service fact, service fctr, factor de servicio, factor servicio, fs, f
  s, factor, ser fac, ser factor, s factor
`),
  totalHp: list(`
  thp, t hp, sfhp, sf hp, s f hp, total hp, total horsepower, total horse power, total horse, hp total,
  service factor hp, service factor horsepower, sf horsepower, service factor horse power, sf horse power, tot horse power, tot hp, caballos totales, hp totales, total
  de caballos
`),
  kw: list(`
  kw, kilowatt, kilowatts, kilovatio, kilovatios, output kw, k w
`),
  volts: list(`
  v, volt, volts, voltage, vac, v ac, volts ac, ac volts, vlts, vlt, vol, vols, voltio, voltios, voltaje, volteo,
  volt rating, voltage rating, rated volts, rated voltage, vts
`),
  amps: list(`
  a, amp, amps, ampere, amperes, fla, f l a, f l amps, fl amps, f l amp, fl amp, flc, f l c, flamps, flamp, full load amps, full load amp, full load,
  full load current, amperio, amperios, amperaje, amperage, ampridge, amprage, ampage, amps fl, rated amps, rla, amp rating, ampers,
  amper, ampere rating, corriente, current, carga plena, plena carga, run amps, running amps, amps full load
`),
  serviceFactorAmps: [
    ...list(`
  sfa, s f a, sf amps, sf amp, s f amps, s f amp, sf a, service factor amps, service factor amp, service
  factor current, serv factor amps, serv fact amps, max amps, max amp, maximum amps, max load amps, max load
  amp, max load, max current, maximum load amps, max a, amps max, amp max, amps sf, amps s f, amps fs, amps f s, amperios fs, fs amps, f s amps, sf current, max full
  load amps, maximo amperaje, amperaje maximo, amperios maximos, amps maximos, amps maximo, maximo amps,
  mla, amps at sf, amps at service factor, svc
  factor amps, svc fctr amps, maxamps, sfamps
`),
    ...currentWords.flatMap((current) =>
      ["a", "al", "de", "con", "con el", "por", "del"].flatMap((by) => [
        `${current} ${by} factor de servicio`,
        `${current} ${by} fs`,
      ]),
    ),
    ...currentWords.flatMap((current) =>
      ["max", "maximo", "maximos", "maxima"].flatMap((most) => [`${current} ${most}`, `${most} ${current}`]),
    ),
    ...["amps", "amp", "amperes", "current"].flatMap((current) => [
      `${current} at the service factor`,
      `${current} at sf`,
    ]),
  ],
  rpm: list(`
  rpm, rpms, r p m, speed, r / min, rev / min, revs, revolutions, revoluciones, revolutions per minute,
  revoluciones por minuto, velocidad, speed rpm, spd
`),
  hz: list(`
  hz, h z, hertz, hercio, hercios, hertzios, cps, c / s, cycles, cycle, cyc, cy, freq, frequency, ciclos, frecuencia, hrtz, herz, freq
  hz, frequency hz
`),
  phase: list(`
  ph, p h, phase, phases, phas, fase, fases, ø, phs
`),
  frame: list(`
  fr, frame, frm, frame size, fr size, armazon, marco, carcasa, carcaza, bastidor, frame no, frame number,
  frame type, frame code
`),
  flange: list(`
  flange, mounting face, brida, motor face, mounting flange, bolt pattern
`),
  shaft: ["shaft", "eje", "flecha", "shaft end", "shaft type"],
  ambientC: list(`
  amb, ambient, max amb, max ambient, ambiente, amb temp, ambient temp, ambient temperature, max ambient
  temp, temp amb, temperatura ambiente, temp ambiente
`),
  duty: list(`
  duty, time, time rating, duty cycle, servicio, rating time, duty rating
`),
  insulationClass: list(`
  ins, insul, insulation, ins cl, ins class, insul cl, insul class, insulation class, class, cl, clase,
  aislamiento, clase de aislamiento, insulation cl, insl, insl cl, class of insulation, aislante, clase
  aislamiento
`),
  kvaCode: list(`
  code, kva code, kva, codigo, code letter, kva code letter, kva letter, codigo kva, letra de codigo, locked
  rotor code, lr code, lrc, codigo de kva
`),
  capacitorUf: list(`
  cap, capacitor, mfd, uf, µf, μf, microfarad, microfarads, micro farad, micro farads, mf, capacitor mfd,
  cap mfd, condensador, microfaradios, run cap, start cap, run capacitor, start capacitor, mfds, ufd
`),
  modelNumbers: list(`
  model, mod, mdl, model no, model number, model num, model #, model nr, mod no, mod #, part, part no, part
  number, part num, part #, pn, p / n, cat, cat no, cat #, catalog, catalog no, catalog number, catalog #,
  catalogue, catalogue no, catalogue number, catalogue #, type, type no, type number, type code, type #,
  modelo, numero de modelo, modelo no, modelo numero, modelo #, parte, numero de parte, no de parte, num de
  parte, parte no, parte #, tipo, catalogo, numero de catalogo, m / n, mn, item no, cat num, cat number, pt
  no, part nbr, no de catalogo, no de modelo, catalogo no, parte numero, motor model, motor part, motor
  type, ctlg no, prt no
`),
  serialNumber: list(`
  serial, ser, s / n, sn, serial no, serial number, serial num, serial #, ser no, ser #, serie, numero de
  serie, no de serie, num de serie, serial nr, serie no, ser num, ser number, serial code
`),
};

/** Names that are ordinary words too: as the name of a bare value they need it right beside them. */
export const weakNames = new Set(
  list(`
  a, v, time, cap, part, cat, type, code, class, cl, current, cycle, cycles, factor, speed, mod, horse,
  horses, servicio, tipo, parte, marco, ser, fs, f s, power hp, vol, vols, cy, phase, serie, velocidad, revs,
  corriente, flange, shaft, brida, eje, flecha, bolt pattern, motor face, mn, sn, pn, codigo, mf, cv,
  carcasa, carcaza
`),
);
