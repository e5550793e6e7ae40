import type { Hazard } from "../../../nameplate/reading.ts";
import { type Context, hasWord, sentenceEnd, sentenceStart, words } from "../mention.ts";
import { findFirst, patterns } from "../pattern.ts";
import type { Token } from "../tokens.ts";

const modals = words(
  "would could might may can will should gonna ll itll podria podrian puedo podemos puede pueden pudiera podra going",
);
const perceives = words("see smell feel hear notice taste tell sense oler sentir ver");
/** A finite verb between the modal and the danger starts a statement of its own. */
const statements = words(
  "is are was were has keeps kept got gets its started starts just why that because cuz since but when whenever while after esta porque cuando theres im ive",
);
const governs = words("get be become getting been");
const inflected = words(
  "trips tripped shocks shocked zaps zapped smokes smoked bites burns leaks tingles smells smelled melted burnt arced popped pops blew kicked",
);
/** It has happened, whatever the mood of the sentence. */
const habitual = words("everytime keeps still again whenever always constantly sometimes siempre");
const subjects = words("i it its you we he she they u ill");
const generic = words(
  "new newer bigger a an these those they most pumps motors variable two all any other people larger ones",
);
const asked = words("it the a an this that my i you we one they new bigger");
const asks = words("what how when where and or so que also but");
const purposes = words(
  "avoid prevent prevents preventing protect protects against evitar risk chance chances odds likelihood possibility",
);
const newcomers = words("bigger larger higher upgrade upgrading upgraded stronger");
const feared = words("risk danger chance afraid scared possibility likely odds fear riesgo peligro worried");
const risky = words("hazard hazards risk risks");

function happensAgain(tokens: readonly Token[], from: number, to: number): boolean {
  if (hasWord(tokens, from, to, habitual)) return true;
  for (let i = from; i < to; i += 1) {
    const pair = `${tokens[i]?.word} ${tokens[i + 1]?.word}`;
    if (/^(every|each) (time|day|night|morning|few)$|^cada vez$|^right now$|^otra vez$/.test(pair))
      return true;
  }
  return false;
}

const supposing = words("if unless suppose supposing assuming imagine");
const judged = patterns(
  "is it (safe|ok|okay|bad|normal|dangerous|alright)",
  "es (seguro|normal|malo|peligroso)",
);

/** "If it trips" is a supposition, "if I touch it, it trips" is a report. */
function supposed(tokens: readonly Token[], start: number, head: number, hazard: Hazard): boolean {
  for (let at = head - 1; at >= start; at -= 1) {
    const word = tokens[at]?.word ?? "";
    const spanishYes = word === "si" && (at === start || tokens[at + 1]?.gap === "comma");
    const pair = `${tokens[at - 1]?.word} ${word}`;
    const inCase = pair === "in case" || pair === "en caso" || pair === "the event";
    if (!supposing.has(word) && !inCase && (word !== "si" || spanishYes)) continue;
    const before = tokens[at - 1]?.word ?? "";
    if (["what", "que", "y"].includes(before)) return true;
    if (
      /^(bad|normal|ok|okay|dangerous|safe|sure|know|tell|clear|idea|wondering|mean|peligroso|malo|grave|mal)$/.test(
        before,
      )
    ) {
      if (hazard === "water") return true;
      return before === "safe" || before === "know" ? tokens[at + 1]?.word !== "that" : false;
    }
    // "Is it safe to swim if the ladder gives a shock?" A wet motor may be a plain question, a shock is not.
    if (hazard !== "water" && findFirst(judged, tokens, start, at)) return false;
    // "What do I do if it is smoking": under way, unless it is "ever".
    if (/^(is|are|keeps)$/.test(tokens[head - 1]?.word ?? "") && /ing$/.test(tokens[head]?.word ?? ""))
      return false;
    // "If I turn it on the breaker trips": its own subject stands right before the danger.
    const subject = tokens[head - 1];
    const ownSubject = subject?.concepts.has("device") || subject?.concepts.has("machine");
    if (ownSubject && head - at > 4 && subjects.has(tokens[at + 1]?.word ?? "")) return false;
    for (let i = at + 2; i <= head; i += 1) {
      const token = tokens[i];
      if (token?.gap === "comma") return false;
      if (i > at + 2 && i < head && subjects.has(token?.word ?? "")) return false;
    }
    return true;
  }
  return false;
}

function governedByModal(tokens: readonly Token[], start: number, head: number): boolean {
  const headWord = tokens[head]?.word ?? "";
  for (let at = head - 1; at >= start && head - at <= 9; at -= 1) {
    const token = tokens[at];
    const word = token?.word ?? "";
    if (tokens[at + 1]?.gap === "comma" || statements.has(word)) return false;
    if (!modals.has(word)) continue;
    if (word === "going" && tokens[at + 1]?.word !== "to") continue;
    const before = tokens[at - 1]?.word ?? "";
    if (before === "why" || before === "que" || before === "no") return false;
    const between = tokens.slice(at + 1, head).map((one) => one.word);
    // "I can smell smoke" is a report, "would I smell smoke" is not.
    const sensed = between.some((one) => perceives.has(one)) || perceives.has(headWord);
    if (sensed && word !== "would" && word !== "will") return false;
    if (between.some((one) => /^(stop|fix|cure|solve|help)$/.test(one))) return false;
    if (inflected.has(headWord) && !between.some((one) => governs.has(one))) return false;
    // "Could be tripping", "might have shocked": a guess about what already happens.
    const guess = /^(could|might|may|must|would)$/.test(word) && /(ing|ed)$/.test(headWord);
    if (guess && (between.at(-1) === "be" || between.includes("have"))) return false;
    // "Then it will trip": a habit told; "will it trip?" and "it will trip" with a new motor: a question.
    if (word === "will" || word === "ll" || word === "itll") {
      const inverted = word === "will" && asked.has(tokens[at + 1]?.word ?? "");
      return inverted || hasWord(tokens, start, at, words("worried afraid bigger new larger upgrade think"));
    }
    return true;
  }
  return false;
}

function feareds(tokens: readonly Token[], start: number, head: number, hazard: Hazard): boolean {
  for (let at = head - 1; at >= Math.max(start, head - 6); at -= 1) {
    const word = tokens[at]?.word ?? "";
    const next = tokens[at + 1]?.word ?? "";
    if (purposes.has(word)) return true;
    if (word === "keep" && hazard === "water" && hasWord(tokens, at, head + 3, words("from off away")))
      return true;
    // "I don't want to get zapped", "do I have to worry about the capacitor shocking me".
    const unwanted = word === "want" && hasWord(tokens, at - 3, at, words("dont not didnt no"));
    if (unwanted && hasWord(tokens, at + 1, head, words("to"))) return true;
    if (word === "from" && /^(safe|protect|protected|protection)$/.test(tokens[at - 1]?.word ?? ""))
      return true;
    const worry = word === "worry" || word === "worried";
    if (worry && next === "about" && /^(shocking|electrocuting|zapping)$/.test(tokens[head]?.word ?? ""))
      return true;
    if (feared.has(word) && /^(of|to|about|de)$/.test(next)) {
      const definite = ["the", "this", "that"].includes(tokens[at + 2]?.word ?? "");
      return word !== "worried" || !definite;
    }
    if (statements.has(word)) return false;
  }
  return false;
}

function genericQuestion(tokens: readonly Token[], start: number, head: number): boolean {
  const first = tokens[start]?.word ?? "";
  const headWord = tokens[head]?.word ?? "";
  if (inflected.has(headWord) || /ing$/.test(headWord)) return false;
  for (let at = start; at < head && at < start + 6; at += 1) {
    const word = tokens[at]?.word ?? "";
    if (word !== "do" && word !== "does") continue;
    const before = tokens[at - 1]?.word ?? "";
    if (at !== start && !asks.has(before) && tokens[at]?.gap !== "comma") continue;
    if (hasWord(tokens, start, head, words("normally usually typically generally"))) return true;
    return hasWord(tokens, at + 1, at + 3, generic) && first !== "why";
  }
  return false;
}

const affirmed = patterns(
  "(because|cause|cuz|and|mine|ours|it) (it|mine|ours)? (does|did|has)",
  "(weve|ive|we have|i have) been",
);
/** Worry over the smell that is there, and a symptom somebody looks for the cause of. */
const symptom = patterns(
  "(worry|worried|concerned|concern|alarmed) about (the|this|that|a|some|my|our|all)",
  "what (would|could|can|might|makes|causes|is causing) ~1 (cause|causes|causing|make|making)",
  "(bad|failing|shorted|dying|faulty|weak|worn|old|broken|wrong) ~2 (cause|causing|make|making|trip|tripping|be)",
);
const personal = words("shocking electrocuting zapping");
const newcomer = patterns("(if|si) ~2 (pongo|pusiera|uso|instalo|cambio|meto|compro)");

const openers = words(
  "do does did will would wont doesnt dont wouldnt can could is are should what how when at if",
);

/** "What if it trips", "would 2 hp trip it", "risk of shock", "so I don't get shocked". */
export const hypothetical: Context = (tokens, { head, hazard }) => {
  const start = sentenceStart(tokens, head);
  const end = sentenceEnd(tokens, head);
  if (risky.has(tokens[head + 1]?.word ?? "")) return true;
  const ever = hasWord(tokens, start, end, words("ever"));
  if (!ever && happensAgain(tokens, start, end)) return false;
  // "Would a bad bond make it tingle? Because it does."
  if (!personal.has(tokens[head]?.word ?? "") && findFirst(symptom, tokens, start, head)) return false;
  if (findFirst(affirmed, tokens, end, end + 2)) return false;
  if (findFirst(newcomer, tokens, head, end)) return true;
  // "Won't a bigger one trip it?", "is tripping likely?", "how many amps before it trips?"
  const question = openers.has(tokens[start]?.word ?? "") || /\?/.test(tokens[end - 1]?.after ?? "");
  const remedy = hasWord(tokens, start, head, words("stop fix cure solve help"));
  // "My GFCI is tripping, do I need a bigger motor?" tells, then asks.
  const newer = tokens.findIndex((token, at) => at > head && at < end && newcomers.has(token.word));
  const told =
    /ing$/.test(tokens[head]?.word ?? "") &&
    hasWord(tokens, start, head, words("is are keeps been esta")) &&
    tokens.slice(head + 1, newer + 1).some(({ gap }) => gap === "comma");
  if (question && !remedy && !told && hasWord(tokens, start, end, newcomers)) return true;
  if (hasWord(tokens, head + 1, head + 3, words("likely possible probable"))) return true;
  if (
    /^(many|much|long)$/.test(tokens[start + 1]?.word ?? "") &&
    hasWord(tokens, start, head, words("before"))
  ) {
    return true;
  }
  return (
    supposed(tokens, start, head, hazard) ||
    governedByModal(tokens, start, head) ||
    feareds(tokens, start, head, hazard) ||
    genericQuestion(tokens, start, head)
  );
};
