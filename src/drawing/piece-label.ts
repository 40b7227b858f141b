import type { Offcut } from "../core/sheets";
import type { Asides } from "./asides";
import { LETTERS, textRoom, type Paper } from "./paper";
import type { Scale } from "./scale";

export interface PieceText {
  name: string;
  size: string;
  /** What the size is called in the table. */
  of: string;
}

/** A name is rather written small than cut down to less than this many ems. */
const LEAST_NAME = 4;
const INSET = 0.8;

/**
 * Writes name and size into a piece, as large and as upright as they go in; else a letter, which the key explains.
 * @param asides where there is none, what does not go in is left out
 */
export function pieceLabel(paper: Paper, scale: Scale, piece: Offcut, text: PieceText, asides?: Asides): void {
  const [length, height] = [scale.of(piece.length), scale.of(piece.width)];
  const [x, y] = [scale.of(piece.fromLeft) + length / 2, -scale.of(piece.fromBottom) - height / 2];
  for (const size of [LETTERS.usual, LETTERS.small]) {
    for (const isTurned of [false, true]) {
      const [along, across] = isTurned ? [height, length] : [length, height];
      if (write(paper, x, y, along - 2 * INSET, across, text, size, isTurned)) return;
    }
  }
  if (!asides) return;
  const letter = asides.letter(text.name, text.size, text.of);
  const size = [LETTERS.small, LETTERS.tiny].find((size) => {
    const room = textRoom(letter, size);
    return room.width <= length && room.height <= height;
  });
  if (size) paper.label(letter, x, y, { size });
  else asides.lead(x, y, letter);
}

function write(
  paper: Paper,
  x: number,
  y: number,
  along: number,
  across: number,
  { name, size: sizes, of }: PieceText,
  size: number,
  isTurned: boolean,
): boolean {
  const [named, sized] = [textRoom(name, size), textRoom(sizes, size)];
  const least = Math.min(named.width, LEAST_NAME * size);
  const at = (shift: number): [number, number] => (isTurned ? [x + shift, y] : [x, y + shift]);
  const more = { size, isTurned };
  if (2 * named.height <= across && Math.max(least, sized.width) <= along) {
    paper.label(name, ...at(-named.height / 2), { ...more, room: along });
    paper.label(sizes, ...at(named.height / 2), { ...more, of });
    return true;
  }
  // In one line: the name as long as the size leaves room for.
  const between = size;
  const left = along - sized.width - between;
  if (named.height > across || left < least) return false;
  return paper.label(sizes, x, y, { ...more, of, before: `${name}:`, room: along });
}
