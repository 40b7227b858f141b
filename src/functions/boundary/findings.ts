import type { Finding, Verdict } from "../../core/drawer";
import type { Fault, Unit } from "../../core/length";
import { len, message, titled } from "./messages";
import { changeWords, missWords } from "./verdict";

/** A finding in words: what is wrong or doubtful, and what to do about it. */
export function wordingOf({ code, data }: Finding, unit: Unit): [finding: string, remedy: string] {
  if (code === "plan.fault") {
    const fault = data.fault as Fault;
    return [message(fault, unit), remedyOf(fault)];
  }
  const wording = FINDINGS[code];
  return wording ? wording(data, unit) : [code, ""];
}

type Wording = (data: Finding["data"], unit: Unit) => [finding: string, remedy: string];

const FINDINGS: Record<string, Wording> = {
  "heading.unread": ({ heading }) => [
    `The column ${String(heading)} is not read.`,
    "Nothing to do where it is your own; else give it a heading of the table.",
  ],
  "zero.blank": ({ heading }) => [
    `The 0 under ${titled(String(heading))} is read as a blank.`,
    "Write none or a zero with its unit, as 0 in, where zero is meant.",
  ],
  "unit.doubtful": ({ size, received }, unit) => [
    `An opening ${String(size)} of ${len(received, unit)} is unlikely.`,
    `Set the standard unit to ${unit === "in" ? "mm" : "in"}, or name the unit in the heading, if that is what was measured.`,
  ],
  "opening.outOfSquare": ({ size, least, most, tolerance }, unit) => [
    `The ${String(size)} is measured from ${len(least, unit)} to ${len(most, unit)}, more apart than the opening tolerance of ${len(tolerance, unit)}.`,
    "The least is planned with. True the opening up, or shim the slides where it is wider.",
  ],
  "reveal.inner": ({ side }) => [
    `The ${String(side)} reveal has no effect on a side that has a neighbour.`,
    "Set the front gap or the partition thickness instead.",
  ],
  "reveal.edge": ({ side, thickness }, unit) => [
    `A ${String(side)} reveal as wide as the cabinet is thick, ${len(thickness, unit)}, leaves the carcase's whole edge bare.`,
    "Make the reveal less than the cabinet is thick, unless the edge is to show.",
  ],
  "front.short": ({ side }) => [
    `The front stops short of the opening's ${String(side)} edge, and the opening shows beside it.`,
    "Make the reveal or the gap less, or the rail, partition or carcase thicker.",
  ],
  "overlay.collides": ({ name, rail, overlay }, unit) => [
    `Fronts overlay the frame by ${len(overlay, unit)} from both sides of a ${String(name)} of ${len(rail, unit)}, and meet.`,
    "Make the frame overlay less than half the rail.",
  ],
  "cabinet.heights": ({ a, b }, unit) => [
    `Openings ${len(a, unit)} and ${len(b, unit)} high cannot share one top and one bottom.`,
    "Give the rails above or below them, or different names under Cabinet.",
  ],
  "reveal.past": ({ side, by }, unit) => [
    `Fronts stand ${len(by, unit)} past the carcase at the ${String(side)}.`,
    "Meant where an end panel or a top is added later; else make the reveal 0 or more.",
  ],
  "fronts.remainder": ({ left, step }, unit) => [
    `Rounding the fronts down to ${len(step, unit)} leaves ${len(left, unit)} below the lowest.`,
    "Let the lowest front take it as a fixed height, or set the front step to 0.",
  ],
  "fronts.unfilled": ({ left }, unit) => [
    `The fixed fronts leave ${len(left, unit)} of the face free below the lowest.`,
    "Give one of them as 1 part, and it fills the face.",
  ],
  "gap.tight": ({ gap }, unit) => [
    `A gap of ${len(gap, unit)} between fronts is tight.`,
    "Fronts swell in damp weather and slides have play: common practice is 1/8 in (3 mm).",
  ],
  "gap.tightInset": ({ gap }, unit) => [
    `A gap of ${len(gap, unit)} round inset fronts is tight.`,
    "Fronts swell in damp weather and carcases are seldom square: common practice is about 3/32 in (2 mm).",
  ],
  "pull.one": ({ width }, unit) => [
    `A front ${len(width, unit)} wide has one pull: pulled at its end, the drawer racks.`,
    "Put two pulls on it, or set two pulls from above its width.",
  ],
  "front.solidUpright": ({ width, material }, unit) => [
    `A front of ${String(material)}, which reads as solid wood, with upright grain, ${len(width, unit)} wide, moves across its width with the seasons.`,
    "Turn the grain horizontal, or leave the gaps that its movement needs.",
  ],
  "match.kerf": ({ kerf, gap, jump }, unit) => [
    `The kerf of ${len(kerf, unit)} is wider than the front gap of ${len(gap, unit)}: the grain jumps by ${len(jump, unit)} from front to front.`,
    "Use a thinner blade or a wider gap where the grain is to run on.",
  ],
  "box.belowSlide": ({ height, slide }, unit) => [
    `The side, ${len(height, unit)} high, is lower than the slide, ${len(slide, unit)}.`,
    "Make the front higher, the spaces smaller, or take a lower slide.",
  ],
  "slide.pastBox": ({ up }, unit) => [
    `The slide, its centerline ${len(up, unit)} up the box, reaches past the box's edge.`,
    "Move the slide centerline so that its screws meet the side.",
  ],
  "box.shallow": ({ inside }, unit) => [
    `Only ${len(inside, unit)} is left inside.`,
    "Fewer drawers, a thinner bottom or an applied one leaves more.",
  ],
  "box.aboveFront": ({ by }, unit) => [
    `The box stands ${len(by, unit)} above its front.`,
    "Leave more space above, or a lower box.",
  ],
  "box.belowFront": ({ by }, unit) => [`The box reaches ${len(by, unit)} below its front.`, "Leave more space below."],
  "box.tightAbove": ({ above, asked }, unit) => [
    `The height asked for leaves ${len(above, unit)} above the box; the standard is ${len(asked, unit)}.`,
    "See that the drawer can still be tilted in and out.",
  ],
  "box.wide": ({ width, depth }, unit) => [
    `The box, ${len(width, unit)} wide and ${len(depth, unit)} deep, is much wider than deep and may rack.`,
    "Use two pulls and slides that are tied together, or divide the opening.",
  ],
  "box.rubs": ({ below, above }, unit) => [
    `The box has ${len(below, unit)} below it and ${len(above, unit)} above: it will rub.`,
    "Leave space below and above for play, and for tilting the drawer in and out.",
  ],
  "bottom.noRecess": () => [
    "An applied bottom leaves no recess for an undermount slide.",
    "Take bottom fit grooved or open back, with the offset that the slide's data sheet asks for.",
  ],
  "bottom.rubs": ({ below }, unit) => [
    `An applied bottom has only ${len(below, unit)} below it, and sags under load.`,
    "Leave at least 1/4 in (6 mm) below.",
  ],
  "bottom.sags": ({ bottom, width }, unit) => [
    `A bottom of ${len(bottom, unit)} spans ${len(width, unit)}.`,
    "Take a thicker bottom, or a muntin under its middle.",
  ],
  "bottom.solidGrain": ({ material }) => [
    `The bottom is of ${String(material)}, which reads as solid wood.`,
    "Run its grain from side to side, fix it at the front alone, and let it move under the back.",
  ],
  "bottom.solidHeld": ({ material, fit }) => [
    `The bottom is of ${String(material)}, which reads as solid wood, and is held all round (${String(fit)}): it cannot move with the seasons.`,
    "Take bottom fit open back with the grain from side to side, or a sheet.",
  ],
  "groove.nearEdge": ({ offset }, unit) => [
    `Only ${len(offset, unit)} of wood stands below the groove.`,
    "Leave at least 1/4 in (6 mm), or it splits off under load.",
  ],
  "groove.undermount": ({ offset }, unit) => [
    `A groove offset of ${len(offset, unit)} is little for an undermount slide.`,
    "Most want about 1/2 in (13 mm) below the bottom: see the slide's own data sheet.",
  ],
  "groove.deep": ({ part, depth, thickness }, unit) => [
    `The groove, ${len(depth, unit)} deep, takes more than half of the ${String(part)}'s ${len(thickness, unit)}.`,
    "Common practice is a third to half of the thickness.",
  ],
  "joint.deep": ({ joint, depth, stock }, unit) => [
    `A ${String(joint)} ${len(depth, unit)} deep leaves little of stock ${len(stock, unit)} thick.`,
    "Cut it no deeper than two thirds.",
  ],
  "box.rearClearance": ({ behind, rear }, unit) => [
    `The box leaves ${len(behind, unit)} behind it; the rear clearance is ${len(rear, unit)}.`,
    "Make the box less deep.",
  ],
  "slide.overloaded": ({ rating, load }, unit) => [
    `The slides carry ${String(rating)} ${weight(unit)}; an even design load (15 lb/ft², 718 Pa) is ${Number(load).toFixed(1)} ${weight(unit)}.`,
    "Take slides of a higher rating; the maker's data and local codes decide.",
  ],
  "blocking.unknown": () => [
    "Behind a face frame, these slides need blocking out to the opening's side.",
    "Give the Case width, so that the blocking can be sized.",
  ],
  "blocking.narrow": ({ by }, unit) => [
    `The case is narrower than the frame's opening, by ${len(by, unit)} a side.`,
    "Measure the Case width again: inside the case, behind the frame.",
  ],
  "box.noSideSpace": ({ space }, unit) => [
    `The side space is ${len(space, unit)}: the box is as wide as its opening, or wider.`,
    "See the slide's own data sheet for its side clearance or undermount deduction.",
  ],
  "fit.unlikely": (data, unit) => {
    const verdict = data as unknown as Verdict;
    return [
      `The side space is likely up to ${missWords(verdict, unit)} of what the slide allows.`,
      `${changeWords(verdict, unit)} A larger or smaller box is set by the side clearance, with slide tolerances to match.`,
    ];
  },
  "screw.through": ({ name, size, most }, unit) => [
    `A ${String(name)} of ${len(size, unit)} comes out of its stock, ${len(most, unit)} in all.`,
    "Take a shorter one, or set its length to auto.",
  ],
  "screw.none": ({ name }) => [
    `None of the screw lengths suits as ${String(name)} for this stock.`,
    "Add a length to the screw lengths, or fasten it in another way.",
  ],
  "pull.noLine": () => [
    "None of the places of pull line falls on this front: it gets no pull.",
    "Add a place to pull line, or set it to none for this opening.",
  ],
  "pull.pastSide": ({ width }, unit) => [
    `The holes of a pull lie past the side of a front ${len(width, unit)} wide.`,
    "Take fewer or shorter pulls, or move the pull line.",
  ],
  "pull.pastEdge": ({ height, down }, unit) => [
    `A pull ${len(down, unit)} down from the upper edge misses a front ${len(height, unit)} high.`,
    "Set the pull height to center, or less.",
  ],
  "stock.nominal": ({ part, thickness, least, most }, unit) => [
    `The ${String(part)} is given as ${len(thickness, unit)}; plywood sold by that name may measure ${String(least)} to ${String(most)} in (PS 1).`,
    "Measure the sheet, and give what it measures.",
  ],
};

const weight = (unit: Unit): string => (unit === "in" ? "lb" : "kg");

/** What to do about an opening that cannot be planned. */
const remedyOf = ({ code }: Fault): string => REMEDIES.find(([codes]) => codes.test(code))?.[1] ?? "Correct the cell.";

const REMEDIES: readonly (readonly [RegExp, string])[] = [
  [/^slide\.noneFits$/, "Measure the depth again, or list a shorter slide."],
  [/^slide\.noneFitsBox/, "Make the box deeper, or list a shorter slide."],
  [/^slide\.aboveBox/, "Lower the slide centerline, or make the box higher."],
  [/^slide\.|^box\.deduction/, "See the slide's own data sheet, and set the standard that it names."],
  [/^front\.bandThick/, "Take a thinner band, or a larger front."],
  [/^fronts\.|^face\./, "Ask for fewer or lower fronts, or for smaller gaps and reveals."],
  [/^drawers\./, "Write a count, or a list such as 5 1/2; 1 part; 2 parts."],
  [/^box\.zoneLow/, "Make the front higher, ask for fewer drawers, or leave less space below and above."],
  [/^box\.deep/, "Make the box depth less."],
  [/^box\.(spaceLow|spaceBelowStep|low|height)/, "Ask for fewer drawers, or for less space below and above."],
  [/^box\./, "Measure again, or take thinner stock or slides that need less room."],
  [/^groove\.playEatsHold/, "Allow less play, or cut the groove deeper."],
  [/^joint\.|^groove\./, "Make the cut less deep than its stock, and give it where the joint needs it."],
  [/^cabinet\./, "Give them one value, or different names under Cabinet."],
  [/^argument\.date|^length\.tooLarge/, "Format the cell as text before typing a fraction."],
  [/^table\.|^openings\./, "Correct the table; nothing can be planned before."],
];

/** What to mind where the piece in hand is small. */
export const cutCaution = (caution: "short" | "narrow"): string =>
  caution === "short"
    ? "Caution: the piece is short along the fence. Cut it another way, or hold it in a sled, as the saw's manual says."
    : "Caution: the piece is narrow. Use push blocks or a sled, as the saw's manual says.";
