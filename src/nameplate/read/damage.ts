import { isWord, type Token } from "./token.ts";

/** What became of the print on a label, told in words no list could hold: gives the token after them. */
export function damageCue(tokens: readonly Token[], at: number): number | undefined {
  return (
    coloured(tokens, at) ??
    onlyDamage(tokens, at) ??
    hiddenBy(tokens, at) ??
    wornAway(tokens, at) ??
    inkGone(tokens, at)
  );
}

/** What spoils a label. */
export const agents =
  /^(?:sun|rust|weather|corrosion|paint|acid|chlorine|salt|mice|water|grease|sunlight|time|rain|bleach|somebody|someone|sol|oxido|lluvia|pintura|grasa|dirt|mud|moisture)$/;

const treated =
  /^(?:burnt|burned|bleached|painted|turned|gone|went|washed|faded|baked|cooked|sunburnt|rubbed|sanded|ground|pintado|pintada|pintados|pintadas|quemado|quemada|quemados|quemadas)$/;
const spoilt =
  /^(?:white|black|brown|yellow|blank|pale|clean|green|gray|grey|silver|over|mush|illegible|blanco|blanca|negro|negra|blancos|blancas|negros|negras)$/;

/** "burnt white", "painted black", "gone blank": what became of the print. */
function coloured(tokens: readonly Token[], at: number): number | undefined {
  const [how, what] = [tokens[at], tokens[at + 1]];
  if (how?.kind !== "word" || !treated.test(how.norm)) return undefined;
  if (isWord(what, "by", "por", "from", "con")) {
    const agent = tokens[isWord(tokens[at + 2], "the", "el", "la") ? at + 3 : at + 2];
    return agent?.kind === "word" && agents.test(agent.norm) ? at + 2 : undefined;
  }
  const end = isWord(what, "all", "completely", "totally", "totalmente", "plain", "solid") ? at + 2 : at + 1;
  const colour = tokens[end];
  return colour?.kind === "word" && spoilt.test(colour.norm) ? end + 1 : undefined;
}

/** Marks that stand where a figure should be. */
export const scars =
  /^(?:crack|cracks|tear|rip|cut|scratch|scratches|smear|smears|smudge|smudges|blob|blobs|glob|blur|blurs|mush|gouge|gouges|hole|holes|dent|dents|stain|stains|scrape|scrapes|crust|rust|corrosion|white|blank|paint|glue|gunk|grime|dirt|nothing|spots|mancha|manchas|raya|rayas|rayon|rayones|hoyo|hueco|oxido|pintura|blanco|nada|metal|marks)$/;

/** "there's just a scratch", "nothing but rust", "puro óxido": damage where a figure should be. */
function onlyDamage(tokens: readonly Token[], at: number): number | undefined {
  if (isWord(tokens[at], "mush", "blurry", "blurred", "gibberish")) return at + 1;
  const but = isWord(tokens[at], "nothing") && isWord(tokens[at + 1], "but");
  const left =
    isWord(tokens[at], "nothing", "none", "nada") && isWord(tokens[at + 1], "left", "queda", "quedo");
  if (left) return at + 2;
  const there =
    isWord(tokens[at], "theres", "hay", "has", "have", "tiene", "tienen") ||
    (isWord(tokens[at], "there") && isWord(tokens[at + 1], "is", "are"));
  const opens =
    but ||
    there ||
    isWord(tokens[at], "just", "only", "all", "mostly", "basically", "pure", "puro", "pura", "solo", "puros");
  if (!opens) return undefined;
  let end = at + (but || (there && isWord(tokens[at], "there")) ? 2 : 1);
  if (isWord(tokens[end], "a", "an", "some", "un", "una", "hay", "just")) end += 1;
  const noun = tokens[end + 1];
  const adjective = isWord(tokens[end], "big", "white", "black", "bare", "deep", "long", "shiny");
  if (adjective && noun?.kind === "word" && scars.test(noun.norm)) end += 1;
  const scar = tokens[end];
  return scar?.kind === "word" && scars.test(scar.norm) ? end + 1 : undefined;
}

const covers =
  /^(?:paint|tape|strap|bracket|clamp|glue|silicone|caulk|gunk|grime|dirt|rust|sticker|crud|goop|tar|epoxy|sealant|mud|calcium|scale|pintura|cinta|abrazadera|silicon|oxido|mugre|sarro|grasa|tierra|calcomania)$/;

/** "hidden behind the strap", "under a coat of paint", "debajo de la pintura". */
function hiddenBy(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "under", "underneath", "beneath", "behind", "debajo", "detras", "bajo"))
    return undefined;
  for (let end = at + 1; end < at + 6; end++) {
    const token = tokens[end];
    if (token?.kind !== "word") return undefined;
    if (covers.test(token.norm)) return end + 1;
  }
  return undefined;
}

const going =
  /^(?:wore|worn|came|come|comes|rubbed|peeled|flaked|washed|faded|fell|chipped|weathered|scraped|scrubbed|dissolved|wiped|ground|sanded|filed|torn|tore|ripped|broke|broken|snapped|chewed|melted|scratched|eaten|burned|burnt|blasted|washed)$/;

/** "wore off", "came right off", "sprayed over", "didn't survive" */
function wornAway(tokens: readonly Token[], at: number): number | undefined {
  const verb = tokens[at];
  if (isWord(verb, "sprayed", "painted", "taped", "caulked", "glued", "smeared", "stuck")) {
    const over = isWord(tokens[at + 1], "right", "all", "straight") ? at + 2 : at + 1;
    return isWord(tokens[over], "over") ? over + 1 : undefined;
  }
  if (isWord(verb, "didnt", "did") && isWord(tokens[at + 1], "survive", "not"))
    return isWord(tokens[at + 1], "survive")
      ? at + 2
      : isWord(tokens[at + 2], "survive")
        ? at + 3
        : undefined;
  if (verb?.kind !== "word" || !going.test(verb.norm)) return undefined;
  const end = isWord(tokens[at + 1], "right", "all", "clean", "completely", "totally", "mostly")
    ? at + 2
    : at + 1;
  return isWord(tokens[end], "off", "away") ? end + 1 : undefined;
}

const ink = /^(?:tinta|pintura|impresion|letra|letras|numeros|ink|print|printing|lettering)$/;
const leaving = /^(?:fue|fueron|corrio|cayo|cayeron|salio|acabo|gone|ran|smeared|faded)$/;

/** "se le fue la tinta", "the ink is gone" */
function inkGone(tokens: readonly Token[], at: number): number | undefined {
  if (isWord(tokens[at], "se")) {
    const verb = isWord(tokens[at + 1], "le", "me", "les") ? at + 2 : at + 1;
    const noun = tokens[isWord(tokens[verb + 1], "la", "las", "el", "los", "toda") ? verb + 2 : verb + 1];
    const left = tokens[verb];
    const goes = left?.kind === "word" && leaving.test(left.norm);
    return goes && noun?.kind === "word" && ink.test(noun.norm) ? verb + 3 : undefined;
  }
  const noun = tokens[at];
  if (noun?.kind !== "word" || !ink.test(noun.norm)) return undefined;
  const verb = isWord(tokens[at + 1], "is", "has", "all", "just") ? at + 2 : at + 1;
  const left = tokens[verb];
  return left?.kind === "word" && leaving.test(left.norm) ? verb + 1 : undefined;
}
