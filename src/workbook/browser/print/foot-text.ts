/** What a header or footer says on one page, at its three places. */
export type FootText = Record<"left" | "center" | "right", string>;

export interface OnPage {
  page: number;
  pages: number;
  sheet: string;
  file: string;
  date: string;
  time: string;
}

/**
 * Reads a header or footer with its codes (ECMA-376, 18.3.1.39 and 18.3.1.46); what they say of fonts is left out.
 * @example footText("&LBench&CPage &P of &N", { page: 1, pages: 2, … }) // { left: "Bench", center: "Page 1 of 2", right: "" }
 */
export function footText(codes: string, on: OnPage): FootText {
  const text: FootText = { left: "", center: "", right: "" };
  let place: keyof FootText = "center";
  for (const [found, code] of codes.matchAll(CODE)) {
    const side = SIDES[code?.toUpperCase() ?? ""];
    if (side) place = side;
    else text[place] += code === undefined ? found : said(code, on);
  }
  return text;
}

const CODE = /&("[^"]*"|\d{1,3}|K[0-9A-F]{6}|K\d\d[+-]\d{3}|[\s\S])|[^&]+|&$/gi;

const SIDES: Record<string, keyof FootText | undefined> = { L: "left", C: "center", R: "right" };

function said(code: string, { page, pages, sheet, file, date, time }: OnPage): string {
  const known: Record<string, string> = {
    P: String(page),
    N: String(pages),
    A: sheet,
    F: file,
    D: date,
    T: time,
    "&": "&",
  };
  return known[code.toUpperCase()] ?? "";
}
