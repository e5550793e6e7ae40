import type { Claim } from "./candidate.ts";
import { type Clause, type Cue, type CueKind, findEntities } from "./clauses.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Whose figure a token carries. `measured` covers only what an instrument measures. */
export type Owner = "label" | "other" | "neighbour" | "measured" | "asked" | "part";

const foreign: Partial<Record<CueKind, Owner>> = {
  thing: "other",
  person: "neighbour",
  earlier: "other",
  wish: "other",
  measured: "measured",
};
/** Home words that another owner may have before them: "the neighbor's motor", "the heater's label". */
const plainNouns = new Set([
  "motor",
  "the motor",
  "label",
  "plate",
  "tag",
  "sticker",
  "nameplate",
  "el motor",
  "etiqueta",
  "placa",
  "este",
  "motor plate",
  "data plate",
  "pump motor",
  "name plate",
  "rating plate",
]);
const newOnes = new Set([
  "new one",
  "the new",
  "a new",
  "new motor",
  "nuevo",
  "uno nuevo",
  "el nuevo",
  "get a",
  "buy a",
  "quote for a",
  "bigger",
]);

/** The owner of every token, found clause by clause from the cues around it. */
export function ownersOf(
  tokens: readonly Token[],
  clauses: readonly Clause[],
  cues: readonly Cue[],
  claims: readonly Claim[],
): Owner[] {
  const owners: Owner[] = new Array(tokens.length).fill("label");
  const firm = cues.filter(({ kind }) => kind === "home" || foreign[kind]);
  const alive = aliveSentences(tokens, clauses, cues);
  const entities = entityOwners(tokens, clauses, cues);
  let inherited: Owner = "label";
  let heading: Owner | undefined;
  let sentence = -1;
  let quoted: number | undefined;
  for (const [index, clause] of clauses.entries()) {
    const before = clauses[index - 1];
    if (clause.sentence !== sentence) {
      const opened = before?.closing === "\n" ? heading : undefined;
      inherited = opened ?? (pointsBack(tokens, clause) ? inherited : "label");
      if (before?.closing === "\n\n") heading = undefined;
      sentence = clause.sentence;
    }
    if (asksGenerally(tokens, clause, clauses, cues, claims)) {
      owners.fill("asked", clause.start, clause.end);
      // "Got anything in 56Y, under 10 amps?" goes on asking; so did "a 115/230 motor," just before.
      inherited = "asked";
      if (
        before &&
        before.sentence === clause.sentence &&
        isWord(tokens[before.start], "a", "an", "un", "una", "any")
      )
        owners.fill("asked", before.start, before.end);
      continue;
    }
    if (isMark(tokens[clause.start], ">") && (!before || before.closing.startsWith("\n")))
      quoted = clause.sentence;
    if (quoted === clause.sentence || (quoted !== undefined && before && !before.closing.startsWith("\n"))) {
      quoted = clause.sentence;
      owners.fill("other", clause.start, clause.end);
      continue;
    }
    quoted = undefined;
    const entity = entities[clause.start];
    let owner: Owner = entity ?? inherited;
    if (alive.has(clause.sentence) && owner === "label") owner = "other";
    const inside = firm.filter((cue) => cue.start >= clause.start && cue.start < clause.end);
    let from = clause.start;
    let cued = false;
    for (const cue of inside) {
      const next = turn(tokens, cue, owner, cued, clause, cues);
      if (next === undefined) continue;
      owners.fill(linksBackTo(tokens, cue, next) ? next : owner, from, cue.start);
      from = cue.start;
      owner = next;
      cued = true;
    }
    owners.fill(owner, from, clause.end);
    const figures =
      claims.some((claim) => claim.start >= clause.start && claim.start < clause.end) ||
      tokens.slice(clause.start, clause.end).some(({ kind }) => kind === "number");
    const announces = clauses[index]?.closing === ":" || isMark(tokens[clause.end - 1], ":");
    if (cued || entity)
      inherited =
        figures || announces || owner === "label" ? owner : sayingAtEnd(tokens, clause) ? owner : "label";
    if (announces && cued && (clause.closing === "\n" || tokens[clause.end]?.kind === "break"))
      heading = owner;
    else if (cued && owner === "label") heading = undefined;
    else if (cued && !figures && clause.closing === "\n" && clause.end - clause.start <= 4) heading = owner;
  }
  return owners;
}

function turn(
  tokens: readonly Token[],
  cue: Cue,
  owner: Owner,
  cued: boolean,
  clause: Clause,
  cues: readonly Cue[],
): Owner | undefined {
  if (cue.kind === "home") {
    if (plainNouns.has(cue.phrase) && cued && owner !== "label") return undefined;
    return "label";
  }
  if (newOnes.has(cue.phrase) && needed(tokens, clause, cue)) return undefined;
  if (
    cue.kind === "earlier" &&
    /^(?:second|previous|2nd)$/.test(cue.phrase) &&
    !isWord(tokens[cue.end], "was", "one", "motor", "had", "pump")
  ) {
    if (!(cue.phrase === "second" && owner === "other")) return undefined;
  }
  if (
    cue.kind === "wish" &&
    /^(?:thinking|want|bigger|recommended|online)$/.test(cue.phrase) &&
    cues.some((other) => other.kind === "home" && other.start === cue.end)
  )
    return undefined;
  if (cue.kind === "thing" && /^(?:impell|impulsor|diffuser|volute|seal|wet ?end|housing)/.test(cue.phrase))
    return "part";
  return foreign[cue.kind];
}

function needed(tokens: readonly Token[], clause: Clause, cue: Cue): boolean {
  for (let at = clause.start; at < cue.start; at++)
    if (isWord(tokens[at], "need", "needs", "necesito", "needing", "ocupo", "needed")) return true;
  return false;
}

/** "1.5 HP stamped on the impeller": a thing named after the figure takes it back. */
function linksBackTo(tokens: readonly Token[], cue: Cue, owner: Owner): boolean {
  if (owner === "label") return false;
  if (cue.kind !== "thing" && cue.kind !== "person" && cue.kind !== "measured" && cue.kind !== "earlier")
    return false;
  for (let at = cue.start - 1; at >= Math.max(0, cue.start - 3); at--) {
    const token = tokens[at];
    if (isWord(token, "on", "of", "from", "off", "in", "with", "by", "for", "del", "de", "en", "con"))
      return true;
    if (!isWord(token, "the", "my", "a", "an", "his", "her", "our", "el", "la", "mi", "its", "their"))
      return false;
  }
  return false;
}

function sayingAtEnd(tokens: readonly Token[], clause: Clause): boolean {
  const last = tokens[clause.end - 1];
  return (
    isWord(last, "says", "said", "reads", "is", "was", "shows", "showed", "dice", "es") || isMark(last, ":")
  );
}

/** "His is 2 hp": the sentence goes on about the owner named before. */
function pointsBack(tokens: readonly Token[], clause: Clause): boolean {
  const token = tokens[clause.start];
  return isWord(
    token,
    "his",
    "hers",
    "theirs",
    "its",
    "that",
    "thats",
    "they",
    "it",
    "he",
    "she",
    "hes",
    "shes",
  ) && !isWord(token, "it", "its", "that", "thats")
    ? true
    : isWord(token, "his", "hers", "theirs");
}

/** Sentences about a motor that still works, where another one in the message is the broken one. */
function aliveSentences(
  tokens: readonly Token[],
  clauses: readonly Clause[],
  cues: readonly Cue[],
): Set<number> {
  const sentenceAt = (at: number) =>
    clauses.find((clause) => at >= clause.start && at < clause.end)?.sentence ?? -1;
  const working = new Set<number>();
  const broken = new Set<number>();
  const named = (cue: Cue) => {
    for (let at = Math.max(0, cue.start - 6); at < cue.end + 3; at++)
      if (isWord(tokens[at], "one", "pump", "motor", "other", "left", "right", "unit", "1", "2")) return true;
    return false;
  };
  for (const cue of cues) {
    if (
      cue.kind === "alive" &&
      !/^(?:good|great|ok|running|working|runs|no problem)$/.test(cue.phrase) &&
      named(cue)
    )
      working.add(sentenceAt(cue.start));
    if (
      cue.kind === "dead" ||
      (cue.kind === "home" && /dead|bad|burn|broke|died|quit|need|fail/.test(cue.phrase))
    )
      broken.add(sentenceAt(cue.start));
  }
  for (const sentence of broken) working.delete(sentence);
  return broken.size > 0 ? working : new Set();
}

/** For messages that number their motors: the owner of each clause by the state of the motor it is about. */
function entityOwners(
  tokens: readonly Token[],
  clauses: readonly Clause[],
  cues: readonly Cue[],
): (Owner | undefined)[] {
  const owners: (Owner | undefined)[] = [];
  const entities = findEntities(tokens);
  const distinct = new Set(entities.map(({ key }) => key));
  if (distinct.size < 2) return owners;
  const state = new Map<string, "alive" | "dead">();
  const keyAt: (string | undefined)[] = [];
  let key: string | undefined;
  for (const clause of clauses) {
    const mention = entities.find(({ start }) => start >= clause.start && start < clause.end);
    if (mention) key = mention.key;
    keyAt[clause.start] = key;
    if (key === undefined) continue;
    for (const cue of cues) {
      if (cue.start < clause.start || cue.start >= clause.end) continue;
      if (cue.kind === "dead") state.set(key, "dead");
      if (cue.kind === "alive" && state.get(key) !== "dead") state.set(key, "alive");
    }
  }
  const anyDead = [...state.values()].includes("dead");
  const anyAlive = [...state.values()].includes("alive");
  if (!anyDead && !anyAlive) return owners;
  for (const clause of clauses) {
    const about = keyAt[clause.start];
    if (about === undefined) continue;
    const standing = state.get(about);
    owners[clause.start] =
      standing === "dead" ? "label" : standing === "alive" || anyDead ? "other" : "label";
  }
  return owners;
}

/** A clause that asks about the trade, not about this label. */
function asksGenerally(
  tokens: readonly Token[],
  clause: Clause,
  clauses: readonly Clause[],
  cues: readonly Cue[],
  claims: readonly Claim[],
): boolean {
  if (!clause.opener && !inQuestion(clause, clauses)) return false;
  const inside = (cue: Cue) => cue.start >= clause.start && cue.start < clause.end;
  if (cues.some((cue) => inside(cue) && cue.kind === "home" && !plainNouns.has(cue.phrase))) return false;
  for (let at = clause.start; at < clause.end; at++) if (isWord(tokens[at], "my", "mi", "our")) return false;
  const asked = clauses.filter(({ sentence }) => sentence === clause.sentence).at(-1)?.closing === "?";
  const general = cues.some((cue) => inside(cue) && cue.kind === "general");
  const figures = new Set(
    claims.filter(({ start }) => start >= clause.start && start < clause.end).map(({ rating }) => rating),
  );
  if (figures.size >= 3 && !cues.some((cue) => inside(cue) && cue.kind === "wish")) return false;
  if (figures.size >= 2 && !general && offersStock(tokens, clause)) return false;
  return asked || general;
}

/** A clause after an asking one in the same sentence: "is 56Y, 230 V the same?". */
function inQuestion(clause: Clause, clauses: readonly Clause[]): boolean {
  const same = clauses.filter(({ sentence }) => sentence === clause.sentence);
  const first = same[0];
  return Boolean(
    first?.opener &&
      first !== clause &&
      same.at(-1)?.closing === "?" &&
      same.indexOf(clause) === 1 &&
      clause.closing === "?" &&
      first.closing !== ",",
  );
}

function offersStock(tokens: readonly Token[], clause: Clause): boolean {
  for (let at = clause.start; at < clause.end; at++)
    if (
      isWord(
        tokens[at],
        "have",
        "carry",
        "stock",
        "sell",
        "got",
        "replaces",
        "replace",
        "match",
        "replacement",
        "tienes",
        "tienen",
        "venden",
        "hay",
        "need",
      )
    )
      return true;
  return false;
}
