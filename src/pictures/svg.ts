/** A piece of SVG, already escaped. */
export type Svg = string & { readonly __svg: true };

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element with its attributes and children; numbers are rounded to hundredths of a unit. */
export function element(name: string, attributes: Attributes, ...children: readonly Svg[]): Svg {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? number(value) : escapeXml(value ?? "")}"`)
    .join("");
  const inner = children.join("");
  return (inner === "" ? `<${name}${written}/>` : `<${name}${written}>${inner}</${name}>`) as Svg;
}

/** Plain words inside an element. */
export function words(text: string): Svg {
  return escapeXml(text) as Svg;
}

/** Pieces one after another. */
export function join(...pieces: readonly Svg[]): Svg {
  return pieces.join("") as Svg;
}

const named: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

/** Text safe in XML content and attributes; what XML 1.0 does not allow at all (clause 2.2) becomes U+FFFD. */
export function escapeXml(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, "\ufffd")
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "\ufffd")
    .replace(/[&<>"']/g, (mark) => named[mark] ?? mark);
}

function number(value: number): string {
  return String(Math.round(value * 100) / 100);
}
