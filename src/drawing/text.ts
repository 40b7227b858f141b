/** Characters that a name holds and a picture cannot: controls, halves of pairs, and what turns the direction of reading. */
const UNDRAWN =
  /[\u0000-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff\ufffe\uffff]|\p{Cs}/gu;

/** A name as it may stand in a drawing: one line, without signs that no file may hold or that would turn others round. */
export const drawable = (name: string): string => name.replace(UNDRAWN, " ").replace(/\s+/g, " ").trim();

/**
 * The most room that a text takes, in ems. Every sign is taken as wide as in the widest of the usual sans-serif faces; what
 * none of them has is taken for a wide one.
 */
export const widthOf = (text: string): number => {
  let ems = 0;
  for (const sign of text) ems += widthOfSign(sign);
  return ems;
};

/** Drawings are made of few signs, over and over. */
function widthOfSign(sign: string): number {
  let ems = known.get(sign);
  if (ems === undefined) {
    ems = WIDTHS.find(([signs]) => signs.test(sign))![1];
    known.set(sign, ems);
  }
  return ems;
}

const known = new Map<string, number>();

const WIDTHS: readonly [RegExp, number][] = [
  [/[ .,:;|'!/\\iljI()[\]-]/, 0.42],
  [/[0-9a-ln-vx-z"*?_{}=<>°]/, 0.66],
  [/[A-LN-VX-Z&#$+×≈±−–…]/, 0.86],
  [/\p{Mn}|\u200d|\ufe0f/u, 0.3],
  [/[\u00c0-\u024f\u0370-\u05ff\u0620-\u06ff]/, 0.9],
  [/./su, 1.4],
];

/** As much of a text as goes into a room of so many ems, with a mark where it is cut short; "" where nothing goes in. */
export function shortened(text: string, ems: number): string {
  if (widthOf(text) <= ems) return text;
  const signs = [...text];
  while (signs.length > 0 && widthOf(`${signs.join("")}…`) > ems) signs.pop();
  const start = signs.join("").trimEnd();
  return start === "" ? "" : `${start}…`;
}
