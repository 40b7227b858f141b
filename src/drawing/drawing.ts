/** A drawing on paper: finished, in millimeters of the paper, x to the right and y down. */
export interface Drawing {
  title: string;
  /** What is to be seen, for those who cannot see it. */
  about: string;
  box: Box;
  strokes: readonly Stroke[];
  labels: readonly Label[];
}

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/**
 * Lines as ISO 128-2 has them (from memory): visible edges continuous and wide, hidden ones dashed and narrow, what is cut
 * through hatched, dimensions and all help continuous and narrow.
 */
export type LineKind = "visible" | "hidden" | "thin" | "center";

export interface Stroke {
  /** The path's data. */
  path: string;
  line: LineKind;
  fill?: "cut" | "end" | "paper" | "dot";
}

/** A text in its place, with the room that it takes, estimated high rather than low. */
export interface Label {
  text: string;
  /** A name in its line, before or after it: letters are not equally wide everywhere, so that none is placed by another's end. */
  before?: string;
  after?: string;
  /** All of it, where it was cut short. */
  whole?: string;
  x: number;
  y: number;
  size: number;
  anchor: Anchor;
  /** It reads upward. */
  isTurned: boolean;
  box: Box;
  /** The table's name of the size that is shown, as `A1 Front height`; none where it is a name. */
  of?: string;
}

export type Anchor = "start" | "middle" | "end";

/** Whether two boxes share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - SLACK && b.left < a.right - SLACK && a.top < b.bottom - SLACK && b.top < a.bottom - SLACK;

/** Whether one box lies in another. */
export const isInside = (a: Box, outer: Box): boolean =>
  a.left >= outer.left - SLACK &&
  a.right <= outer.right + SLACK &&
  a.top >= outer.top - SLACK &&
  a.bottom <= outer.bottom + SLACK;

const SLACK = 1e-6;
