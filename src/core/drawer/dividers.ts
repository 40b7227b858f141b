import {
  add,
  divide,
  Fault,
  half,
  isPositive,
  less,
  negate,
  subtract,
  times,
  wholePart,
  type Rational,
} from "../length";
import { intoFront, isJoined } from "./joined-front";
import { ofDrawer } from "./per-drawer";
import type { Drawer } from "./plan/plan";
import { given, minus, plus, shared, Size, sum, type Term } from "./size";
import type { Standards } from "./standards";

/** The dividers of one box: boards on edge that stand on its bottom, all alike. */
export interface Dividers {
  count: number;
  /** The clear room between two of them. */
  cell: Size;
  /** What is left behind the last of them, where they stand at a spacing. */
  last?: Size;
  length: Size;
  height: Size;
}

/** No box is divided by more. */
export const MOST_DIVIDERS = 100;

/** @throws Fault where they do not go into the box, or their dadoes through its parts */
export function dividersOf(drawer: Drawer): Dividers | undefined {
  const { opening, stock, insideHeight } = drawer;
  const s = opening.standards;
  const asked = ofDrawer(drawer, "dividers", s.dividers);
  if (asked === "none") return undefined;
  checkDado(drawer);
  const width = plus("inside width", stock.insideWidth);
  const depth = plus("inside depth", stock.insideDepth);
  const [across, along] = isSideways(s) ? [depth, width] : [width, depth];
  const height = s["divider height"];
  return {
    ...("count" in asked ? evenly(asked.count, across, s) : spaced(asked.spacing, across, s)),
    length: sum(
      along,
      plus("divider dado depth", s["divider dado depth"], isInDadoes(s) ? 2 : 0),
      minus("divider play", s["divider play"]),
    ),
    height: height === "inside" ? sum(plus("inside height", insideHeight)) : given(height, "as the standard says"),
  };
}

/** Whether any drawer of an opening has some. */
export const hasDividers = (s: Standards): boolean => s.dividers.some((asked) => asked !== "none");

const isSideways = (s: Standards): boolean => s["divider run"] === "side to side";
const isInDadoes = (s: Standards): boolean => s["divider fit"] === "dado";

function evenly(count: number, across: Term, s: Standards): Pick<Dividers, "count" | "cell"> {
  const thickness = s["divider thickness"];
  const cell = shared(sum(across, minus("divider thickness", thickness, count)), count + 1);
  if (!isPositive(cell.value)) throw new Fault("divider.noRoom", { count, thickness, inside: across.value });
  return { count, cell };
}

/** As many as leave something behind the last of them. */
function spaced(spacing: Rational, across: Term, s: Standards): Pick<Dividers, "count" | "cell" | "last"> {
  const thickness = s["divider thickness"];
  const count = -Number(wholePart(negate(divide(across.value, add(spacing, thickness))))) - 1;
  if (count < 1 || count > MOST_DIVIDERS)
    throw new Fault("divider.spacing", { spacing, count, most: MOST_DIVIDERS, inside: across.value });
  const last = sum(across, minus("spacing", spacing, count), minus("divider thickness", thickness, count));
  return { count, cell: given(spacing, "as the standard says"), last };
}

/** Parts that they are cut into. */
type Dadoed = "Side" | "Front" | "Box front" | "Box back";

/** The dadoes of one kind of part: how far from its end each begins. */
interface Dadoes {
  name: Dadoed;
  /** They lie alike from both ends. */
  even: boolean;
  /** From the end at the box's left, or the side's front end. */
  from: readonly Rational[];
}

export function dadoesOf(drawer: Drawer): Dadoes[] {
  const { stock, front, opening } = drawer;
  const s = opening.standards;
  const dividers = dividersOf(drawer);
  if (!dividers || !isInDadoes(s)) return [];
  const pitch = add(dividers.cell.value, s["divider thickness"]);
  const dadoes = (name: Dadoed, inside: Rational, even = true): Dadoes => ({
    name,
    even: even && !dividers.last,
    from: Array.from({ length: dividers.count }, (_, i) => add(add(inside, dividers.cell.value), times(i, pitch))),
  });
  const joined = isJoined(s);
  const ends = (length: Size, inside: Size): Rational => half(subtract(length.value, inside.value));
  if (isSideways(s))
    return [dadoes("Side", joined ? intoFront(s) : ends(stock.sideLength, stock.insideDepth), !joined)];
  return [
    joined
      ? dadoes("Front", ends(front.width, stock.insideWidth))
      : dadoes("Box front", ends(stock.endLength, stock.insideWidth)),
    dadoes("Box back", ends(stock.endLength, stock.insideWidth)),
  ];
}

/** What their dadoes are cut into, and how thick that is; of two ends of unlike thickness the box's back. */
export function dadoedPart({ opening, stock }: Drawer): { part: "side" | "end"; thickness: Rational } | undefined {
  const s = opening.standards;
  const part = isSideways(s) ? "side" : "end";
  return isInDadoes(s) ? { part, thickness: stock[part] } : undefined;
}

/** @throws Fault `divider.through` */
function checkDado(drawer: Drawer): void {
  const depth = drawer.opening.standards["divider dado depth"];
  const dadoed = dadoedPart(drawer);
  if (dadoed && !less(depth, dadoed.thickness)) throw new Fault("divider.through", { depth, ...dadoed });
}
