const wildcard = /^\.\?$/;

function partsOf(pattern: string): readonly string[] {
  return pattern.match(/[!^]*\([^)]*\)[?$+]*|\/[^/]*\/|\S+/g) ?? [];
}

function isOptional(part: string): boolean {
  return part.endsWith("?") && !part.startsWith("/");
}

/** `a .? (the)? .? b` becomes `a .{0,3} b`; what a run of optional words ends a pattern with says nothing. */
function mergeOptional(parts: readonly string[]): readonly string[] {
  const merged: string[] = [];
  for (let i = 0; i < parts.length; i += 1) {
    const part = parts[i] ?? "";
    let run = 0;
    while (isOptional(parts[i + run] ?? "")) run += 1;
    const loose = parts.slice(i, i + run).some((one) => wildcard.test(one));
    if (run > 0 && loose) {
      const afterStar = merged.at(-1) === "*" || parts[i + run] === "*";
      if (!afterStar) merged.push(`.{0,${run}}`);
      i += run - 1;
    } else {
      merged.push(part);
    }
  }
  while (/^(\*|\.\{.*\})$/.test(merged.at(-1) ?? "")) merged.pop();
  return merged;
}

/** The words of a group that can be looked up at once, and each phrase or tag by itself. */
function alternatives(part: string, afterWildcard: boolean): readonly string[] {
  const group = /^(\^?)\(([^)]*)\)(\$?)$/.exec(part);
  if (!group) return [part];
  const [, start = "", body = "", end = ""] = group;
  if (!afterWildcard && !start && !end) return [part];
  const choices = body.split("|");
  const plain = choices.filter((choice) => /^[\p{L}\p{N}]+$/u.test(choice));
  const rest = choices.filter((choice) => !plain.includes(choice));
  if (rest.length === 0) return [part];
  const fast = plain.length > 0 ? [`${start}(${plain.join("|")})${end}`] : [];
  return [...fast, ...rest.map((choice) => `${start}${choice}${end}`)];
}

/**
 * Writes one pattern as several that compromise's matcher finds reliably: it never goes back, so behind a
 * wildcard it must meet a single word, a list of single words, or one tag.
 */
export function variants(pattern: string): readonly string[] {
  const parts = mergeOptional(partsOf(pattern));
  return parts.reduce<readonly string[]>(
    (written, part, i) => {
      const before = parts[i - 1] ?? "";
      const choices = alternatives(part, before === "*" || before.startsWith(".{"));
      return written.flatMap((start) => choices.map((choice) => (start ? `${start} ${choice}` : choice)));
    },
    [""],
  );
}
