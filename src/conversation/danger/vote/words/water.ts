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
  /** Submerged without the word: only what still shows is told, or how deep it stands. */
  submerged: {
    as: "submarine snorkel scuba periscope island iceberg hippo is_showing showing visible out_of_sight up_to_its_neck al_cuello mask fins diver mermaid crocodile well_with bailing_with sticks_out sticking_out sticks_up pokes_out poking_out peeking peeks peeking_out all_you_can_see all_you_see only_the_top only_the_lid only_the_cover only_the_fan only_the_cap top_inch just_the_top half_under is_under are_under was_under its_under clean_under went_under gone_under completely_under totally_under fully_under under_it motor_deep pump_deep knee_deep ankle_deep waist_deep shin_deep up_to_the up_to_its below_the_water below_water beneath filled_up filled_to full_up full_to to_the_brim brim brimming topped_up rose risen rises rising crested came_up came_over over_the_top overtopped covered_the covers_the covering_the goldfish fish_in frogs_in tadpoles minnows ducks_are bailing bail_out pump_it_out sump sump_quit tapado_de_agua cubierto_de_agua cubierta_de_agua se_asoma asoma sobresale hasta_arriba hasta_el_tope hasta_la_mitad se_lleno se_llena lleno_el subio_el_agua submarino pecera nadando flotando bajo_agua",
    verbs: "submerge engulf swallow sink float inundate",
  },
  pit: {
    nouns: "pit vault sump hole basement cellar pump_room pump_house crawlspace well manhole trench",
    nombres: "pozo fosa sotano hoyo registro cisterna",
  },
  depth: {
    nouns: "inch foot",
    as: "inches feet ft deep deeper pulgadas pies centimetros cm hondo",
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
