import type { RatingName } from "../vocabulary.ts";
import { list } from "./wordlist.ts";

/**
 * Words and phrases that name a rating, accents removed, numbers as digits. `.` after a word and `-` between
 * words need not be written here; other marks do.
 */
export const names: Partial<Record<RatingName, readonly string[]>> = {
  hp: list(`
  hp, hps, horsepower, horse power, horse, horses, hrs power, power hp, caballo, caballos, caballos
  de fuerza, caballaje, cv, h p, hpower
`),
  serviceFactor: list(`
  sf, s f, s / f, service factor, serv factor, serv fact, serv fac, svc factor, svc fctr, serv fctr, srv fctr, svc fact,
  srv factor, serv f, service fact, service fctr, factor de servicio, factor servicio, fs, f s,
  factor, ser fac, ser factor, s factor
`),
  totalHp: list(`
  thp, t hp, sfhp, sf hp, s f hp, total hp, total horsepower, total horse power, total horse, hp
  total, service factor hp, service factor horsepower, sf horsepower, tot hp, caballos totales, hp
  totales, total de caballos
`),
  kw: list(`
  kw, kilowatt, kilowatts, kilovatio, kilovatios, output kw, k w
`),
  volts: list(`
  v, volt, volts, voltage, vac, v ac, volts ac, ac volts, vlts, vlt, vol, voltio, voltios, voltaje,
  volteo, volt rating, voltage rating, rated volts, rated voltage, vts
`),
  amps: list(`
  a, amp, amps, ampere, amperes, fla, f l a, f l amps, fl amps, full load amps, full load amp, full
  load, full load current, amperio, amperios, amperaje, amperage, amps fl, rated amps, rla, amp
  rating, ampers, amper, ampere rating, corriente, current, carga plena, plena carga, run amps,
  running amps, amps full load
`),
  serviceFactorAmps: list(`
  sfa, s f a, sf amps, sf amp, s f amps, s f amp, sf a, service factor amps, service factor amp,
  service factor current, serv factor amps, serv fact amps, max amps, max amp, maximum amps, max
  load amps, max load amp, max load, max current, maximum load amps, max a, amps max, amp max, amps
  sf, sf current, max full load amps, maximo amperaje, amperaje maximo, amperios maximos, amps
  maximos, amps maximo, maximo amps, mla, amps at sf, amperios a factor de servicio, amperaje a factor de servicio, amps at service factor, svc factor amps, svc
  fctr amps, maxamps, sfamps, amps de factor de servicio, amperaje de factor de servicio
`),
  rpm: list(`
  rpm, rpms, r p m, speed, r / min, rev / min, revs, revolutions, revoluciones, revolutions per
  minute, revoluciones por minuto, velocidad, speed rpm, spd
`),
  hz: list(`
  hz, h z, hertz, cps, c / s, cycles, cycle, cyc, cy, freq, frequency, ciclos, frecuencia, hrtz, herz, freq hz,
  frequency hz
`),
  phase: list(`
  ph, p h, phase, phases, phas, fase, fases, ø, phs
`),
  frame: list(`
  fr, frame, frm, frame size, fr size, armazon, marco, carcasa, carcaza, bastidor, frame no, frame
  number, frame type, frame code
`),
  flange: list(`
  flange, mounting face, brida, motor face, mounting flange, bolt pattern
`),
  shaft: ["shaft", "eje", "flecha", "shaft end", "shaft type"],
  ambientC: list(`
  amb, ambient, max amb, max ambient, ambiente, amb temp, ambient temp, ambient temperature, max
  ambient temp, temp amb, temperatura ambiente, temp ambiente
`),
  duty: list(`
  duty, time, time rating, duty cycle, servicio, rating time, duty rating
`),
  insulationClass: list(`
  ins, insul, insulation, ins cl, ins class, insul cl, insul class, insulation class, class, cl,
  clase, aislamiento, clase de aislamiento, insulation cl, insl, insl cl, class of insulation,
  aislante, clase aislamiento
`),
  kvaCode: list(`
  code, kva code, kva, codigo, code letter, kva code letter, kva letter, codigo kva, letra de
  codigo, locked rotor code, lr code, lrc, codigo de kva
`),
  capacitorUf: list(`
  cap, capacitor, mfd, uf, µf, μf, microfarad, microfarads, micro farad, micro farads, mf, capacitor
  mfd, cap mfd, condensador, microfaradios, run cap, start cap, run capacitor, start capacitor,
  mfds, ufd
`),
  modelNumbers: list(`
  model, mod, mdl, model no, model number, model num, model #, model nr, mod no, mod #, part, part
  no, part number, part num, part #, pn, p / n, cat, cat no, cat #, catalog, catalog no, catalog
  number, catalog #, catalogue, catalogue no, catalogue number, catalogue #, type, type no, type
  number, type code, type #, modelo, numero de modelo, modelo no, modelo numero, modelo #, parte,
  numero de parte, no de parte, num de parte, parte no, parte #, tipo, catalogo, numero de catalogo,
  m / n, mn, item no, cat num, cat number, pt no, part nbr, no de catalogo, no de modelo, catalogo
  no, parte numero, motor model, motor part, motor type, ctlg no, prt no
`),
  serialNumber: list(`
  serial, ser, s / n, sn, serial no, serial number, serial num, serial #, ser no, ser #, serie,
  numero de serie, no de serie, num de serie, serial nr, serie no, ser num, ser number, serial code
`),
};

/** Names that are ordinary words too: as the name of a bare value they need it right beside them. */
export const weakNames = new Set(
  list(`
  a, v, time, cap, part, cat, type, code, class, cl, current, cycle, cycles, factor, speed, mod,
  horse, horses, servicio, tipo, parte, marco, ser, fs, f s, power hp, vol, cy, phase, serie,
  velocidad, revs, corriente, flange, shaft, brida, eje, flecha, bolt pattern, motor face, mn, sn,
  pn, codigo, mf, cv, carcasa, carcaza
`),
);

/** Phrases that are a value by themselves. */
export const valuePhrases: readonly (readonly [RatingName, string | number, readonly string[]])[] = [
  [
    "flange",
    "square",
    list(`
  square flange, square face, square mount, square, squared, squarish, brida cuadrada, cara
  cuadrada, cuadrada, cuadrado, square bolt pattern, in a square, face square, flange square, mount square, mounting square, brida cuadrado, sq flange, sq face, sq mount, sqr flange, sq flg, sqr flg, sq
`),
  ],
  [
    "flange",
    "round",
    list(`
  round flange, round face, round mount, round, c face, c flange, brida redonda, cara redonda,
  redonda, redondo, circular, face round, flange round, mount round, rd flange, rnd flange, rd flg
`),
  ],
  [
    "flange",
    "through-bolt",
    list(`
  through bolt, through bolts, thru bolt, thru bolts, throughbolt, throughbolts, thrubolt,
  thrubolts, thru bolted, through bolted, long bolts, pernos pasantes, tornillos pasantes, pernos
  largos, tornillos largos, through bolt mount, thru bolt mount, through the motor, thru the motor, through the whole motor, thru the whole motor, all the way through, all the way thru, whole length of the motor, length of the motor, full length of the motor, atraviesan el motor
`),
  ],
  [
    "shaft",
    "threaded",
    list(`
  threaded shaft, threaded, threads, screw on shaft, roscado, roscada, rosca, con rosca, eje
  roscado, flecha roscada, shaft threaded, impeller screws on, impeller screws onto, impeller screwed, impeller threads on, screws onto the shaft, screws on the shaft, screw threads, shaft has threads, thrd shft, thd shaft, thrd shaft, threaded shft, thrd, thd shft
`),
  ],
  [
    "shaft",
    "keyed",
    list(`
  keyed shaft, keyed, keyway, key way, key slot, cunero, cuna, con cuna, chaveta, chavetero, con
  chaveta, eje con cuna, eje con chaveta, flecha con cuna, enchavetado, shaft keyed, slot for a key, a key on the shaft, shaft has a key, with a key, key on it, square key, theres a key, there is a key, has a key, key in it
`),
  ],
  [
    "speedKind",
    "single",
    list(`
  single speed, 1 speed, one speed, una velocidad, 1 velocidad, una sola velocidad, 1 sola
  velocidad, velocidad unica, velocidad simple, single spd, speed single, single velocidad
`),
  ],
  [
    "speedKind",
    "two",
    list(`
  2 speed, 2 speeds, dual speed, two speed, dos velocidades, 2 velocidades, doble velocidad, 2 spd, 2 sp,
  dual spd, speed two, speed dual, speed 2, speeds 2, 2 velocidad
`),
  ],
  [
    "speedKind",
    "variable",
    list(`
  variable speed, variable speeds, velocidad variable, var speed, variable spd, vari speed,
  velocidades variables, speed variable
`),
  ],
  [
    "phase",
    1,
    list(`
  single phase, 1 phase, single ph, monofasico, monofasica, una fase, 1 fase, una sola fase, 1 sola fase, 1 ø, 1 ph, single ø,
  fase unica, single phas, phase single, phases single, ph single, 1 ~
`),
  ],
  [
    "phase",
    3,
    list(`
  3 phase, three ph, trifasico, trifasica, 3 fases, tres fases, 3 ø, 3 ph, triple phase, phase three, phases 3, 3 ~
`),
  ],
  [
    "duty",
    "continuous",
    list(`
  continuous duty, cont duty, duty cont, continuous, cont, continuo, continua, servicio continuo,
  trabajo continuo, continous, contin, continuously rated, duty continuous
`),
  ],
];

/** Units of things that are no rating; a figure with one of them is explained and set aside. */
export const foreignUnits: readonly string[] = list(`
  psi, gpm, gph, gal, gals, gallon, gallons, galones, galon, ft, feet, foot, pies, inch, inches, in,
  pulgadas, mm, cm, yr, yrs, year, years, anos, ano, months, month, meses, mes, week, weeks,
  semanas, semana, day, days, dias, dia, lb, lbs, pounds, libras, oz, %, percent, bucks, dollars,
  dolares, pesos, usd, ohm, ohms, btu, btus, awg, gauge, ga, am, pm, oclock, o clock, minutes ago,
  seconds, secs, sec, mph, ppm, miles, mi, km, square feet, square foot, sq ft, square ft, acre,
  acres, times, veces, weeks ago, kids, people, pools, psig, screws, st, nd, rd, th, summers,
  seasons, winters, blades, vanes, holes, bolts, tornillos, wires, cables, stars, mins, filters,
  skimmers, k gallon, k gallons, k btu, k gal, k, watts, watt, w, db, cfm, liters, litros, m,
  meters, hours ago, inch diameter, grit, pumps, motors, bombas, motores, wire, pin, prong, hairs,
  cents, centavos, bar, ton, tons
`);

/** A character of the value is said to be missing, or the writer hesitates between two. */
export const partialPhrases: readonly string[] = list(`
  something, somethin, somthing, smth, sumthin, start with, starts with, starting with, begins with, ends in,
  ends with, ending in, either, and then a, then a, and then maybe, then maybe, and then nothing, and then rust, and then blank, could be a, could be, cant
  tell which, cant tell if, not sure which, not sure if, dont know which, or maybe, and a blob,
  blob, smudge, algo, y algo, empieza con, termina en, no se si, o quizas, o tal vez, puede ser,
  first digit, last digit, middle digit, second digit, digit, digits, half of the number, might be
  a, blank something, whatever, first letter, last letter, letter is, no distingo si, half the
  number, part of the number, cut off, looks like either, luego una letra, una letra, empiezan con, terminan en, no se cual, no le puedo decir
`);

/** The rating is on the label but cannot be read, or is not on it. */
export const illegiblePhrases: readonly string[] = list(`
  cant read, can not read, cannot read, couldnt read, could not read, unable to read, cant make out,
  cannot make out, can not make out, couldnt make out, cant see, cannot see, can not see, cant tell,
  cannot tell, can not tell, couldnt tell, cant find, cannot find, can not find, couldnt find,
  couldnt see, hard to read, impossible to read, illegible, unreadable, unlegible, not legible, not
  readable, isnt legible, isnt readable, worn, worn off, worn out, worn away, faded, faded out,
  fading, rubbed, rubbed off, rubbed out, scratched, scratched off, scratched out, gone, missing,
  blank, bleached, sanded, rusted, rusty, rust, corroded, eaten, peeled, peeled off, torn, torn off,
  ripped, smudged, smeared, washed out, washed off, not listed, not shown, not there, not on it, not
  on there, not on the label, not printed, not marked, not given, not stated, isnt there, isnt
  listed, isnt on, isnt on there, isnt shown, isnt printed, doesnt say, does not say, doesnt list,
  doesnt show, doesnt have, does not list, does not show, no such thing, have none, has none, shows none, no where, nowhere, n / a, na, unknown,
  idk, dont see, do not see, didnt see, dont know, do not know, no idea, no clue, not sure, read everything but, read everything except, see everything but, see everything except, make out everything but, make out everything except, read all but, read all except, leer todo menos, leer todo excepto, wiped,
  burned off, burnt off, painted over, covered, got hit, unclear, not clear, not visible, isnt
  visible, invisible, obscured, damaged, destroyed, melted, chewed, no se ve, no se lee, no se puede
  leer, no se ven, no se leen, no puedo leer, no puedo ver, no lo veo, no veo, no lo puedo leer, no
  se alcanza a leer, no se alcanza a ver, no alcanzo a leer, no alcanzo a ver, borrado, borrada,
  borrados, borradas, se borro, se borraron, ilegible, ilegibles, falta, faltan, no aparece, no
  aparecen, no viene, no tiene, no dice, no encuentro, gastado, gastada, despintado, despintada,
  oxidado, oxidada, not able to read, wont read, cant get, cant decipher, dont have, havent got,
  cant quite read, can't quite make out, cant quite make out, barely legible, under rust, sunburned,
  sun burned, weathered, dissolved, disappeared, vanished, scraped off, scuffed, scuffed off,
  mangled, crusty, stripped, erased, no longer legible, lost, too faint, faint, can hardly read,
  cant hardly read, obliterated, burned, not legible anymore, no legible, no hay, stain, green stain, paint over, no trae, no traen, se le borro, se borro, no trae el, empty, bare, vacio, vacia, en blanco, whited out, bleached out, sun bleached, got scraped, worn down, rotted, rotted off, ate it, ate up, cant make it out, cannot make it out, cant see it, cant find it, couldnt get, smears, cant, couldnt, cannot, can not, could not, unable to, no puedo, no pude, no logro, illegibly, not readible, unreadible, beats me
`);

/** Words that take back what was said just before; a new value is expected. */
export const correctionPhrases: readonly string[] = list(`
  no wait, wait no, wait, sorry, oops, whoops, woops, i mean, i meant, meant, correction, scratch
  that, strike that, make that, edit, my bad, my mistake, actually, er, err, erm, hang on, hold on,
  no no, no its, nope, looked again, checked again, misread, mistyped, typo, rather, should be,
  should say, should read, fix, update, perdon, digo, quise decir, mejor dicho, me equivoque,
  corrijo, correccion, no espera, espera, disculpa, disculpe, lo siento, let me correct, i was
  wrong, was wrong, never mind, nevermind, apologies, take that back, o sea, bueno no, on second
  look, on closer look, second look, no espere, espere, typed it wrong, got it wrong, really, thats wrong, is wrong, not right, was off, esta mal, crossed out
`);

/** Words that take back everything said so far. */
export const retractionPhrases: readonly string[] = list(`
  scratch that, scratch all that, disregard, disregard that, disregard all of that, disregard all
  that, ignore that, ignore all that, ignore all of that, forget that, forget all that, forget all
  of that, forget what i said, ignore what i said, ignore the above, disregard the above, olvida
  eso, olvide eso, olvidalo, ignora eso, never mind that, nevermind that, strike all that, strike
  all of that, ignore my last, ignore those, forget those, disregard those, scrap that, scrap all
  that
`);

/** Words that reject the value that follows. */
export const negators: readonly string[] = list(`
  nothing on it says, nothing says, nowhere says, nowhere does it say, not, isnt, is not, aint, wasnt, was not, arent, no es, no son, no, never said, no era, forget,
  rather than, instead of, doesnt say, does not say, dont say, it doesnt say, didnt say, didnt mean,
  en vez de, en lugar de, there is no, theres no, nope not, nor, ni, without
`);
