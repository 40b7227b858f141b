import { once } from "../once";
import { keyOf, less, type Rational } from "../../length";
import { cutOfBox } from "../bands";
import { dividersOf } from "../dividers";
import { groupsOf } from "../groups";
import { isJoined } from "../joined-front";
import { plus, sum, type Size } from "../size";
import type { BoxGrain, Standards } from "../standards";
import { stripsOf, type FrontStrip } from "./front-strip";
import { within, type Drawer, type Hung, type PlannedOpening } from "./plan";
import { pullsOf } from "./pulls";
import { stripOfRunner } from "./strip";

/** Parts of a drawer, in the order of a cut list. */
const PART_NAMES = [
  "Side",
  "Box front",
  "Box back",
  "Bottom",
  "Front",
  "Pull plate",
  "Pull strip",
  "Runner",
  "Divider",
] as const;
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
  /** Its length is what stands upright in the drawer. */
  upright?: true;
  /** Pieces of one group are cut in order from one strip, so that the grain runs on. */
  grainGroup?: string;
  /** The strip runs across the grain: its fronts are stacked as they hang. */
  grainRow?: "stacked";
  /** What lies between two of its strip, where that is more than the saw takes. */
  grainGap?: Rational;
  /** Which line of a panel it is in, from 1. */
  grainLine?: number;
  /** What lies between that line and the next, where that is more than the saw takes. */
  lineGap?: Rational;
}

/**
 * The cut list of a plan: sides, box fronts, box backs, bottoms, fronts, pulls, runners, dividers, each by first appearance.
 * @param grouped pieces equal in all but their drawer stand together
 */
export const cutList = (plans: readonly PlannedOpening[], grouped: boolean): readonly Part[] =>
  grouped ? groupedParts(plans) : eachPart(plans);

const groupedParts = once((plans: readonly PlannedOpening[]) => group(eachPart(plans)));

const eachPart = once((plans: readonly PlannedOpening[]): readonly Part[] => {
  const grain = new Map<string, Partial<Part>>();
  for (const [label, own] of stripsOf(plans).flatMap(matching)) grain.set(label, { ...grain.get(label), ...own });
  const parts = plans.flatMap(({ opening, falseFronts, drawers }) =>
    within(opening, () => [...falseFronts.map(frontPart), ...drawers.flatMap(partsOf)]).map((part) =>
      part.name === "Front" ? { ...part, ...grain.get(part.drawers[0]!) } : part,
    ),
  );
  return PART_NAMES.flatMap((name) => parts.filter((part) => part.name === name));
});

/** What the fronts of a strip say of it; those that hang farther apart than the saw cuts them say that as well. */
const matching = ({ label, places, isLong, between, lines }: FrontStrip): [string, Partial<Part>][] => [
  ...places.flatMap((fronts, i) => {
    const gap = between[i] ?? between[i - 1];
    const own: Partial<Part> = {
      grainGroup: label,
      ...(lines[0] ? { grainLine: i + 1 } : !isLong && { grainRow: "stacked" }),
      ...(gap && less(fronts[0]!.opening.standards.kerf, gap) && { [lines[0] ? "lineGap" : "grainGap"]: gap }),
    };
    return fronts.map((front): [string, Partial<Part>] => [front.label, own]);
  }),
  ...lines.flatMap(matching),
];

/** A front, in all copies of its opening. */
function frontPart({ opening, label, front: { cut } }: Hung): Part {
  const s = opening.standards;
  return {
    name: "Front",
    drawers: [label],
    quantity: opening.quantity,
    ...grained(cut.width.value, cut.height.value, s["front grain"]),
    thickness: s["front thickness"],
    material: s["front material"],
  };
}

/** The pieces of one drawer, in all its copies. */
export const partsOf = once((drawer: Drawer): readonly Part[] => {
  const { opening, stock, label } = drawer;
  const s = opening.standards;
  const copies = opening.quantity;
  const box = { drawers: [label], material: s["side material"] };
  const bottom = bottomCut(drawer);
  const common = { drawers: [label], quantity: copies };
  const pulls = s["pull kind"] === "shop-made" ? copies * pullsOf(drawer).length : 0;
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
      ...grained(stock.sideLength.value, cutOfBox(drawer.sideHeight, s).value, s["box grain"]),
      thickness: stock.side,
    },
    ...(isJoined(s)
      ? []
      : [
          {
            name: "Box front" as const,
            ...box,
            quantity: copies,
            ...grained(stock.endLength.value, cutOfBox(drawer.sideHeight, s).value, endGrain(s)),
            thickness: stock.end,
          },
        ]),
    {
      name: "Box back",
      ...box,
      quantity: copies,
      ...grained(stock.endLength.value, cutOfBox(drawer.backHeight, s).value, endGrain(s)),
      thickness: stock.end,
    },
    {
      name: "Bottom",
      ...common,
      ...grained(bottom.width.value, bottom.depth.value, s["bottom grain"]),
      thickness: s["bottom thickness"],
      material: s["bottom material"],
    },
    frontPart(drawer),
    ...(pulls > 0
      ? [
          { name: "Pull plate", ...pull, width: s["pull width"] } as const,
          { name: "Pull strip", ...pull, width: s["pull standoff"] } as const,
        ]
      : []),
    ...runnerParts(drawer),
    ...dividerParts(drawer),
  ];
});

/** What lies along the grain is a piece's length. */
function grained(across: Rational, up: Rational, grain: BoxGrain | Standards["bottom grain"]) {
  const upright = grain === "vertical" || grain === "front to back";
  return {
    ...(upright ? { length: up, width: across, upright } : { length: across, width: up }),
    grain: grain === "any" ? "any" : "length",
  } as const;
}

/** That of box front and back. */
export const endGrain = (s: Standards): BoxGrain => s["box end grain"] ?? s["box grain"];

function runnerParts(drawer: Drawer): Part[] {
  const strip = stripOfRunner(drawer);
  if (!strip) return [];
  const { length, width, ...stock } = strip;
  const quantity = 2 * drawer.opening.quantity;
  return [
    {
      name: "Runner",
      drawers: [drawer.label],
      quantity,
      length: length.value,
      width: width.value,
      ...stock,
      grain: "length",
    },
  ];
}

function dividerParts(drawer: Drawer): Part[] {
  const dividers = dividersOf(drawer);
  if (!dividers) return [];
  const { standards: s, quantity } = drawer.opening;
  return [
    {
      name: "Divider",
      drawers: [drawer.label],
      quantity: dividers.count * quantity,
      length: dividers.length.value,
      width: cutOfBox(dividers.height, s).value,
      thickness: s["divider thickness"],
      material: s["divider material"] ?? s["side material"],
      grain: "length",
    },
  ];
}

/** What a bottom is cut to: an applied one with an overhang, to be trimmed flush. */
export function bottomCut({ stock, opening }: Drawer): { width: Size; depth: Size } {
  const s = opening.standards;
  if (s["bottom fit"] !== "applied") return { width: stock.bottomWidth, depth: stock.bottomDepth };
  const overhang = plus("bottom overhang", s["bottom overhang"], 2);
  const depth = isJoined(s)
    ? [plus("box depth behind the front", stock.behind), { ...overhang, count: 1 }]
    : [plus("box depth", stock.depth), overhang];
  return { width: sum(plus("box width", stock.width), overhang), depth: sum(...depth) };
}

/** Fronts of a grain group stay one a row: they are cut in this order, and one cannot take another's place. */
function group(parts: readonly Part[]): Part[] {
  const groups = groupsOf(parts, (part) => {
    const sizes = [part.length, part.width, part.thickness].map(keyOf);
    const own = part.grainGroup === undefined ? "" : part.drawers.join();
    return [part.name, ...sizes, part.material, part.grain, own].join("|");
  });
  return groups.map((alike) => ({
    ...alike[0]!,
    quantity: alike.reduce((sum, { quantity }) => sum + quantity, 0),
    drawers: alike.flatMap(({ drawers }) => drawers),
  }));
}
