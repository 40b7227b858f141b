import type { Lengths, NoData } from "../length";
import type { DrawersItem } from "./drawers-text";
import type { BottomFit, CornerJoint, Progression } from "./words";

declare module "../length" {
  interface Faults {
    "slide.noneFits": Lengths<"insideDepth" | "room" | "shortest">;
    "slide.noneFitsBox": Lengths<"depth">;
    "slide.deductionMissing": NoData;
    "slide.aboveBox": Lengths<"centerline" | "height">;

    "box.openingNarrow": Lengths<"opening" | "clearance" | "room">;
    "box.spaceLow": Lengths<"space" | "below" | "above">;
    "box.spaceBelowStep": Lengths<"left" | "step">;
    "box.sidesThick": Lengths<"width" | "side" | "both">;
    "box.endsThick": Lengths<"depth" | "end" | "both">;
    "box.deductionWide": Lengths<"opening" | "deduction">;
    "box.deep": Lengths<"depth" | "room">;
    "box.heightsCount": { given: number; count: number };
    "box.heightTall": Lengths<"height" | "room">;
    "box.zoneLow": Lengths<"height" | "below" | "above"> & { front: number };
    "box.low": Lengths<"height" | "bottom">;

    "joint.depthMissing": { joint: CornerJoint };
    "joint.depthThrough": Lengths<"depth" | "side"> & { joint: CornerJoint };
    "joint.socketMissing": NoData;
    "joint.socketThrough": Lengths<"socket" | "end">;
    "joint.pinWide": Lengths<"pin" | "pitch">;
    "groove.depthMissing": { fit: BottomFit };
    "groove.through": Lengths<"groove" | "stock"> & { part: "side" | "end" };
    "groove.playEatsHold": Lengths<"play" | "hold">;
    "groove.narrowerThanKerf": Lengths<"width" | "kerf">;
    "groove.tooManyPasses": Lengths<"width" | "kerf"> & { passes: number; most: number };
    "kerf.none": NoData;
    "runner.through": Lengths<"depth" | "side">;
    "runner.thin": Lengths<"clearance" | "depth" | "play">;

    "fronts.noRoom": Lengths<"face" | "gap" | "first" | "last"> & { count: number };
    "fronts.fixedTall": Lengths<"face" | "fixed" | "room">;
    "fronts.nothingToShare": Lengths<"face" | "fixed">;
    "fronts.belowStep": Lengths<"step" | "rest">;
    "fronts.amountMissing": { rule: Progression };
    "fronts.stepsTall": Lengths<"face" | "amount"> & { count: number };
    "front.bandThick": Lengths<"band" | "size">;
    "front.boxShallow": Lengths<"depth" | "both">;
    "front.lapThick": Lengths<"lap" | "front"> & { name: string };
    "front.through": Lengths<"front" | "box"> & { joint: string };
    "face.none": Lengths<"size"> & { side: string };
    "pull.lineUnknown": NoData;
    "pull.lineMany": { count: number; most: number; opening: string };

    "drawers.none": NoData;
    "drawers.count": { count: bigint; most: number; of: string };
    "drawers.tooMany": { count: number; most: number; of: string };
    "drawers.unreadable": { text: string; place: number };
    "drawers.notPositive": { item: DrawersItem; place: number };
    "drawer.unknown": { received: string; drawers: string[] };
    "list.count": { name: string; given: number; count: number };
    "divider.noRoom": Lengths<"thickness" | "inside"> & { count: number };
    "divider.spacing": Lengths<"spacing" | "inside"> & { count: number; most: number };
    "divider.through": Lengths<"depth" | "thickness"> & { part: string };
    "load.count": { given: number; count: number };
    "pieces.many": { pieces: number; most: number };

    "cabinet.taken": Lengths<"outside" | "taken"> & { names: string };
    "cabinet.disagrees": { name: string; first: string; second: string };
    "columns.wide": Lengths<"fixed" | "room">;
    "columns.nothingToShare": Lengths<"fixed" | "room">;
    "columns.unfilled": Lengths<"fixed" | "room">;
  }
}
