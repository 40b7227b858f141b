import type { Caution, Operation, Setting, SetUpStep } from "../../core/drawer";
import { isTapeSize, multiply, unitsIn, type Rational, type Unit } from "../../core/length";
import { lengthResult, type CellResult } from "../cells";
import { titled } from "../cells";
import { len, worded, type Wording } from "./wording";

/** The set-ups as rows, numbered in the order to cut; cautions stand between them and have no number. */
export function setUpRows(steps: readonly SetUpStep[], unit: Unit): CellResult[][] {
  let number = 0;
  return steps.map((step) => {
    if ("caution" in step) return ["", "Caution", worded(CAUTIONS[step.caution], { ...step }, unit), "", "", ""];
    const parts = step.parts.map(({ name, drawers }) => `${name} ${drawers.join(", ")}`).join("; ");
    const { operation, setting, value, pieces } = step;
    return [
      ++number,
      OPERATIONS[operation] ?? titled(operation),
      worded(SETTINGS[setting], { value }, unit),
      lengthResult(value, unit),
      pieces,
      parts,
    ];
  });
}

/** In inches, a size that no tape has is told in millimeters too: so are bits sold, and data sheets often written. */
function orMillimeters(words: string): Wording {
  return ({ value }, unit) => {
    const size = value as Rational;
    return unit === "mm" || isTapeSize(size) ? words : `${words}, ${len(multiply(size, unitsIn("in", "mm")), "mm")}`;
  };
}

/** Operations that a set-up calls by other words. */
const OPERATIONS: Partial<Record<Operation, string>> = {
  strip: "Set aside",
  "divider dado": "Dadoes for dividers",
  "pocket hole": "Pocket holes",
  trim: "Trim flush",
  "bottom slot": "Bottom slots",
  "pull hole": "Pull holes",
  "back notch": "Back notches",
  "hook hole": "Hook holes",
};

const SETTINGS: Record<Setting, Wording> = {
  strip: "Length along the grain, cuts between fronts included",
  stripAcross: "Length across the grain, cuts between fronts included",
  between: "To cut away between two fronts, kerf included",
  fence: "Fence",
  stop: "Stop",
  "stop down": "Stop, in order from the top",
  "fence down": "Fence, in order from the top",
  "stop across": "Stop, in order from the left",
  "fence across": "Fence, in order from the left",
  "fence up": "Fence, in order from the bottom",
  blade: "Blade height",
  pass: "Fence to the near side of the blade",
  passSides: "Left and right edge: fence to the near side of the blade",
  passEdges: "Upper and lower edge: fence to the near side of the blade",
  passEither: "From either end: fence to the near side of the blade",
  passLeft: "From the end at the box's left: fence to the near side of the blade",
  passFront: "From the front end: fence to the near side of the blade",
  baseline: "Baseline, from the end",
  baselineFront: "Baseline, from the front's end",
  baselineSide: "Baseline, from the side's front end",
  baselineRear: "Baseline, from the side's rear end",
  markTail: "Mark, from the upper edge to the edge of a tail",
  markFinger: "Mark, from the upper edge to the edge of a finger",
  socket: "Socket depth",
  jig: "Jig and drill collar, for stock of",
  overhang: "Bearing-guided bit, overhang",
  cutter: "Taken off each edge",
  slotWidth: "Width of the bit",
  slotLength: "Length, in from the rear edge and open there",
  slotEnd: "Stop block, from either end to the slot's middle",
  notchEnd: orMillimeters("From either end inward"),
  notchUp: orMillimeters("From the lower edge up"),
  bit: orMillimeters("Bit"),
  depth: orMillimeters("Depth stop"),
  hookUp: orMillimeters("Fence, from the back's lower edge to the hole"),
  hookEnd: orMillimeters("Stop block, from either end to the hole"),
  top: "Fence, from the front's upper edge to the hole",
  end: "Stop block, from either end to the hole",
  left: "Stop block, from the left end to the hole",
};

const GUARD_OFF =
  "Not a through cut: guard off, push blocks and a featherboard, guard back on at once; a riving knife lower than the blade stays. Cut a test piece;";
const NOT_THROUGH =
  "Not a through cut: guard off, push block or sled, guard back on at once. Where the blade meets the fence, a sacrificial fence. Try the joint in an offcut.";

const ACROSS = `inner face on the table, the end against the fence, the miter gauge behind it, for nothing is cut off here. ${NOT_THROUGH}`;

/** Common practice; the makers' manuals and local codes decide. */
const CAUTIONS: Record<Caution, string> = {
  general:
    "Follow the makers' manuals of saw, blade, bits and slides, and local codes. Eye and ear protection, and dust collected or a mask. Unplug the saw to change a blade. Dry fit before glue. Cabinets are tied to the wall before drawers are hung in them: open drawers tip them.",
  strip: "Fronts that match stay in one strip or panel: mark their order, and divide it only where the table says so.",
  rip: "Blade upright, guard and riving knife on. Stand beside the line of the cut, for wood can kick back; push block near the blade.",
  crosscut:
    "Use the sled or miter gauge with a stop, never the fence together with them: a piece caught between fence and blade is thrown. A panel too wide for the sled runs its longer edge along the fence alone.",
  narrow:
    "From here on narrow rips, under 3 in (75 mm): push blocks, featherboard, riving knife; rip them from stock that is long and still wide, never short pieces. The saw's manual decides.",
  short:
    "From here on short pieces, under 6 in (150 mm). Clamp each to a sled against its stop, or cut it from a longer one, never by hand or along the fence, as the saw's manual says. Grooves come before, in the strip.",
  groove: `${GUARD_OFF} lower edge and inner face against fence and table.`,
  runnerGroove: `${GUARD_OFF} the runners' grooves are in the sides' outer faces: lower edge and outer face against fence and table.`,
  stopped: "The groove's end may show: let it run out within a tail, finger or socket, or stop it short of both ends.",
  shortGroove:
    "Some pieces are under 6 in (150 mm) long, and the guard is off: clamp in a carrier what was not grooved in the strip, as the saw's manual says.",
  across: `Both ends of each side: ${ACROSS}`,
  acrossRear: `Both ends of each side, but the rear end alone where its front is integral or lipped: ${ACROSS}`,
  frontRabbet: `Fronts that are their boxes' own: inner face on the table, edges across the grain first, so that those along it take away what tears out. ${NOT_THROUGH}`,
  dividers: `Dadoes for dividers, from edge to edge of the inner face: ${ACROSS}`,
  joint:
    "Both ends of each piece, on end in a box-joint jig on the miter gauge, never along the fence; guard off, hands clear of where the blade comes out, guard back on at once. Try the joint in an offcut.",
  router:
    "Clamp the piece, feed against the bit's turning, keep both hands on the handles. Try the joint in an offcut.",
  pocket:
    "The holes go into the outer faces, where front and cabinet hide them. Clamp piece and jig, set the collar as the jig's manual says; hand out of the line of drill and screw, eye protection.",
  unstated:
    "Undermount slides, and not given: {names}. Take it from the slide's data sheet before the backs are cut and glued in.",
  notch:
    "Undermount slides: both lower corners of each back, before the box is glued. Clamp the back and saw to both lines, by hand or jigsaw, or on the band saw against fence and stop with its guard down; the waste is too small to be held. What stands within a corner joint may stay. The slide's data sheet and the saw's manual decide.",
  hook: "Undermount slides: from the back's outer face, one hole at each end, before the box is glued. Clamp the back against fence and stop block, a backing board under it; eye protection, sleeves and hair tied back. Try one in an offcut with the slide's hook: the slide's data sheet decides.",
  trim: "A bit that meets a nail or staple throws splinters of steel: set them deeper first. Clamp the box, both hands on the router, feed against the bit's turning; eye and ear protection; the router's manual decides.",
  slot: "Solid bottoms: their grain runs from side to side, so that they move front to back; slots at the rear edge, for the screws into the box back. Clamp the bottom on a waste board, both hands on the router, feed against the bit's turning; its manual decides. Finish both faces, glue the bottom nowhere but at its front edge, drive the screws snug, not tight.",
  mill: "Edges go past the cutter in one light pass, fronts held to table or fence all along; featherboards or the machine's feed, hands never over the cutter; its manual decides.",
  band: "The edge band goes on before holes are drilled: from here on sizes are of finished fronts. Trim it with the blade going away from the hand, as its maker says.",
  nailing:
    "Nail the bottom with glue: nails in the middle of the edge and away from corners, drill first where it may split, hands clear of where a nail can come out.",
  drill: "Clamp the stop block and a backing board; drill a test front. Clamp small fronts.",
};
