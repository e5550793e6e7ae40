import type { Terms } from "./terms.ts";

/** Things that are live, that protect, and that people touch. */
export const electric = {
  /** Opens by itself when something is wrong. */
  device: {
    nouns:
      "breaker gfci gfi gfic gcfi rcd rccb elcb rcbo rcb mcb afci fuse brkr circuit_breaker cut_out cutout residual_current_device safety_switch ground_fault ground_fault_breaker ground_fault_outlet gf_breaker trip_switch main_breaker braker",
    nombres:
      "pastilla fusible taco diferencial interruptor interruptor_diferencial cortacircuito termomagnetico disyuntor brequer breiker automatico plomo llave_termica",
    as: "fusebox termica termicas térmica",
  },
  /** May be the device or what it feeds. */
  circuit: { nouns: "circuit switch", nombres: "circuito palanca switche apagador" },
  button: { nouns: "button lever handle toggle", as: "test_reset reset_button" },
  wiring: {
    nouns:
      "wire cable cord extension_cord conduit lead splice wire_nut lug terminal conductor whip pigtail connection connector prong contact fitting hot_leg",
    as: "wiring wirin wirs wirings winding windings insulation electrical electrics electronics terminal_strip terminal_board",
    nombres: "alambre cable conexion terminal clavija extension cordon contacto",
  },
  box: {
    nouns:
      "panel sub_panel subpanel breaker_box breaker_panel electrical_box electric_box junction_box wiring_box terminal_box connection_box clamp_box conduit_box j_box jbox fuse_box switch_box timer_box control_box control_panel power_box starter_panel disconnect disconnect_box timer time_clock timeclock outlet receptacle plug socket power_strip switch_plate faceplate transformer contactor starter relay controller circuit_board load_center metal_door_thing gray_box grey_box distribution_board electric_panel meter_box",
    nombres:
      "caja caja_electrica tablero enchufe tomacorriente toma reloj centro_de_carga registro transformador",
    as: "jb cajita automation",
  },
  capacitor: { nouns: "capacitor cap condenser", nombres: "capacitor condensador" },
  motor: { nouns: "motor mtr moter engine electric_motor", nombres: "motor", as: "motores moto" },
  motorPart: {
    nouns:
      "vent end_bell endbell winding shaft end_cap end_cover back_cover wiring_compartment wiring_cover slot bell_housing motor_housing bearing",
    nombres: "bobina embobinado rejilla devanado",
  },
  pump: { nouns: "pump", nombres: "bomba", as: "pmp bombita" },
  equipment: {
    nouns:
      "unit machine heater filter chlorinator cleaner pad pump_room pump_house pump_closet equipment_room vault shed pit enclosure closet",
    as: "equipment filtro calentador equipo cuarto_de_maquinas cuarto_de_la_bomba basement",
  },
  housing: {
    nouns: "housing casing case shell body frame lid cover cap bracket strainer_lid",
    nombres: "carcasa carcaza tapa cuerpo",
  },
  metal: {
    nouns:
      "ladder rail handrail hand_rail railing grab_bar step stair fence coping faucet spigot post pole rope pipe fixture diving_board metal pool_light niche light_ring drain jet return return_jet skimmer",
    as: "iron steel aluminum deck barandal pasamanos reja cerca tubo metal escalon escalones",
    nombres: "escalera escalerilla barandilla",
  },
  light: { nouns: "light lamp bulb", as: "foco lampara" },
  pool: { nouns: "pool spa tub hot_tub jacuzzi swimming_pool", nombres: "alberca piscina pileta tina" },
  power: {
    as: "power electricity current voltage juice volts volt vac charge energized live electrified hot_to_ground electric_current corriente electricidad electrico electrica luz voltaje voltios stray_voltage stray_current 240 120v 240v 220 amperage",
  },
  meter: {
    nouns:
      "tester meter multimeter multimetre voltmeter dmm test_lamp test_light neon screwdriver_tester non_contact_tester tick_tracer voltage_pen detector probe voltage_tester thermal_camera",
    verbs: "measure probe read register",
    as: "probes readings marca",
    nombres: "probador multimetro voltimetro",
    verbos: "medir marcar",
  },
  bare: {
    verbs: "strip fray gnaw chew expose nick peel shred skin",
    as: "bare bared naked uncovered uncapped unprotected uninsulated hanging_out hanging_open sticking_out poking_out dangling open_to_the_air cut severed sliced torn copper strands strand shiny_wire shiny_copper no_cover no_lid no_cap without_a_cover without_the_cover without_its_cover without_a_lid cover_is_off cover_off cover_is_gone cover_is_missing cover_missing lid_off wide_open staring lost_the_cover missing_cover missing_its_cover uncoated loose_ends wire_ends al_aire expuesto expuesta expuestos expuestas descubierto descubierta descubiertos desnudo desnudos cobre hilitos pelon pelones sin_tapa sin_forro sin_aislante roido roidos mordido mordidos trozado trozados",
    verbos: "pelar trozar roer",
  },
  /** Power is on: what makes an open part deadly. */
  energized: {
    as: "live hot energized energised powered powered_up powered_on plugged_in still_plugged still_on still_running still_hot still_live power_on power_is_on powers_on powers_still_on breaker_on breaker_is_on breakers_on turned_on switched_on is_on its_on on_right_now running_right_now running_now still_works still_works_fine running keeps_running still_hooked still_connected still_energized con_corriente con_luz prendido prendida encendido encendida conectado conectada energizado energizada vivo vivos jalando trabajando andando funcionando sigue_prendida sigue_prendido",
  },
  terminal: {
    nouns:
      "terminal lug screw_terminal terminal_screw terminal_block busbar bus_bar bonding_lug wire_nut stud brass_screw contact blade prong",
    nombres: "borne terminal tornillo",
  },
  earth: {
    as: "ground grounded earth ground_rod ground_wire neutral dirt lawn earth_ground bonding bonding_wire bond_wire bonded ungrounded grounding tierra varilla neutro",
  },
} as const satisfies Readonly<Record<string, Terms>>;
