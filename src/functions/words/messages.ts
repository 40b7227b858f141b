import { isPositive, isZero, type Fault, type FaultCode, type Faults, type Told, type Unit } from "../../core/length";
import { catalog, worded, type Catalog } from "./wording";
import { mayBeDate } from "../cells";

/** The wording of a fault, for the unit of the call: which argument, what was received, what is allowed. */
export function message<C extends FaultCode>(fault: Fault<C>, unit: Unit): string {
  const words: Catalog<Data> = CATALOG;
  const text = worded(words[fault.code], fault.data, unit);
  const { openingLabel, argument } = fault.data;
  // In a plan a sum has no arguments: their names are the trade's words with the opening before them.
  return openingLabel === undefined || argument !== undefined
    ? text
    : `Opening ${openingLabel}: ${text.replace(/(\w)_(?=\w)/g, "$1 ")}`;
}

const MAY_BE_DATE = "Such a number may be a date that the spreadsheet made of a fraction: format the cell as text.";
const zero = ({ mark }: { mark?: string | undefined }, unit: Unit) =>
  `{argument} is 0, which an empty cell also gives: write none or 0 ${mark ?? unit} for zero` as const;
const LENGTHS = `a number, or a text such as 23 7/16, 1' 11 7/16" or 595 mm`;

const BOTH = "in rows {first} and {second}";
/** A part as a person finds it: by its row where they typed it, by its drawer where it was planned. */
function partOf({ row, part, drawer }: { row?: number; part: string; drawer?: string | undefined }) {
  const name = drawer ? "{part} of {drawer}" : "{part}";
  if (!row) return name;
  return part === `row ${row}` ? "parts, row {row}" : (`parts, row {row} (${name})` as const);
}

type DataOf<C extends FaultCode> = Faults[C] & Told;
type Data = { readonly [C in FaultCode]: DataOf<C> };

const CATALOG = catalog<Data>()({
  "argument.blank": ({ wanted, received }) =>
    `{argument} is ${received === 0 ? "0" : "blank"}. It needs ${wanted === "length" ? `a length: ${LENGTHS}` : "a {wanted}"}.`,
  "zero.doubtful": (data, unit) => `${zero(data, unit)}, or leave it out for {usual}.`,
  "zero.needed": (data, unit) => `${zero(data, unit)}.`,
  "argument.range": "{argument} is a range of {rows} × {columns} cells. It takes one cell.",
  "argument.unsupported": "{argument} holds no plain value ({type}). It takes a number or a text.",
  "argument.date":
    "{argument} is a date: the spreadsheet turned a fraction such as 7/16 into one. Format the cell as text, or type =7/16 or '7/16.",

  "length.unreadable": `{argument} is {"text"}, which is no length. Write ${LENGTHS}.`,
  "length.doubtfulComma":
    '{argument} is {"text"}: its comma may mark decimals or thousands. Write a point, or no comma.',
  "length.zeroDenominator": '{argument} is {"text"}, which divides by zero.',
  "length.wrongType": `{argument} is {"received"}, which is no length. Write ${LENGTHS}.`,
  "length.notFinite": `{argument} is not a finite number. It needs a length: ${LENGTHS}.`,
  "length.tooLarge": ({ received }, unit) =>
    `{argument} is {"received"}, more than {largest} ${unit}, the largest length allowed.` +
    (mayBeDate(received) ? ` ${MAY_BE_DATE}` : ""),
  "length.mayBeDate": (_, unit) =>
    `{argument} is {"received"}. ${MAY_BE_DATE} A length that long is written with its unit, as "{received} ${unit}".`,
  "price.mayBeDate": `{argument} is {"received"}. ${MAY_BE_DATE} A price that high is written as a text, as '{received}.`,
  "length.notPositive": "{argument} is {received}. It must be more than 0.",
  "length.negative": "{argument} is {received}. It must be 0 or more.",

  "word.unknown": ({ argument }) =>
    '{argument} is {"received"}. It can be {"allowed"}' +
    ({ slide: ", or a length per side.", stiffness: ", or a modulus of elasticity." }[argument ?? ""] ?? "."),
  "number.notWhole": '{argument} is {"received"}. It must be a whole number from {least} to {most}.',
  "number.wrongType": '{argument} is {"received"}. It must be a plain number, such as 12.5.',
  "number.outOfRange": '{argument} is {"received"}. It must be from {least} to {most}.',
  "number.notAllowed": '{argument} is {"received"}. It can be {allowed}.',
  "list.empty": "{argument} holds no length: all its cells are blank.",

  "slide.undermount": `{argument} is "undermount": its deduction stands in that slide's own data sheet. Give a length per side instead.`,
  "slide.noneFits":
    "No slide fits: an inside depth of {insideDepth} leaves {room}, and the shortest slide is {shortest}.",

  "box.openingNarrow":
    "opening_width is {opening}. With {clearance} for the slide on each side it must be more than {room}.",
  "box.spaceLow": "space_height is {space}, of which {below} below and {above} above the box leave nothing.",
  "box.spaceBelowStep": "{left} of space_height is left for the box, which is less than one step of {step}.",
  "box.sidesThick": "box_width is {width}. With two sides of {side} it must be more than {both}.",
  "box.endsThick": "box_depth is {depth}. With two ends of {end} it must be more than {both}.",

  "joint.depthMissing": "joint_depth is blank. A {joint} needs the depth that it is cut into the side.",
  "joint.depthThrough": "joint_depth is {depth}. A {joint} must be cut less deep than the side is thick, {side}.",
  "joint.socketMissing": "joint_depth is blank. A half-blind dovetail needs the depth of its sockets in the ends.",
  "joint.socketThrough": "joint_depth is {socket}. The sockets can be at most as deep as the ends are thick, {end}.",

  "joint.pinWide": "pin width is {pin}. It must be less than the joint pitch, {pitch}, or no tails are left.",
  "groove.depthMissing": 'groove_depth is blank or 0. A bottom that is {"fit"} needs it.',
  "groove.through": "groove_depth is {groove}. It must be less than the {part} is thick, {stock}.",
  "groove.playEatsHold":
    "play is {play}. The grooves hold the bottom by a total of {hold}: with so much play it would drop out.",
  "groove.narrowerThanKerf": "groove_width is {width}, narrower than the kerf, {kerf}. This blade cannot cut it.",
  "groove.tooManyPasses":
    "A groove of {width} with a kerf of {kerf} takes {passes} passes. At most {most} are allowed.",

  "fronts.noRoom": ({ count, first, last }) => {
    const taken = [
      count === 1 ? "" : "gaps of {gap}",
      isZero(first) ? "" : "a reveal of {first}",
      isZero(last) ? "" : "a reveal of {last}",
    ];
    const fronts = count === 1 ? "a front" : "{count} fronts";
    return `A face of {face} has no room for ${fronts}: ${taken.filter(Boolean).join(" and ")} take it all.`;
  },
  "fronts.fixedTall": "drawers asks for fixed fronts that add up to {fixed}. The face has room for {room}.",
  "fronts.nothingToShare":
    "drawers asks for fixed fronts that add up to {fixed}, which leaves nothing for the fronts in parts.",
  "fronts.belowStep": "A front would be less than one step of {step} high. Ask for fewer drawers, or a smaller step.",
  "fronts.amountMissing": ({ rule }) =>
    rule === "arithmetic"
      ? "amount is blank. Arithmetic heights need the length that each front is taller by."
      : "amount is blank. Geometric heights need the factor that each front is taller by, such as 1.2.",
  "fronts.stepsTall":
    "amount is {amount}. {count} fronts that grow by so much leave nothing for the top one in {face}.",

  "drawers.none": "{argument} is blank or 0. It needs a count of fronts, or a list such as 5 1/2; 1 part; 2 parts.",
  "drawers.count": ({ of }) =>
    `{argument} is {count}. A lone whole number is a count of {of}s, from 1 to {most}; one {of} of a fixed ${of === "column" ? 'width has its mark, as 18" or 450 mm' : 'height has its mark, as 3" or 80 mm'}.`,
  "drawers.tooMany": "{argument} lists {count} {of}s. At most {most} are allowed.",
  "drawers.unreadable":
    '{argument}, item {place} is {"text"}. It can be a length, as 5 1/2, or parts of what is left, as 2 parts; a count stands alone.',
  "drawers.notPositive": ({ item }) =>
    `{argument}, item {place} is ${typeof item === "string" ? '{"item"}' : "{item}"}. It must be more than 0.`,

  "text.wrongType": '{argument} is {"received"}. It must be a text.',

  "table.blank": "{table} is blank. It needs a header row with {Required}.",
  "table.noHeader": '{table} has no header row: its first row holds {"first"}. It needs {Required}.',
  "table.noRows": "{table} has a header row and nothing below it.",
  "table.tooLong": ({ rows, most }) =>
    `{table} has ${grouped(rows)} rows. At most ${grouped(most)} are planned at once.`,
  "table.headingTwice": "{table} has the heading {Name} twice.",
  "table.headingMissing": ({ missing }) => `{table} lacks the heading${missing.length > 1 ? "s" : ""} {Missing}.`,
  "table.headingMisspelled":
    '{table} has the heading {"heading"}. Is it {Nearest}? A column of your own needs a name less like it.',
  "table.headingUnit": '{table}: {"heading"} has no unit in its bracket. It can be in, ft, mm, cm or m.',
  "table.notTwoColumns": "{table} has {columns} columns. It takes two, name and value.",
  "table.nameBlank": "{table}, row {row} has a value and no name.",
  "table.nameTwice": `{table} has {"name"} twice, ${BOTH}.`,
  "table.swapped": '{table}, row {row} has the name {"name"} in its second column. Names stand first, values second.',
  "table.nameUnknown": ({ table }) =>
    '{table}, row {row} has the name {"name"}, which is none. The nearest is {"nearest"}.' +
    (table === "rates" ? ' A charge of your own begins with "extra".' : ""),

  "flag.wrongType": '{argument} is {"received"}. It can be TRUE or FALSE.',
  "drawer.notText": 'drawer is the number {"received"}. Type the label as a text, as "A1" or "7-1".',
  "drawer.unknown": 'drawer is {"received"}, which is none of {drawers}.',

  "load.unreadable": '{argument} is {"received"}. It takes even, files or a weight, in {plain} or with its unit.',
  "stiffness.unreadable":
    '{argument} is {"received"}. It takes auto, a panel such as plywood or MDF, or a modulus of elasticity in {plain}.',
  "list.count": "{name} lists {given} for {count} drawers. Give one for all, or one a drawer.",
  "divider.noRoom": "{count} dividers {thickness} thick leave nothing of {inside} inside.",
  "divider.spacing": ({ count }) =>
    count < 1
      ? "dividers {spacing} apart leave no second cell in {inside} inside."
      : "dividers {spacing} apart are {count} in {inside} inside. At most {most} are planned.",
  "divider.through": "divider_dado_depth is {depth}. It must be less than the {part} is thick, {thickness}.",
  "load.count": "load lists {given} loads for {count} drawers. Give one for all, or one a drawer.",
  "share.outOfRange": '{argument} is {"received"}. It takes a share of the span from 1/2000 to 1/20, such as 1/240.',
  "pieces.many": ({ pieces, most }) =>
    `The job has ${grouped(pieces)} pieces. At most ${grouped(most)} are listed at once: give fewer openings a call.`,
  "cabinet.taken": "{argument} is {outside}, of which {names}, {taken}, leave no opening.",
  "columns.wide": "{argument} asks for fixed widths of {fixed} in all. There is room for {room}.",
  "columns.nothingToShare":
    "{argument} asks for fixed widths of {fixed} in all, which leave nothing for the columns in parts: there is room for {room}.",
  "columns.unfilled":
    "{argument} asks for fixed widths of {fixed} in all. There is room for {room}: give one column as 1 part, and it takes the rest.",
  "cabinets.sameName": `cabinets has two {kind} {"name"}, ${BOTH}.`,
  "cabinets.many": ({ openings, most }) =>
    `cabinets has ${grouped(openings)} openings. At most ${grouped(most)} are planned at once.`,

  "openings.sameLabel": `openings has two openings {"label"}, ${BOTH}.`,
  "cabinet.disagrees": "{first} and {second} stand in one cabinet and differ in {name}, which is the cabinet's.",
  "face.none": "reveals and gaps leave no {side} for the fronts: it would be {size}.",
  "front.bandThick": "an edge band of {band} all round leaves nothing of a front of {size}.",
  "front.boxShallow": "a box {depth} deep has no inside: its front and back take {both}.",
  "front.lapThick": "{name} is {lap}. It must be less than the front is thick, {front}.",
  "front.through":
    "a {joint} shows on the face of the front, and so needs one without a lip and as wide as its box: {front} and {box}.",
  "slide.deductionMissing": "undermount slides need the undermount deduction of their data sheet.",
  "slide.noneFitsBox": "No slide on sale is as short as the box is deep, {depth}.",
  "slide.aboveBox": "slide centerline is {centerline} up the box, which is only {height} high.",
  "pull.lineUnknown":
    "pull line is measured from the cabinet's outer edge, which a face frame does not tell. Set it to none.",
  "pull.lineMany": "{count} places of pull line fall on one front, which takes {most} pulls at most.",
  "kerf.none": "kerf is 0, and no blade cuts so thin. Give what the blade cuts.",
  "runner.through": "runner groove depth is {depth}. It must be less than the side is thick, {side}.",
  "runner.thin":
    "a runner groove {depth} deep and {clearance} beside the box, less a runner play of {play}, leave nothing of the strip.",
  "box.deductionWide": "opening width is {opening}. An undermount deduction of {deduction} leaves no box.",
  "box.deep": "box depth is {depth}. The opening has room for {room}.",
  "box.heightsCount": "box heights lists {given} heights for {count} drawers. Give one for all, or one a drawer.",
  "box.heightTall": "a box height of {height} is asked for. Its space has room for {room}.",
  "box.zoneLow": ({ height }) =>
    isPositive(height)
      ? "behind front {front} there are {height}, of which {below} below and {above} above the box leave nothing."
      : "front {front} lies wholly before the carcase: there is no opening behind it for a box.",
  "box.low": "a box of {height} has no inside height: its bottom and what is below take {bottom}.",

  "measure.unreadable": ({ plain }) =>
    `{argument} is {"received"}. It takes a number${plain ? ", which is in {plain}" : ""}, or a text of a number and its unit.`,
  "measure.outOfRange": ({ least, most, plain }) =>
    `{argument} is {"received"}. It must be from ${grouped(least)} to ${grouped(most)}${plain ? " {plain}" : ""}.` +
    (plain === "Pa" ? " Another unit is written with the number, as 73 kg/m²." : ""),
  "measure.notPositive": '{argument} is {"received"}. It must be more than 0.',
  "moisture.temperature": "{argument} is {degrees} °{scale}. It must be from {least} to {most} °{scale}.",
  "moisture.free":
    '{argument} is {"received"}. Above its fiber saturation, about {most} %, wood neither shrinks nor swells: for wetter wood write {most}.',
  "species.several": '{argument} is {"received"}, and several woods are called so: {"species"}.',
  "species.panel": '{argument} is {"received"}. A panel has no such coefficient. Name a solid wood.',
  "species.unknown":
    '{argument} is {"received"}, a wood without a published coefficient here. The nearest: {"nearest"}.',
  "sag.thick": "thickness is {thickness}. It must be less than the shorter side, {short}.",
  "sag.broken": "Under this load the bottom would bend by more than its shorter side, {short}: it would break.",
  "places.none": "{argument} is blank. It needs a number for each open drawer.",
  "places.unequal":
    "Place {place} of drawer_weights and of drawer_reaches: one has a number, the other none, and a 0 counts as blank (write none for zero).",
  "units.mixed": "{own} has a unit of its own, and {none} has none. Give all {what} a unit, or none.",
  "tipping.none": "No open drawer reaches in front of the tipping line: nothing tips the cabinet.",

  "percent.doubtful": ({ received }) =>
    `{argument} is {"received"}: is that {received} % or ${hundredfold(received)} %? Write a plain number, such as 7, or a text with its sign, such as '0.5 %. (A cell formatted as a percentage holds 0.07 for 7 %.)`,
  "rates.missing":
    'rates lacks {"name"}, which this job needs, or has it as 0, which an empty cell also gives. Give it, or write none where nothing is charged.',
  "rates.minutesMissing":
    'rates has a "labor rate" and no minutes. Give "box minutes", "front minutes" or "fitting minutes", a drawer.',
  "rates.markupAndMargin": 'rates has both "markup" and "margin". Give one: on the cost, or of the price.',
  "rates.marginHigh": 'rates, margin is {"received"}. It must be less than 100 %.',
  "alternates.noNames":
    "standards needs a first row with the alternates' names, its first cell blank: one column an alternate, the first the base.",
  "alternates.few": "standards has fewer than two alternates, one column each.",
  "alternates.nameBlank": "standards, column {column} has no name in its first row.",
  "alternates.many": ({ drawers, alternates, most }) =>
    `The ${String(alternates)} alternates have ${grouped(drawers)} drawers in all. At most ${grouped(most)} are compared at once: give fewer alternates or openings a call.`,
  "alternates.unit": "standards: all alternates need one unit, for they share openings and stock.",
  "quote.belowZero": "rates: the extras take the price to {price}, below 0.",
  "stock.priceMissing":
    'stock, {stock} has no price, which a quote needs. Give it one, or the word "none" where it costs nothing (a 0 counts as blank).',
  "stock.useless": "{argument} says nothing of stock sold by the {soldBy}. Leave it blank, or change Sold by.",
  "stock.severalMeasures":
    "{name} finds both rows {first} and {second} of stock, not all of them sheets. Tell them apart by Material or Thickness.",
  "stock.thicknessUnknown": "{part} is of solid wood without a thickness: give it one, or stock, {stock}.",
  "number.negative": '{argument} is {"received"}. It must be 0 or more.',
  "sheets.noStockFor": ({ material, thickness, ...data }) =>
    `${partOf(data)} finds no stock${material ? " of {material}" : ""}${thickness ? " {thickness} thick" : ""}.`,
  "sheets.noStock": "stock is blank: there is nothing to cut from.",
  "sheets.partTooLarge": (data) =>
    `${partOf(data)}, {length} × {width}, fits no sheet of its stock${isZero(data.trim) ? "" : " once that is trimmed"}${data.grain === "any" ? "" : ", the way its grain allows"}.`,
  "sheets.groupTooLarge": 'The parts of grain group {"group"} in one piece fit no sheet of their stock.',
  "sheets.noneAvailable": (data) => `${partOf(data)} fits only stock of which none is available.`,
  "sheets.outside": (data) =>
    `${partOf(data)} reaches beyond every sheet of its stock, where it lies on sheet {sheet}.`,
  "sheets.notCuttable":
    "The parts on sheet {sheet} lie so that no cuts from edge to edge part them: they overlap, or less than a kerf lies between them.",
  "sheets.stockExhausted": "No way was found to cut all parts from the stock that is available.",
  "sheets.priceMissing":
    "stock, {stock} has no price, and others have. Give it one, or Available where it is an offcut of yours.",
  "sheets.priceNegative": "stock, {stock} has a price below 0.",
  "sheets.quantityNotWhole": (data) => `${partOf(data)} is wanted {"received"} times. It must be a whole number.`,
  "sheets.availableNotWhole": 'stock, {stock} has {"received"} available. It must be a whole number.',
  "sheets.tooFine":
    "The sizes of parts and stock are too fine to be laid out together: round them to what a saw can cut.",

  "result.tooLarge":
    "The answer has {rows} rows, about {size} MB, and the spreadsheet may lose more than {most} MB. Give fewer openings or parts a call, and let several calls stand one below the other (PARTS is shorter grouped).",
  "result.longText":
    "The answer's row {row} has a text of {length} characters, and a cell holds at most {most}. Give fewer openings or parts a call, or shorter names.",
});

const hundredfold = (typed: unknown): number => Number((Number(String(typed).replace(",", ".")) * 100).toFixed(6));

/** A count with commas between its thousands. */
const grouped = (count: unknown): string => String(count).replace(/\B(?=(\d{3})+$)/g, ",");
