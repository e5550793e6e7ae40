import { list } from "../wordlist.ts";

/** The thing just named still works, so it is not the one in question if another one is. */
export const aliveCues: readonly string[] = list(`
  fine, is fine, works, works fine, works great, still works, working, runs, still runs, runs great,
  running, ok, is ok, good, great, good one, still running, perfect, healthy, not the problem, no problem,
  funciona, sirve, esta bien, trabaja bien, jala bien, still good, no issues, spins, still spins, humming
  along, hums along, chugging along, purring, running smooth, spins fine, running fine, spare, in the shed,
  ignore, serviceable, in service, operational, operating, run fine, run great, run ok, work fine, work great, both work, both run, no tiene problema, anda bien
`);

/** The thing just named is the broken one. */
export const deadCues: readonly string[] = list(`
  dead, died, dies, hums, humming, wont start, will not start, doesnt start, doesnt run, quit, burnt,
  burned, burned up, burnt out, burnt up, burned out, fried, cooked, seized, broken, broke, bad, bad one,
  failed, toast, kaput, shot, locked up, not working, stopped, gave out, went out, screaming, noisy,
  leaking, trips, need replacing, needs replacing, needs replacement, need to replace, replacing, quemado,
  quemo, muerto, murio, no arranca, no prende, no sirve, no funciona, descompuesto, malo, mala, problem,
  this is the one, the one i need, replace this, the one
`);

/** Said of a motor or figure just named, it does not count. */
export const dismissalCues: readonly string[] = list(`
  leave that alone, leave it alone, leave that one alone, leave that be, not the one, aint the one, isnt the
  one, aint it, isnt it, none of em is, none of em are, none of them is, none of them are, none of those,
  discarded, thrown out, threw it out, threw that out, threw it away, got rid of it, got rid of that, in the
  trash, scrapped, unrelated, not relevant, irrelevant, nothing to do with, not asking about, not asking on,
  not what im asking, doesnt count, dont count, not part of this, skip that one, never mind that one,
  nevermind that one, forget that one, different motor, different pump, not this motor, not this one, not
  the motor, not mine, ese no, no es ese, no es la mia, no es el mio, no cuenta
`);

/** Numbers and letters by which several motors in one message are told apart: pump 1, motor B. */
export const entityKeys: readonly string[] = list(`
  1, 2, 3, a, b, c, one, two, first, second, uno, dos
`);

/** What a pump is for, by which one of several is named: "the spa pump", "the waterfall one". */
export const taskWords: readonly string[] = list(`
  pool, spa, hot, jacuzzi, filter, filtration, main, circulation, cleaner, sweep, booster, waterfall, fountain,
  slide, jet, jets, feature, deck, solar, vacuum, kiddie, well, sump, irrigation, sprinkler, pond, alberca,
  piscina, cascada, fuente, filtro, limpieza, riego
`);
