import type { Terms } from "./terms.ts";

/** What a body feels and does. */
export const shock = {
  shock: {
    verbs: "shock",
    as: "shok shoked shokd shokt shockd electric_shock electrical_shock electroshock shocker",
    nouns: "shock",
  },
  zap: { verbs: "zap electrocute electrify", as: "electricuted electrocution zapp zapps defibrillator" },
  tingle: {
    verbs: "tingle prickle",
    nouns: "pinprick pin_prick tingling",
    as: "tingly tingel tingley prickly pins_and_needles pins_n_needles fizzy tiny_needles thousand_needles staticky",
    nombres: "cosquilleo hormigueo",
    verbos: "hormiguear cosquillear",
  },
  jolt: { verbs: "jolt zing", nouns: "zinger jolt zing thump twinge", as: "jolty" },
  toque: {
    nombres: "toque calambre descarga corrientazo calambrazo chispazo sacudida latigazo chicotazo piquete",
    as: "patadon patadones toquezote toquesote cosquilleada calambrito calambritos toquecito toquecitos patada patadas descarguita corrientita",
    verbos: "electrocutar electrificar acalambrar sacudir",
  },
  buzzFeel: {
    verbs: "buzz hum vibrate tremble throb pulse pulsate quiver",
    as: "buzzy trembling vibration pulses fuzzy",
  },
  bite: {
    verbs: "nip pinch poke sting prick bite kick whack wallop smack belt slap tickle stab punch",
    as: "bit bitten stung bites teeth nipped tickly stingy spicy kik kiked belt ouch ouchy ticklish ow yowch",
    verbos: "picar pellizcar morder patear cosquillar aventar",
    nombres: "cosquilla",
  },
  numb: {
    as: "numb numbness cramp cramps cramping weak asleep twitch twitches twitched twitching paralyzed seized_up stiff dormido dormida entumido entumida adormecido adormecida adormece tiembla temblando",
  },
  throwBack: {
    as: "knocked_back thrown_back threw_me knocked_me threw_him knocked_him on_my_butt on_my_ass across_the jumped_back let_go turn_loose lit_me_up lit_up light_you_up got_me gets_me got_him got_her nailed_me hit_me hits_me got_lit_up grabbed_me let_me_go couldnt_let_go cant_let_go locked_onto flew_back me_good him_good me_pretty_good pretty_good couldnt_open_my_hand couldnt_pull_away could_not_let_go hand_clamped hand_locked froze_on stuck_to_it stuck_to_the pulled_her_off pulled_him_off pried se_quedo_pegado se_quedo_pegada quedo_pegado quedo_pegada me_quede_pegado pegado pegada lo_avento la_avento me_avento lo_tiro me_tiro me_lanzo lo_lanzo no_podia_soltar se_solto",
  },
  feel: {
    verbs: "feel sense notice",
    as: "felt feelin sintio siento siente sienten sentimos sentir senti sentia sintieron siento sentido sintiendo feeling sensation sensations",
  },
  touch: {
    verbs: "touch grab hold lean brush reach climb wipe tap",
    as: "tuch tuchd toutch tuching held grabed barehanded bare_handed bare_feet barefoot barefooted leaned holding wet_hands descalzo descalza tocar",
    verbos: "tocar agarrar tentar pisar recargar",
  },
  body: {
    nouns:
      "hand finger arm leg foot elbow shoulder fingertip knuckle skin wrist toe paw nose teeth tongue body spine chest forearm hair knee ankle lip mouth",
    nombres: "mano brazo dedo pie pierna codo hombro cuerpo piel pelo",
    as: "feet fingers hands teeth tooth",
  },
  animal: {
    nouns: "dog cat puppy retriever lab pup horse cow kitten bird duck frog raccoon pooch doggo",
    nombres: "perro gato",
    as: "perrita gatita",
  },
  kidPerson: {
    nouns:
      "kid child son daughter wife husband hubby brother sister mom dad mother father boy girl baby toddler guest swimmer tenant neighbor neighbour guy nephew niece grandson granddaughter grandkid grandbaby friend customer client resident lifeguard renter roommate cousin uncle aunt grandma grandpa bather camper student counselor teenager teen",
    as: "children ppl people somebody someone everyone everybody folks boss buddy pool_guy pool_man bro mama papa",
    nombres:
      "hijo hija nino nina esposo esposa vecino vecina abuelo abuela nieto nieta hermano hermana suegra cunado inquilino huesped primo sobrino",
  },
  me: { as: "me us him her them ya you myself himself herself me_ nos le les" },
  react: {
    verbs: "yelp flinch squeal jerk scream holler yell recoil yank squeak shriek cry hiss",
    as: "rigid stiff wont_go_near wouldnt_go_near said_a_bad_word woke_me surprise slaps spicy jumped_out jumped_back pulls_her_hand pulled_his_hand ran_out got_out_fast wont_get_back_in refuses_to_get_in wont_go_near wont_go_in wont_get_in cried crying llorando lloro grito gritando brinco hollered backs_off swam_out lit_out everyone_out everybody_out get_out got_out",
  },
  tasteTongue: {
    as: "battery batteries nine_volt 9_volt 9v electric_fence cattle_prod taser tazer stun_gun electric_chair electric_eel licked pila bateria",
  },
} as const satisfies Readonly<Record<string, Terms>>;
