/**
 * What words mean to the danger detector: each concept with its words in English and in the everyday Spanish
 * of U.S. homeowners, folded (lower case, no accents, no apostrophes). Phrases are joined by `_`.
 */
const lists = {
  // Electricity felt by a body.
  shock: "shock shokd shokt shockd shocks shocked shocking electroshock",
  zap: "zap zaps zapped zapping",
  electrocute:
    "electrocute electrocutes electrocuted electrocuting electrocution electrocuto electrocutado electrocutar electrocuta electrocutando electrocutamos electrocutaron electrified electrificada electrificado electrificadas acalambro acalambra acalambran electrocutarme electrocutarse corrientazo calambrazo toquecito toquecitos",
  tingle:
    "tingle tingles tingled tingling tingly cosquilleo cosquillas cosquillitas cosquilleos hormigueo hormigueos hormiguea fizzy prickle prickles prickling prickly pins_and_needles",
  tickle: "tickle tickles tickled tickling buzz buzzes buzzed buzzing sting stings stung",
  feel: "feel feels felt feeling sense sensed siento sienten sentimos siente sentir sintio senti sentia",
  // What a body may call it.
  sensation:
    "juice zing zings zinger zap buzz buzzing tickle sting stinging pulse pulses surge twinge thump prick pricks pinprick pinpricks pinpricking needles prickling static zip jolt current electricity charge voltage spark throbbing vibrating corrientita cosquilla piquete piquetes pinchazo pinchazos",
  react:
    "twitch twitched twitches jerk jerked jerks yelp yelps yelped yelping flinch flinched flinches recoiled jumped_back pulled_back let_out_a_yelp spasm spasmed",
  bite: "bite bites bit bitten biting nip nips nipped nipping sting stings stung pinch pinched pinches",
  blow: "hit hits knock knocks knocked kick kicks kicked grab grabs grabbed threw throws thrown poke pokes poked",
  current:
    "electricity current voltage electric_current electrical_current electric_charge charge electricidad corriente",
  volts: "v volt volts vac voltios voltio",
  // The metal skin of a machine; "frame" alone is a size on the label.
  chassis:
    "case casing housing shell chassis enclosure bracket motor_frame the_frame motor_body pump_body motor_case motor_can carcasa carcaza",
  earth:
    "ground earth dirt soil lawn rod ground_rod stake neutral slab concrete deck_screw bonding_lug bonding_wire ground_wire tierra varilla suelo piso neutro",
  stripped:
    "bare bared naked exposed stripped frayed uncovered uninsulated chewed gnawed severed showing sticking_out hanging_out pelado pelados pelada pelones desnudo desnudos expuestos al_aire destapada destapados descubiertos",
  underPower:
    "live hot energized plugged_in still_plugged still_on still_running power_on power_is_on powers_on powered breaker_on breaker_is_on breakers_on on_right_now its_on still_works con_corriente con_luz prendida prendido conectado conectada energizados energizado vivos vivas",
  victim:
    "me us him her them you ya someone somebody everyone everybody anyone people kid kids child children son sons daughter daughters wife husband hubby dog dogs cat puppy nephew niece grandson granddaughter grandkid grandkids guest guests friend friends brother sister mom dad mother father boy girl baby toddler swimmer swimmers tenant neighbor guy cleaner myself himself herself my hand hands finger fingers arm arms leg legs foot feet toe toes elbow skin body",
  person:
    "i we he she you they u ive weve im id wife husband hubby kid kids son daughter dog nephew niece grandson friend brother sister mom dad mother father guy somebody someone everybody everyone anybody anyone people neighbor neighbors boss",
  touch:
    "touch touches touched touching tuch toutch grab grabs grabbed grabbing hold holds held holding lean leans leaned leaning reach reached brush brushed barefoot tocar toco toque tocas toca tocamos tocarlo tocarla tocando agarro agarrar agarre agarras",
  poolMetal:
    "ladder ladders rail rails handrail handrails railing coping deck step steps stair stairs pool_light light fence fixture faucet escalera escaleras escalerilla barandal pasamanos reja luz",
  poolWater: "water pool spa tub hot_tub jacuzzi agua piscina alberca pileta",
  machine:
    "pump pumps motor motors moter motores bomba bombas equipment unit machine casing housing heater filter lid valve chlorinator filtro carcasa carcaza",
  // Heat, smoke, sparks.
  burn: "burn burns burning burned burnt burnin burnd carbonized carbonised toasted charring scorched scorching singed charred quemado quemada quemados quemadas quemando quemandose quemo quema queman quemaron tatemado chamuscado chamuscada chamuscados",
  burning: "burning burnin quemando quemandose",
  smoke:
    "smoke smokes smoked smoking smoky smokey smokin smok smolder smoldering smouldering humo humito humazo humea humear humeaba humeo humee humeando humeante",
  spark:
    "spark sparks sparked sparking sparkin chispa chispas chispea chispeando chispazo chispazos chisporrotea chisporroteando chispitas chispita",
  arc: "arcs arced arcing arcin arcking arc_flash arqueando arqueo",
  flames:
    "flames flame flaming ablaze inferno fuego lumbre incendio incendiando incendia ardiendo llamarada llamaradas",
  melt: "melt melts melted melting molten carbonized carbonised toasted charring derretido derretida derretidos derritio derritiendo derrite derretidas derritieron scorched charred blackened browned singed chamuscado chamuscada chamuscados",
  smell:
    "smell smells smelled smelling smelly smelt smel odor odour stink stinks stank stinking stench reek reeks whiff scent aroma aromas waft wafting huela huelan huele huelen olor oler olia oli oliendo apesta peste tufo",
  burntSmell:
    "burn burns burning burned burnt burnin burnd carbonized carbonised toasted charring scorched singed electric electrical electronics ozone plastic rubber insulation wire wires cable cables wiring hot acrid fishy melted melting toast toasted toasty bbq barbecue smoke smoky smokey campfire fireworks gunpowder cooked cooking quemado quemada quemados quemando chamuscado chamusquina tatemado hule plastico goma acre humo electrico",
  crackle: "crackle crackles crackling crackly crackled crepita",
  sizzle: "sizzle sizzles sizzling sizzled",
  // Protective devices and what they do.
  device:
    "breaker breakers gfci gfcis gfi gfis gcfi rcd rccb elcb rcbo residual_current_device afci fuse fuses circuit circuits circuit_breaker pastilla pastillas fusible fusibles taco tacos diferencial termica termico interruptor interruptores cortacircuitos cortacircuito llave_termica automatico automaticos plomos braker brakers ground_fault",
  socket: "outlet outlets receptacle plug panel subpanel switch disconnect power_strip power electricity",
  trip: "trips tripped tripping tripin tripd trippin triped tripea tripean tripeo tripeando trippea",
  popOff:
    "pop pops popped popping kick kicks kicked kicking throw throws threw throwing thrown blow blows blew blown blowing knock knocks knocked knocking jump jumps jumped jumping snap snaps snapped bust busts busted trip",
  goOff:
    "go goes going went turns turned turning shut shuts shutting cut cuts cutting flip flips flipped flipping click clicks clicked clicking drop drops dropped dropping come comes switches switched switching flicks jumps kicks kicked kicking falls fell falling",
  refuses:
    "will_not can_not does_not could_not would_not did_not declines fails_to wont cant cannot doesnt dont didnt couldnt wouldnt refuses isnt never",
  fallEs:
    "bota botan botaba boto botar botando baja bajan bajo bajaba bajar bajando salta saltan salto saltaba saltar saltando brinca brincan brinco brincaba brincando brincar dispara disparan disparo disparaba disparando disparar tumba tumbo tumban tumbando tumbar truena avienta aviento tira tiro tiraba tirando corta desconecta apaga cae caen cayo va fue botarse bajarse dispararse brincarse saltarse caerse quema quemo funde fundio revienta revento bota vuela vuelan volo",
  // Water and what it must stay away from.
  wetNoun:
    "water leak leaks leaked leaking leakage leakin drip drips dripped dripping drippin spray sprays sprayed spraying squirt squirts squirting squirted rain rains rained raining rainwater splash splashes splashed splashing sprinkler sprinklers seep seeps seeping seeped moisture condensation runoff watter humidity puddle puddles charco charcos agua gotea goteando gotear goteo gotera chorrea chorreando chorro escurre escurriendo lluvia llueve llovio fuga salpica salpicando moja mojando",
  soaks:
    "spray sprays sprayed spraying squirts squirting squirted splash splashes splashed splashing drench drenches drenched drenching soak soaks soaked soaking flood floods flooded flooding wetting wets hosed moja mojo mojando empapa empapo salpica salpicando inundo inunda",
  wet: "wet soaked soaking soaken drenched drowned drowning flood floods flooded flooding submerged submersed underwater under_water waterlogged soggy mojado mojada mojados mojadas mojo mojaron moxado inundado inundada inundo inundaron inundados empapado empapada empapo sumergido sumergida encharcado encharcada bajo_el_agua bajo_agua",
  flood:
    "flood floods flooded flooding underwater under_water submerged inundado inundada inundo inundaron sumergido sumergida bajo_el_agua",
  pooled: "puddle puddles water charco charcos agua floodwater",
  livePart:
    "wire wires wiring panel panels subpanel breaker_box breaker_panel electrical_box junction_box electric_box wiring_box terminal_box connection_box conduit_box j_box jbox jb outlet outlets receptacle receptacles plug plugs cord cords extension_cord conduit timer timers time_clock timeclock timer_box control_box gfci gfi breaker breakers electrical electrics electronics terminal terminals terminales switch_box automation control_panel circuit_board disconnect disconnect_box fuse_box power_strip splice splices alambre alambres cable cables cableado caja cajas cajita enchufe enchufes tomacorriente tomacorrientes contacto tablero centro_de_carga reloj apagador interruptor clavija transformer light_fixture pool_light light_niche end_bell bell_housing capacitor_housing capacitor_cover motor_housing pastilla pastillas vents motor_vents",
  motor: "mtr motor motors moter motores electric_motor",
  room: "room pad pit vault closet shed area equipment cuarto maquinas",
  into: "up_to all_over in inside into on onto over through down en dentro sobre encima al a por adentro out",
  near: "in inside into on onto over by at around near within through above all up underneath under behind surrounding next en dentro sobre encima al a por adentro junto cerca alrededor debajo from out off_of where donde",
  // Things of the plumbing that share a name with live parts.
  plumbing:
    "drain_plug winter_plug winterizing_plug expansion_plug bleed_plug air_relief_plug vacuum_breaker",
  // A feeling that is electric only beside a touch and a thing that may be live.
  weakFeeling:
    "poke pokes belt whack wallop thump hurt hurts hurting ache aches numb numbness cramp cramps cramping spicy ouch ouchy sting stings stinging pain painful electric shaking trembling tremble tremor",
  contact:
    "touch touches touched touching tuch grab grabs grabbed grabbing lean leans leaned leaning barefoot hand hands finger fingers feet foot elbow arm arms tocar toco toque agarro mano manos pies descalzo",
  // Metal or water that people touch; "pool" alone is too often part of a name.
  touchable:
    "water ladder ladders rail rails handrail handrails railing fence case casing housing body shell coping deck agua escalera barandal pasamanos carcasa carcaza reja",
  // Words that place a danger in time, mood or someone's mouth.
  negator:
    "no not never dont doesnt didnt isnt wasnt arent werent hasnt havent hadnt aint without nothing nothings nothin nothins nowt nae 0 0.0 nobody negative neg none nor neither cant cannot couldnt wont zero nope ni sin nunca tampoco ningun ninguna nada nadie jamas no_one noone stopped quit",
  // What smoke and smells come from when the pump is not to blame.
  benign:
    "mower lawnmower belt mouse truck tractor bonfire campfire barrel neighbor neighbors neighbour bbq barbecue grill grilling grilled candle candles steam dust fog mist trash fireplace chimney dinner cigarette cigar leaves brush toast toaster kitchen rinsing washing vapor pollen fireflies lightning_bugs lightning_bug woodpecker cricket crickets crayons sunset gnats bugs tarp sap varnish fleece glare luciernagas comal asador parrilla",
  otherFire:
    "bonfire bonfires campfire campfires firepit fire_pit bbq barbecue grill grills grilling smoker parrilla asado wildfire wildfires bushfire forest_fire chimney fireplace cigarette cigarettes cigar mower lawnmower lawn_mower tractor truck trucks car candle candles incense kitchen oven stove trash leaves fireworks fuegos_artificiales cohetes vela incendio_forestal tortillas",
  printedThing:
    "label labels sticker stickers plate nameplate tag manual placard sign print printing etiqueta placa calcomania letrero instructions booklet decal box carton engraved stamped diagram schematic warnings page paper chart notice fine_print small_print rotulo",
  saying:
    "says say said reads read shows printed states stated written wrote warns warning marked labeled labelled mentions dice pone diciendo lee",
} as const;

interface Entry {
  readonly concept: string;
  readonly words: readonly string[];
}

const single = new Map<string, Set<string>>();
const phrases = new Map<string, Entry[]>();

for (const [concept, list] of Object.entries(lists)) {
  for (const term of list.split(" ")) {
    const words = term.split("_");
    const first = words[0] ?? term;
    if (words.length > 1) phrases.set(first, [...(phrases.get(first) ?? []), { concept, words }]);
    else single.set(term, new Set([...(single.get(term) ?? []), concept]));
  }
}

const none: ReadonlySet<string> = new Set();

/** The concepts of each word; a phrase gives its concept to all of its words. */
export function conceptsOf(words: readonly string[]): readonly ReadonlySet<string>[] {
  const result: ReadonlySet<string>[] = words.map((word) => single.get(word) ?? none);
  words.forEach((first, i) => {
    for (const { concept, words: phrase } of phrases.get(first) ?? []) {
      if (!phrase.every((word, k) => words[i + k] === word)) continue;
      phrase.forEach((_, k) => {
        result[i + k] = new Set([...(result[i + k] ?? none), concept]);
      });
    }
  });
  return result.map((concepts) =>
    concepts.has("plumbing") ? new Set([...concepts].filter((one) => one !== "livePart")) : concepts,
  );
}

/** True for a word some concept knows. */
export function isKnown(word: string): boolean {
  return single.has(word);
}

/** Guards pattern lists: a misspelt concept would silently never match. */
export function isConcept(name: string): boolean {
  return Object.hasOwn(lists, name);
}
