import { patterns } from "../pattern.ts";

/** Water on, in or around parts that may be live; a leak that stays clear of them is no danger. */
export const waterSense = patterns(
  "^@wetNoun ~5 @near ~4 @livePart",
  "^@wetNoun ~5 @into ~4 @motor",
  "^@soaks ~3 (@livePart|@motor)",
  "(@livePart|@motor) ~5 ^@wet",
  "(@livePart|@motor) ~3 (has|had|have|got|with|tiene) ~2 ^(water|rain|agua) ~2 (in|inside|adentro|dentro)",
  "^wet ~1 (@livePart|@motor)",
  "(@machine|@room) ~3 ^@flood",
  "^@flood ~3 (@machine|@room)",
  "(@livePart|@motor) ~4 ^(full of|filled with|fills with|lleno de|llena de|llenos de) ~1 (water|agua|rainwater)",
  "(@livePart|@motor|@machine) ~4 ^(sitting|sits|standing|stands|laying|lying|lays|lies|sat|is|are|was|submerged|hanging|dangling|fell|dropped|falls) ~1 (in|into|under|underneath) ~3 (@pooled|pool)",
  "^standing water ~2 (around|by|near|under|at|surrounding|in) ~3 (@livePart|@motor|@machine|@room)",
  "^(stand|standing|stood|barefoot|parado|parada|descalzo) ~3 (water|puddle|puddles|wet|agua|charco) ~~10 (@livePart|plugged|power|energized|electrical)",
  "(@livePart|plugged|electrical) ~~8 ^(stand|standing|stood|barefoot) ~3 (water|puddle|puddles)",
  "@livePart ~2 ^(rained on|got rained)",
  "^(entro|entra|entrando|metio|mete|metiendo|cae|cayo|cayendo|entraba) ~4 agua",
  "^agua ~2 (le|se) (entro|entra|metio|mete|cae|cayo|esta cayendo)",
  "^(going|goes|getting|gets|running|runs|coming|comes|shooting|falling) ~1 (all over|all on|onto|into) ~2 (@livePart|@motor)",
);
