import { agents, damageCue } from "./damage.ts";
import type { Cue } from "./findCues.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Ways to say that something cannot be read which are built from parts, so that no list could hold them all. */
export function unreadCue(tokens: readonly Token[], at: number): Cue | undefined {
  const damage = damageCue(tokens, at);
  if (damage !== undefined) return { kind: "illegible", start: at, end: damage, phrase: "worn" };
  const end =
    noSeLee(tokens, at) ??
    cannotRead(tokens, at) ??
    eaten(tokens, at) ??
    allBut(tokens, at) ??
    nothingSays(tokens, at) ??
    hardToRead(tokens, at) ??
    notShown(tokens, at);
  const bare = end === undefined ? notSo(tokens, at) : undefined;
  if (bare !== undefined) return { kind: "illegible", start: at, end: bare, phrase: "isnt" };
  return end === undefined
    ? undefined
    : { kind: "illegible", start: at, end, phrase: phraseOf(tokens, at, end) };
}

/** A listed phrase that has its object on the same side. */
function phraseOf(tokens: readonly Token[], at: number, end: number): string {
  if (isWord(tokens[at], "nothing", "nowhere", "nada", "none") && end > at + 1) return "says nothing";
  if (isWord(tokens[at + 1], "to")) return "hard to read";
  return isWord(tokens[at], ...denials) ? "no se lee" : "cant read";
}

const pronouns = ["se", "lo", "la", "los", "las", "le", "les", "me"];
const denials = ["no", "tampoco", "ni", "nunca"];
const spanishModals =
  /^(?:alcanza|alcanzan|alcanzo|puede|pueden|puedo|pude|podemos|logra|logran|logro|pudo|deja|dejan|ha|ven|ve)$/;
const spanishVerbs =
  /^(?:leer|leerlo|leerla|leerlos|lee|leen|leo|ver|verlo|verla|ve|ven|veo|vemos|distingue|distinguen|distinguir|distingo|nota|notan|aprecia|aprecian|entiende|entienden|entiendo|encuentra|encuentro|mira|miran|miro)$/;
/** What a label does, or a rating on it: denied, the rating is not there. */
const spanishShowing =
  /^(?:viene|vienen|aparece|aparecen|trae|traen|dice|dicen|sale|salen|hay|muestra|muestran|indica|indican|figura|figuran|existe|existen|tiene)$/;

/** "no se alcanzan a leer", "ya no lo puedo ver": a verb of reading denied. */
function noSeLee(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], ...denials)) return undefined;
  let end = at + 1;
  while (end < at + 3 && isWord(tokens[end], ...pronouns)) end += 1;
  const modal = tokens[end];
  if (modal?.kind === "word" && spanishModals.test(modal.norm) && tokens[end + 1]?.kind === "word") {
    const next = isWord(tokens[end + 1], "a", "de") ? end + 2 : end + 1;
    const verb = tokens[isWord(tokens[next], "bien", "ni") ? next + 1 : next];
    if (verb?.kind === "word" && spanishVerbs.test(verb.norm)) return tokens.indexOf(verb, next) + 1;
  }
  const verb = tokens[end];
  if (verb?.kind !== "word") return undefined;
  const direct = end === at + 1 || (end === at + 2 && isWord(tokens[at + 1], "lo", "la", "los", "las"));
  const showing = direct && spanishShowing.test(verb.norm);
  return showing || spanishVerbs.test(verb.norm) ? end + 1 : undefined;
}

const cannot = /^(?:cant|cannot|couldnt|wont|hardly|barely|unable|never)$/;
const adverbs =
  /^(?:quite|really|even|exactly|clearly|fully|ever|to|not|just|honestly|seem|seems|hardly|barely|myself|fully|properly|even|possibly|actually|yet)$/;
const reading = /^(?:read|see|tell|find|decipher|distinguish|spot|discern|identify|get)$/;
const mostAdverbs = 3;

/** "can't for sure read", "could not even make out": what stands between denial and verb does not matter. */
function cannotRead(tokens: readonly Token[], at: number): number | undefined {
  const denial = tokens[at];
  const parted = isWord(denial, "can", "could") && isWord(tokens[at + 1], "not", "hardly", "barely", "no");
  if (denial?.kind !== "word" || !(parted || cannot.test(denial.norm))) return undefined;
  let end = at + (parted ? 2 : 1);
  for (let seen = 0; seen < mostAdverbs; seen++) {
    const adverb = tokens[end];
    if (adverb?.kind !== "word" || !adverbs.test(adverb.norm)) break;
    end += 1;
  }
  const verb = tokens[end];
  if (isWord(verb, "make") && isWord(tokens[end + 1], "out")) return end + 2;
  return verb?.kind === "word" && reading.test(verb.norm) ? end + 1 : undefined;
}

const takes =
  /^(?:ate|eaten|got|took|taken|killed|ruined|covers|covered|covering|destroyed|wiped|bleached|hid|hides|hiding|claimed|erased|scratched|se)$/;

/** "the sun ate the volts", "rust has taken the amps". */
function eaten(tokens: readonly Token[], at: number): number | undefined {
  const agent = tokens[at];
  if (agent?.kind !== "word" || !agents.test(agent.norm)) return undefined;
  let verb = isWord(tokens[at + 1], "has", "have", "had", "is", "kind") ? at + 2 : at + 1;
  if (isWord(tokens[verb], "se")) {
    const taking = isWord(tokens[verb + 1], "lo", "la", "los", "las") ? 2 : 1;
    verb += isWord(tokens[verb + taking], "comio", "llevo", "borro") ? taking : 9;
  }
  const taken = tokens[verb];
  if (taken?.kind !== "word") return undefined;
  return takes.test(taken.norm) || isWord(tokens[verb - 1], "se", "lo", "la", "los", "las")
    ? verb + 1
    : undefined;
}

/** "nothing on it says phase", "nowhere does it give the hz", "nada que diga los amps". */
function nothingSays(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "nothing", "nowhere", "nada", "none")) return undefined;
  for (let next = at + 1; next < at + 6; next++) {
    const token = tokens[next];
    if (token?.kind !== "word") return undefined;
    if (
      /^(?:says|say|reads|read|shows|show|about|lists|list|gives|give|mentions|mention|diga|dice)$/.test(
        token.norm,
      )
    )
      return next + 1;
  }
  return undefined;
}

const showing =
  /^(?:mention|say|list|show|have|give|state|include|display|specify|indicate|carry|provide|bear|contain)$/;

/** "doesn't mention", "did not even list": a label that keeps something to itself. */
function notShown(tokens: readonly Token[], at: number): number | undefined {
  const parted = isWord(tokens[at], "does", "did", "do") && isWord(tokens[at + 1], "not");
  if (!parted && !isWord(tokens[at], "doesnt", "didnt", "dont", "wont")) return undefined;
  let verb = at + (parted ? 2 : 1);
  while (verb < at + 4 && isWord(tokens[verb], "even", "actually", "seem", "to", "really", "ever")) verb += 1;
  const shown = tokens[verb];
  return shown?.kind === "word" && showing.test(shown.norm) ? verb + 1 : undefined;
}

/** "impossible to see", "tough to make out" */
function hardToRead(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "hard", "impossible", "tough", "difficult") || !isWord(tokens[at + 1], "to"))
    return undefined;
  if (isWord(tokens[at + 2], "make") && isWord(tokens[at + 3], "out")) return at + 4;
  const verb = tokens[at + 2];
  return verb?.kind === "word" && reading.test(verb.norm) ? at + 3 : undefined;
}

const reach = 9;

/** "everything is readable except the service factor". */
function allBut(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "except", "but", "besides", "excepto", "menos", "minus", "salvo")) return undefined;
  for (let before = at - 1; before >= Math.max(0, at - reach); before--) {
    const token = tokens[before];
    if (token?.kind === "break" || token?.kind === "number" || isMark(token, ".", "!", "?", ";"))
      return undefined;
    if (isWord(token, "everything", "all", "todo", "rest", "else") && !isWord(tokens[before + 1], "i", "it"))
      return isWord(tokens[at + 1], "for") ? at + 2 : at + 1;
  }
  return undefined;
}

const legible = /^(?:readable|legible|clear|visible|fine|read|see|si|lee|ve|leen|ven|bien|leer|ver|okay|ok)$/;

/** "HP is readable but the amps are not", "los caballos si se leen, los amps no": the verb is left out. */
function notSo(tokens: readonly Token[], at: number): number | undefined {
  const after = tokens[at + 1];
  const ends = after === undefined || after.kind === "break" || isMark(after, ".", ",", "!", ";", ")");
  const denied =
    isWord(tokens[at], "isnt", "arent") || (isWord(tokens[at], "not") && isWord(tokens[at - 1], "is", "are"));
  const spanish = isWord(tokens[at], "no", "tampoco") && tokens[at - 1]?.kind === "word";
  if (!ends || !(denied || spanish)) return undefined;
  for (let before = at - 1; before >= Math.max(0, at - 2 * reach); before--) {
    const token = tokens[before];
    if (token?.kind === "break" || (isMark(token, ".") && !token?.glued)) return undefined;
    if (token?.kind === "word" && legible.test(token.norm)) return at + 1;
  }
  return undefined;
}
