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
      "tester meter multimeter voltmeter non_contact_tester tick_tracer voltage_pen detector probe voltage_tester thermal_camera",
    nombres: "probador multimetro voltimetro",
  },
  bare: { as: "bare exposed frayed pelado pelados pelada pelan cut uninsulated chewed nicked" },
} as const satisfies Readonly<Record<string, Terms>>;
