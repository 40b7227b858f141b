import { spend } from "./budget";

/**
 * `?` is any character, `*` any number of them, `~` takes the meaning off the next; case does not count.
 * The pieces between stars are found one after the other, each as early as it stands: looking for another way
 * once one is found can never help, so no text and pattern take longer than their lengths ask for.
 */
export class Wildcard {
  private readonly pieces: readonly Piece[];

  constructor(pattern: string) {
    this.pieces = piecesOf(fold(pattern));
  }

  /** Whether the whole text is so. */
  matches(given: string): boolean {
    const text = folded(given);
    const [first, ...others] = this.pieces;
    let at = startsAt(text, 0, first!);
    if (others.length === 0) return at === text.length;
    const last = others.pop()!;
    for (const piece of others) {
      if (at < 0) return false;
      at = find(text, at, piece)?.end ?? -1;
    }
    return at >= 0 && endsFrom(text, last) >= at;
  }

  /** Where the earliest such piece of the text begins, from a place on; -1 where there is none. */
  search(given: string, from: number): number {
    const text = folded(given);
    const [first, ...others] = this.pieces;
    const found = find(text, from, first!);
    let at = found?.end ?? -1;
    for (const piece of others) {
      if (at < 0) return -1;
      at = find(text, at, piece)?.end ?? -1;
    }
    return at < 0 ? -1 : found!.start;
  }
}

/** Characters as they stand, `undefined` for any one; `text` where there is none of these. */
interface Piece {
  characters: (string | undefined)[];
  text?: string;
}

function piecesOf(pattern: string): Piece[] {
  const pieces: Piece[] = [{ characters: [] }];
  for (let i = 0; i < pattern.length; i++) {
    const character = pattern[i]!;
    const { characters } = pieces.at(-1)!;
    if (character === "~" && "*?~".includes(pattern[i + 1] ?? " ")) characters.push(pattern[++i]!);
    else if (character === "*") pieces.push({ characters: [] });
    else characters.push(character === "?" ? undefined : character);
  }
  for (const piece of pieces) if (!piece.characters.includes(undefined)) piece.text = piece.characters.join("");
  return pieces;
}

function find(text: string, from: number, piece: Piece): { start: number; end: number } | undefined {
  if (piece.text !== undefined) {
    const start = text.indexOf(piece.text, from);
    return start < 0 ? undefined : { start, end: start + piece.text.length };
  }
  for (let start = from; start < text.length; start++) {
    if (start > 0 && pairEnds(text, start + 1)) continue;
    const end = startsAt(text, start, piece);
    if (end >= 0) return { start, end };
  }
  return undefined;
}

/** Where the piece ends if it begins there, or -1. */
function startsAt(text: string, start: number, { characters, text: plain }: Piece): number {
  if (plain !== undefined) return text.startsWith(plain, start) ? start + plain.length : -1;
  let at = start;
  let tried = 0;
  for (const character of characters) {
    tried++;
    if (at >= text.length || (character !== undefined && text[at] !== character)) {
      at = -1;
      break;
    }
    at += character === undefined && pairEnds(text, at + 2) ? 2 : 1;
  }
  spend(tried / 4);
  return at;
}

/** Where the piece begins if it ends the text, or -1. */
function endsFrom(text: string, { characters, text: plain }: Piece): number {
  if (plain !== undefined) return text.endsWith(plain) ? text.length - plain.length : -1;
  let at = text.length;
  for (let i = characters.length - 1; i >= 0; i--) {
    if (at <= 0 || (characters[i] !== undefined && text[at - 1] !== characters[i])) return -1;
    at -= characters[i] === undefined && pairEnds(text, at) ? 2 : 1;
  }
  return at;
}

/** Whether a character of two halves ends there. */
function pairEnds(text: string, end: number): boolean {
  return /^[\ud800-\udbff][\udc00-\udfff]$/.test(text.slice(Math.max(0, end - 2), end));
}

function folded(text: string): string {
  spend(1 + text.length / 16);
  return fold(text);
}

/** Both cases of a letter as one, and every character as long as it was, so that places stay what they are. */
export function fold(text: string): string {
  if (/^[\u0000-\u007f]*$/.test(text)) return text.toLowerCase();
  return Array.from(text, (character) => {
    const other = character.toUpperCase().toLowerCase();
    return other.length === character.length ? other : character;
  }).join("");
}
