import type { Terms } from "./terms.ts";

/** A protective device opening, and people closing it again. */
export const trip = {
  trip: {
    verbs: "trip",
    as: "tripin triped triping tripd trippin nuisance_trip nuisance_tripping tripea tripean tripeo tripeando trippea trippeando",
  },
  opens: {
    verbs:
      "pop kick throw blow knock click flip snap bust jump drop open switch turn shut cut go quit bail fail kill lose come operate fall give take spring unlatch release disengage",
    as: "threw thrown blew blown went gone goes lost lets_go let_go off_again carking rage_quit goes_down came_off comes_off bails keeps_going_off",
    verbos:
      "botar bajar saltar brincar disparar tumbar tirar cortar apagar desconectar caer aventar reventar fundir volar quemar tronar ir desarmar",
    nombres: "disparado botado",
  },
  off: {
    as: "off out back_out halfway middle_position middle tripped_position back_off goes_dark went_dark dark sin_luz apagado se_va_la_luz se_fue_la_luz loses_power lose_power lost_power",
  },
  refuses: {
    as: "wont cant doesnt will_not can_not does_not refuses refusing couldnt wouldnt not_hold never fails_to declines no_longer not_want",
  },
  hold: {
    verbs: "hold stay remain stick reset latch set catch",
    as: "stay_on stays_on stay_in stay_up hold_on rset rsetting aguanta sostiene queda detiene se_queda reengage",
  },
  /** Keeping a device closed by force, or making it deaf. */
  defeat: {
    verbs:
      "tape wedge zip_tie jam prop bypass bridge jumper jump defeat tie pin shim clamp strap glue oversize upsize upsized",
    as: "duct_tape duct_taped electrical_tape clothespin clothes_pin toothpick popsicle_stick bungee rubber_band bobby_pin paperclip paper_clip zip_tie zip_ties stick wood_block thumb penny foil tinfoil nail_in held_down hold_it_in holding_it_in hold_it_down holding_it_down keep_it_from cant_drop cant_trip wont_trip_anymore bigger_breaker bigger_fuse larger_breaker put_in_a_30 took_it_out taken_out around_the_gfci wired_around wired_straight wired_direct palito palo finger_on_it finger_on_the brick chunk_of_wood cardboard took_the_guts screw_where straight_to directly_to direct cinta cinta_de_aislar amarre amarrado amarramos puente puenteado puentee puenteamos directo pinza palillo trabado atorado atore",
  },
  /** A device told by its effect: everything it feeds goes dead. */
  blackout: {
    as: "goes_dark went_dark goes_dead went_dead goes_black went_black pitch_black whole_house half_the_house entire_house everything_dies everything_goes everything_off everything_quits everything_shuts lights_out lights_go lights_went blackout flashlight no_power without_power loses_power lose_power lost_power kills_power kills_the knocks_out takes_out take_out took_out the_main main_breaker kitchen_clocks clocks_blinking blinking_clock toda_la_casa sin_luz se_va_la_luz se_fue_la_luz nos_quedamos apagon a_oscuras test_and_reset test_reset reset_button buttons push_the_button the_little_button",
  },
  clunk: {
    as: "clunk clack clonk thunk clac snap click clicks bam boom pum tac plop clap",
  },
  reset: {
    verbs: "reset",
    as: "rset rsetting resetting resets reset_it re_energised re_energized reenergize reinstated flip_it_back flip_back puts_it_back put_it_back turn_it_back push_it_back shove resetear reseteo resetea reset_button resetie subir subo levanto levantar reinicio reiniciar",
  },
  again: {
    as: "again again_and_again keeps keep kept everytime every_time each_time each every constantly always repeatedly over_and_over times whenever often frequently occasionally sometimes now_and_then second_time third_time third fourth fifth twice thrice daily nonstop always continually instantly immediately instant vez veces siempre cada cada_rato cada_vez a_cada_rato otra_vez de_nuevo sigue seguido third second ready_again",
  },
  start: {
    as: "starts start starting started startup kicks_on comes_on kick_on turns_on turn_on turned_on fires_up fire_up fires_up spins_up plug plugged plugs plug_in arranca arranque arrancar prende prendo prender enciende encender conecto conecta prendida arrancando runs running run strt startin",
  },
} as const satisfies Readonly<Record<string, Terms>>;
