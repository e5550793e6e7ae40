/**
 * Dictionary words one letter away from a word the reader knows: they are what they say, no slip. Made by
 * `tests/nameplate/read/spelling/neighbours.ts` from two general word lists; not to be edited by hand.
 */
export const dictionaryNeighbours: ReadonlySet<string> = new Set(
  `
  abode abort abound accounts aches aching acing agent agora aground alianza aline alloyed ambience ameer amino
  among anted anther antic antis apologizes apres ardent arena argent assume assumes assured atone attics automaton
  backed backs baker bamba banco barker barley barro barroso basked baskets batter batters beached beads beaker
  beakers beaks beams beans bears beast beasts beata beater beato becks beets begin belted bents berta berths bests
  betas betters bettor biddy birth bitter black blacken blacker blade blames blanca blanch bland blanked blanks
  blares blazes bleacher bleaches bleaker bleats blink blocked blots blowers boated boats boiled boilers bolas boles
  bolls bolster bombast bombe bombo bombs boosted boosters booted boots borrow bother bothers bough boughs bouts
  bower bowler brake braked brakes brats braver breached brewer bridal brochures broiler broker brothel brothels
  brought brunt buena bugger builders buildings bunks buried burner burns burped burro burst butter buttery cabello
  cabins cable cabled caging camped canada candidates caning canto canton cantos capacitors carbon carcass cardon
  cargo caria caring carla carron cartons cartoon casal casar cascade cashing casings casino casks casting casts
  catalogs catalogued catalogues caton causing caving ceasing ceilings centavo chanced chancel chances chancy
  chapped charged chargers charges charmer charter chasing checker cheeked chilled chillers chillier chipper chirped
  chloride chock choked chopped chucked cierto cinch circo circuits circulars circulations cisco clack clammed
  clamps clams clans clapped clash clasp clasped clasps classy clave cleaners cleanser clearer clears cleat cleaver
  click clipped cloak clocks closes clover clubhouses cluck clump clumped cocked codes coding coiling cokes coking
  comas combes combing combs comer comers comet comets comings compare compatibles compo compra compressors concert
  condense condensed condensers condenses conditioned conditioners conduct conduits cones conked contacts contain
  contiguous continual continue contractor controlled controllers controls convent converts cooed cooing cooker
  cooled cooped copes coping cores coring corked corrections corrects corrido corrode corrodes cortijo corton cotes
  county court coven covert coves covet coveted covey cower cowered cowing coyer cramped crass crear crewed crock
  crooked crosser crosses crust crusts cuando cuenca cuero cuervo cuesta cuneo cuneta curios currant dairy daisy
  dally damage damages decima deciphers decor dedicate dedicates destroyer diameters differences differs diffuse
  diffused diffuses disconnects dishwashers displays disposals disregards dissolve dissolves doable doily dollar
  doublet doublets doubly downsized drabs drags drams draping drawings drawl drawling drawls drawn drays dread
  dreams dreamy drier drills drily droll dryers duffer eased eater eighteens eights electrica electricians elevens
  endings equals equivalents erase eraser erases estimated estimates ether excerpt exists exits extensions fabled
  facing factors fades faints faked fakes faking falange falla falter falters farda fared fares faring farmer
  farther fasts fated fates fathers fatter faxed faxes faxing fazed fazes feather featured features feels feint
  felled fends feuds fiend fiends fifth figure figures filed filler fillers fillet filmed fired firmer firsts fitter
  fitters flailed flake flakes flamed flames flanges flanked flaps flared flawed flayed flied flier flint flyers
  foiled folds folksy foray forge forged forger forges forgets forgot forks formed forte forth forts founds fount
  fountains foyer framer freed freeze freezers freezes frente fridges frier fries fringe fryer fuera fuerte fumes
  furnaces fused fusses fuzes galan galleon galleons gallo gallop gallops gallows garages gaskets gates gaucho
  gauged gauges gauze genera generals generators gills girds girts givens gives goings goring gouge granda
  grandfathers grandmas grandmothers greats greed greens greet guessers guested gutting habit habla hacia hails
  hairy hales halve halved hamming handier handled handlers hardy hater haven havens haves header healer health
  hearer heated heaters heirs hemming hoarse hoeing holds holed holing homes homing hones honing honked hooded
  hoofed hooker hooped hooping hooted hopes horde hordes horns horsey horsing hoses hosing housed housings humping
  hyping ignored ignores impelled impossibly inched inlays instilled insula interchangeably inverted invisibly
  invoiced invoices irritation issue issued itches kiddies labelled labeo landlords lapel largo lasted lasting lasts
  leading leafing leafs leaks leaning leans leaping leaps lease leasing leaved leaven leaves leaving ledra lends
  lengths lengthy libel libeled libra lifers lifted lifting lifts lilting linda lineal linear lined linen liner
  linera liners lines linger liras lisping lista listen listin listings liter litter litters livers llegar locker
  locket locking locks lodger logar logger loner longed loomed looming looms loons looped looping loops loosed
  loosing looted looting loots lucked lunar lusted lusting lusts machado maids mails maims major males malted manco
  manes mangle mangles mantled manuals march marcha marcia marcio marea marga maria marica marker market marra
  marred marsa marta marzo masked massing master matins matte matted matters mattes maxim maximal maxime maxims
  maximums maybes meals meanings meats meddle melded memes memos mends menor menses mentions menton menus merca
  meres mesas meshes meted meteor meteors micra micron microwaved microwaves middles mighty mikes miler milers milks
  mills mimes minces minds mined miner miners mingled minis minks mints minuet minuets minus minuses mires mislead
  misma misreads mistaken mistakes misting misusing miter miters mites mixes moaning moans modal modulo moles monta
  monte montes monto mooning moors morel mornings mothers moths motored mound mounding mountings mouth mouths mover
  mowed mowers muddle muerte mufti mules muses mutter needy nephews nerds nether newer nicety nieces nieve nights
  noise norma normalcy noshing notching nothings noting novena nuestros numbed oaten obliterate obliterates obscure
  obscures ocher odder offerings older orden orders originals others otter outdoors outputs outset owing owned
  packaged packages packed padres pagel pained pains painter paints palate pales palling palls panes panted panza
  papel pardon parent parring parse pastern patents patter patters pealed pease pecked peeked peeped peered peeved
  pence peopled peoples percents perdido perfecto perfects perro person pests phage phages picker picket pickled
  piles pilling pills pimps pinga pinta pizza plaid plains plaint plait plana plane plante plata plated platen
  plates plato playa plums plunged pocked poder podia point pointed poker pokes polled polling ponder ponds pongo
  popes pores porte poser poses pound precious prefect prefers pressured pressures presto pricked primal prime print
  printer priors priory prisa prisma probed probes problems probo projector promo prone prongs properly propose
  proposer proposes prose protectors protestor prove puerto puller pulley pulped pulping pulps pulsed pulsing pumas
  purging pursing quartet quartets queso questions quiet quinces quine quire quito quits quiza quota quotes quoth
  rafted rafting raged raked rally ramada ranted ranting raped rapped raring rasps raspy ratted ratting raved razed
  razing readings readouts readying reals realty reams reaps rearing rears receipts receptacles recio reckon
  recommenced recommend rectal reeds reenter reenters refrigerators regally regulars relax relays renal render
  renders rending renta rentals rented repay replacements replaces replay replayed replaying resistances resolutions
  rested returnee revolution ribbed riesgo rights rinds rinks ripper rippled roads robots roommates rooted rosada
  rosado rosco rosea rotated rotors rotten rotund rounds routed rungs rushed rustled rusts rutted sabre salar sample
  sander sapped sated satin scare scars scoffed score scram scrape scraper scrapes scraps scratchy screens screwy
  scrip scuffled sealing seals seared sears season seated seeds sello semanal semen serials servile setups sevens
  seventh sever shafts shall shalt sheared shears sheen sheep sheer sheets shelling shells shill shimmers shingle
  shins shipper shire shock shoes shone shoos shopped shopping shops shored shores shorn shots shove showy shrew
  shrews shrike siege sieve sifter sills simile simmers simpler simplex simply singe singles singly sipped sipping
  sirte sitter sitters sixth skated skeet skill skins skipped skipping slain slapped slated sleep sleet slice slider
  slides slime slipped slipping slows sludge smalls smarting smarts smear smelling smells smidge smock smooch
  smooths smudges snapped snare sneaking snicker snide snipped snipping snitch snitches snitching snore snows
  snuffed soars sober soler sombre somethings sonar sooth soothing space spade spake spans spared spares spark spars
  sparse spate speared spearing spears spelling spells spends spewed spiced spices spies spike spill spilt spine
  spines spiny spire spires spits splat splint splits spokes spore sprinkle sprinkled sprinklers sprinkles squire
  squired stabs stack staged stags staid stains stair stairs staked stall stampede stared stares staring starling
  starring startling startups starving state stater states stating stats stave staved stayed stays steed steeds
  stein stepped stick stickers stickier stickler stile stills stilt stinker stirs stitch stitched stitches stitching
  stocks stocky stoke stole stomped stone stooped stopper store stork stoves stows straights strain strained
  strainers stranger strap streaming streets strep strew stride strife striker strikes stringer stripe striped
  stripper strips strive stroke strove stuffed stumped summer summery supple suppose supposes swain swamped swamps
  swatch swatches swear sweats sweeps sweet swelling swells swill swimmers switcher swore systems tabla tabled
  tablet tacking tamer tames tango taster teats teeter teeth televisions temperatures tenis tents terming termini
  testers testes thanking thanks thaws theme themes thermals theses thicket thine things think thinning thins
  thirsty thong thorough though thoughts thrash threats threes throw throws ticked ticker tickets tides tiger tikes
  tiles timber timers tines tires toady toasts toasty toddy tomes tonal tongo topical topically totaled toying
  trabajar trace tracing track tracks tractors train traitor transformed transformers traps trashy treadmills treads
  trice trick tricking tricks tries trifle trims trios tripe tripled triples triplet triply tripos trough truce
  truces trucking trunk trunks tucks tying udder unclean unico unknowns unmasked updated updates upgraded upgrades
  usable vacuums vales vanishes varia variably varnished vases venda venders vendor veneer ventilator venue verde
  verses vexes vices vines visibly voles voltages volume wader wafer wafted wafts wager waited waiter waits wander
  wandering wands waned wanes wares warts washers washes wasted waster waterfalls waters watery waver websites weeds
  weeps welded welders welter wending whale whets while whiled whined white whiten whiter whites whither wholes
  whoop whore whose wilder wiles wincing wined wines wingers winging wining winking winners winning winter wintery
  wiper wipes wiping wished wisher wives wonders woods wording words workings world worming worms wound wring writer
  writes writhe writs wrongs wroth wrung yeahs yearn yearns
`
    .trim()
    .split(/\s+/),
);
