/** English: `trip` -> trips, tripped, tripping, trippin. */
export function englishVerb(base: string): readonly string[] {
  const stem = base.endsWith("e") ? base.slice(0, -1) : base;
  const sibilant = /(?:s|sh|ch|x|z|o)$/.test(base);
  const third = /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ies` : base + (sibilant ? "es" : "s");
  const past = /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ied` : `${stem}ed`;
  const forms = [base, third, past, `${stem}ing`, `${stem}in`];
  if (/^[^aeiou]*(?:qu)?[aeiou][bdgklmnprt]$/.test(base)) {
    const doubled = base + base.charAt(base.length - 1);
    forms.push(`${doubled}ed`, `${doubled}ing`, `${doubled}in`);
  }
  return forms;
}

/** English: `wire` -> wires, `box` -> boxes. */
export function englishNoun(base: string): readonly string[] {
  if (/[^aeiou]y$/.test(base)) return [base, `${base.slice(0, -1)}ies`];
  return [base, base + (/(?:s|sh|ch|x|z)$/.test(base) ? "es" : "s")];
}

const endings: Readonly<Record<string, string>> = {
  ar: "ar arse arlo arla arlos o as a amos an aste aron aba aban abas ando andose andolo andola ado ada ados adas e es en emos ara aran aria",
  er: "er erse erlo erla o es e emos en i iste io ieron ia ian iendo iendose ido ida idos idas as a an era eran",
  ir: "ir irse irlo irla o es e imos en i iste io ieron ia ian iendo iendose ido ida idos idas as a an ira iran",
};

/** Everyday Spanish, regular, without accents: `saltar` -> salta, saltó, saltando ... */
export function spanishVerb(infinitive: string): readonly string[] {
  const stem = infinitive.slice(0, -2);
  const list = (endings[infinitive.slice(-2)] ?? "").split(" ").map((ending) => stem + ending);
  // Before e the sound of c and g is kept by spelling: brinqué, pegué.
  if (infinitive.endsWith("car")) list.push(...["e", "en", "es"].map((e) => `${stem.slice(0, -1)}qu${e}`));
  if (infinitive.endsWith("gar")) list.push(...["e", "en", "es"].map((e) => `${stem}u${e}`));
  return list;
}

/** Spanish: `cable` -> cables; `mojado` -> mojada, mojados, mojadas; `chispa` -> chispita. */
export function spanishNoun(base: string): readonly string[] {
  if (/[^aeiou]$/.test(base)) return [base, `${base}es`];
  const stem = base.slice(0, -1);
  const small = /[oa]$/.test(base) ? [`${stem.replace(/c$/, "qu")}it${base.slice(-1)}`] : [];
  const gender = /(?:ad|id|eg|os)o$/.test(base) ? [`${stem}a`, `${stem}as`] : [];
  return [base, `${base}s`, ...small, ...small.map((one) => `${one}s`), ...gender];
}
