import type { Terms } from "./terms.ts";

/** Words that place a danger in time, mood, place or someone's mouth, or give the word another sense. */
export const context = {
  not: {
    as: "no not never dont doesnt didnt isnt wasnt arent werent hasnt havent hadnt aint without nothing nothings nothin nothins nowt nae nobody negative neg none nor neither cant cannot couldnt wont zero nope ni sin nunca tampoco ningun ninguna nada nadie jamas no_one noone dosent dosnt aint doesn",
  },
  now: {
    as: "now today tonight currently rn right_now still just_now this_morning this_am last_night yesterday ahora ahorita hoy ayer anoche sigue todavia since at_the_moment this_week an_hour_ago minutes_ago ago yest yesty as_we_speak",
  },
  last: {
    as: "last_year last_summer last_spring last_fall last_winter last_month years_ago year_ago decades_ago months_ago long_ago years_back summers_back summers_ago el_ano_pasado mes_pasado hace_anos previous previously former formerly used_to antes 2015 2016 2017 2018 2019 2020 2021 2022 2023 1998 back_in last_june last_may in_april in_march in_june in_may in_july in_august in_spring in_the_spring ano_pasado verano_pasado",
  },
  old: { as: "old older first_one earlier vieja viejo anterior last_motor last_one last_pump" },
  fixed: {
    verbs: "fix repair resolve solve sort rewire rebond bond inspect correct certify rebuild redo cure",
    as: "redone redid fixed_it passed sorted signed_off good_now all_good sweet_since fine_since rebuilt repaired settled upgraded arreglo arreglaron arreglado arreglamos reparo repararon reparado solucionado certifico reviso revisaron reviso todo_bien gone_over went_through isolated",
    verbos: "arreglar reparar solucionar revisar certificar",
  },
  replaced: {
    verbs: "replace swap change remove trash junk scrap toss chuck dump ditch disconnect renew",
    as: "replacd pulled tore_out torn_out ripped_out thrown_out threw_out hauled hauled_off hauled_away took_it_out put_in put_a_new cambio cambiaron cambiamos tiramos cambiado new_one cambie gone stopped",
    verbos: "cambiar reemplazar tirar_",
  },
  ended: {
    as: "stopped ended over anymore any_more no_longer no_more ya_no fine_now since_then ever_since quit all_fine works_fine runs_fine runs_cool fine good_as_new turned_out turns_out it_was_just was_only just_steam only_steam steam",
  },
  pro: {
    as: "electrician licensed electricista sparky perito tecnico inspector utility contractor technician tech pro plumber",
  },
  if: {
    as: "if unless suppose supposing assuming imagine in_case what_if si en_caso in_the_event whether gedankenexperiment hypothetically",
  },
  would: {
    as: "would could might may can will should gonna wouldnt couldnt podria podrian puede pueden puedo se_va_a va_a must",
  },
  fear: {
    as: "afraid scared worried worry concerned fear risk danger chance chances likely likelihood possible prevent avoid protect protection against nervous safe miedo riesgo peligro evitar someday one_day algun_dia dangerous hazard hazards ever",
  },
  print: {
    as: "label labels sticker stickers plate nameplate tag manual placard sign print printed printing etiqueta placa calcomania letrero instructions booklet decal box_says carton engraved stamped diagram schematic warnings notice fine_print symbol triangle rating rated class",
  },
  warn: {
    as: "warning caution danger_high_voltage advertencia precaucion peligro achtung hazard do_not thermally_protected to_reduce_the_risk risk_of disconnect_power protected protector connect_only high_voltage",
  },
  says: {
    as: "says say said reads read shows stated states written warns marked labeled dice decia pone lee texted reported reports complained complains",
  },
  hearsay: {
    as: "news youtube article heard video story movie forum internet facebook noticias coworker once tiktok college former_residence hotel last_rental other_house different_house last_house old_house",
  },
  chem: {
    as: "chlorine chemical chemicals cloro acid acido muriatic bleach algae algaecide bag bags lb lbs pounds pound gallons bucket buckets ppm ph alkalinity green cloudy treatment superchlorinated hypo tablets dose oz stabilizer fc weekly",
  },
  price: {
    as: "price prices cost costs quote bill bills precio precios recibo cuenta cuesta deal estimate invoice dollars bucks money budget shipping cotizacion rate sale wallet cash",
  },
  travel: {
    as: "trip_to road_trip camping vacation round_trip field_trip business_trip day_trip family_trip boat viaje two_trips trips_to the_trip bus beach short_trip on_a_trip",
  },
  cooking: {
    as: "brisket ribs grill bbq dinner coffee cigarette cigar campfire fireplace chimney truck car stove dryer tv neighbor_burning trash candles steam incense weed joint leaves bushfire wildfire fire_pit detector alarm gray grey meat oven kitchen",
  },
  /** It was something else after all. */
  turnedOut: {
    as: "turned_out turns_out turned_out_to_be turns_out_to_be turned_out_it was_only was_just it_was_just it_was_only only_the just_the just_my wrong false_alarm false_scare was_a_false mistook mistaken my_mistake my_bad nothing_to_do_with unrelated innocent not_the_pump not_the_motor not_from_the never_mind nevermind nvm disregard ignore_that scratch_that phew whew relief relieved resulto resulto_ser resulto_que era_nomas era_solo falsa_alarma pense_que crei_que no_era",
  },
  /** Thought so at first. */
  thought: {
    as: "thought i_thought thought_i swore could_have_sworn looked_like sounded_like seemed_like figured_it suspected pretty_sure_the had_a_scare scare scared_me_for panicked freaked pense crei parecia",
  },
  /** Gone for good. */
  hauled: {
    verbs: "haul scrap junk trash dump ditch bin recycle retire demolish discard sell",
    as: "scrapped scrap_man scrap_yard scrapyard scrap_metal landfill dumpster curb curbside hauled_off hauled_away to_the_dump at_the_dump the_dump long_gone is_gone are_gone was_gone got_rid rid_of thrown_out threw_out threw_it_out tossed_it tossed_out in_the_trash garbage sold_it chatarra basura se_la_llevaron se_lo_llevaron lo_tire lo_tiramos la_tiramos ya_no_existe",
  },
  /** All of it was renewed. */
  renewed: {
    as: "new_wires new_wire new_wiring new_breaker new_box new_panel new_cable new_conduit new_whip new_cord new_plug new_outlet new_gfci brand_new all_new everything_new everything_is_new is_new are_new its_new everything_replaced everything_was_replaced all_replaced replaced_everything replaced_all redid_all from_scratch start_over starting_over starting_fresh passed_inspection inspected inspection permit signed_off all_clear good_to_go bone_dry todo_nuevo todo_se_cambio se_cambio_todo cambiaron_todo nuevo_todo cables_nuevos instalaron pusieron ya_quedo quedo_bien quedo_listo quedo_arreglado",
  },
  /** Somebody else's pool. */
  others: {
    nouns:
      "neighbor neighbour cousin coworker colleague uncle aunt tenant friend buddy brother_in_law sister_in_law daughter_in_law son_in_law mother_in_law compadre cunado vecino vecina primo prima tio tia amigo amiga suegro suegra",
    as: "his hers theirs his_pump her_pump their_pump his_pool her_pool their_pool next_door down_the_street across_the_street two_doors other_pool other_house a_guy some_guy someone_else somebody_else not_mine not_ours mine_is_fine ours_is_fine mine_is ours_is mine_has_never la_mia_esta la_mia_bien el_mio_bien aqui_no aqui_nunca en_mi_casa_no de_al_lado",
  },
  /** Cooking, camps, holidays: fire and smoke that belong there. */
  fireFun: {
    as: "bbq barbecue barbeque barbecued grill grilled grilling smoker brisket ribs burgers hot_dogs marshmallows smores fire_pit firepit bonfire campfire fireplace chimney cigarette cigarettes cigar cigars vape vapes smoke_break candles citronella incense toast toaster kitchen oven popcorn fireworks firecrackers firecracker bottle_rockets sparklers fourth_of_july 4th_of_july carne_asada parrillada asador asada parrilla fogata cuetes cohetes lumbre_para cigarro cigarros fuma fumando veladora velas wildfire wildfires mower tiki_torch torch leaf_pile burn_pile",
  },
  paint: {
    nouns: "paint painter painting primer coat brush stain dye rust marker mud dirt grease shadow pollen",
    nombres: "pintura pintor brocha barniz oxido lodo tierra_ grasa sombra",
    as: "painted repainted",
  },
  wildlife: {
    nouns:
      "bug mosquito firefly lightning_bug woodpecker wasp hornet bee cricket cicada squirrel rat mouse raccoon lizard gecko ant fire_ant snake spider frog heron crow",
    nombres: "luciernaga mosquito abeja avispa hormiga rata raton ardilla grillo pajaro",
    as: "mice bug_zapper fireflies",
  },
  weather: {
    as: "steam steamy fog mist sunrise sunset moonlight moon lightning thunder heat_wave hundred_degrees degrees heatwave melting_here sun vapor neblina vaho niebla rayos relampagos",
  },
  school: {
    as: "school class homework science science_project project essay quiz test_question course curious just_curious curiosity generally general in_general wondering explain definition meaning difference_between what_is_a whats_a what_does how_does tarea escuela proyecto curiosidad nomas_pregunto por_curiosidad en_general",
  },
  flowFun: {
    as: "current nice_current strong_current jet_stream return_jet lazy_river flood_light floodlight flood_lights floodlights fast_flow toque_final toque_de retoque cable_corto",
  },
  emotion: {
    as: "husband_blew heart_attack stroke gasket shook mind mad angry furious joy interest argument brain imagination joke love absorber absorbers reviews",
  },
  burnedBy: { as: "by_another by_another_store by_the_last got_burned been_burned bit_of a_bit little_bit" },
  thermal: { as: "thermal overload cools cool cooled protector restarts" },
  dead: {
    as: "dead died dies quit gone seized locked stuck shot kaput murio muerto jala prende arranca hums humming zumba noise squeals loud grinding",
  },
  new: { as: "new bigger larger higher another upgrade spare replacement nuevo nueva grande" },
  dry: { as: "dry dried seco seca bone_dry" },
  question: {
    as: "why how what which porque por_que que qué como is_it_normal normal ok_to is_it_ok is_it_safe supposed worry",
  },
} as const satisfies Readonly<Record<string, Terms>>;
