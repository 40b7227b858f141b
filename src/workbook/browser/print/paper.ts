/** Sheets of paper, in inches (ANSI/ASME Y14.1 size A; ISO 216). */
export const PAPERS = {
  letter: { name: "Letter, 8½ × 11 in", width: 8.5, height: 11 },
  A4: { name: "A4, 210 × 297 mm", width: 210 / 25.4, height: 297 / 25.4 },
} as const;

export type Paper = keyof typeof PAPERS;

/** Pixels of an inch, as style sheets count them. */
export const PIXELS = 96;
