type Rgb = readonly [number, number, number];

/** `#rrggbb` as three numbers. */
export function rgb(hex: string): Rgb {
  const value = Number.parseInt(hex.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
}

/** Source: WCAG 2.2, definition of relative luminance. */
export function relativeLuminance(colour: Rgb): number {
  const [r, g, b] = colour.map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Source: WCAG 2.2, definition of contrast ratio. */
export function contrast(one: Rgb, other: Rgb): number {
  const [dark, light] = [relativeLuminance(one), relativeLuminance(other)].sort((a, b) => a - b) as [
    number,
    number,
  ];
  return (light + 0.05) / (dark + 0.05);
}
