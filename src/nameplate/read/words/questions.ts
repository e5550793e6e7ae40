import { list } from "../wordlist.ts";

/** A question about the trade in general. */
export const generalQuestionCues: readonly string[] = list(`
  same as, the same, difference, different from, differ, mean, means, meaning, usually, normally, typical,
  typically, vs, versus, interchangeable, compatible, better than, a good, stronger than, bigger than, equal
  to, equivalent, what is a, what is, whats a, whats, what does, what do, why do, why is, how many, how
  much, in general, work on, run on, enough, too much, lo mismo, la diferencia, diferencia, significa,
  quiere decir, cuantos, es igual, matter, generally, supposed to be, in theory, hypothetically, convert,
  fit a, fits a, work with, por que, que es, cual es, how do i, ever, or nah, how come, ok to, okay to, safe
  to, legal, allowed, curious, wondering, wonder if, do all, are all, is it true, ever make, make them,
  exist, if a, a motor rated, generally speaking, do i need, equivale, equivalen, por curiosidad, how long,
  how big, how often, how old, how hot, how fast, cuanto dura, in stock, available, according to, normal,
  whether a, whether an, whether any
`);

/** First words of a clause that asks. */
export const questionOpeners: readonly string[] = list(`
  what, whats, how, hows, why, which, does, do, did, is, are, can, could, would, will, should, who, when,
  where, que, cual, como, cuanto, cuantos, puedo, sirve, funciona, es, se puede, any chance, any of, any,
  isnt, arent, doesnt, wouldnt, cant, por que, son, hay, if, got, puede, pueden, podra, tienen, tienes,
  venden, should, might
`);
