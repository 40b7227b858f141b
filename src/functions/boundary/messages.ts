import {
  isPositive,
  isZero,
  writeLength,
  type Fault,
  type FaultData,
  type Rational,
  type Unit,
} from "../../core/length";

/** The wording of a fault, for the unit of the call: which argument, what was received, what is allowed. */
export function message(fault: Fault, unit: Unit): string {
  const text = CATALOGUE[fault.code]?.(fault.data, unit) ?? fault.code;
  const { openingLabel, argument } = fault.data;
  // In a plan a sum has no arguments: their names are the trade's words with the opening before them.
  return openingLabel === undefined || argument !== undefined
    ? text
    : `Opening ${openingLabel}: ${text.replace(/(\w)_(?=\w)/g, "$1 ")}`;
}

type Wording = (data: FaultData, unit: Unit) => string;

export const len = (value: unknown, unit: Unit): string => writeLength(value as Rational, unit);

/** What a person typed, quoted where it is a text, cut where it is long. */
function quoted(value: unknown): string {
  if (typeof value === "string") return `"${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value === null || value === undefined) return "a blank";
  if (typeof value === "number" && !Number.isFinite(value)) return "no finite number";
  return typeof value === "object" ? "no plain value" : String(value);
}

const LENGTHS = `a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm`;

const list = (words: unknown): string => (words as string[]).map(titled).join(", ");
export const titled = (name: string): string => name[0]!.toUpperCase() + name.slice(1);
const partOf = (part: unknown, drawer: unknown): string => `${String(part)}${drawer ? ` of ${String(drawer)}` : ""}`;
const rows = (numbers: unknown): string => (numbers as number[]).join(" and ");

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
    `${len(left, unit)} of space_height is left for the box, which is less than one step of ${len(step, unit)}.`,
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
    `A face of ${len(face, unit)} has no room for ${count === 1 ? "a front" : `${count} fronts`}: ${[
      ...(count === 1 ? [] : [`gaps of ${len(gap, unit)}`]),
      ...[first, last]
        .filter((reveal) => !isZero(reveal as Rational))
        .map((reveal) => `a reveal of ${len(reveal, unit)}`),
    ].join(" and ")} take it all.`,
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

  "text.wrongType": ({ argument, received }) => `${argument} is ${quoted(received)}. It must be a text.`,

  "table.blank": ({ table, required }) => `${table} is blank. It needs a header row with ${list(required)}.`,
  "table.noHeader": ({ table, required, first }) =>
    `${table} has no header row: its first row holds ${(first as unknown[]).slice(0, 4).map(quoted).join(", ")}. It needs ${list(required)}.`,
  "table.noRows": ({ table }) => `${table} has a header row and nothing below it.`,
  "table.headingTwice": ({ table, name }) => `${table} has the heading ${titled(name as string)} twice.`,
  "table.headingMissing": ({ table, missing }) =>
    `${table} lacks the heading${(missing as string[]).length > 1 ? "s" : ""} ${list(missing)}.`,
  "table.headingMisspelt": ({ table, heading, nearest }) =>
    `${table} has the heading ${quoted(heading)}. Is it ${titled(nearest as string)}? A column of your own needs a name less like it.`,
  "table.headingUnit": ({ table, heading }) =>
    `${table}: ${quoted(heading)} has no unit in its bracket. It can be in, ft, mm, cm or m.`,
  "table.notTwoColumns": ({ table, columns }) => `${table} has ${columns} columns. It takes two, name and value.`,
  "table.nameBlank": ({ table, row }) => `${table}, row ${row} has a value and no name.`,
  "table.nameTwice": ({ table, name, rows: both }) => `${table} has ${quoted(name)} twice, in rows ${rows(both)}.`,
  "table.swapped": ({ table, row, name }) =>
    `${table}, row ${row} has the name ${quoted(name)} in its second column. Names stand first, values second.`,
  "table.nameUnknown": ({ table, row, name, nearest }) =>
    `${table}, row ${row} has the name ${quoted(name)}, which is none. The nearest is ${quoted(nearest)}.`,

  "flag.wrongType": ({ argument, received }) => `${argument} is ${quoted(received)}. It can be TRUE or FALSE.`,
  "drawer.notText": ({ received }) =>
    `drawer is the number ${quoted(received)}. Type the label as a text, as "A1" or "7-1".`,
  "drawer.unknown": ({ received, drawers }) =>
    `drawer is ${quoted(received)}, which is none of ${(drawers as string[]).slice(0, 12).join(", ")}${(drawers as string[]).length > 12 ? " …" : ""}.`,

  "openings.sameLabel": ({ label, rows: both }) => `openings has two openings ${quoted(label)}, in rows ${rows(both)}.`,
  "cabinet.disagrees": ({ name, openings }) =>
    `${(openings as string[]).join(" and ")} stand in one cabinet and differ in ${name as string}, which is the cabinet's.`,
  "face.none": ({ side, size }, unit) =>
    `reveals and gaps leave no ${side as string} for the fronts: it would be ${len(size, unit)}.`,
  "front.bandThick": ({ band, size }, unit) =>
    `an edge band of ${len(band, unit)} all round leaves nothing of a front of ${len(size, unit)}.`,
  "slide.deductionMissing": () =>
    "undermount slides need the standard undermount deduction, which stands in that slide's own data sheet.",
  "slide.noneFitsBox": ({ depth }, unit) => `No slide on sale is as short as the box is deep, ${len(depth, unit)}.`,
  "slide.aboveBox": ({ centerline, height }, unit) =>
    `slide centerline is ${len(centerline, unit)} up the box, which is only ${len(height, unit)} high.`,
  "pull.lineUnknown": () =>
    "pull line is measured from the cabinet's outer edge, which the openings of a face frame do not tell. Set it to none.",
  "pull.lineMany": ({ count, most }) =>
    `${String(count)} places of pull line fall on one front, which takes ${String(most)} pulls at most.`,
  "kerf.none": () => "kerf is 0, and no blade cuts so thin. Give what the blade cuts.",
  "box.deductionWide": ({ opening, deduction }, unit) =>
    `opening width is ${len(opening, unit)}. An undermount deduction of ${len(deduction, unit)} leaves no box.`,
  "box.deep": ({ depth, room }, unit) =>
    `box depth is ${len(depth, unit)}. The opening has room for ${len(room, unit)}.`,
  "box.heightsCount": ({ given, count }) =>
    `box heights lists ${given} heights for ${count} drawers. Give one for all, or one a drawer.`,
  "box.heightTall": ({ height, room }, unit) =>
    `a box height of ${len(height, unit)} is asked for. Its space has room for ${len(room, unit)}.`,
  "box.zoneLow": ({ front, height, below, above }, unit) =>
    isPositive(height as Rational)
      ? `behind front ${front} there are ${len(height, unit)}, of which ${len(below, unit)} below and ${len(above, unit)} above the box leave nothing.`
      : `front ${front} lies wholly before the carcase: there is no opening behind it for a box.`,
  "box.low": ({ height, bottom }, unit) =>
    `a box of ${len(height, unit)} has no inside height: its bottom and what is below take ${len(bottom, unit)}.`,

  "percent.doubtful": ({ argument, received }) =>
    `${argument} is ${quoted(received)}: is that ${String(received)} % or ${Number((Number(String(received).replace(",", ".")) * 100).toFixed(6))} %? Write the per cent as a plain number, such as 7, or as a text with its sign, such as '0.5 %. (A cell formatted as a percentage holds 0.07 for 7 %.)`,
  "rates.missing": ({ name }) =>
    `rates lacks ${quoted(name)}, which this job needs. Give it, or 0 where nothing is charged.`,
  "rates.minutesMissing": () =>
    `rates has a "labour rate" and no minutes. Give "box minutes", "front minutes" or "fitting minutes", a drawer.`,
  "rates.markupAndMargin": () => `rates has both "markup" and "margin". Give one: on the cost, or of the price.`,
  "rates.marginHigh": ({ received }) => `rates, margin is ${quoted(received)}. It must be less than 100 %.`,
  "alternates.noNames": () =>
    "standards needs a first row with the alternates' names, its first cell blank: one column an alternate, the first the base.",
  "alternates.few": () => "standards has fewer than two alternates to compare: one column each, side by side.",
  "alternates.nameBlank": ({ column }) => `standards, column ${String(column)} has no name in its first row.`,
  "alternates.unit": () => "standards: all alternates need one unit, for they share openings and stock.",
  "quote.belowZero": () => "rates: the extras take the price below 0.",
  "stock.priceMissing": ({ stock }) =>
    `stock, ${stock as string} has no price, which a quote needs. Give it one, or the word "none" where it costs nothing (a 0 counts as blank).`,
  "stock.useless": ({ argument, soldBy }) =>
    `${argument} says nothing of stock sold by the ${soldBy as string}. Leave it blank, or change Sold by.`,
  "stock.severalMeasures": ({ name, rows: both }) =>
    `${name as string} finds both rows ${rows(both)} of stock, not all of them sheets. Tell them apart by Material or Thickness.`,
  "stock.thicknessUnknown": ({ part, stock }) =>
    `${part as string} is of solid wood without a thickness: give it one, or stock, ${stock as string}.`,
  "number.negative": ({ argument, received }) => `${argument} is ${quoted(received)}. It must be 0 or more.`,
  "sheets.noStockFor": ({ row, name, drawer, material, thickness }, unit) =>
    `${row === undefined ? partOf(name, drawer) : `parts, row ${String(row)} (${name as string})`} finds no stock${material ? ` of ${material as string}` : ""}${thickness ? ` ${len(thickness, unit)} thick` : ""}.`,
  "sheets.noStock": () => "stock is blank: there is nothing to cut from.",
  "sheets.partTooLarge": ({ part, drawer, length, width }, unit) =>
    `${partOf(part, drawer)}${length ? `, ${len(length, unit)} × ${len(width, unit)},` : ""} fits no sheet of its stock, the way its grain allows.`,
  "sheets.groupTooLarge": ({ group }) =>
    `The parts of grain group ${quoted(group)} in one row fit no sheet of their stock.`,
  "sheets.noneAvailable": ({ part, drawer }) => `${partOf(part, drawer)} fits only stock of which none is available.`,
  "sheets.stockExhausted": () => "No way was found to cut all parts from the stock that is available.",
  "sheets.priceMissing": ({ stock }) =>
    `stock, ${stock as string} has no price, and others have. Give it one, or Available where it is an offcut of yours.`,
  "sheets.priceNegative": ({ stock }) => `stock, ${stock as string} has a price below 0.`,
  "sheets.kerfNegative": ({ received }, unit) => `kerf is ${len(received, unit)}. It must be 0 or more.`,
  "sheets.trimNegative": ({ received }, unit) => `trim is ${len(received, unit)}. It must be 0 or more.`,
  "sheets.quantityNotWhole": ({ part, drawer, received }) =>
    `${partOf(part, drawer)} is wanted ${quoted(received)} times. It must be a whole number.`,
  "sheets.availableNotWhole": ({ stock, received }) =>
    `stock, ${stock as string} has ${quoted(received)} available. It must be a whole number.`,
  "sheets.partNotPositive": ({ part, drawer }) => `${partOf(part, drawer)} has a size of 0 or less.`,
  "sheets.stockNotPositive": ({ stock }) => `stock, ${stock as string} has no size left once it is trimmed.`,
  "sheets.tooFine": () =>
    "The sizes of parts and stock are too fine to be laid out together: round them to what a saw can cut.",
};
