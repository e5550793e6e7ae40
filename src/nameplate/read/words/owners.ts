import { list } from "../wordlist.ts";

/** Somebody points back at the motor in question or its label. */
export const homeCues: readonly string[] = list(`
  mine, ours, my motor, our motor, this motor, this one, this is ours, this is mine, the motor, motor, pool
  motor, pump motor, dead one, dead motor, the dead, current one, current motor, current dead, bad one,
  burnt one, burned up one, broken one, broke one, one that died, one that just died, one that quit, one i
  need, one in question, label, nameplate, name plate, plate, tag, sticker, data plate, rating plate, motor
  plate, mio, mia, el mio, la mia, el nuestro, la nuestra, etiqueta, placa, mi motor, el motor, este, este motor, one im asking
  about, one i care about, one that went out, one that burned, one that failed, failed one, this thing, old
  one says, the pool one, main pump, its now, one to replace, one im replacing, one i am replacing, el
  muerto, el quemado, el que se quemo, el que murio, el malo, the bad, one acting up, it wrong, wrong
  before, got it wrong, el que tengo, la que tengo, la de ahora, el de ahora, one i have, one ive had, one ive got, one weve had, what i have, i have a, i have the, ive got a, ive got the, ahora, hoy, now its, now
  theres, now it says, now it has, today its, i have now, have now, right now, dont care, not that one,
  thats not it, not it, esa no, this ones, mines, keep it, to keep
`);

/** Equipment, parts and papers with figures of their own. */
export const otherThings: readonly string[] = list(`
  air handler, furnace, heat pump, water heater, mini split, minisplit, vfd, dishwasher, garbage disposal, boiler, chiller,
  welder, ceiling fan, pressure pump, aire acondicionado, lavadora, secadora, refrigerador, display, screen, keypad, readout, control panel, speed control, pantalla, the box, la caja, water temp, air temp, air was, pool light, pool lights, lid, the seal, impeller,
  impellers, impulsor, diffuser, volute, wet end, wetend, pump body, pump housing, pump lid, housing,
  casing, strainer, basket, strainer pot, o ring, oring, o rings, shaft seal, seal plate, gasket, carton,
  package, packaging, shipping label, cardboard box, shipping box, box says, box it came in, receipt,
  recibo, manual, invoice, paperwork, website, catalog page, brochure, flyer, filter, filtro, heater,
  calentador, chlorinator, chlorine generator, salt cell, salt system, timer, timer box, time clock, blower,
  booster, booster pump, cleaner, cleaner pump, robot, fountain, fountain motor, waterfall, waterfall one,
  waterfall pump, attic fan, fan, compressor, air conditioner, ac unit, condenser, dryer, washer, well pump,
  sump pump, generator, transformer, outlet strip, power strip, extension cord, drill, table saw, saw,
  garage door, hot tub, jacuzzi, spa blower, spa motor, spa pump, sprinkler pump, irrigation pump, relay,
  contactor, wire nut, conduit, multiport, vacuum, sweep, pressure washer, treadmill, tractor, mower, vfd
  box, controller, control box, automation, spare one, spare motor, the pump itself, pump case, pump cover,
  tapa, carcasa de la bomba, cuerpo de la bomba, fuente, ventilador, thermal protector, golf cart, rental,
  cabin, gauge, log, maintenance log, listing, the listing, the quote, their quote, quote i got, the
  estimate, the ad, ad says, spec sheet, the spare, a spare, house number, address, gate code, zip, zip
  code, order number, order no, my order, the order, order #, account, ticket, flyer, inverter, battery,
  batteries, panels, solar panels, charger, car, truck, stove, oven, microwave, fridge, refrigerator,
  freezer, television, shore power, berth, catalog says, catalogue says, catalogue page, tracking no,
  tracking number, tracking, winding resistance, catalog lists, your site, the site
`);

/** People whose equipment is not in question; they count with a possessive or a verb of having. */
export const otherPeople: readonly string[] = list(`
  neighbor, neighbors, neighbour, neighbours, friend, friends, buddy, buddys, brother, brothers, brother in
  law, brother in laws, sister, sisters, dad, dads, father, mother, mom, moms, uncle, uncles, cousin,
  cousins, coworker, coworkers, guy next door, people next door, lady next door, folks next door, guy down
  the street, guy across the street, my son, our son, his son, sons, daughter, parents, inlaws, in laws, boss, landlord, tenant,
  neighbor across, vecino, vecina, vecinos, amigo, primo, hermano, cunado, suegro, compadre, tio, jefe,
  hermana, prima, cunada, suegra, suegros, comadre, tia, amiga, jefa, padre, abuelo, abuela, mama, papa, sobrino, sobrina, yerno,
  nuera, padrino, inquilino, inquilina, grandpa, grandma, grandfather, grandmother, aunt, aunts, nephew, niece,
  sister in law, mother in law, father in law, stepdad, roommate, renter, renters, tenants,
  next door, hoa, clubhouse, community pool, previous owners
`);

/** Such a person becomes the owner of a figure with one of these words. */
export const havingWords: readonly string[] = list(`
  has, have, had, thinks, reckons, swears, bets, guesses, got, bought, owns, runs, uses, put, installed, is, one, motor, pump, s, his, hers, theirs,
  tiene, compro, usa, puso, es, was, picked, quiere, vender, vende, selling, wants, sells
`);

/** Figures that were true once, or of a motor before this one. */
export const earlierCues: readonly string[] = list(`
  used to, used to have, we had a, i had a, had a, we had an, used to be, previously, previous, one we had before, one i had before, previous
  one, previous motor, the one before, one before, before that, before this, earlier motor, earlier one,
  original one, originally, original motor, the original, first one was, first was, 2nd was, second was,
  second, last one was, last motor, prior claim, prior motor, prior unit, prior one, former motor, former
  unit, swapped a, swapped out a, took out a, old one was, old motor was, old pump was, old pump had, old
  one had, old motor had, years ago, years back, back in, replaced a, replaced in, had put, i put, i had
  put, i had typed, did i write, did i say, did i put, did i type, did i tell you, did i give you, i had it as, i had it at, i had said, i typed, i wrote, i said, i told, id said, had
  typed, had written, had said, told you, sent before, said before, earlier i, antes tenia, antes era, vieja era, viejo tenia, vieja tenia, viejito era, el
  anterior, la anterior, anterior, el viejo era, el original, yo dije, dije, habia puesto, puse, escribi,
  the one you shipped, one you shipped, you shipped, you sent, the one you sent, they sent me, guy sent, i
  ordered, ordered a, bought a, one i bought, replacement i got, i returned, came with, came originally,
  like i typed, like i said, i first said, first said, would have told, would have said, would have guessed,
  would have been, old house, last house, other house, other pool, other pump, other motor, other one,
  another pump, another motor, my other, otra bomba, otro motor, el otro, la otra, previous owner, prior
  owner, former owner, last owner, the builder, last pump, last pump was, last motor was, my last one, my
  last motor, my last pump, i thought, thought it was, i assumed, i guessed, i figured, yo pense, pense que,
  crei que, thought, someone wrote, somebody wrote
`);

/** Figures of a motor somebody would like, is offered or imagines. */
export const wishCues: readonly string[] = list(`
  want, i want, they quoted, quoted a, quoted us, he quoted, wanted, want to, would like, id like, would love, id love, wed love, me encantaria, wish,
  thinking of, thinking about, thinking, considering, upgrade, upgrading, upgrade to, go up to, going up to,
  going to a, go to a, go with, step up, bump up, move up, switch to, switching to, looking at a, looking at
  one, looking at the new, found a, found one, saw a, saw one, seen a, online, on sale, for sale, new one,
  the new, a new, one i want, instead of my, id take, prefer, rather have, could i, can i, can you, could
  you, should i, would a, would it, would i, will a, if you, if i, if it, what if, hoping for, dream,
  ideally, interested in, offered me, offering, recommended, recommends, suggested, told me to get, told me
  i need, says i need, says i should, said i should, said i need, quiero, quisiera, me gustaria, pienso,
  puedo, podria, pensando, uno nuevo, una nueva, el nuevo, la nueva, nuevo, cambiar a, subir a, poner uno,
  poner un, get a bigger, bigger, replace it with, replace with, get a, buy a, giving away, sell me, to sell
  me, selling me, wants to sell, trying to sell, pushing me, craigslist, en oferta, vi un, vi uno, encontre
  un, deseo, quote me, quote for a, put in a, new motor, stronger, downsize, down to a, go down to, going
  down to, candidate, proposed, replacement motor is, replacement is, your site, your website, you list, you
  have listed, you sell, if youve, if youd, anything in, anything with, anything under, anything over, anything above, anything more, anything bigger, something in,
  something with, something around, for $, too much, too big, too small, overkill, good deal, would turn, it
  would be, would run, would draw, would pull, would need, que ponga, ponga uno, me dijeron, dijeron
`);

/** Figures read from an instrument: current, voltage and speed measured are no ratings. */
export const measuredCues: readonly string[] = list(`
  clamp, clamp meter, kill a watt, watt meter, wattmeter, clampmeter, multimeter, multi meter, meter, ammeter, amp meter, amp probe, tester,
  voltmeter, volt meter, measured, measuring, measures, i measure, i get, im getting, drawing, draws,
  pulling, pulls, drew, pulled, pinza, amperimetro, medidor, medi, mide, midio, probe, reading with, it was
  reading, inrush, spikes, spiked, startup, at startup, gancho, multimetro, jala, jalando, marca el, ran at,
  it ran, was running at, this morning, last night, clamped
`);
