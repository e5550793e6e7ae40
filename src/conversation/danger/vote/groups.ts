/** Concepts that play the same part in a danger share a group, so that one teaches the vote about the other. */
const members: Readonly<Record<string, string>> = {
  DEV: "device circuit button",
  LIVE: "wiring box capacitor motor motorPart device terminal",
  OPEN: "bare terminal",
  ON: "energized start now",
  PROOF: "volts oddVolts meter",
  CASE: "metal housing motor pump light",
  MACH: "motor pump equipment housing motorPart light",
  TOUCHABLE: "metal pool housing pump motor equipment water light wiring",
  SENSE: "shock zap tingle jolt toque",
  WEAK: "buzzFeel bite numb throwBack react tasteTongue power",
  BURNS: "smoke spark flame burning char",
  YIELDS: "char sag",
  WEAKBURN: "flash burnt dark smell burntThing crackle hot extinguish",
  WETS: "flow wet flood puddle",
  WATERS: "water rain puddle flood",
  UNDER: "flood submerged",
  LOW: "pit depth ground",
  LIVING: "kidPerson animal me body",
  OPENS: "trip opens blackout",
  REPEAT: "again now",
  ENDED: "fixed replaced ended hauled renewed turnedOut",
  HARMLESS: "turnedOut fireFun wildlife weather paint",
  PAST: "last old",
  SUPPOSE: "if would fear",
  PRINT: "print warn says",
  ODD: "chem price travel cooking emotion fireFun wildlife school flowFun",
};

const groupsOf = new Map<string, string[]>();
for (const [group, concepts] of Object.entries(members)) {
  for (const concept of concepts.split(" ")) {
    const symbol = `@${concept}`;
    groupsOf.set(symbol, [...(groupsOf.get(symbol) ?? []), `%${group}`]);
  }
}

/** The symbols with the groups they belong to (`%BURNS`). */
export function withGroups(symbols: readonly string[]): ReadonlySet<string> {
  return new Set(symbols.flatMap((symbol) => [symbol, ...(groupsOf.get(symbol) ?? [])]));
}

/** What may carry a danger in a clause ... */
const carrier =
  /^!?(?:%(?:SENSE|WEAK|BURNS|WEAKBURN|YIELDS|WETS|UNDER|OPENS|LIVE|OPEN|PROOF|DEV|TOUCHABLE)|@(?:trip|shock|smell|burnt|spark|smoke|power|opens|hold|bare|defeat|submerged))$/;
/** ... and what a clause beside it says about its time, mood and place. */
const setting =
  /^!?(?:%(?:SUPPOSE|PRINT|ENDED|PAST|ODD|REPEAT|ON|HARMLESS)|@(?:energized|thought|others|not|now|last|fixed|replaced|ended|pro|if|would|fear|print|warn|says|hearsay|chem|price|cooking|travel|again|question))$/;

/** True for a symbol that may carry a danger. */
export function isCarrier(symbol: string): boolean {
  return carrier.test(symbol);
}

/** True for a symbol that places what stands near it. */
export function isSetting(symbol: string): boolean {
  return setting.test(symbol);
}
