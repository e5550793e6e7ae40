/**
 * Everyday English and Spanish words that lie a letter or two from a word of the trade: never mended into it. Found by
 * running a general word list through the mending and keeping what a person would not have meant.
 */
export const everydayWords: ReadonlySet<string> = new Set(
  `
  actor adheres aerial amazon amber ambition ambos ambulance amigo amigos amos ancient antes appear
  appears aspires average bee belt belts bola bold boot bout capable capacity captain carta casa casas
  cease cereal champ chance change chase circle circles claim claps classic clause claws cleaned
  cleaner cleanse closet cloth codex codo cody coke cole collar conduit connection cope corner corre
  corrosion cosa cosas coupling cover crack cracked cramp crazy cuarenta currency cyclone doctor
  doubler dusty eel fact facto factories factory facts faded fall famed faro fast fastens fastest
  favor fell fill filled flagged flame flash flashes fling flung framed frames frase fred frequently
  fuel fully herb hero hiss hopping horsed incl inflation inspect install installation installed
  instead insurance insure intl isolation items iter lacked ladder latter lead leads leather lester
  letrero letters licked licking littler load loaded loads loan located location locked lord loud
  lumber macro manny many marca measure measures medal media medio medir mejor member mentor mess
  messes messing metes metier micro minimum moda model modeled modem modes modo monitor mood motel
  mounted mounts mourning mouthing mudo muter nimbler numbered numeral numeric numeros orange para
  parece parecen parted parties partner party pasa pase paso paste pate patterns peas peer pena pero
  pert phased phrase phrases pieza piezas plan plaza poco poll poor powder powered powers praises
  raced racing racking rage raging raised raising raking raping rates rather ratings rattled rattling
  raving reached reacted reacting read reading ready really reaping reason reining related relating
  rerunning resolution resting revocation rewiring ringing roaming roaring roasted roasting robbed
  rooting rotting round rounding routing rubbing ruining rushing scared school scratches screen seed
  sera serge seria serias serio serious servant server serviced services servicing serving seven
  several shoot shot sicker side sides singled sized sizes slicker smart smell smoke smoked social son
  soon sorts sounds source spare speaker special speech spell spelled spied squad squared squares
  stamps star stare stark started starter startle starts station stationed stay steep step steps
  sterile stewart stopped stuart stuck surface survive survived tables tame tapped temper temperate
  tempo tempt tengo terminal terms tested threads threaten threatened tide tiene tile timed tipos toda
  currents team maps horace sheesh heather moore hamper hampers faces sees fuss tall patterson fuzz meyer meier ours polls
  seize seizes cycled dali panels
  todo todos topples totally tractor treat treated trees trended typed types vale valor vaulted vela
  velo village violet violets voted wait
`
    .trim()
    .split(/\s+/),
);
