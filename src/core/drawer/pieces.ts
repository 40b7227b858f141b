import { Fault, type Unit } from "../length";
import { bandsOf, type Band } from "./bands";
import { cutList, type Part, type PartName } from "./plan/parts";
import { frontsIn, type PlannedOpening } from "./plan/plan";
import { setUpsOf, type SetUp } from "./setups";

/** One physical piece: which of its drawer's equal ones it is, and of which copy of its opening. */
export interface Piece {
  drawer: string;
  part: Part;
  side?: "left" | "right";
  /** Which it is of several that no side tells apart, from 1. */
  number?: number;
  copy?: { number: number; of: number };
  /** The bands of its edges. */
  bands: readonly Band[];
  /** The numbers of the set-ups that it goes through, from 1. */
  setUps: readonly number[];
}

/** More labels than these nobody sticks, and a spreadsheet loses them. */
const MOST_PIECES = 10_000;

/**
 * Every piece of a job once, in the order of the cut list.
 * @throws Fault `pieces.many` before they are made
 */
export function piecesOf(plans: readonly PlannedOpening[], unit: Unit): Piece[] {
  const parts = cutList(plans, false);
  const pieces = parts.reduce((count, { quantity }) => count + quantity, 0);
  if (pieces > MOST_PIECES) throw new Fault("pieces.many", { pieces, most: MOST_PIECES });
  const openings = new Map(
    plans.flatMap((planned) => frontsIn(planned).map(({ label, opening }) => [label, opening] as const)),
  );
  const steps = stepsByPart(setUpsOf(plans, unit).filter((step): step is SetUp => !("caution" in step)));
  return parts.flatMap((part) => {
    const drawer = part.drawers[0]!;
    const { quantity: of, standards } = openings.get(drawer)!;
    const each = part.quantity / of;
    return Array.from({ length: part.quantity }, (_, i): Piece => ({
      drawer,
      part,
      ...place(part.name, i % each, each),
      ...(of > 1 && { copy: { number: Math.floor(i / each) + 1, of } }),
      bands: bandsOf(part.name, standards),
      // Every piece is sawn, and so has steps.
      setUps: steps.get(keyOf(part.name, drawer))!,
    }));
  });
}

/** A pair stands at both sides of its drawer; others are counted. */
const place = (name: PartName, i: number, each: number): Pick<Piece, "side" | "number"> =>
  each === 1 ? {} : each === 2 && PAIRS.test(name) ? { side: i === 0 ? "left" : "right" } : { number: i + 1 };

const PAIRS = /^side$|runner/i;

function stepsByPart(setUps: readonly SetUp[]): Map<string, number[]> {
  const steps = new Map<string, number[]>();
  setUps.forEach(({ parts }, i) => {
    for (const { name, drawers } of parts) {
      for (const drawer of drawers) {
        const key = keyOf(name, drawer);
        const known = steps.get(key);
        if (known) known.push(i + 1);
        else steps.set(key, [i + 1]);
      }
    }
  });
  return steps;
}

const keyOf = (name: PartName, drawer: string): string => `${name}|${drawer}`;
