/** A piece on the saw's table: what the cuts' table calls it, and its sizes. */
export interface Board {
  label: string;
  length: number;
  width: number;
}

/** Sizes are worked out anew from settings and kerf; sums of a few doubles stray by less than this. */
const HAIR = 1e-9;
export const same = (a: number, b: number): boolean => Math.abs(a - b) < HAIR * 1e4;

/**
 * Cuts one sheet as a person with the rows of CUTS in hand would, who knows nothing of layouts: takes the piece named,
 * sets the fence, cuts, and looks whether what lies there then is what the row says.
 * @param rows Step, Cut, Setting, From, Gives of one sheet
 * @returns what lies on the table when all is cut
 * @throws Error at the first row that cannot be followed
 */
export function sawn(rows: readonly unknown[][], kerf: number, trim: number): { sheet: Board; boards: Board[] } {
  const sheet = read(rows[0]![3]);
  const boards = [sheet];
  rows.forEach(([step, kind, setting, from, gives], i) => {
    const wrong = (what: string) => new Error(`Step ${String(step)}: ${what} (${String(from)} → ${String(gives)})`);
    if (step !== i + 1) throw wrong(`it is the ${i + 1}th`);
    const wanted = read(from);
    const at = boards.findIndex((board) => board.label === wanted.label && alike(board, wanted));
    if (at < 0) throw wrong("no such piece is there");
    const [board] = boards.splice(at, 1) as [Board];
    const side = kind === "rip" ? "width" : kind === "crosscut" ? "length" : undefined;
    if (!side || typeof setting !== "number") throw wrong("no such cut");
    const kept = { ...board, [side]: setting };
    const left = { ...board, [side]: board[side] - setting - kerf };
    const got = given(gives);
    const edge = trim > 0 && i < 4;
    if (edge && !same(board[side] - setting, trim)) throw wrong("the edge is not as wide as the trim");
    if (board[side] - setting < HAIR) throw wrong("nothing is cut off");
    const real = edge || left[side] < HAIR ? [kept] : [kept, left];
    if (got.length !== real.length || !got.every((piece, n) => alike(piece, real[n]!)))
      throw wrong(`it gives ${real.map(({ length, width }) => `${length} × ${width}`).join(", ")}`);
    boards.push(...got);
  });
  return { sheet, boards };
}

const alike = (a: Board, b: Board): boolean => same(a.length, b.length) && same(a.width, b.width);

/** What a row gives; behind it may stand a caution. */
const given = (gives: unknown): Board[] =>
  String(gives)
    .replace(/\. Caution: .*$/, "")
    .split("; ")
    .map(read);

function read(text: unknown): Board {
  const found = /^(\D[^×]*?\S) ((?:\d+ )?\d+\/\d+|\d+(?:\.\d+)?) × ((?:\d+ )?\d+\/\d+|\d+(?:\.\d+)?)$/.exec(
    String(text),
  );
  if (!found) throw new Error(`No piece: ${String(text)}`);
  return { label: found[1]!, length: number(found[2]!), width: number(found[3]!) };
}

/** `47 7/8`, `7/8`, `47`, `47.5` */
function number(text: string): number {
  const [, whole = "0", over, under] = /^(\d+(?:\.\d+)?)?(?: |^)?(?:(\d+)\/(\d+))?$/.exec(
    text.replace(/^(\d+\/)/, "0 $1"),
  )!;
  return Number(whole) + (over ? Number(over) / Number(under) : 0);
}

/** Boards as lines, in an order of their own. */
export const listed = (boards: readonly Board[]): string[] =>
  boards.map(({ label, length, width }) => `${label}: ${length.toFixed(6)} × ${width.toFixed(6)}`).sort();
