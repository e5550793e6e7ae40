import { list } from "../wordlist.ts";

/** Units of things that are no rating; a figure with one of them is explained and set aside. */
export const foreignUnits: readonly string[] = list(`
  psi, gpm, gph, gal, gals, gallon, gallons, galones, galon, ft, feet, foot, pies, inch, inches, in,
  pulgadas, mm, cm, yr, yrs, year, years, anos, ano, months, month, meses, mes, week, weeks, semanas,
  semana, day, days, dias, dia, lb, lbs, pounds, libras, oz, %, percent, bucks, dollars, dolares, pesos,
  usd, ohm, ohms, btu, btus, awg, gauge, ga, am, pm, oclock, o clock, minutes ago, seconds, secs, sec, mph,
  ppm, miles, mi, km, square feet, square foot, sq ft, square ft, acre, acres, times, veces, weeks ago,
  kids, children, boys, girls, sons, daughters, brothers, sisters, dogs, cats, cars, trucks, guys, people, friends, neighbors, tenants, houses, hijos, hijas, perros, gatos, vecinos, casas, pools, psig, screws, st, nd, rd, th, summers, seasons, winters, blades, vanes, holes, bolts,
  tornillos, wires, cables, stars, mins, filters, skimmers, k gallon, k gallons, k btu, k gal, k, watts,
  watt, w, db, cfm, liters, litros, m, meters, hours ago, inch diameter, grit, pumps, motors, bombas,
  motores, wire, pin, prong, hairs, cents, centavos, bar, ton, tons
`);
