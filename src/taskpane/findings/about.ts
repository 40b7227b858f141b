import type { Finding } from "../../core/drawer";

type Code = Finding["code"];

/** The standards and headings that a finding is about, the first that has a cell of its own, where its words do not name them. */
export function aboutOf({ code, data }: Finding): readonly string[] {
  if (code === "plan.fault") return FAULTS.find(([codes]) => codes.test(data.fault.code))?.[1] ?? [];
  const { part, side, size } = data as { part?: string; side?: string; size?: unknown };
  if (code === "stock.nominal") return [`${part} thickness`, "side thickness"];
  if (code.startsWith("reveal.")) return [`${side} reveal`, "end reveal"];
  if (code === "opening.outOfSquare" || code === "unit.doubtful") return [String(size)];
  return ABOUT[code] ?? [];
}

const ABOUT: { readonly [C in Code]?: readonly string[] } = {
  "cabinet.heights": ["height"],
  "cabinet.tipsWithOne": ["cabinet weight"],
  "cabinet.tipsWithAll": ["cabinet weight"],
  "blocking.unknown": ["case width"],
  "blocking.narrow": ["case width"],
  "fit.unlikely": ["side clearance", "undermount deduction"],
  "front.solidUpright": ["front grain", "front material"],
  "front.movesUnknown": ["front material"],
  "fronts.remainder": ["drawers"],
  "fronts.unfilled": ["drawers"],
  "gap.tight": ["front gap"],
  "gap.tightInset": ["inset gap"],
  "match.alone": ["drawers"],
  "match.grid": ["drawers"],
  "match.kerf": ["front gap", "kerf"],
  "box.belowSlide": ["slide height", "drawers"],
  "box.shallow": ["drawers"],
  "box.aboveFront": ["drawers"],
  "box.belowFront": ["drawers"],
  "box.wide": ["width"],
  "box.rearClearance": ["box depth"],
  "box.noSideSpace": ["side clearance", "undermount deduction"],
  "slide.overloaded": ["load", "slide rating"],
  "slide.nearRating": ["load", "slide rating"],
  "slide.beyond": ["load"],
  "undermount.sideThick": ["side thickness"],
  "undermount.hookThrough": ["undermount hook depth"],
  "bottom.sags": ["bottom thickness"],
  "bottom.breaks": ["bottom thickness"],
  "bottom.solidGrain": ["bottom material"],
  "bottom.solidHeld": ["bottom fit"],
  "groove.nearEdge": ["groove offset"],
  "groove.deep": ["groove depth"],
  "joint.deep": ["joint depth"],
  "screw.none": ["screw lengths"],
  "screw.short": ["screw lengths"],
  "screw.through": ["screw lengths"],
  "pull.one": ["pulls per front"],
  "pull.pastSide": ["pulls per front"],
  "pull.pastEdge": ["pull height"],
};

/** What cannot be planned. */
const FAULTS: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^slide\.noneFits|^box\.(deep|endsThick)/, ["depth"]],
  [/^box\.(openingNarrow|sidesThick|deductionWide)/, ["width"]],
  [/^box\.(heightsCount|heightTall)/, ["box heights"]],
  [/^fronts\.|^drawers\.|^box\.(zoneLow|low|space)/, ["drawers"]],
];
