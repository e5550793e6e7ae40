/**
 * Words that mean much the same to the desk, in the spelling `normalize` leaves: the nearest-example model counts
 * them as one, so that an example with "bill" speaks for a message with "recibo". A trailing `*` takes any ending.
 */
const lists: Readonly<Record<string, string>> = {
  staff:
    "person people human humans agent* rep reps representative* operator* someone somebody anyone anybody sumone technician* tech techs specialist* expert* manager* supervisor* staff support salesperson salesman saleslady employee* worker* clerk* colleague* coworker* men man woman lady gal girl guy guys fella fellas fellow dude gentleman gentlemen bloke chap owner crew team counter desk department office persona personas alguien humano humana asesor asesora tecnico tecnica encargado encargada muchacho muchacha representante vendedor vendedora gerente empleado empleada senorita agente agentes",
  machine: "bot bots robot robots machine computer* automated chatbot ai automatic maquina computadora",
  talk: "talk* speak* spoke spoken chat* call calls calling callback phone* ring rang holler discuss* converse contact* reach connect* transfer* voice horn line dial hablar* hable hablen platicar llamar* llame* llamen marque* marcar* marcas comunique* comunicar* paseme pasame pase atender* atienda* telefono llamada ponme",
  delete:
    "delet* eras* wip* remov* purg* scrub* nuk* destroy* shred* expung* unsubscrib* borr* elimin* olvid* discard*",
  data: "data info information details deets particulars record records file files history account profile messages database system datos informacion historial mensajes cuenta privacy gdpr personal stored store storing keep sistema numero guard* registros",
  open: "open opens opened opening close closes closed closing hours schedule shut abr* abiert* cierra* cierran cerrado* horario* horas hour hora",
  day: "monday tuesday wednesday thursday friday saturday sunday weekend* weekday* tomorrow today tonight morning evening holiday* christmas thanksgiving easter labor memorial noon night lunes martes miercoles jueves viernes sabado* domingo* hoy manana noche festivo*",
  energy:
    "bill bills electric electricity electrical kwh energy utility juice watts kilowatt* consumption light* lite luz recibo consum* electricidad energia",
  saving:
    "save saves saved saving savings cheaper payback efficient efficiency economical ahorr* gasta gastar gasto eficiente pays worth annual annually month monthly yearly year anual mes ano mensual",
  cost: "price* pricing cost costs costing quote* quotation bucks dollar* expensive cheap* discount* total tax afford charge* owe budget ballpark damage figure invoice precio* cuest* costo* caro barato* vale cotiz* descuento* dinero",
  bigger:
    "bigger larger stronger beefier beef* upsiz* oversiz* upgrad* powerful heftier greater higher biggest largest strongest grande fuerte potente potencia caballaje fuerza subirle exceed* step bump* jump*",
  again:
    "restart* reset again anew afresh fresh scratch beginning begin redo rewind reiniciar nuevo nueva cero desde zero square mulligan blank clean empez* comen* volver volvamos",
  meaning:
    "mean means meaning meant? stand stands define* definition explain* explanation signif* difference distinction clarify clarification understand understood entiend* diferencia quiere explic* denote* represent*",
  plate:
    "label* tag tags sticker* plate* nameplate placard decal etiqueta* placa* calcomania plaquita print* writing lettering engrav* stamp* letters letras marking* stencil*",
  gone: "gone missing faded fade* worn wore peel* painted paint rust* illegible unreadable scratch* scrap* bleach* corro* eaten rubb* weather* blurry blurred blur ripped torn melt* blank smudg* smear* dirt* crust* deteriorat* disappear* vanish* destroy* fell fallen toast borrad* borros* gastad* despint* oxidad* ilegible oxido sarro chew* obscur* grime mud tar glare dark scuff* rotted rot",
  see: "read reads reading see seeing legible make decipher lee leer leo ve ven ver veo alcanz* distinguir discern eyes glasses ojos lentes",
  wrong:
    "wrong misread mistake mistaken mistyped typo oops whoops sorry actually correction corrected correct correcting apologies err error misspoke transposed swapped backwards equivoqu* confundi perdon disculpa* corrijo correg* mal belay strike amend revise incorrect meant ment rather instead",
  thanks:
    "thank thanks thanking thankful thx ty tysm tnx thnks thanx grateful gratitude appreciate* appreciated gracias agradezco agradecid* obliged cheers bless bendiga merci lifesaver",
  hello:
    "hi hello hey hiya howdy yo greetings hola buenas buenos saludos morning afternoon evening sup ahoy aloha heya ola",
  know: "know knows knew idea clue sure certain dunno idk tell remember foggiest sabe se sabria saber seguro idea recuerdo acuerdo unsure",
  yes: "yes yep yeah yup yea yessir aye affirmative correct right exactly sure ok okay si claro simon exacto asi dale correcto indeed absolutely yah ya",
  no: "no nope nah naw not nay negative never neither none negativo nel tampoco nunca ninguno ninguna nada",
  term: "sf sfa fla thp sfhp hp horsepower horse horses factor frame amps amp amperage amperes volts volt voltage phase rpm hz hertz ambient amb duty insulation class kva code capacitor mfd flange shaft keyed threaded square round poles pole uprated rated thermally protected brida eje marco armazon caballos caballo voltios voltaje amperaje amperios fase impeller diffuser serial model frequency speed cont fr ph ins cl",
  goods:
    "motor motors moter pump pumps bomba bombas filter* impeller* seal seals chlorine heater gasket* part parts valve* cell cells basket",
  ship: "ship* deliver* delivery overnight mail send freight tracking pickup arrive* envio* envian mandan mandar entrega* llega warranty garantia return* refund* stock available existencia",
  wire: "wire wires wiring wired lead leads terminal terminals cable cables cablear conecto conectar connect* hookup",
};

const exact = new Map<string, string[]>();
const starts: (readonly [start: string, concept: string])[] = [];
for (const [concept, list] of Object.entries(lists)) {
  for (const word of list.split(" ")) {
    if (word.endsWith("*")) starts.push([word.slice(0, -1), concept]);
    else exact.set(word, [...(exact.get(word) ?? []), concept]);
  }
}

const remembered = new Map<string, readonly string[]>();

/** The concepts a word stands for; few words stand for more than one. */
export function conceptsOf(word: string): readonly string[] {
  const known = remembered.get(word);
  if (known) return known;
  const found = new Set(exact.get(word));
  for (const [start, concept] of starts) if (word.startsWith(start)) found.add(concept);
  const concepts = [...found];
  if (remembered.size < 20_000) remembered.set(word, concepts);
  return concepts;
}
