/**
 * The look of every picture: ink on paper, one signal colour. Pictures bring their own paper, so they read the
 * same in a light and in a dark chat. Whatever a colour says, a mark, a number or a hatching says as well.
 */
export const colours = {
  paper: "#faf6ec",
  ink: "#1c2a33",
  /** Quieter words; still 4.5:1 on paper and plate. */
  pencil: "#4a5761",
  plate: "#dfe5e6",
  shade: "#c3ced2",
  /** Lines that only give context. */
  faint: "#7c8b93",
  signal: "#a8330c",
  /** Under what is asked for; read with ink. */
  highlight: "#ffd964",
  white: "#ffffff",
} as const;

/** Width of every picture in its own units: one unit is a pixel on a 360-pixel-wide phone. */
export const WIDTH = 360;
export const MARGIN = 16;
export const INNER = WIDTH - 2 * MARGIN;

/** Letter sizes in units; nothing is smaller than `small`. */
export const sizes = { title: 18, value: 18, text: 15, small: 14 } as const;

export const lines = { thin: 1.5, usual: 2.25, bold: 3.5 } as const;

export const fontFamily = "DejaVu Sans Condensed, Arial, Helvetica, sans-serif";
