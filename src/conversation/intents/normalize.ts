/** Ways of writing on a phone, with the words they stand for. */
const shorthand: Readonly<Record<string, string>> = {
  u: "you",
  ur: "your",
  r: "are",
  pls: "please",
  plz: "please",
  plese: "please",
  w: "with",
  teh: "the",
  hw: "how",
  spd: "speed",
  q: "que",
  xq: "por que",
  k: "ok",
  cuz: "because",
  bc: "because",
  ppl: "people",
  msg: "message",
  tmrw: "tomorrow",
  tmw: "tomorrow",
  wat: "what",
  wut: "what",
  wats: "what is",
  abt: "about",
  hav: "have",
  dat: "that",
  da: "the",
  cant: "can not",
  cannot: "can not",
  dont: "do not",
  doesnt: "does not",
  didnt: "did not",
  wont: "will not",
  isnt: "is not",
  arent: "are not",
  wasnt: "was not",
  werent: "were not",
  havent: "have not",
  hasnt: "has not",
  hadnt: "had not",
  couldnt: "could not",
  wouldnt: "would not",
  shouldnt: "should not",
  aint: "is not",
  whats: "what is",
  hows: "how is",
  wheres: "where is",
  whens: "when is",
  whos: "who is",
  thats: "that is",
  theres: "there is",
  its: "it is",
  im: "i am",
  ive: "i have",
  id: "i would",
  youre: "you are",
  youve: "you have",
  lets: "let us",
  theyre: "they are",
  weve: "we have",
  hes: "he is",
  shes: "she is",

  gonna: "going to",
  wanna: "want to",
  gotta: "have to",
  gimme: "give me",
  lemme: "let me",
  kinda: "kind of",
  reed: "read",
  lable: "label",
  lables: "labels",
  biger: "bigger",
  deets: "details",
  sumone: "someone",
  luv: "love",
  idk: "i do not know",
  dunno: "i do not know",

  thru: "through",
  diff: "difference",
  info: "info",
  "24/7": "24 7",
  mutch: "much",
  wuld: "would",
};

/** Lower case, no accents, shorthand and contractions written out; sentence marks stay. */
export function normalize(text: string, respell: (word: string) => string): string {
  const folded = text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[’`´]/g, "'")
    .replace(/^\s*\*\s*(?=\p{L}|\d)/u, "correction ")
    .replace(/[¿¡*"“”()[\]]/g, " ")
    .replace(/(\p{L})\1{2,}/gu, "$1");
  return folded
    .replace(/\p{L}[\p{L}']*/gu, (word) => {
      const bare = word.replaceAll("'", "");
      return shorthand[bare] ?? expand(word) ?? respell(bare);
    })
    .replace(/[ \t]+/g, " ")
    .trim();
}

/** "She'll", "who'd", "you've": the rest of the contractions. */
function expand(word: string): string | undefined {
  const match = /^(\p{L}{1,12})'(ll|d|ve|re|s|m)$/u.exec(word);
  if (!match) return undefined;
  const [, stem = "", tail = ""] = match;
  const full: Record<string, string> = { ll: "will", d: "would", ve: "have", re: "are", m: "am", s: "is" };
  const possessive = tail === "s" && !/^(it|that|what|where|how|when|who|there|he|she|here|let)$/.test(stem);
  return possessive ? `${stem}s` : `${stem} ${full[tail]}`;
}
