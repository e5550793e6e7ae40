import type { Terms } from "./terms.ts";

/** Burning and what comes before it. */
export const fire = {
  smoke: {
    verbs: "smoke smoulder smolder vape",
    as: "smoky smokey smok smokeing smokey haze hazy fumes smoke_signals wisp wisps puff puffs plume plumes reek",
    nombres: "humo humito humareda humazo",
    verbos: "humear ahumar",
  },
  spark: {
    verbs: "spark arc",
    nouns: "sparkler",
    as: "arcing arced arcs arking sparkng sparky_ fireworks firework 4th_of_july new_years_eve",
    nombres: "chispa chispazo",
    verbos: "chispear chisporrotear arquear",
  },
  flame: {
    nouns: "flame blaze inferno fireball",
    verbs: "ignite flame",
    as: "ablaze fire fires on_fire caught_fire burst_into_flames flared flared_up flare_up flamed went_up en_llamas llamas llama fuego lumbre incendio incendios fogonazo llamarada bonfire",
    verbos: "incendiar arder",
  },
  flash: {
    verbs: "flash flicker",
    as: "flashes flicker glow glows glowing glowed orange red_hot glowin destello destellos relampago brilla",
  },
  /** Small lights a careful person would not call sparks. */
  twinkle: {
    verbs: "twinkle sparkle shimmer",
    nouns: "firefly star lightning_bug glow_worm ember",
    as: "fireflies tiny_lights little_lights little_stars bluish cherry cherry_red dragon welder estrellitas lucecita lucecitas luciernagas destellitos",
  },
  burning: { as: "burning burnin burnning burnig quemando quemandose combustion" },
  burnt: {
    as: "burnt burned burn burns burnd brunt brnt burned_up burn_up toast toasted toasty crispy cooked cooking cook frying fried fryin fry quemado quemada quemados quemadas quemo quema queman quemar quemaron chamuscado chamuscada chamusquina achicharrado roasted roasting baked overheated singe bacon barbecuing barbecue",
  },
  char: {
    verbs: "char scorch singe melt carbonize carbonise deform warp blister bubble discolor discolour blacken",
    as: "charcoal charcoaled browning crumbly molten meltid meltin melty charred soot sooty black_powder burn_mark burn_marks scorch_mark scorch_marks blackened bubbly bubbled deformed discoloured caramel sticky_ tan_ yellowed browned halo carbonized fused crispy derretido derretida derretidos derritio derritiendo derrite derriten derretir derritieron carbonizado fundido fundida chamuscado chamuscada",
    verbos: "derretir chamuscar carbonizar",
  },
  /** Plastic that gave way without the word "melted". */
  sag: {
    verbs: "sag droop slump wilt soften buckle curl shrivel drip_ ooze_ wrinkle twist bulge swell crinkle",
    as: "drooping droopy saggy gooey goo goopy gummy taffy wax candle_wax like_wax like_candle runny dripped_down soft_ mushy pancake cheese like_cheese crayon chocolate puddled misshapen out_of_shape lost_its_shape shrunken blandito ablando ablandado chicloso chorreado deformado deformada doblado como_cera como_vela cera vela torcido chueco",
  },
  wood: {
    nouns: "wood board plywood shelf wall siding fence_board post beam deck_board drywall paint mulch leaf",
    nombres: "madera tabla pared pintura",
    as: "wooden leaves plywood",
  },
  dark: { as: "black brown blackish brownish tan negro negra negros cafe prieto" },
  smell: {
    verbs: "smell stink reek",
    nouns: "smell odor odour stench whiff scent aroma pong",
    as: "smelt smel smells stinks stank stinky honkin honking stinky whiffy acrid fishy hot_pennies waft wafting huele huelen huela olor olores oler olia apesta apestando peste tufo guele guela oliendo huelo",
  },
  burntThing: {
    as: "plastic rubber plastico hule goma varnish barniz ozone hair_dryer hair insulation match matches gunpowder hot_metal electrical_smell burnt_hair campfire fish fishy wire_insulation pennies acrid toaster electrical_fire",
  },
  crackle: {
    verbs: "crackle sizzle hiss fry snap spit pop",
    as: "crackly sizzly bacon tronido tronidos truena tronando crepita chasquido boom bang kaboom fryin",
    verbos: "tronar",
  },
  hot: {
    as: "hot warm heat heats heated heating caliente calienta calentando too_hot_to_touch burning_hot scalding hirviendo overheat overheats overheating overheated sizzling_hot recalienta",
  },
  extinguish: {
    as: "extinguisher extinguished put_it_out fire_department 911 firemen bomberos evacuated extintor",
  },
} as const satisfies Readonly<Record<string, Terms>>;
