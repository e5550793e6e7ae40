import type { Cue } from "./findCues.ts";
import { isNumberSign } from "./numberSign.ts";
import { isMark, isWord, type Token } from "./token.ts";

/** Signs of a correction that are no words of it: "*1.0", "2 -> 1.5", a "No." that stands alone. */
export function turnCue(tokens: readonly Token[], at: number): Cue | undefined {
  const end =
    starred(tokens, at) ??
    arrow(tokens, at) ??
    loneNo(tokens, at) ??
    loneWrong(tokens, at) ??
    supposed(tokens, at);
  return end === undefined ? undefined : { kind: "correction", start: at, end, phrase: "*" };
}

/** "*1.0" after "hp 1.5". */
function starred(tokens: readonly Token[], at: number): number | undefined {
  const [star, figure] = [tokens[at], tokens[at + 1]];
  if (at === 0 || !isMark(star, "*") || star?.glued) return undefined;
  return figure?.kind === "number" && figure.glued ? at + 1 : undefined;
}

/** "2 -> 1.5" */
function arrow(tokens: readonly Token[], at: number): number | undefined {
  if (tokens[at - 1]?.kind !== "number") return undefined;
  if (isMark(tokens[at], "→", "➡", "⇒")) return at + 1;
  const drawn = isMark(tokens[at], "-", "=") && isMark(tokens[at + 1], ">") && tokens[at + 1]?.glued;
  return drawn ? at + 2 : undefined;
}

/** "HP 1.5 <- wrong, it's 1" */
function loneWrong(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "wrong", "incorrect") || tokens[at - 1]?.kind === "word") return undefined;
  return isMark(tokens[at + 1], ",", ".", ";", ")", "-") ? at + 1 : undefined;
}

/** "1 hp i thought, but it's 1.5" */
function supposed(tokens: readonly Token[], at: number): number | undefined {
  const verb = tokens[at + 1];
  const told = isWord(tokens[at], "i", "we") && isWord(verb, "thought", "assumed", "figured", "guessed");
  const spanish = isWord(tokens[at], "pense", "crei", "pensaba", "creia");
  if (!told && !spanish) return undefined;
  const end = told ? at + 2 : at + 1;
  const stated = tokens.slice(Math.max(0, at - 2), at).some(({ kind }) => kind === "number");
  const turn = tokens[isMark(tokens[end], ",", ".", "-", ";") ? end + 1 : end];
  return stated && isWord(turn, "but", "pero", "turns", "its", "actually") ? end : undefined;
}

/** "RPM 1725. No. RPM 3450." */
function loneNo(tokens: readonly Token[], at: number): number | undefined {
  if (!isWord(tokens[at], "no", "nope", "nah") || isNumberSign(tokens, at)) return undefined;
  const [before, after] = [tokens[at - 1], tokens[at + 1]];
  const parted = isMark(before, ".", ",", "!", ";", "-", "…") || before?.kind === "break";
  // "no. 1107" at the head of a line numbers something.
  if (before?.kind === "break" && isMark(after, ".")) return undefined;
  return parted && isMark(after, ".", ",", "!", "-", "…", ";") ? at + 1 : undefined;
}
