import { Forest } from "./forest";
import {
  isPlaced,
  TURNED,
  UPRIGHT,
  usedOf,
  withCounts,
  type Block,
  type Divided,
  type Draft,
  type DraftSheet,
  type Model,
} from "../model";
import { Places } from "./places";
import { Random } from "./random";
import { grown } from "../tighten";
import { constructive } from "./constructive";
import { areaOf, countsOn, take } from "./patterns";

/**
 * The same sheets with a larger single offcut: what lies on the emptiest sheet moves into the rests of the others where
 * it can, and what stays is crowded against one edge, by halving, as far as `constructive` still places it.
 *
 * @param isPriced where nobody asks but what is taken of each size, one size is not cut anew for it
 *
 * Limits: looks at one sheet, and at a rest along one whole edge of it. Never adds a sheet or weight.
 */
export function gatherOffcut(model: Model, draft: Draft, steps: number, isPriced = false): Draft {
  const [others, sheet] = emptied(model, draft);
  if (!sheet) return others;
  if (isPriced && draft.sheets.every(({ size }) => size === sheet.size)) return draft;
  const { kerf } = model;
  const crowded = AXES.map((axis) => crowd(model, sheet, axis, steps)).reduce((a, b) =>
    restOf(b.root, kerf) > restOf(a.root, kerf) ? b : a,
  );
  const gathered = { ...others, weight: draft.weight, sheets: [...others.sheets, crowded] };
  return largestRest(gathered, kerf) > largestRest(draft, kerf) ? gathered : draft;
}

const AXES = ["x", "y"] as const;

/** How often the distance to an edge is halved. */
const HALVINGS = 6;

/** The area of the largest single rest, without the kerf that frees it. */
export const largestRest = ({ sheets }: Draft, kerf: number): number =>
  sheets.reduce((most, { root }) => Math.max(most, restOf(root, kerf)), 0);

export function restOf(block: Block, kerf: number): number {
  if (isPlaced(block)) return 0;
  const rest = (block.axis === "x" ? block.w : block.h) - usedOf(block);
  const area = Math.max(0, rest - kerf) * ((block.axis === "x" ? block.h : block.w) - kerf);
  return block.blocks.reduce((most, child) => Math.max(most, restOf(child, kerf)), area);
}

/** The other sheets with as much as they take of what lies on the emptiest one, and that sheet with the rest. */
function emptied(model: Model, draft: Draft): [Draft, DraftSheet | undefined] {
  const sheet = emptiest(model, draft);
  const forest = new Forest(model);
  forest.load({ ...draft, sheets: draft.sheets.filter((other) => other !== sheet) });
  const places = new Places(forest, new Random(1), 0);
  places.goal = forest.weight;
  places.find();
  const counts = countsOn(model, sheet);
  const size = (kind: number): number => model.kinds[kind]!.w * model.kinds[kind]!.h;
  const order = model.kinds.map((_, k) => k).sort((a, b) => size(b) - size(a) || a - b);
  for (const kind of order) while (counts[kind]! > 0 && places.lay(kind)) counts[kind]!--;
  const others = forest.draft();
  const root = take(sheet.root, counts);
  return [{ ...others, waiting: 0 }, root && { ...sheet, root }];
}

function emptiest(model: Model, { sheets }: Draft): DraftSheet {
  const free = (sheet: DraftSheet): number => {
    const { w, h } = model.sizes[sheet.size]!;
    return w * h - areaOf(model, countsOn(model, sheet));
  };
  return sheets.map((sheet) => ({ sheet, free: free(sheet) })).reduce((a, b) => (b.free > a.free ? b : a)).sheet;
}

/** The pieces of a sheet in as little of its length along an axis as they are found to take. */
function crowd(model: Model, sheet: DraftSheet, axis: "x" | "y", steps: number): DraftSheet {
  const { w, h } = model.sizes[sheet.size]!;
  const whole = axis === "x" ? w : h;
  const counts = countsOn(model, sheet);
  let [least, most] = [Math.ceil(areaOf(model, counts) / (axis === "x" ? h : w)) - 1, whole];
  let best = sheet;
  for (let n = 0; n < HALVINGS && most - least > 1; n++) {
    const length = Math.floor((least + most) / 2);
    const [width, height] = axis === "x" ? [length, h] : [w, length];
    const root = onOne(model, sheet.size, counts, width, height, steps);
    if (!root) {
      least = length;
      continue;
    }
    best = { ...sheet, root: grown(root, w, h) };
    most = root.axis === axis ? usedOf(root) : length;
  }
  return best;
}

/** Pieces on one smaller sheet, if they are found to fit it. */
function onOne(
  model: Model,
  size: number,
  counts: Int32Array,
  w: number,
  h: number,
  steps: number,
): Divided | undefined {
  const left = withCounts(model, counts);
  const ways = Uint8Array.from(left.kinds, (kind, k) => {
    const way = model.ways[k * model.sizes.length + size]!;
    return (kind.w <= w && kind.h <= h ? way & UPRIGHT : 0) | (kind.h <= w && kind.w <= h ? way & TURNED : 0);
  });
  if (left.kinds.some(({ count }, k) => count > 0 && ways[k] === 0)) return undefined;
  const one: Model = {
    ...left,
    ways,
    sizes: [{ w, h, weight: 1, cost: 1, available: 1 }],
  };
  const { waiting, sheets } = constructive(one, { steps, least: 1, seed: 1 });
  const [first] = sheets;
  return waiting > 0 || !first || isPlaced(first.root) ? undefined : first.root;
}
