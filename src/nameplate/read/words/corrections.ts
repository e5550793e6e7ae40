import { list } from "../wordlist.ts";

/** Words that take back what was said just before; a new value is expected. */
export const correctionPhrases: readonly string[] = list(`
  no wait, wait no, wait, sorry, oops, whoops, woops, i mean, i meant, meant, correction, scratch that,
  strike that, make that, edit, my bad, my mistake, actually, er, err, erm, hang on, hold on, no no, no its,
  nope, looked again, checked again, misread, mistyped, typo, rather, should be, should say, should read,
  fix, update, perdon, digo, quise decir, mejor dicho, me equivoque, corrijo, correccion, no espera, espera,
  disculpa, disculpe, lo siento, let me correct, i was wrong, was wrong, never mind, nevermind, apologies,
  take that back, o sea, bueno no, on second look, on closer look, second look, no espere, espere, typed it
  wrong, got it wrong, really, thats wrong, wrong its, wrong should, is wrong, not right, was off, esta mal, crossed out
`);

/** Words that take back everything said so far. */
export const retractionPhrases: readonly string[] = list(`
  scratch that, scratch all that, disregard, disregard that, disregard all of that, disregard all that,
  ignore that, ignore all that, ignore all of that, forget that, forget all that, forget all of that, forget
  what i said, ignore what i said, ignore the above, disregard the above, olvida eso, olvide eso, olvidalo,
  ignora eso, never mind that, nevermind that, strike all that, strike all of that, ignore my last, ignore
  those, forget those, disregard those, scrap that, scrap all that
`);

/** Words that reject the value that follows. */
export const negators: readonly string[] = list(`
  nothing on it says, nothing says, nothing about, nothing for, no mention of, no sign of, nada de, nada sobre, nowhere says, nowhere does it say, not, isnt, is not, aint, wasnt, was
  not, arent, no es, no son, no, never said, no era, forget, rather than, instead of, doesnt say, does not
  say, dont say, it doesnt say, didnt say, didnt mean, en vez de, en lugar de, there is no, theres no, nope
  not, nor, neither, ni, without
`);
