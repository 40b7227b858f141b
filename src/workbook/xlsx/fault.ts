/** Why a file is not usable, in one line for a person. */
export class FileFault extends Error {}

/**
 * A line fit for a terminal: nothing in it breaks the line, moves the cursor, turns the direction of what follows or
 * hides. A break of lines becomes a space, every other such mark is written out: `\u{202e}`.
 */
export function shown(text: string): string {
  return text.replace(/[\t\n\r]+/g, " ").replace(UNSEEN, (mark) => `\\u{${mark.codePointAt(0)!.toString(16)}}`);
}

/** Controls (C0, C1, DEL), marks without a width, of direction and of format, halves of characters, line separators. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\u115f\u1160\u3164\uffa0]/gu;
