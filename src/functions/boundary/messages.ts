import { writeLength, type Fault, type FaultData, type Rational, type Unit } from "../../core/length";

/** The wording of a fault, for the unit of the call: which argument, what was received, what is allowed. */
export function message(fault: Fault, unit: Unit): string {
  const wording = CATALOGUE[fault.code];
  return wording ? wording(fault.data, unit) : fault.code;
}

type Wording = (data: FaultData, unit: Unit) => string;

const len = (value: unknown, unit: Unit): string => writeLength(value as Rational, unit);

/** What a person typed, quoted where it is a text, cut where it is long. */
function quoted(value: unknown): string {
  if (typeof value === "string") return `"${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "object" ? "no plain value" : String(value);
}

const LENGTHS = `a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm`;

const CATALOGUE: Record<string, Wording> = {
  "argument.blank": ({ argument, wanted }) =>
    `${argument} is blank. It needs ${wanted === "length" ? `a length: ${LENGTHS}` : `a ${wanted}`}.`,
  "argument.range": ({ argument, rows, columns }) =>
    `${argument} is a range of ${rows} × ${columns} cells. It takes one cell.`,
  "argument.unsupported": ({ argument, type }) =>
    `${argument} holds no plain value (${type}). It takes a number or a text.`,
  "argument.date": ({ argument }) =>
    `${argument} is a date: the spreadsheet turned a fraction such as 7/16 into one. Format the cell as text, or type =7/16 or '7/16.`,

  "length.unreadable": ({ argument, text }) => `${argument} is ${quoted(text)}, which is no length. Write ${LENGTHS}.`,
  "length.doubtfulComma": ({ argument, text }) =>
    `${argument} is ${quoted(text)}: a comma before three digits may mark decimals or thousands. Write a point, or no comma.`,
  "length.zeroDenominator": ({ argument, text }) => `${argument} is ${quoted(text)}, which divides by zero.`,
  "length.wrongType": ({ argument, received }) =>
    `${argument} is ${quoted(received)}, which is no length. Write ${LENGTHS}.`,
  "length.notFinite": ({ argument }) => `${argument} is not a finite number. It needs a length: ${LENGTHS}.`,
  "length.tooLarge": ({ argument, received, largest }, unit) =>
    `${argument} is ${quoted(received)}, more than ${largest} ${unit}, the largest length allowed.` +
    (typeof received === "number" && received < 80_000
      ? " Such a number may be a date that the spreadsheet made of a fraction: format the cell as text."
      : ""),
  "length.notPositive": ({ argument, received }, unit) =>
    `${argument} is ${len(received, unit)}. It must be more than 0.`,
  "length.negative": ({ argument, received }, unit) => `${argument} is ${len(received, unit)}. It must be 0 or more.`,

  "word.unknown": ({ argument, received, allowed }) =>
    `${argument} is ${quoted(received)}. It can be ${(allowed as string[]).map(quoted).join(", ")}` +
    (argument === "slide" ? ", or a length per side." : "."),
  "number.notWhole": ({ argument, received, least, most }) =>
    `${argument} is ${quoted(received)}. It must be a whole number from ${least} to ${most}.`,
  "number.wrongType": ({ argument, received }) => `${argument} is ${quoted(received)}. It must be a plain number.`,
  "number.outOfRange": ({ argument, received, least, most }) =>
    `${argument} is ${quoted(received)}. It must be from ${least} to ${most}.`,
  "number.notAllowed": ({ argument, received, allowed }) =>
    `${argument} is ${quoted(received)}. It can be ${(allowed as number[]).join(", ")}.`,
  "list.empty": ({ argument }) => `${argument} holds no length: all its cells are blank.`,

  "slide.undermount": ({ argument }) =>
    `${argument} is "undermount": its deduction stands in that slide's own data sheet. Give a length per side instead.`,
  "slide.noneFits": ({ insideDepth, room, shortest }, unit) =>
    `No slide fits: an inside depth of ${len(insideDepth, unit)} leaves ${len(room, unit)}, and the shortest slide is ${len(shortest, unit)}.`,

  "box.openingNarrow": ({ opening, clearance, room }, unit) =>
    `opening_width is ${len(opening, unit)}. With ${len(clearance, unit)} for the slide on each side it must be more than ${len(room, unit)}.`,
  "box.spaceLow": ({ space, below, above }, unit) =>
    `space_height is ${len(space, unit)}, of which ${len(below, unit)} below and ${len(above, unit)} above the box leave nothing.`,
  "box.spaceBelowStep": ({ left, step }, unit) =>
    `Of space_height ${len(left, unit)} is left for the box, which is less than one step of ${len(step, unit)}.`,
  "box.sidesThick": ({ width, side, both }, unit) =>
    `box_width is ${len(width, unit)}. With two sides of ${len(side, unit)} it must be more than ${len(both, unit)}.`,
  "box.endsThick": ({ depth, end, both }, unit) =>
    `box_depth is ${len(depth, unit)}. With two ends of ${len(end, unit)} it must be more than ${len(both, unit)}.`,

  "joint.depthMissing": ({ joint }) => `joint_depth is blank. A ${joint} needs the depth that it is cut into the side.`,
  "joint.depthThrough": ({ joint, depth, side }, unit) =>
    `joint_depth is ${len(depth, unit)}. A ${joint} must be cut less deep than the side is thick, ${len(side, unit)}.`,
  "joint.socketMissing": () =>
    "joint_depth is blank. A half-blind dovetail needs the depth of its sockets in the ends.",
  "joint.socketThrough": ({ socket, end }, unit) =>
    `joint_depth is ${len(socket, unit)}. The sockets can be at most as deep as the ends are thick, ${len(end, unit)}.`,

  "groove.depthMissing": ({ fit }) => `groove_depth is blank or 0. A bottom that is ${quoted(fit)} needs it.`,
  "groove.through": ({ groove, stock, part }, unit) =>
    `groove_depth is ${len(groove, unit)}. It must be less than the ${part} is thick, ${len(stock, unit)}.`,
  "groove.playEatsHold": ({ play, hold }, unit) =>
    `play is ${len(play, unit)}. The grooves hold the bottom by a total of ${len(hold, unit)}: with so much play it would drop out.`,
  "groove.narrowerThanKerf": ({ width, kerf }, unit) =>
    `groove_width is ${len(width, unit)}, narrower than the kerf, ${len(kerf, unit)}. This blade cannot cut it.`,
  "groove.tooManyPasses": ({ passes, most, width, kerf }, unit) =>
    `A groove of ${len(width, unit)} with a kerf of ${len(kerf, unit)} takes ${passes} passes. At most ${most} are allowed.`,

  "fronts.noRoom": ({ face, count, gap, first, last }, unit) =>
    `A face of ${len(face, unit)} has no room for ${count} fronts: gaps of ${len(gap, unit)} and reveals of ${len(first, unit)} and ${len(last, unit)} take it all.`,
  "fronts.fixedTall": ({ fixed, room }, unit) =>
    `drawers asks for fixed fronts that add up to ${len(fixed, unit)}. The face has room for ${len(room, unit)}.`,
  "fronts.nothingToShare": ({ fixed }, unit) =>
    `drawers asks for fixed fronts that add up to ${len(fixed, unit)}, which leaves nothing for the fronts in parts.`,
  "fronts.belowStep": ({ step }, unit) =>
    `A front would be less than one step of ${len(step, unit)} high. Ask for fewer drawers, or a smaller step.`,
  "fronts.amountMissing": ({ rule }) =>
    rule === "arithmetic"
      ? "amount is blank. Arithmetic heights need the length that each front is taller by."
      : "amount is blank. Geometric heights need the factor that each front is taller by, such as 1.2.",
  "fronts.stepsTall": ({ face, count, amount }, unit) =>
    `amount is ${len(amount, unit)}. ${count} fronts that grow by so much leave nothing for the top one in ${len(face, unit)}.`,

  "drawers.none": ({ argument }) =>
    `${argument} is blank or 0. It needs a count of fronts, or a list such as 5 1/2; 1 part; 2 parts.`,
  "drawers.count": ({ argument, count, most }) =>
    `${argument} is ${count}. A lone whole number is a count of fronts, from 1 to ${most}; one front of a fixed height has its mark, as 3" or 80 mm.`,
  "drawers.tooMany": ({ argument, count, most }) => `${argument} lists ${count} fronts. At most ${most} are allowed.`,
  "drawers.unreadable": ({ argument, text, place }) =>
    `${argument}, item ${place} is ${quoted(text)}. It can be a length, as 5 1/2, or parts of what is left, as 2 parts.`,
  "drawers.notPositive": ({ argument, item, place }, unit) =>
    `${argument}, item ${place} is ${typeof item === "string" ? quoted(item) : len(item, unit)}. It must be more than 0.`,
};
