import { overlap, type Anchor, type Box, type Drawing, type Label, type LineKind, type Stroke } from "./drawing";
import { drawable, shortened, widthOf } from "./text";

/** Letters as ISO 3098 sizes them (from memory): capitals 2.5 mm high, or 1.8 mm for what is less important; smaller where nothing else goes in. */
export const LETTERS = { usual: 3.5, small: 2.5, number: 2.2, tiny: 1.8 } as const;

/** The height of a line of text, in its size. */
const LINE = 1.15;
/** How far its baseline lies above its lower edge. */
const DESCENT = 0.23;

type Point = readonly [x: number, y: number];

export interface LabelOptions {
  anchor?: Anchor;
  size?: number;
  of?: string;
  isTurned?: boolean;
  /** The room that the line may take: its name is cut short to it. */
  room?: number;
  /** Where it is a size: a name that stands before or after it. */
  before?: string;
  after?: string;
}

/** A sheet of paper without end, to draw on. */
export class Paper {
  private readonly strokes: Stroke[] = [];
  private readonly labels: Label[] = [];
  /** What nothing may be written over, by the columns of paper that it reaches into. */
  private readonly taken = new Map<number, Box[]>();

  line(line: LineKind, ...points: Point[]): void {
    this.strokes.push({ path: pathOf(points), line });
    this.reach(points);
  }

  /** A rectangle by its left and upper edge. */
  rectangle(line: LineKind, x: number, y: number, width: number, height: number, fill?: Stroke["fill"]): void {
    const points: Point[] = [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ];
    this.shape(line, points, fill);
  }

  shape(line: LineKind, points: readonly Point[], fill?: Stroke["fill"]): void {
    this.strokes.push({ path: `${pathOf(points)}Z`, line, ...(fill && { fill }) });
    this.reach(points);
  }

  circle(line: LineKind, x: number, y: number, radius: number, fill?: Stroke["fill"]): void {
    const [r, across] = [mm(radius), mm(2 * radius)];
    const path = `M${mm(x - radius)} ${mm(y)}a${r} ${r} 0 1 0 ${across} 0a${r} ${r} 0 1 0 -${across} 0Z`;
    this.strokes.push({ path, line, ...(fill && { fill }) });
    this.reach([
      [x - radius, y - radius],
      [x + radius, y + radius],
    ]);
  }

  /** A number in a ring, which grows with it. */
  ring(text: string, x: number, y: number, of?: string): void {
    const { left, top, right, bottom } = ringBox(text, x, y);
    const r = mm((bottom - top) / 2);
    const straight = mm(right - left - (bottom - top));
    this.strokes.push({
      path: `M${mm(left + (bottom - top) / 2)} ${mm(top)}h${straight}a${r} ${r} 0 0 1 0 ${mm(bottom - top)}h-${straight}a${r} ${r} 0 0 1 0 ${mm(top - bottom)}Z`,
      line: "thin",
      fill: "paper",
    });
    this.reach([
      [left, top],
      [right, bottom],
    ]);
    this.label(text, x, y, { size: LETTERS.number, ...(of !== undefined && { of }) });
    this.keep({ left, top, right, bottom });
  }

  /** Keeps a place free of texts that look for one. */
  keep(box: Box): void {
    for (const column of columnsOf(box)) {
      const there = this.taken.get(column);
      if (there) there.push(box);
      else this.taken.set(column, [box]);
    }
  }

  isFree(box: Box): boolean {
    return columnsOf(box).every((column) => !this.taken.get(column)?.some((other) => overlap(other, box)));
  }

  /**
   * Writes a text whose middle line runs through a point.
   * @returns false where not even a part of it has room
   */
  label(text: string, x: number, y: number, options: LabelOptions = {}): boolean {
    const label = labelOf(text, x, y, options);
    if (!label) return false;
    this.labels.push(label);
    this.keep(label.box);
    this.reach([
      [label.box.left, label.box.top],
      [label.box.right, label.box.bottom],
    ]);
    return true;
  }

  /** Writes a text at the first of several points where nothing stands in its way. */
  labelWhereFree(text: string, points: readonly Point[], options: LabelOptions = {}): boolean {
    const [x, y] =
      points.find(([x, y]) => {
        const label = labelOf(text, x, y, options);
        return label && this.isFree(label.box);
      }) ?? [];
    return x !== undefined && this.label(text, x, y!, options);
  }

  /** The paper that has been drawn on. */
  get box(): Box {
    return { ...this.extent };
  }

  finish(title: string, about: string): Drawing {
    const { left, top, right, bottom } = this.extent;
    return {
      title: drawable(title),
      about: drawable(about),
      box: { left: left - MARGIN, top: top - MARGIN, right: right + MARGIN, bottom: bottom + MARGIN },
      strokes: this.strokes,
      labels: this.labels,
    };
  }

  private extent: Box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };

  private reach(points: readonly Point[]): void {
    for (const [x, y] of points) {
      this.extent.left = Math.min(this.extent.left, x);
      this.extent.top = Math.min(this.extent.top, y);
      this.extent.right = Math.max(this.extent.right, x);
      this.extent.bottom = Math.max(this.extent.bottom, y);
    }
  }
}

const MARGIN = 2;

/** Only what stands in the same columns of the paper, of 10 mm each, can stand in the way: banks have thousands of texts. */
function columnsOf({ left, right }: Box): number[] {
  const first = Math.floor(left / 10);
  return Array.from({ length: Math.floor(right / 10) - first + 1 }, (_, i) => first + i);
}

/** The room that a text takes: along its line, and across. */
export const textRoom = (text: string, size: number = LETTERS.usual): { width: number; height: number } => ({
  width: widthOf(drawable(text)) * size,
  height: LINE * size,
});

/** The room that a ring takes round its number. */
export function ringBox(text: string, x: number, y: number): Box {
  const { width, height } = textRoom(text, LETTERS.number);
  const [half, high] = [Math.max(width / 2 + 0.5, height / 2 + 0.1), height / 2 + 0.1];
  return { left: x - half, right: x + half, top: y - high, bottom: y + high };
}

function labelOf(text: string, x: number, y: number, options: LabelOptions): Label | undefined {
  const { anchor = "middle", size = LETTERS.usual, of, isTurned = false } = options;
  const line = lineOf(text, options);
  if (!line) return undefined;
  const { width, height } = textRoom([line.before, line.text, line.after].filter(Boolean).join(" "), size);
  const before = anchor === "start" ? 0 : anchor === "middle" ? width / 2 : width;
  const [half, base] = [height / 2, height / 2 - DESCENT * size];
  return {
    ...line,
    ...(of !== undefined && { of }),
    x: isTurned ? x + base : x,
    y: isTurned ? y : y + base,
    size,
    anchor,
    isTurned,
    box: isTurned
      ? { left: x - half, right: x + half, top: y - (width - before), bottom: y + before }
      : { left: x - before, right: x - before + width, top: y - half, bottom: y + half },
  };
}

/** The texts of a line, in the room that it has: a name is cut short, and a size that has one never is. */
function lineOf(
  text: string,
  { size = LETTERS.usual, room = Infinity, before, after }: LabelOptions,
): Pick<Label, "text" | "before" | "after" | "whole"> | undefined {
  const whole = drawable(text);
  const name = drawable(before ?? after ?? "");
  if (name === "") {
    const shown = shortened(whole, room / size);
    return shown === "" ? undefined : { text: shown, ...(shown !== whole && { whole }) };
  }
  const shown = shortened(name, room / size - widthOf(`${whole} `));
  return {
    text: whole,
    ...(shown !== "" && (before === undefined ? { after: shown } : { before: shown })),
    ...(shown !== name && { whole: name }),
  };
}

const pathOf = (points: readonly Point[]): string => `M${points.map(([x, y]) => `${mm(x)} ${mm(y)}`).join("L")}`;

/** Thousandths of a millimeter are finer than any printer. */
export const mm = (size: number): string => String(Math.round(size * 1000) / 1000 + 0);
