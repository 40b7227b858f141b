import { isPlaced, usedOf, type Block, type Divided, type Draft, type Model } from "../model";
import { grown, onSheet } from "../tighten";
import { restOf } from "./offcut";
import { stripLayouts } from "./strips";

/**
 * The same pieces on the same sheets, as one would rather cut them: the largest single offcut grows where it can, then
 * every sheet takes the fewest cuts, then the fewest settings of the fence. No strip is wider than the widest piece in
 * it; beside the layout as it is, strips along and across each sheet are tried.
 *
 * Limits: moves nothing from sheet to sheet. Settings are counted as `sawCuts` makes the cuts, stage by stage, but for
 * the rows of grain groups, which are the same in every layout.
 */
export function neat(model: Model, draft: Draft): Draft {
  // Large jobs repeat their sheets.
  const known = new Map<string, Choice[]>();
  const choices = draft.sheets.map(({ size, root }) => {
    const key = `${size} ${JSON.stringify(root)}`;
    const of = known.get(key) ?? choicesOf(model, size, root);
    known.set(key, of);
    return of;
  });
  const most = Math.max(...choices.flat().map(({ rest }) => rest));
  const neatest = choices.map((of) => of.reduce((a, b) => (isNeater(b, a) ? b : a)));
  // One sheet has to leave the largest offcut: the one that gives the least for it.
  const holding = choices.map((of) =>
    of
      .filter(({ rest }) => rest === most)
      .reduce<Choice | undefined>((a, b) => (!a || isNeater(b, a) ? b : a), undefined),
  );
  const price = (s: number, of: "cuts" | "settings"): number => holding[s]![of] - neatest[s]![of];
  const [holder] = holding
    .flatMap((choice, s) => (choice ? [s] : []))
    .sort((a, b) => price(a, "cuts") - price(b, "cuts") || price(a, "settings") - price(b, "settings") || a - b);
  return {
    ...draft,
    sheets: draft.sheets.map(({ size }, s) => ({ size, root: (s === holder ? holding[s]! : neatest[s]!).root })),
  };
}

interface Choice {
  root: Divided;
  rest: number;
  cuts: number;
  settings: number;
}

const isNeater = (a: Choice, b: Choice): boolean =>
  a.cuts < b.cuts || (a.cuts === b.cuts && (a.settings < b.settings || (a.settings === b.settings && a.rest > b.rest)));

function choicesOf(model: Model, size: number, root: Divided): Choice[] {
  const layouts = [root, ...stripLayouts(model, size, root)];
  return [...layouts, ...layouts.flatMap((layout) => freed(layout, root))].map((layout) => choiceOf(layout, model));
}

function choiceOf(root: Divided, { kerf }: Model): Choice {
  const stages: Set<number>[] = [];
  return {
    root,
    rest: restOf(root, kerf),
    cuts: cutsOf(root, stages, 0),
    settings: stages.reduce((sum, { size }) => sum + size, 0),
  };
}

/** What is beside and above all pieces of a sheet left in one piece along either edge, or beside or above one block. */
function freed(layout: Divided, { w, h }: { w: number; h: number }): Divided[] {
  const whole = compact(needing(layout), w, h);
  // One piece as large as the sheet.
  if (isPlaced(whole)) return [];
  const needs = needing(whole);
  const across = whole.axis === "x" ? { w, h: needs.h } : { w: needs.w, h };
  return [whole, onSheet(compact(needs, across.w, across.h), { w, h }), ...given(whole, needs)];
}

/** What a block leaves along its axis given to one of its blocks: a rest above that one, or beside it, is wider then. */
function given(whole: Divided, { inner: parts }: Needing): Divided[] {
  const { axis, blocks } = whole;
  const [along, across] = axis === "x" ? (["w", "h"] as const) : (["h", "w"] as const);
  const rest = whole[along] - usedOf(whole);
  const lowest = parts.reduce((a, b) => (b[across] < a[across] ? b : a));
  if (rest === 0 || blocks.length < 2 || lowest[across] === whole[across]) return [];
  const { block } = lowest;
  const size = axis === "x" ? { w: block.w + rest, h: whole.h } : { w: whole.w, h: block.h + rest };
  const inner = axis === "x" ? compact(lowest, size.w, lowest.h) : compact(lowest, lowest.w, size.h);
  return [{ ...whole, blocks: [...blocks.filter((other) => other !== block), grown(inner, size.w, size.h)] }];
}

/** A block, the least that its pieces take, and the same of what is in it. */
interface Needing {
  block: Block;
  w: number;
  h: number;
  inner: readonly Needing[];
}

/** Everything as close to the lower left as it goes; blocks divided along one axis are one. */
function compact({ block, inner }: Needing, w: number, h: number): Block {
  if (isPlaced(block)) return grown(block, w, h);
  const { axis } = block;
  const blocks: Block[] = [];
  for (const child of inner) {
    const made = axis === "x" ? compact(child, child.w, h) : compact(child, w, child.h);
    if (!isPlaced(made) && made.axis === axis) blocks.push(...made.blocks);
    else blocks.push(made);
  }
  const [only] = blocks;
  // One block as large as the whole, divided along the other axis, is the whole.
  return blocks.length === 1 && only!.w === w && only!.h === h ? only! : { w, h, axis, blocks };
}

function needing(block: Block): Needing {
  if (isPlaced(block)) return { block, w: block.w, h: block.h, inner: [] };
  const inner = block.blocks.map(needing);
  let [sumW, mostW, sumH, mostH] = [0, 0, 0, 0];
  for (const { w, h } of inner) {
    sumW += w;
    sumH += h;
    if (w > mostW) mostW = w;
    if (h > mostH) mostH = h;
  }
  return block.axis === "x" ? { block, w: sumW, h: mostH, inner } : { block, w: mostW, h: sumH, inner };
}

/** Passes through the saw, those that are hard to guide twice. Each stage gets the settings that it takes. */
function cutsOf(block: Block, stages: Set<number>[], stage: number): number {
  if (isPlaced(block)) return 0;
  const { axis, blocks } = block;
  const alongX = axis === "x";
  let [used, least] = [0, Infinity];
  for (const { w, h } of blocks) {
    const size = alongX ? w : h;
    used += size;
    if (size < least) least = size;
  }
  // The largest comes first, and where nothing is left over, the last of them is what is left.
  let spared = used === (alongX ? block.w : block.h) ? 1 : 0;
  // A piece that is wider than it is long turns at the fence: such a rip counts twice (common practice).
  const each = !alongX && block.h > block.w ? 2 : 1;
  let cuts = each * (blocks.length - spared);
  const settings = (stages[stage] ??= new Set());
  for (const child of blocks) {
    const size = alongX ? child.w : child.h;
    if (spared === 1 && size === least) spared = 0;
    else settings.add(alongX ? size : -size);
    cuts += cutsOf(child, stages, stage + 1);
  }
  return cuts;
}
