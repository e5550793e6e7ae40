import type { Terms } from "./terms.ts";

/** Water where it does not belong. */
export const water = {
  water: {
    as: "water watter wtr h2o agua waters rainwater floodwater water_line waterline moisture condensation droplets droplet bead",
  },
  rain: {
    as: "rain rains rained raining storm storms hurricane sprinkler sprinklers hose hosed hosing gutter gutters downpour irrigation creek bayou roof power_washed pressure_washed lluvia llovio llueve llover tormenta huracan aspersor manguera chuckin_it_doon",
  },
  flow: {
    verbs:
      "leak drip spray squirt splash seep pour run fill fling shoot spill trickle dribble gush drain weep dump piss ooze",
    as: "leek leeking leekin ran running_down flung shot leaky drippy dripping leakage chuckin spitting leakin getting_in got_in gets_in comes_in came_in",
    nombres: "gotera fuga chorro",
    verbos: "gotear chorrear escurrir salpicar caer mojar meter entrar echar_agua filtrar rociar fugar",
  },
  wet: {
    verbs: "soak drench soak douse",
    as: "wet damp soaking_wet drenched soaked soggy waterlogged wetting wets dunked moxado mojado mojada mojados mojadas mojo moja mojando mojaron empapado empapada humedo humeda humedad empapo",
  },
  flood: {
    verbs: "flood submerge drown swamp immerse",
    as: "underwater under_water submersed drowned inundado inundada inundo inundaron inunda sumergido sumergida ahogado ahogo bajo_el_agua debajo_del_agua full_of_water lleno_de_agua llena_de_agua standing_water sitting_in_water in_water swimming swim swims bath bathing bathtub pond lake aquarium fish_tank fishbowl catfish niagara waterfall took_on_water",
  },
  puddle: {
    nouns: "puddle",
    nombres: "charco",
    as: "standing pool_of_water inches_of_water feet_of_water foot_of_water",
  },
  ground: {
    as: "ground groun concrete slab lawn grass yard garden floor patio driveway dirt soil flower_bed pavement grassy piso suelo zacate pasto jardin bucket basket strainer union o_ring oring multiport gasket valve skimmer prime suction level gauge tank",
  },
  into: {
    as: "in inside into on onto over through down at all_over up_to on_top_of above under underneath out_of en dentro sobre encima adentro por al arriba abajo from off near by next_to around",
  },
} as const satisfies Readonly<Record<string, Terms>>;
