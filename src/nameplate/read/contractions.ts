const pairs = new Map(
  [
    ["it", "is", "its"],
    ["that", "is", "thats"],
    ["there", "is", "theres"],
    ["what", "is", "whats"],
    ["i", "am", "im"],
    ["can", "not", "cant"],
    ["do", "not", "dont"],
    ["does", "not", "doesnt"],
    ["did", "not", "didnt"],
    ["is", "not", "isnt"],
    ["are", "not", "arent"],
    ["was", "not", "wasnt"],
    ["could", "not", "couldnt"],
    ["will", "not", "wont"],
    ["would", "not", "wouldnt"],
    ["have", "not", "havent"],
    ["has", "not", "hasnt"],
  ].map(([first, second, short]) => [`${first} ${second}`, short] as const),
);

/** Words written as one that have a short form too. */
export const shortForms: ReadonlyMap<string, string> = new Map([["cannot", "cant"]]);

/** The short form of two words: "it is" as "its"; undefined when there is none. */
export function contraction(first: string, second: string): string | undefined {
  return pairs.get(`${first} ${second}`);
}

/** The words of a phrase, those that have a short form in it. */
export function contracted(phrase: string): string[] {
  const words: string[] = [];
  for (const word of phrase.split(" ")) {
    const last = words.at(-1);
    const short = last === undefined ? undefined : contraction(last, word);
    if (short === undefined) words.push(shortForms.get(word) ?? word);
    else words[words.length - 1] = short;
  }
  return words;
}
