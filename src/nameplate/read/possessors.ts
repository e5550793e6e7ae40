import { isMark, isWord, type Token } from "./token.ts";

/** Who shares the customer's pool: what he or she owns is the customer's too. */
const household =
  /^(?:husband|hubby|wife|wifey|spouse|partner|fiancee?|girlfriend|boyfriend|esposo|esposa|marido|mujer|senora|viejo)$/;
/** So many tokens before a possessive somebody of the household may be named. */
const reach = 14;

const nouns = ["pump", "motor", "one", "unit", "setup", "bomba"];
const papers = ["label", "plate", "tag", "sticker", "nameplate", "placa", "etiqueta"];
const verbs =
  /^(?:is|are|was|has|had|says|said|reads|shows|takes|draws|pulls|runs|uses|needs|came|comes|only|just|got|does|es|era|dice|tiene|trae|jala|usa|lleva|marca|solo)$/;

/** The token after words that point at the writer's own motor: "la de nosotros", "esta es", "este dice". */
export function ownPronoun(tokens: readonly Token[], at: number): number | undefined {
  const [token, next, last] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (isWord(token, "el", "la") && isWord(next, "de") && isWord(last, "nosotros", "aqui", "aca", "uno"))
    return at + 3;
  return isWord(token, "esta", "este") && isWord(next, "es", "dice", "tiene", "trae", "marca")
    ? at + 1
    : undefined;
}

/** The token after a pronoun that stands for a motor of somebody else: "hers", "his is", "el de ella", "your motor". */
export function othersPronoun(tokens: readonly Token[], at: number, contrasted: boolean): number | undefined {
  const token = tokens[at];
  if (token?.kind !== "word") return undefined;
  const next = tokens[at + 1];
  if (isWord(token, "hers", "theirs")) return contrasted ? at + 1 : undefined;
  if (contrasted && isNamed(token) && isWord(next, ...nouns)) return at + 2;
  const relative = relativeOfOthers(tokens, at);
  if (relative) return relative;
  if (isWord(token, "yours") && speaks(next)) return at + 1;
  if (isWord(token, "his", "her", "their", "your")) {
    if (ofHousehold(tokens, at)) return undefined;
    if (isWord(token, "his") && contrasted && speaks(next)) return at + 1;
    const owned = isWord(next, ...nouns) || (!isWord(token, "her") && isWord(next, ...papers));
    return contrasted && owned ? at + 2 : undefined;
  }
  if (!isWord(token, "el", "la", "los", "las")) return undefined;
  if (isWord(next, "suyo", "suya", "tuyo", "tuya") && speaks(tokens[at + 2])) return at + 2;
  const pronoun = isWord(next, "de") && isWord(tokens[at + 2], "el", "ella", "ellos", "ellas", "ustedes");
  return pronoun && speaks(tokens[at + 3]) && !ofHousehold(tokens, at) ? at + 3 : undefined;
}

/** "Odalys's motor": a name, no "Pump's" or "That's". */
function isNamed({ chunk, norm }: Token): boolean {
  return /^[A-Z][a-z]{1,20}['’]s$/.test(chunk.text) && !ordinary.test(norm);
}

const ordinary =
  /^(?:motor|pump|pool|spa|label|plate|tag|house|home|manufacturer|maker|factory|company|today|yesterday|it|that|what|here|there|who|let|he|she|how|where|frame|builder|owner)s?$/;

/** "the one you recommend", "el que ustedes venden": what somebody offers. */
function relativeOfOthers(tokens: readonly Token[], at: number): number | undefined {
  if (isWord(tokens[at], "one", "motor", "unit") && isWord(tokens[at - 1], "the")) {
    const who = isWord(tokens[at + 1], "that", "which") ? at + 2 : at + 1;
    const verb = tokens[who + 1];
    const offers = verb?.kind === "word" && offering.test(verb.norm);
    return offers && isWord(tokens[who], "you", "he", "she", "they", "yall", "youve") ? who + 2 : undefined;
  }
  if (!isWord(tokens[at], "el", "la") || !isWord(tokens[at + 1], "que")) return undefined;
  const who = isWord(tokens[at + 2], "ustedes", "usted", "me", "nos", "ellos") ? at + 3 : at + 2;
  const verb = tokens[who];
  return verb?.kind === "word" && offeringSpanish.test(verb.norm) ? who + 1 : undefined;
}

const offering =
  /^(?:recommend|suggest|list|show|sell|quote|offer|carry|mention|advertise|propose|stock|have|post|link|pick|picked|linked|posted|recommended|suggested|listed|showed|quoted|offered|mentioned|advertised|proposed)$/;
const offeringSpanish = /^(?:recomiend|ofrec|vend|suger|cotiz|anunci|muestra)[a-z]{0,6}$/;

/** What comes next tells something of it. */
function speaks(next: Token | undefined): boolean {
  if (next?.kind === "word") return verbs.test(next.norm);
  return next?.kind === "number" || isMark(next, ":", ",");
}

function ofHousehold(tokens: readonly Token[], at: number): boolean {
  return tokens
    .slice(Math.max(0, at - reach), at)
    .some((token) => token.kind === "word" && household.test(token.norm));
}

/**
 * The message speaks of its writer's own motor, so that "her pump" is set against it. Who writes for a mother or a
 * neighbour speaks of one motor only.
 */
export function namesOwn(tokens: readonly Token[]): boolean {
  return tokens.some((token, at) => {
    if (isWord(token, "mine", "mines", "ours", "we", "weve", "our")) return true;
    const noun = isWord(tokens[at + 1], "pool", "dead", "own", "old", "current")
      ? tokens[at + 2]
      : tokens[at + 1];
    return isWord(token, "my") && isWord(noun, ...nouns, ...papers);
  });
}

const own =
  /^(?:(?:el |la |lo )?(?:mi[oa]|nuestr[oa])|mines?|ours|nosotros|this ones?|my|mi motor|(?:my|our|this) motor|(?:dead|bad|burnt|broken|current) (?:ones?|motor)|(?:el|la) que tengo|one (?:i have|ive got|that (?:died|quit|failed)))$/;

/** A phrase that points at the writer's own motor itself, not at its label: "ours", "el mío", "this one". */
export function isOwnPronoun(phrase: string): boolean {
  return own.test(phrase);
}
