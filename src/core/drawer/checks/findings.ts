import type { Fault, Lengths, NoData, Rational } from "../../length";
import type { Measured } from "../opening";
import type { Standards } from "../standards";
import type { Verdict } from "../plan/fit";

/** By how much a solid piece moves over a year, where its wood is known. */
export type YearOfWood = { moves?: number; low?: number; high?: number };
type Solid = YearOfWood & { material: string };
type Bottom = Solid & { fit: string };
type InGrooves = Bottom & Lengths<"play"> & { middle: number };
type Anchor = { ratio: number; pull: number };
type Load = { load: number; box: number; total: number };
type Sag = Lengths<"thickness" | "span"> & { load: number; limit: number; thicker?: Rational; divided?: number };

/** Every finding by its code, with what it carries for its words. Other folders add their own. */
export interface Findings {
  "plan.fault": { fault: Fault };

  "standard.unused": { names: readonly string[]; lacks: string };
  "unit.doubtful": Lengths<"received"> & { size: string };
  "opening.outOfSquare": Lengths<"least" | "most" | "tolerance"> & { size: Measured };
  "cabinet.heights": Lengths<"a" | "b">;
  "cabinet.tipsWithOne": Anchor & { drawer: string };
  "cabinet.tipsWithAll": Anchor;
  "blocking.unknown": NoData;
  "blocking.narrow": Lengths<"by">;
  "fit.unlikely": Verdict & { slide: Standards["slide"] };

  "reveal.inner": { side: string };
  "reveal.edge": Lengths<"thickness"> & { side: string };
  "reveal.past": Lengths<"by"> & { side: string };
  "overlay.stile": Lengths<"stile" | "a" | "b" | "room" | "gap">;
  "overlay.rail": Lengths<"rail" | "overlay" | "room" | "gap"> & { name: string };
  "overlay.past": Lengths<"overlay" | "width" | "by"> & { side: string; part: string };
  "front.short": { side: string };
  "front.uprightJoint": { joint: string };
  "front.appliedBottom": NoData;
  "lip.meets": Lengths<"width" | "a" | "b" | "room" | "gap">;
  "front.solidUpright": Lengths<"width"> & Solid;
  "front.moves": Lengths<"across" | "room" | "gap"> & {
    wood: string;
    by: number;
    middle: number;
    high: number;
    name: string;
  };
  "front.movesUnknown": { material: string };
  "fronts.remainder": Lengths<"left" | "step">;
  "fronts.unfilled": Lengths<"left" | "step">;
  "gap.tight": Lengths<"gap">;
  "gap.tightInset": Lengths<"gap">;
  "match.alone": NoData;
  "match.kerf": Lengths<"kerf" | "gap" | "jump">;

  "box.belowSlide": Lengths<"height" | "slide">;
  "box.shallow": Lengths<"inside">;
  "box.aboveFront": Lengths<"by">;
  "box.belowFront": Lengths<"by">;
  "box.rubs": Lengths<"below" | "above">;
  "box.tightAbove": Lengths<"above" | "asked">;
  "box.wide": Lengths<"width" | "depth"> & { slide: Standards["slide"] };
  "box.weakWay": { material: string; parts: string };
  "box.solidUpright": { material: string; parts: string };
  "box.racks": Lengths<"width" | "height" | "depth">;
  "end.meets": Lengths<"room" | "asked" | "by"> & { side: string };
  "slide.staysIn": Lengths<"depth" | "slide" | "by">;
  "box.widerThanFront": Lengths<"box" | "front">;
  "box.rearClearance": Lengths<"behind" | "rear">;
  "box.noSideSpace": Lengths<"space">;
  "slide.pastBox": Lengths<"up">;
  "center.noRoom": Lengths<"height" | "below">;
  "center.rails": { count: number };
  "slide.overloaded": Load & { rating: number; needs: number };
  "slide.nearRating": Load & { rating: number };
  "slide.beyond": Load & { most: number };
  "runner.noRoom": Lengths<"height" | "below">;
  "runner.misses": Lengths<"width">;
  "runner.narrow": Lengths<"reach" | "side">;
  "runner.grooveDeep": Lengths<"depth" | "side">;
  "runner.pastSide": { edge: string };
  "runner.nearEdge": Lengths<"left"> & { where: string };
  "runner.meetsBottom": Lengths<"depth" | "bottom" | "side">;

  "undermount.unstated": { names: readonly string[] };
  "undermount.sideThick": Lengths<"side" | "limit">;
  "undermount.space": Lengths<"left" | "asked"> & { where: string };
  "undermount.recess": Lengths<"recess" | "asked">;
  "undermount.depth": Lengths<"depth" | "slide" | "asked">;
  "undermount.notchWide": Lengths<"length"> & { width: Rational | undefined };
  "undermount.notchHeight": Lengths<"height" | "by"> & { short: boolean };
  "undermount.hookOff": Lengths<"diameter" | "fromEnd" | "up" | "height">;
  "undermount.hookInBottom": Lengths<"diameter" | "height" | "bottom">;
  "undermount.backInset": Lengths<"inset">;
  "undermount.hookThrough": Lengths<"depth" | "end">;

  "bottom.noRecess": NoData;
  "bottom.rubs": Lengths<"below">;
  "bottom.sags": Sag & { sag: number };
  "bottom.breaks": Sag;
  "files.narrow": Lengths<"folder" | "width" | "depth"> & { kind: string };
  "files.low": Lengths<"hang" | "inside">;
  "files.tabs": Lengths<"stand" | "room">;
  "files.load": NoData;
  "divider.narrow": Lengths<"cell">;
  "divider.tall": Lengths<"height" | "inside">;
  "divider.deep": Lengths<"depth" | "thickness"> & { part: string };
  "divider.meetsRunner": Lengths<"depth" | "groove" | "side">;
  "bottom.weakWay": Lengths<"long" | "short"> & { material: string };
  "bottom.solidAlong": { material: string };
  "bottom.solidGrain": Bottom;
  "bottom.drawsOut": Lengths<"end"> & { material: string; by: number; low: number; middle: number };
  "bottom.slotsPast": Lengths<"length" | "end">;
  "bottom.solidTight": InGrooves & Lengths<"needs"> & { by: number; groove?: Rational };
  "bottom.solidDrops": InGrooves & Lengths<"hold"> & { by: number };
  "bottom.solidFloats": InGrooves;
  "bottom.solidHeld": Bottom;
  "groove.nearEdge": Lengths<"offset">;
  "groove.undermount": Lengths<"offset">;
  "groove.deep": Lengths<"depth" | "thickness"> & { part: string };
  "joint.deep": Lengths<"depth" | "stock"> & { joint: string };
  "joint.cutter": Lengths<"pin" | "cutter">;
  "joint.dadoNearEnd": Lengths<"inset">;
  "stock.nominal": Lengths<"thickness"> & { part: string; material: string; least: number; most: number };

  "screw.none": { name: string };
  "screw.short": Lengths<"size" | "through"> & { name: string };
  "screw.through": Lengths<"size" | "most"> & { name: string };
  "screw.pocket": Lengths<"size" | "most"> & { stock: Rational | undefined };
  "pull.one": Lengths<"width">;
  "pull.noLine": NoData;
  "pull.pastSide": Lengths<"width">;
  "pull.pastEdge": Lengths<"height"> & { down: Standards["pull height"] };
  "pull.meetsCabinet": NoData;
  "pull.meetsSide": NoData;
  "pull.pastBox": { where: string };
  "pull.holesOff": Lengths<"length" | "spacing">;
  "pull.holesNearEnd": Lengths<"length" | "left">;
  "pull.platePast": Lengths<"length" | "width">;
}
