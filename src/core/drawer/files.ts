import { add, divide, less, roundFigure, subtract, times, wholePart, type Rational, type Unit } from "../length";
import { ofDrawer } from "./per-drawer";
import type { Drawer } from "./plan/plan";
import { Size } from "./size";
import type { FileKind } from "./standards";

/** How files hang in a box. */
export interface Files {
  kind: FileKind;
  /** What a folder wants between its rails. */
  folder: Rational;
  /** None where folders go in neither way. */
  rails?: { along: "depth" | "width"; length: Rational; count: number; filing: Size };
}

/** What hangs in a drawer; the way in which the most files go in, facing the front where both are alike. */
export function filesOf(drawer: Drawer): Files | undefined {
  const { opening, stock } = drawer;
  const { standards: s, unit } = opening;
  const kind = ofDrawer(drawer, "hanging files", s["hanging files"]);
  if (kind === "none") return undefined;
  const [inches, mm] = FOLDERS[kind];
  const folder = roundFigure(inches, mm, unit);
  const between = roundFigure("1/4", "6", unit);
  const hung = (along: "depth" | "width", across: Rational, length: Rational): Files["rails"] => {
    const rows = Number(wholePart(divide(add(across, between), add(folder, between))));
    const filing = new Size(
      times(rows, length),
      (write) => `${rows > 1 ? `${rows} rows of ` : ""}inside ${along} ${write(length)}`,
    );
    return rows > 0 ? { along, length, count: 2 * rows, filing } : undefined;
  };
  const [width, depth] = [stock.insideWidth.value, stock.insideDepth.value];
  const [facing, sideways] = [hung("depth", width, depth), hung("width", depth, width)];
  const more = facing && sideways && less(facing.filing.value, sideways.filing.value);
  const rails = more ? sideways : (facing ?? sideways);
  return { kind, folder, ...(rails && { rails }) };
}

/** Of a folder's body, and a little. @source common practice, from memory */
const FOLDERS = { letter: ["12 1/4", "311"], legal: ["15 1/4", "387"] } as const;

/** From the rails down to the bottom, and from the bottom up to what tabs must pass. @source common practice, from memory */
export const foldersHang = (unit: Unit): Rational => roundFigure("9 1/2", "241", unit);
export const tabsStand = (unit: Unit): Rational => roundFigure("10", "254", unit);

/** What is free from the bottom up to what is above the box. */
export const overBottom = ({ zone, boxBottom, boxHeight, insideHeight }: Drawer): Rational =>
  add(insideHeight.value, subtract(zone.top.value, add(boxBottom.value, boxHeight.value)));
