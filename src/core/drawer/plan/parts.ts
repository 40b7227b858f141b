import { add, less, terms, times, total, type Rational } from "../../length";
import { plus, sum, type Size } from "../size";
import type { Standards } from "../tables/standards";
import type { Drawer, PlannedOpening } from "./plan";

/** Parts of a drawer, in the order of a cut list. */
export const PART_NAMES = ["Side", "Box front", "Box back", "Bottom", "Front", "Pull plate", "Pull strip"] as const;
export type PartName = (typeof PART_NAMES)[number];

/** Equal pieces to be cut; length runs with the grain where there is one. */
export interface Part {
  name: PartName;
  drawers: readonly string[];
  quantity: number;
  length: Rational;
  width: Rational;
  thickness: Rational;
  material: string;
  grain: "length" | "any";
  /** Pieces of one group are cut in order from one strip, so that the grain runs on. */
  grainGroup?: string;
}

/**
 * The cut list of a plan: sides, box fronts, box backs, bottoms, fronts, pulls, each by first appearance.
 * @param grouped pieces equal in all but their drawer stand together
 */
export function cutList(plans: readonly PlannedOpening[], grouped: boolean): Part[] {
  const parts = plans.flatMap(({ drawers }) => drawers.flatMap(partsOf));
  const sorted = PART_NAMES.flatMap((name) => parts.filter((part) => part.name === name));
  return grouped ? group(sorted) : sorted;
}

/** The pieces of one drawer, in all its copies. */
export function partsOf(drawer: Drawer): Part[] {
  const { opening, stock, label } = drawer;
  const s = opening.standards;
  const copies = opening.quantity;
  const box = { drawers: [label], material: s["side material"], grain: "length" as const };
  const cut = drawer.front.cut;
  const bottom = bottomCut(drawer);
  const common = { drawers: [label], quantity: copies };
  const pulls = copies * pullsOf(drawer);
  const pull = {
    drawers: [label],
    quantity: pulls,
    length: s["pull length"],
    thickness: s["front thickness"],
    material: s["front material"],
    grain: "length",
  } as const;
  return [
    {
      name: "Side",
      ...box,
      quantity: 2 * copies,
      length: stock.sideLength.value,
      width: drawer.sideHeight.value,
      thickness: stock.side,
    },
    {
      name: "Box front",
      ...box,
      quantity: copies,
      length: stock.endLength.value,
      width: drawer.sideHeight.value,
      thickness: stock.end,
    },
    {
      name: "Box back",
      ...box,
      quantity: copies,
      length: stock.endLength.value,
      width: drawer.backHeight.value,
      thickness: stock.end,
    },
    {
      name: "Bottom",
      ...common,
      length: bottom.width.value,
      width: bottom.depth.value,
      thickness: s["bottom thickness"],
      material: s["bottom material"],
      grain: "any",
    },
    {
      name: "Front",
      ...common,
      ...(s["front grain"] === "vertical"
        ? { length: cut.height.value, width: cut.width.value }
        : { length: cut.width.value, width: cut.height.value }),
      thickness: s["front thickness"],
      material: s["front material"],
      grain: "length",
      ...(s["front match"] === "opening" ? { grainGroup: opening.label } : {}),
    },
    ...(s["pull kind"] === "shop-made" && pulls > 0
      ? [
          { name: "Pull plate", ...pull, width: s["pull width"] } as const,
          { name: "Pull strip", ...pull, width: s["pull standoff"] } as const,
        ]
      : []),
  ];
}

/** What a bottom is cut to: an applied one with an overhang, to be trimmed flush. */
export function bottomCut({ stock, opening }: Drawer): { width: Size; depth: Size } {
  const overhang =
    opening.standards["bottom fit"] === "applied"
      ? plus("bottom overhang", opening.standards["bottom overhang"], 2)
      : undefined;
  if (!overhang) return { width: stock.bottomWidth, depth: stock.bottomDepth };
  return { width: sum(plus("box width", stock.width), overhang), depth: sum(plus("box depth", stock.depth), overhang) };
}

/** Pulls on one front: as many as the standard says, or two from a width on. */
export function pullsOf({ front, opening }: Drawer): number {
  const s: Standards = opening.standards;
  const asked = s["pulls per front"];
  return asked === "auto" ? (less(front.width.value, s["two pulls from"]) ? 1 : 2) : asked;
}

function group(parts: readonly Part[]): Part[] {
  const groups = new Map<string, Part>();
  for (const part of parts) {
    const key = [
      part.name,
      ...[part.length, part.width, part.thickness].map(written),
      part.material,
      part.grain,
      part.grainGroup ?? "",
    ].join("|");
    const like = groups.get(key);
    if (like)
      groups.set(key, {
        ...like,
        quantity: like.quantity + part.quantity,
        drawers: [...like.drawers, ...part.drawers],
      });
    else groups.set(key, part);
  }
  return [...groups.values()];
}

const written = (length: Rational): string => {
  const { numerator, denominator } = terms(length);
  return `${numerator}/${denominator}`;
};

/** The strip that an opening's fronts are cut from in order: their cut sizes along it, and what lies between them. */
export function stripOf({ drawers, opening }: PlannedOpening): { length: Rational; between: Rational } {
  const { "front gap": gap, kerf } = opening.standards;
  // Where the gap is wider than the kerf, its width is cut away, so that the grain runs on across it.
  const between = less(gap, kerf) ? kerf : gap;
  const lengths = drawers.map(({ front }) => front.cut.height.value);
  return { length: add(total(lengths), times(lengths.length - 1, between)), between };
}
