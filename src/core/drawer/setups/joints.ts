import {
  add,
  compare,
  Fault,
  greaterOf,
  isPositive,
  isZero,
  keyOf,
  less,
  lesserOf,
  safeSizes,
  subtract,
  ZERO,
  type Rational,
  type Unit,
} from "../../length";
import { dadoesOf } from "../dividers";
import { groovePasses } from "../groove";
import { groupsOf } from "../groups";
import { fasteningOf } from "../hardware/box";
import { layoutsOf } from "../joint-layout";
import { endRabbet, intoFront, isJoined, lipOf } from "../joined-front";
import { endInset } from "../plan/box-plan";
import { partsOf, type Part, type PartName } from "../plan/parts";
import { runnerGrooveOf } from "../plan/strip";
import { within, type Drawer, type PlannedOpening } from "../plan/plan";
import { after, together, type Caution, type Need, type Operation, type Setting, type Step } from "./setup";

/** Grooves for the bottoms, then the corner joints. Every blade height once, and under it every fence once. */
export function jointing(plans: readonly PlannedOpening[], unit: Unit): Step[] {
  const needs = plans.flatMap(({ opening, drawers }) => within(opening, () => drawers.flatMap(cutsOf)));
  const short = (kind: Operation): Step[] =>
    needs.some(({ operation, along }) => operation === kind && less(along, safeSizes(unit).length))
      ? [{ caution: "shortGroove" }]
      : [];
  return [
    ...after("groove", [
      ...(needs.some(({ stopped }) => stopped) ? [{ caution: "stopped" } as const] : []),
      ...short("groove"),
      ...byDepth(needs, "groove"),
    ]),
    // On the other face of the sides.
    ...after("runnerGroove", [...short("runner groove"), ...byDepth(needs, "runner groove")]),
    ...after("frontRabbet", byDepth(needs, "front rabbet")),
    ...JOINTS.flatMap(([joint, caution]) =>
      after(caution === "across" && plans.some(hasOwnFronts) ? "acrossRear" : caution, byDepth(needs, joint)),
    ),
    ...after("dividers", byDepth(needs, "divider dado")),
    ...after("pocket", together(needs.filter(({ operation }) => operation === "pocket hole"))),
  ];
}

const hasOwnFronts = ({ opening }: PlannedOpening): boolean => isJoined(opening.standards);

const JOINTS: readonly (readonly [Operation, Caution])[] = [
  ["rabbet", "across"],
  ["dado", "across"],
  ["dovetail", "router"],
  ["half-blind dovetail", "router"],
  ["box joint", "joint"],
];

/** A need under a blade height of its own. */
interface Cut extends Need {
  depth: Rational;
  /** How long the piece is that the fence guides. */
  along: Rational;
  stopped?: boolean;
}

/** Depth by depth: the depth itself, then what is set under it. */
function byDepth(needs: readonly Cut[], operation: Operation): Step[] {
  const own = needs.filter((need) => need.operation === operation);
  return groupsOf(own, ({ depth }) => keyOf(depth))
    .sort(([a], [b]) => compare(a!.depth, b!.depth))
    .flatMap((cuts) => SETTINGS.flatMap((setting) => together(cuts.filter((cut) => cut.setting === setting))));
}

const SETTINGS: readonly Setting[] = [
  "blade",
  "socket",
  "baseline",
  "baselineFront",
  "baselineSide",
  "baselineRear",
  "markTail",
  "markFinger",
  "pass",
  "passSides",
  "passEdges",
  "passEither",
  "passLeft",
  "passFront",
];

function cutsOf(drawer: Drawer): Cut[] {
  const parts = partsOf(drawer);
  const pick = (...names: PartName[]): Part[] => parts.filter(({ name }) => names.includes(name));
  return [
    ...grooves(drawer, pick),
    ...runnerGrooves(drawer, pick),
    ...frontRabbets(drawer, pick),
    ...frontCorners(drawer, pick),
    ...corners(drawer, pick),
    ...dividerDadoes(drawer, pick),
    ...layouts(drawer, pick),
    ...pocketHoles(drawer, pick),
  ];
}

type Pick = (...names: PartName[]) => Part[];

/** An applied bottom needs none; one under the back slides in from behind. */
function grooves({ opening, front, boxBottom }: Drawer, pick: Pick): Cut[] {
  const s = opening.standards;
  if (s["bottom fit"] === "applied") return [];
  const grooved = s["bottom fit"] === "grooved" ? pick("Side", "Box front", "Box back") : pick("Side", "Box front");
  const shows = isInterlocked(s["corner joint"]) || (isJoined(s) && isInterlocked(s["front joint"]));
  const cut = (parts: Part[], offset: Rational): Cut[] =>
    passes("groove", parts, s["bottom thickness"], s.kerf, offset, s["groove depth"]);
  // A front that is the box's own reaches below that.
  const own = isJoined(s)
    ? cut(pick("Front"), add(s["groove offset"], subtract(boxBottom.value, front.bottom.value)))
    : [];
  return [...cut(grooved, s["groove offset"]), ...own].map((one) => (shows ? { ...one, stopped: true } : one));
}

/** The strips of wood runners in the sides' outer faces. */
function runnerGrooves(drawer: Drawer, pick: Pick): Cut[] {
  const groove = runnerGrooveOf(drawer);
  if (!groove) return [];
  const { width, offset, depth } = groove;
  return passes("runner groove", pick("Side"), width.value, drawer.opening.standards.kerf, offset.value, depth);
}

const isInterlocked = (joint: string): boolean => /dovetail|box joint/.test(joint);

/** What lets a front into the opening or its sides into it: behind its lip or lap, before its joints. */
function frontRabbets(drawer: Drawer, pick: Pick): Cut[] {
  const s = drawer.opening.standards;
  if (!isJoined(s)) return [];
  const cut = (setting: Setting, width: Rational): Cut[] => {
    if (!isPositive(width)) return [];
    // What is narrower than the blade leaves that in the sacrificial fence.
    const [wide, from] = [greaterOf(width, s.kerf), lesserOf(ZERO, subtract(width, s.kerf))];
    const all = passes("front rabbet", pick("Front"), wide, s.kerf, from, intoFront(s));
    return all.map((one) => (one.setting === "pass" ? { ...one, setting } : one));
  };
  const [sides, edges] = [cut("passSides", endRabbet(s, drawer).value), cut("passEdges", lipOf(s))];
  // One blade height for both.
  return [...sides, ...(sides.length > 0 ? edges.slice(1) : edges)];
}

/** The sides in a front that is their box's own; a rabbet is cut already. */
function frontCorners(drawer: Drawer, pick: Pick): Cut[] {
  const s = drawer.opening.standards;
  const joint = s["front joint"];
  if (!isJoined(s) || joint === "rabbet") return [];
  const cut = (setting: Setting, name: PartName, length: Rational): Cut[] =>
    pick(name).map((part) => need(joint, setting, length, ZERO, part));
  return [
    ...(joint === "half-blind dovetail" ? cut("socket", "Front", intoFront(s)) : []),
    ...cut("baselineFront", "Front", add(endRabbet(s, drawer).value, drawer.stock.side)),
    ...cut("baselineSide", "Side", intoFront(s)),
  ];
}

function corners({ opening, stock }: Drawer, pick: Pick): Cut[] {
  const s = opening.standards;
  const [joint, depth] = [s["corner joint"], s["joint depth"] ?? ZERO];
  const baseline = (parts: Part[], length: Rational): Cut[] =>
    parts.map((part) => {
      const setting = isJoined(s) && part.name === "Side" ? "baselineRear" : "baseline";
      return need(joint as Operation, setting, length, ZERO, part);
    });
  switch (joint) {
    case "butt":
      return [];
    case "rabbet":
    case "dado":
      return passes(joint, pick("Side"), stock.end, s.kerf, endInset(s), depth);
    case "half-blind dovetail":
      return [
        ...pick("Box front", "Box back").map((part) => need(joint, "socket", depth, ZERO, part)),
        ...baseline(pick("Side"), depth),
        ...baseline(pick("Box front", "Box back"), stock.side),
      ];
    default:
      return [...baseline(pick("Side"), stock.end), ...baseline(pick("Box front", "Box back"), stock.side)];
  }
}

/** Those that lie alike from both ends are cut from both, and are set once. */
function dividerDadoes(drawer: Drawer, pick: Pick): Cut[] {
  const s = drawer.opening.standards;
  return dadoesOf(drawer).flatMap(({ name, even, from }) => {
    const setting = even ? "passEither" : name === "Side" ? "passFront" : "passLeft";
    const cuts = (even ? from.slice(0, Math.ceil(from.length / 2)) : from).flatMap((offset, i) =>
      // The blade stays as high for all of them.
      passes("divider dado", pick(name), s["divider thickness"], s.kerf, offset, s["divider dado depth"]).filter(
        (one) => i === 0 || one.setting === "pass",
      ),
    );
    return cuts.map((one) => (one.setting === "pass" ? { ...one, setting } : one));
  });
}

/** Where pins, tails and fingers begin and end. A side has the marks of both its ends, equal ones once. */
function layouts(drawer: Drawer, pick: Pick): Cut[] {
  const { front, back } = layoutsOf(drawer.opening.standards, drawer);
  const cuts = [front, back].flatMap(({ joint, layout }, i) =>
    (layout?.marks ?? []).flatMap((mark) =>
      pick("Side", ...(i === 0 ? (["Box front", "Front"] as const) : (["Box back"] as const)))
        .filter(({ name }) => name !== "Front" || isJoined(drawer.opening.standards))
        .map((part) => need(joint as Operation, joint === "box joint" ? "markFinger" : "markTail", mark, ZERO, part)),
    ),
  );
  return groupsOf(cuts, ({ operation, name, value }) => `${operation} ${name} ${keyOf(value)}`).map(([cut]) => cut!);
}

/** They are drilled into the ends, whatever joint the screws help. */
const pocketHoles = ({ opening, stock }: Drawer, pick: Pick): Cut[] =>
  fasteningOf(opening.standards) === "pocket screws"
    ? pick("Box front", "Box back").map((part) => need("pocket hole", "jig", stock.end, ZERO, part))
    : [];

/** The blade's height, and the fence of every pass. */
function passes(
  operation: Operation,
  parts: readonly Part[],
  width: Rational,
  kerf: Rational,
  offset: Rational,
  depth: Rational,
): Cut[] {
  if (isZero(kerf)) throw new Fault("kerf.none", {});
  const fences = groovePasses(width, kerf, offset, depth);
  return parts.flatMap((part) => [
    need(operation, "blade", depth, depth, part),
    ...fences.map(({ fence, bladeHeight }) => need(operation, "pass", fence, bladeHeight, part)),
  ]);
}

const need = (operation: Operation, setting: Setting, value: Rational, depth: Rational, part: Part): Cut => ({
  operation,
  setting,
  value,
  depth,
  along: part.upright ? part.width : part.length,
  pieces: part.quantity,
  name: part.name,
  drawers: part.drawers,
});
