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
  const stages: Set<string>[] = [];
  return {
    root,
    rest: restOf(root, kerf),
    cuts: cutsOf(root, stages, 0),
    settings: stages.reduce((sum, { size }) => sum + size, 0),
  };
}

/** What is beside and above all pieces of a sheet left in one piece along either edge, or beside or above one block. */
function freed(layout: Divided, { w, h }: { w: number; h: number }): Divided[] {
  const whole = compact(layout, w, h);
  // One piece as large as the sheet.
  if (isPlaced(whole)) return [];
  const need = needOf(whole);
  const across = whole.axis === "x" ? { w, h: need.h } : { w: need.w, h };
  return [whole, onSheet(compact(whole, across.w, across.h), { w, h }), ...given(whole)];
}

/** What a block leaves along its axis given to one of its blocks: a rest above that one, or beside it, is wider then. */
function given(whole: Divided): Divided[] {
  const { axis, blocks } = whole;
  const [along, across] = axis === "x" ? (["w", "h"] as const) : (["h", "w"] as const);
  const rest = whole[along] - usedOf(whole);
  const [lowest] = blocks.map((block) => ({ block, need: needOf(block)[across] })).sort((a, b) => a.need - b.need);
  if (rest === 0 || blocks.length < 2 || lowest!.need === whole[across]) return [];
  const { block } = lowest!;
  const size = axis === "x" ? { w: block.w + rest, h: whole.h } : { w: whole.w, h: block.h + rest };
  const need = needOf(block);
  const inner = axis === "x" ? compact(block, size.w, need.h) : compact(block, need.w, size.h);
  return [{ ...whole, blocks: [...blocks.filter((other) => other !== block), grown(inner, size.w, size.h)] }];
}

/** Everything as close to the lower left as it goes; blocks divided along one axis are one. */
function compact(block: Block, w: number, h: number): Block {
  if (isPlaced(block)) return grown(block, w, h);
  const { axis } = block;
  const blocks = block.blocks.flatMap((child): readonly Block[] => {
    const need = needOf(child);
    const inner = axis === "x" ? compact(child, need.w, h) : compact(child, w, need.h);
    return !isPlaced(inner) && inner.axis === axis ? inner.blocks : [inner];
  });
  const [only] = blocks;
  // One block as large as the whole, divided along the other axis, is the whole.
  return blocks.length === 1 && only!.w === w && only!.h === h ? only! : { w, h, axis, blocks };
}

/** The least that the pieces of a block take. */
function needOf(block: Block): { w: number; h: number } {
  if (isPlaced(block)) return block;
  const needs = block.blocks.map(needOf);
  const sum = (of: (need: { w: number; h: number }) => number): number =>
    needs.reduce((all, need) => all + of(need), 0);
  const most = (of: (need: { w: number; h: number }) => number): number => Math.max(...needs.map(of));
  return block.axis === "x"
    ? { w: sum(({ w }) => w), h: most(({ h }) => h) }
    : { w: most(({ w }) => w), h: sum(({ h }) => h) };
}

/** Passes through the saw, those that are hard to guide twice. Each stage gets the settings that it takes. */
function cutsOf(block: Block, stages: Set<string>[], stage: number): number {
  if (isPlaced(block)) return 0;
  const along = block.axis === "x" ? "w" : "h";
  // The largest comes first, and the last of them is what is left.
  const sizes = block.blocks.map((child) => child[along]).sort((a, b) => b - a);
  const isUsedUp = sizes.reduce((sum, size) => sum + size, 0) === block[along];
  const kept = isUsedUp ? sizes.slice(0, -1) : sizes;
  // A piece that is wider than it is long turns at the fence: such a rip counts twice (common practice).
  const each = block.axis === "y" && block.h > block.w ? 2 : 1;
  const settings = (stages[stage] ??= new Set());
  for (const size of kept) settings.add(`${block.axis} ${size}`);
  return block.blocks.reduce((sum, child) => sum + cutsOf(child, stages, stage + 1), each * kept.length);
}
