import { less, type Rational, type SafeSizes } from "../length";
import { lengthOf, type Rectangle } from "./exact";
import { apart } from "./grain-row";
import { isOffcut, isWaste, WAYS, type Piece, type Solution } from "./solution";

/** One pass through the saw. Lengths in the problem's unit. */
export interface SawCut {
  /** The sheet's number, from 1. */
  sheet: number;
  /** From 1 on each sheet. */
  step: number;
  /** `rip` along the sheet's length, `crosscut` across it. */
  kind: "rip" | "crosscut";
  /** The size kept. */
  setting: Rational;
  from: SawPiece;
  /** What lies on the table afterwards: what was kept, then what is left of the piece, if anything is. */
  gives: readonly SawPiece[];
  caution?: "short" | "narrow";
  /** What comes off, where that is less than the blade is wide: the rest of the blade cuts air. */
  shaves?: Rational;
  frees: Freed;
}

/** What a cut sets free, what that is cut from, and on which side of the cut it lies. */
interface Freed {
  piece: Piece;
  of: Piece;
  keeps: "before" | "after";
}

export interface SawPiece {
  /** What it is: a sheet, a piece that is cut further, a part, an offcut, or waste, of which nothing can be cut. */
  is: "sheet" | "piece" | "part" | "offcut" | "waste";
  /** The number of a piece on its sheet, from 1. */
  piece?: number;
  /** The number of a part among the problem's parts, from 0. */
  part?: number;
  length: Rational;
  width: Rational;
}

/**
 * All cuts in the order to make them. Each stage of a sheet is finished before the next, its equal settings together,
 * the largest first: so rips come first wherever the layout begins with them.
 */
export function sawCuts(solution: Solution, safe: SafeSizes): SawCut[] {
  return solution.sheets.flatMap((_, index) => new Sheet(solution, index, safe).cuts());
}

/** A piece in hand as it gets smaller, and its children that are still to be cut off it. */
interface InHand {
  number: number;
  piece: Piece;
  now: Rectangle;
  rest: Piece[];
  /** What is to come off the end first, so that the grain runs on to the next front of a strip. */
  waste: number;
}

class Sheet {
  private readonly made: SawCut[] = [];
  private readonly numbers = new Map<Piece, number>();

  constructor(
    private readonly solution: Solution,
    private readonly index: number,
    private readonly safe: SafeSizes,
  ) {}

  cuts(): SawCut[] {
    const { piece } = this.solution.sheets[this.index]!;
    this.trim();
    let stage = piece.cut ? [piece] : [];
    while (stage.length > 0) {
      this.cutStage(stage);
      stage = stage.flatMap(({ cut }) => cut!.into.filter((child) => child.cut));
    }
    return this.made;
  }

  /** The four edges of the sheet, the long ones first. */
  private trim(): void {
    const { exact, sheets } = this.solution;
    const { trim } = exact;
    if (trim === 0) return;
    const { stock } = sheets[this.index]!;
    const now: Rectangle = { ...exact.stock[stock]! };
    for (const kind of TRIM) {
      const { side } = WAYS[kind];
      const before = { ...now };
      now[side] -= trim;
      const last = kind === "crosscut" && this.made.length === 3;
      const { piece } = sheets[this.index]!;
      const keeps = this.made.length % 2 === 0 ? "after" : "before";
      this.made.push(
        this.cut(kind, now[side], this.shown("sheet", before), before, { piece, of: piece, keeps }, [
          last ? this.name(piece) : this.shown("sheet", now),
        ]),
      );
    }
  }

  private cutStage(stage: readonly Piece[]): void {
    const hands = stage.map((piece): InHand => {
      const { side } = WAYS[piece.cut!.kind];
      // The fence is set to what is kept; an offcut is what is left. A strip of matched fronts is cut in its order.
      const rest = [...piece.cut!.into];
      if (!this.isStrip(piece)) rest.sort((a, b) => +isOffcut(a) - +isOffcut(b) || b[side] - a[side]);
      const now = { length: piece.length, width: piece.width };
      return { number: this.number(piece), piece, now, rest, waste: 0 };
    });
    for (;;) {
      const [next] = hands.filter((hand) => this.unfinished(hand)).sort((a, b) => this.order(a, b));
      if (!next) return;
      this.cutOff(next);
    }
  }

  private isStrip({ cut }: Piece): boolean {
    const [first, second] = cut!.into;
    return apart(this.solution, first, second) !== undefined;
  }

  /** Rips before crosscuts, then by setting, then in the order of the sheet. */
  private order(a: InHand, b: InHand): number {
    const kind = (hand: InHand): number => (hand.piece.cut!.kind === "rip" ? 0 : 1);
    return kind(a) - kind(b) || settingOf(b) - settingOf(a) || a.number - b.number;
  }

  private unfinished({ piece, now, rest }: InHand): boolean {
    if (rest.length === 0) return false;
    const { side } = WAYS[piece.cut!.kind];
    return rest.length > 1 || rest[0]![side] < now[side];
  }

  private cutOff(hand: InHand): void {
    const { exact } = this.solution;
    const { kind } = hand.piece.cut!;
    const { side } = WAYS[kind];
    const before = { ...hand.now };
    const from = this.shownPiece(hand, before);
    if (hand.waste > 0) {
      hand.now[side] -= hand.waste;
      hand.waste = 0;
      const left = this.unfinished(hand) ? this.shownPiece(hand, hand.now) : this.name(hand.rest[0]!);
      const frees: Freed = { piece: hand.rest[0]!, of: hand.piece, keeps: "after" };
      this.made.push(this.cut(kind, hand.now[side], from, before, frees, [left]));
      return;
    }
    const kept = hand.rest.shift()!;
    hand.now[side] = Math.max(0, hand.now[side] - kept[side] - exact.kerf);
    hand.waste = (apart(this.solution, kept, hand.rest[0]) ?? exact.kerf) - exact.kerf;
    const gives = [this.name(kept)];
    if (hand.rest.length === 1 && hand.rest[0]![side] === hand.now[side]) gives.push(this.name(hand.rest[0]!));
    else if (hand.rest.length > 0) gives.push(this.shownPiece(hand, hand.now));
    // They lie in the order in which they are cut off: each at its far edge, so that no two cuts share a line.
    const frees: Freed = { piece: kept, of: hand.piece, keeps: "before" };
    this.made.push(this.cut(kind, kept[side], from, before, frees, gives));
  }

  private cut(
    kind: SawCut["kind"],
    setting: number,
    from: SawPiece,
    before: Rectangle,
    frees: Freed,
    gives: SawPiece[],
  ): SawCut {
    const { exact } = this.solution;
    const cut: SawCut = {
      sheet: this.index + 1,
      step: this.made.length + 1,
      kind,
      setting: lengthOf(setting, exact),
      from,
      gives,
      frees,
    };
    const off = before[WAYS[kind].side] - setting;
    if (off > 0 && off < exact.kerf) cut.shaves = lengthOf(off, exact);
    const { length, width } = this.safe;
    // What is left over is no less to be minded than what the stop or the fence measures, where it is kept.
    const kept = gives.filter(({ is }) => is === "part" || is === "piece");
    // The fence guides a rip along its length; a crosscut's piece is held by the sled.
    const short = kind === "crosscut" ? kept.map((piece) => piece.length) : [lengthOf(before.length, exact)];
    const narrow = [...kept.map((piece) => piece.width), lengthOf(before.width, exact)];
    if (short.some((size) => less(size, length))) cut.caution = "short";
    else if (kind === "rip" && narrow.some((size) => less(size, width))) cut.caution = "narrow";
    return cut;
  }

  private number(piece: Piece): number {
    const known = this.numbers.get(piece);
    if (known !== undefined) return known;
    this.numbers.set(piece, this.numbers.size + 1);
    return this.numbers.size;
  }

  private name(piece: Piece): SawPiece {
    if (piece.part) return { ...this.shown("part", piece), part: piece.part.index };
    if (isOffcut(piece)) return this.shown(isWaste(piece, this.solution.exact) ? "waste" : "offcut", piece);
    return { ...this.shown("piece", piece), piece: this.number(piece) };
  }

  /** The sheet itself where nothing was trimmed off it, else a numbered piece. */
  private shownPiece({ piece, number }: InHand, now: Rectangle): SawPiece {
    const whole = piece === this.solution.sheets[this.index]!.piece && this.solution.exact.trim === 0;
    return whole ? this.shown("sheet", now) : { ...this.shown("piece", now), piece: number };
  }

  private shown(is: SawPiece["is"], { length, width }: Rectangle): SawPiece {
    const { exact } = this.solution;
    return { is, length: lengthOf(length, exact), width: lengthOf(width, exact) };
  }
}

const TRIM = ["rip", "rip", "crosscut", "crosscut"] as const;

const settingOf = ({ piece, now, rest, waste }: InHand): number => {
  const { side } = WAYS[piece.cut!.kind];
  return waste > 0 ? now[side] - waste : rest[0]![side];
};
