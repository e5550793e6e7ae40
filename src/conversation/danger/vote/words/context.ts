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
    as: "brisket ribs grill bbq dinner coffee cigarette cigar campfire fireplace chimney truck car stove dryer tv neighbor_burning trash candle candles steam incense weed joint leaves bushfire wildfire fire_pit detector alarm gray grey meat oven kitchen",
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
