import type { RatingName } from "../../vocabulary.ts";
import { list } from "../wordlist.ts";

/** Phrases that are a value by themselves. */
export const valuePhrases: readonly (readonly [RatingName, string | number, readonly string[]])[] = [
  [
    "flange",
    "square",
    list(`
  square flange, square face, square mount, square, squared, squarish, brida cuadrada, cara cuadrada,
  cuadrada, cuadrado, square bolt pattern, in a square, face square, flange square, mount square, mounting
  square, brida cuadrado, sq flange, sq face, sq mount, sqr flange, sq flg, sqr flg, sq
`),
  ],
  [
    "flange",
    "round",
    list(`
  round flange, round face, round mount, round, c face, c flange, brida redonda, cara redonda, redonda,
  redondo, circular, face round, flange round, mount round, rd flange, rnd flange, rd flg
`),
  ],
  [
    "flange",
    "through-bolt",
    list(`
  through bolt, through bolts, thru bolt, thru bolts, throughbolt, throughbolts, thrubolt, thrubolts, thru
  bolted, through bolted, long bolts, pernos pasantes, tornillos pasantes, pernos largos, tornillos largos,
  through bolt mount, thru bolt mount, through the motor, thru the motor, through the whole motor, thru the
  whole motor, all the way through, all the way thru, whole length of the motor, length of the motor, full
  length of the motor, atraviesan el motor
`),
  ],
  [
    "shaft",
    "threaded",
    list(`
  threaded shaft, threaded, threads, screw on shaft, roscado, roscada, rosca, con rosca, eje roscado, flecha
  roscada, shaft threaded, impeller screws on, impeller screws onto, impeller screwed, impeller threads on,
  screws onto the shaft, screws on the shaft, screw threads, shaft has threads, thrd shft, thd shaft, thrd
  shaft, threaded shft, thrd, thd shft
`),
  ],
  [
    "shaft",
    "keyed",
    list(`
  keyed shaft, keyed, keyway, key way, key slot, cunero, cuna, con cuna, chaveta, chavetero, con chaveta,
  eje con cuna, eje con chaveta, flecha con cuna, enchavetado, shaft keyed, slot for a key, a key on the
  shaft, shaft has a key, with a key, key on it, square key, theres a key, there is a key, has a key, key in
  it
`),
  ],
  [
    "speedKind",
    "single",
    list(`
  single speed, 1 speed, one speed, una velocidad, 1 velocidad, una sola velocidad, 1 sola velocidad,
  velocidad unica, velocidad simple, single spd, speed single, single velocidad
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
  variable speed, variable speeds, velocidad variable, var speed, variable spd, vari speed, velocidades
  variables, speed variable
`),
  ],
  [
    "phase",
    1,
    list(`
  single phase, 1 phase, single ph, monofasico, monofasica, una fase, 1 fase, una sola fase, 1 sola fase, 1
  ø, 1 ph, single ø, single fase, single fases, fase unica, single phas, mono fasico, mono fasica, mono phase, mono fase, monophase, monofase, phase single, phases single, ph single, 1 ~
`),
  ],
  [
    "phase",
    3,
    list(`
  3 phase, three ph, trifasico, trifasica, 3 fases, tres fases, 3 ø, 3 ph, triple phase, triple fase, tri fasico, tri fasica, tri phase, tri fase, trifase, triphase, phase three, phases
  3, 3 ~
`),
  ],
  [
    "duty",
    "continuous",
    list(`
  continuous duty, cont duty, duty cont, continuous, cont, continuo, continua, servicio continuo, trabajo
  continuo, continous, contin, continuously rated, duty continuous
`),
  ],
];
