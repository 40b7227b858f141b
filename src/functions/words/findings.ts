import { isSolidWood, type Finding, type Findings } from "../../core/drawer";
import { isNegative, isZero, type Fault, type Rational, type Unit } from "../../core/length";
import type { SawCut } from "../../core/sheets";
import { message } from "./messages";
import { changeWords, missWords } from "./verdict";
import { catalogOfTwo, len, worded, type CatalogOfTwo } from "./wording";

/** A finding in words: what is wrong or doubtful, and what to do about it. */
export function wordingOf(found: Finding, unit: Unit): [finding: string, remedy: string] {
  if (found.code !== "plan.fault") return wordsOf(found.code, found.data, unit);
  const { fault } = found.data;
  return [message(fault, unit), remedyOf(fault)];
}

function wordsOf<C extends keyof InWords>(code: C, data: InWords[C], unit: Unit): [finding: string, remedy: string] {
  const words: CatalogOfTwo<InWords> = FINDINGS;
  const [finding, remedy] = words[code];
  return [worded(finding, data, unit), worded(remedy, data, unit)];
}

/** What a plan's fault says is among the messages. */
type InWords = Omit<Findings, "plan.fault">;

const MATCH_HEIGHTS = "Give the openings fronts of the same heights, or front match none or opening.";

const FINDINGS = catalogOfTwo<InWords>()({
  "heading.unread": ["The column {heading} is not read.", "Nothing to do where it is your own; else correct it."],
  "standard.unused": [
    ({ names }) =>
      `The standard${names.length > 1 ? "s {names} have" : " {names} has"} no effect: no opening has {lacks}.`,
    "Leave it for another job, take it out, or choose {lacks}.",
  ],
  "zero.blank": [
    "The 0 under {Heading} is read as a blank.",
    "Write none or a zero with its unit, as 0 in, where zero is meant.",
  ],
  "unit.doubtful": [
    "An opening {size} of {received} is unlikely.",
    (_, unit) =>
      `Set the standard unit to ${unit === "in" ? "mm" : "in"}, or name the unit in the heading, if that is what was measured.`,
  ],
  "opening.outOfSquare": [
    "The {size} is measured from {least} to {most}, more apart than the opening tolerance of {tolerance}.",
    ({ size }) => `The least is planned with. ${SQUARING[size]}`,
  ],
  "reveal.inner": [
    "The {side} reveal has no effect on a side that has a neighbor.",
    "Set the front gap or the partition thickness instead.",
  ],
  "reveal.edge": [
    "A {side} reveal as wide as the cabinet is thick, {thickness}, leaves the carcase's whole edge bare.",
    "Make the reveal less, unless the edge is to show.",
  ],
  "front.short": [
    "The front stops short of the opening's {side} edge: the opening shows.",
    "Make the reveal or the gap less, or the rail, partition or carcase thicker.",
  ],
  "front.uprightJoint": [
    "The front's {joint}s hold little along its grain, which is upright.",
    "Make the front grain horizontal.",
  ],
  "front.appliedBottom": [
    "An applied bottom has nothing to hold on to at the front, which is its box's own.",
    "Take bottom fit grooved or under back.",
  ],
  "lip.meets": [
    "Lipped fronts lap the {width} between them by {a} and {b}, and leave {room} for a gap of {gap}.",
    "Make the lip or the front gap less, or what stands between them wider.",
  ],
  "overlay.stile": [
    (data) => `The fronts overlay the stile between them, {stile} wide, by {a} and {b}${meeting(data)}.`,
    "Make the frame overlay or the front gap less, or the stile wider.",
  ],
  "overlay.rail": [
    (data) => `Fronts overlay the frame by {overlay} from both sides of a {name} of {rail}${meeting(data)}.`,
    "Make the frame overlay or the front gap less, or the rail wider.",
  ],
  "overlay.past": [
    "Fronts overlay the frame by {overlay}, and stand {by} past its {part} of {width} at the {side}.",
    "Make the frame overlay less, or give the stile width and rail width of this frame.",
  ],
  "cabinet.heights": [
    "Openings {a} and {b} high cannot share one top and one bottom.",
    "Give their rail above or below, or other names under Cabinet.",
  ],
  "reveal.past": [
    "Fronts stand {by} past the carcase at the {side}.",
    "Meant where an end panel or a top is added later; else make the reveal none.",
  ],
  "fronts.remainder": [
    "Rounding the fronts down to {step} leaves {left} below the lowest.",
    "Let the lowest front take it as a fixed height, or set the front step to none.",
  ],
  "fronts.unfilled": [
    "The fixed fronts leave {left} of the face free below the lowest.",
    "Give one of them as 1 part, and it fills the face.",
  ],
  "gap.tight": [
    "A gap of {gap} between fronts is tight.",
    "Fronts swell in damp weather and slides have play: common practice is 1/8 in (3 mm).",
  ],
  "gap.tightInset": [
    "A gap of {gap} round inset fronts is tight.",
    "Fronts swell in damp weather and carcases are seldom square: common practice is about 3/32 in (2 mm).",
  ],
  "pull.one": [
    "A front {width} wide has one pull: pulled at its end, the drawer racks.",
    "Put two pulls on it, or make two pulls from more than its width.",
  ],
  "front.solidUpright": [
    (data, unit) =>
      `A front of {material}, which reads as solid wood, with upright grain, {width} wide, moves across its width with the seasons${yearWords(data, unit, ":")}.`,
    "Turn the grain horizontal, or leave the gaps that its movement needs.",
  ],
  "match.alone": [
    "No front beside this one has its height and level, or is of its stock: its grain does not run on across the cabinet.",
    MATCH_HEIGHTS,
  ],
  "match.grid": [
    "The fronts of this cabinet are no grid of two by two or more, each row of one height, level and stock: their grain does not run on both ways.",
    MATCH_HEIGHTS,
  ],
  "match.kerf": [
    "The kerf of {kerf} is wider than the front gap of {gap}: the grain jumps by {jump} from front to front.",
    "Use a thinner blade or a wider gap.",
  ],
  "box.belowSlide": [
    "The side, {height} high, is lower than the slide, {slide}.",
    "Make the front higher, the spaces smaller, or take a lower slide.",
  ],
  "slide.pastBox": [
    "The slide, its centerline {up} up the box, reaches past the box's edge.",
    "Move the slide centerline so that its screws meet the side.",
  ],
  "center.noRoom": [
    "A center-mount slide takes {height} under the box, and the space below is {below}.",
    "Leave more space below, or notch box front and back over it: the slide's data sheet decides.",
  ],
  "center.rails": [
    "Each of the {count} center-mount slides needs a rail under its drawer in front.",
    "Put rails between the drawers, and give each its opening, or take side-mount slides.",
  ],
  "runner.noRoom": [
    "The runners are {height} high, and the space below the box is {below}.",
    "Leave more space below, or take lower runners: the box slides on their tops.",
  ],
  "runner.misses": ["The runners, {width} wide, do not reach under the box.", "Make the runner width more."],
  "runner.narrow": [
    "The runners reach {reach} under sides {side} thick.",
    "Make the runner width more, so that the whole side slides on them.",
  ],
  "runner.grooveDeep": [
    "The runner's groove, {depth} deep, takes more than half of the side's {side}.",
    "Common practice is a third to half of the thickness: take thicker sides, or a groove less deep.",
  ],
  "runner.pastSide": [
    "The runner's groove runs out of the side's {edge} edge.",
    "Move the slide centerline, or make the box higher.",
  ],
  "runner.nearEdge": [
    "Only {left} of the side stands {where} the runner's groove.",
    "Leave at least 1/4 in (6 mm), or it splits off under load.",
  ],
  "runner.meetsBottom": [
    "The runner's groove, {depth} deep, meets the bottom's, {bottom} deep, in a side {side} thick.",
    "Move the slide centerline up, or take thicker sides.",
  ],
  "box.widerThanFront": [
    "The box is {box} wide, and the inset front before it {front}.",
    "Make the inset gap less, or the side clearance more.",
  ],
  "box.shallow": [
    "Only {inside} is left inside.",
    "A higher box or front, fewer drawers or a thinner or applied bottom leaves more.",
  ],
  "box.aboveFront": ["The box stands {by} above its front.", "Leave more space above, or a lower box."],
  "box.belowFront": ["The box reaches {by} below its front.", "Leave more space below."],
  "box.tightAbove": [
    "The height asked for leaves {above} above the box; the standard is {asked}.",
    "The drawer must still tilt in and out.",
  ],
  "box.wide": [
    "The box, {width} wide and {depth} deep, may rack.",
    "Use two pulls and slides at both sides that are tied together, or divide the opening.",
  ],
  "box.weakWay": [
    "The {parts} of {material} have upright grain: their weak way spans their length.",
    "Make their grain horizontal, or take plywood of many thin plies.",
  ],
  "box.solidUpright": [
    "{Parts} of {material}, which reads as solid wood, may have upright grain: they break across their length, and joints at their ends hold little.",
    "Make their grain horizontal.",
  ],
  "box.racks": [
    "The box, {width} wide, is {height} high and {depth} deep: on slides at its sides it may rack.",
    "Take undermount slides, or slides that are tied together, or a wider opening.",
  ],
  "end.meets": [
    "At the cabinet's {side} end the fronts keep {room} from it, and the end clearance is {asked}.",
    "Make that reveal or a filler {by} wider, or they meet what stands there.",
  ],
  "hinge.meets": [
    "It stands from {from} to {to} up the opening, {room} from its sides: the hinge at {hinge} wants {asked}.",
    "Make it lower or move the hinge; or pack out the sides, and plan for the opening between them.",
  ],
  "slide.staysIn": [
    "The box is {depth} deep, and comes out as far as its slide is long, {slide}: {by} stay in the case.",
    "Make the box less deep, or the opening deeper for the next slide.",
  ],
  "box.rubs": [
    "The box has {below} below it and {above} above: it will rub.",
    "Leave space for play, and for tilting the drawer in and out.",
  ],
  "bottom.noRecess": [
    "An applied bottom leaves no recess for an undermount slide.",
    "Take bottom fit grooved or under back, with the offset that the slide's data sheet asks for.",
  ],
  "undermount.unstated": [
    "Nothing is given for {names}, which undermount slides need.",
    "Do not guess: take it from the slide's data sheet, and write none where that asks for nothing.",
  ],
  "undermount.sideThick": [
    "The sides are {side} thick, and the undermount slide takes {limit} at most.",
    "Take thinner sides, or another slide: the slide's data sheet decides.",
  ],
  "undermount.space": [
    "The box has {left} {where} it, and the undermount slide asks for {asked}.",
    ({ where }) => `Make the standard space ${where} {asked} or more: the slide's data sheet decides.`,
  ],
  "undermount.recess": [
    "The bottom lies {recess} above the sides' lower edge, and the undermount slide asks for {asked}.",
    "Make the groove offset {asked}: the slide's data sheet decides.",
  ],
  "undermount.depth": [
    "The box is {depth} deep, and an undermount slide {slide} long asks for {asked}.",
    "Set the box depth to slide, and give the undermount depth difference as the slide's data sheet has it.",
  ],
  "undermount.notchWide": [
    "Notches {width} wide from both sides leave nothing of a back {length} long.",
    "Read the undermount notch width in the slide's data sheet again.",
  ],
  "undermount.notchHeight": [
    ({ short }) =>
      `The back's notches, {height} high, ${short ? "end {by} below the bottom, in the slide's way" : "cut {by} into the bottom's groove"}.`,
    "Make the undermount notch height the groove offset, if the slide's data sheet agrees.",
  ],
  "undermount.hookOff": [
    "The hook holes, {diameter} wide, {fromEnd} from the back's ends and {up} up, do not lie within the back, {height} high.",
    "Read undermount hook hole, hook inset and hook height in the slide's data sheet again.",
  ],
  "undermount.hookInBottom": [
    "The hook holes, {diameter} wide and {height} above the underside of the bottom, meet a bottom {bottom} thick under the back.",
    "Drill them once the box is together, or take a thinner bottom: the slide's data sheet decides.",
  ],
  "undermount.backInset": [
    "The back stands {inset} short of the sides' ends, where the slide's hooks reach for it.",
    "Take a rabbet, or another joint that is flush behind: the slide's data sheet decides.",
  ],
  "undermount.hookThrough": [
    "The hook holes, {depth} deep, come through a back {end} thick.",
    "Take a thicker back, or make the undermount hook depth none where they may: the slide's data sheet decides.",
  ],
  "bottom.rubs": [
    "An applied bottom has only {below} below it, and sags under load.",
    "Leave at least 1/4 in (6 mm) below.",
  ],
  "bottom.sags": [
    (_, unit) =>
      `The bottom, {thickness} thick, sags by an estimated {sag} ${unit} under {load} ${weight(unit)}, more than 1/{limit} of its span, {span}.`,
    ({ thicker, divided }, unit) =>
      `Take ${thicker ? "one {thicker} thick" : "a much thicker one"}, or put a muntin under its middle${divided === undefined ? "" : `, which leaves {divided} ${unit}`}. Wood creeps with the years, to twice as much.`,
  ],
  "front.moves": [
    (_, unit) =>
      `The front of {wood}, {across} across its grain, swells by an estimated {by} ${unit} as the air goes from {middle} to {high} % humidity, and has {room} of room.`,
    "Make the {name} more than {gap}, turn the grain, or make it a panel in a frame. Boards of one species differ.",
  ],
  "front.movesUnknown": [
    "The inset front is of {material}, which reads as solid wood, without a published coefficient: its movement cannot be told.",
    "Give its species, or name the sheet that it is cut from.",
  ],
  "cabinet.tipsWithOne": [
    "With {drawer} out and full the cabinet tips: what holds it is {ratio} of what tips it (an estimate).",
    (_, unit) =>
      `Anchor it to the wall at its top, for a pull of {pull} ${weight(unit)} and what a child who climbs on it adds. Local codes decide.`,
  ],
  "cabinet.tipsWithAll": [
    "With all drawers out and full the cabinet tips: what holds it is {ratio} of what tips it (an estimate).",
    (_, unit) =>
      `Open one drawer at a time, and anchor it to the wall at its top, for a pull of {pull} ${weight(unit)} and what a child who climbs on it adds. Local codes decide.`,
  ],
  "bottom.breaks": [
    (_, unit) => `Under {load} ${weight(unit)} a bottom {thickness} thick would break over {span}.`,
    ({ thicker }) => `Take ${thicker ? "one {thicker} thick" : "a much thicker one"}, with a muntin where it is wide.`,
  ],
  "files.narrow": [
    "{Kind} folders want {folder} between their rails, and the box is {width} wide and {depth} deep inside.",
    "Take a wider or deeper opening, or thinner sides: measure your folders first.",
  ],
  "files.low": [
    "Folders hang {hang} below their rails, and the box is {inside} high inside.",
    "Make the front higher, or take a bottom that leaves more inside.",
  ],
  "files.tabs": [
    "The tabs of hanging folders stand up to {stand} above the bottom, and there is {room} up to what is above the box.",
    "Leave more space above, or hang the rails lower in a higher box.",
  ],
  "files.load": [
    "Hanging files weigh more than the even load that is reckoned with.",
    "Set the load to files, or weigh them; take slides of that rating that open in full, and tie the cabinet to the wall.",
  ],
  "divider.narrow": [
    "A cell between dividers is {cell} wide.",
    "A hand wants 2 in (50 mm) or more: take fewer dividers, or another spacing.",
  ],
  "divider.tall": [
    "The dividers are {height} high, and the box is {inside} high inside.",
    "Make the divider height less, or leave it to the inside.",
  ],
  "divider.deep": [
    "The dividers' dadoes, {depth} deep, take more than half of the {part}'s {thickness}.",
    "Common practice is a third to half of the thickness: take dadoes less deep, or loose dividers.",
  ],
  "divider.runsOut": [
    "The dividers' dadoes run out at the front's upper edge.",
    "Stop them {by} below it, or take loose dividers.",
  ],
  "divider.meetsRunner": [
    "The dividers' dadoes, {depth} deep, meet the runner's groove, {groove} deep, in a side {side} thick.",
    "Take thicker sides, dadoes less deep, or dividers that run front to back.",
  ],
  "cutout.leaves": [
    "A cutout {width} wide and {depth} deep leaves {left} inside at its left, {right} at its right and {front} before it.",
    ({ narrow }) =>
      `${narrow ? "A hand wants 2 in (50 mm) or more: make it smaller, or move it. " : ""}The other tables have the box whole: cut its back, bottom and dividers by hand, and wall the cutout with stock of sides and ends.`,
  ],
  "cutout.meetsSlide": ["The cutout is where the center-mount slide runs.", "Take slides at both sides."],
  "bottom.weakWay": [
    "The bottom of {material} has its grain along its longer span, {long}: its weak way carries over the shorter, {short}.",
    "Turn the bottom grain, or take a thicker bottom, or plywood of many thin plies.",
  ],
  "bottom.solidAlong": [
    "The bottom of {material}, which reads as solid wood, has its grain front to back: it swells against the sides.",
    "Make the bottom grain side to side.",
  ],
  "bottom.solidGrain": [
    (data, unit) =>
      `The bottom is of {material}, which reads as solid wood.${yearWords(data, unit, " It moves")}${data.moves === undefined ? "" : "."}`,
    "Run its grain from side to side, fix it at the front alone, and let it move under the back: HARDWARE and SETUPS give its slots.",
  ],
  "bottom.drawsOut": [
    (_, unit) =>
      `The bottom of {material} shrinks by an estimated {by} ${unit} as the air goes from {middle} to {low} % humidity, and draws out from the screws in the middle of a back {end} thick.`,
    "Take a thicker back, quartersawn boards or a sheet, or make it when the air is dry.",
  ],
  "bottom.slotsPast": [
    "The slots for the bottom's screws, {length} long, reach past a back {end} thick, into the drawer.",
    "Take a thicker back, quartersawn boards or a sheet.",
  ],
  "bottom.solidTight": [
    (data, unit) =>
      `${heldAllRound(data, unit)} It swells by an estimated {by} ${unit} as the air goes from {middle} to {high} % humidity, and has a play of {play} in its grooves.`,
    ({ groove }) =>
      `Make the bottom play at least {needs}${groove ? ", and the groove depth more than {groove}" : ""}, glue it nowhere, with its grain from side to side; or take bottom fit under back, or a sheet.`,
  ],
  "bottom.solidDrops": [
    (_, unit) =>
      `The bottom is of {material}, which reads as solid wood. It shrinks by an estimated {by} ${unit} as the air goes from {middle} to {low} % humidity; pushed into one groove, the other holds it by {hold}.`,
    "Make the groove depth more, or take bottom fit under back with the grain from side to side, or a sheet.",
  ],
  "bottom.solidFloats": [
    (data, unit) =>
      `The bottom is of {material}, which reads as solid wood, and floats in its grooves with a play of {play}.${yearWords(data, unit, " It moves")}.`,
    "Run its grain from side to side, and glue it nowhere.",
  ],
  "bottom.solidHeld": [heldAllRound, "Take bottom fit under back with the grain from side to side, or a sheet."],
  "groove.nearEdge": [
    "Only {offset} of wood stands below the groove.",
    "Leave at least 1/4 in (6 mm), or it splits off under load.",
  ],
  "groove.undermount": [
    "A groove offset of {offset} is little for an undermount slide.",
    "Common practice is about 1/2 in (13 mm): the slide's data sheet decides.",
  ],
  "groove.deep": [
    "The groove, {depth} deep, takes more than half of {part} {thickness} thick.",
    "Common practice is a third to half of the thickness.",
  ],
  "joint.deep": ["A {joint} {depth} deep leaves little of stock {stock} thick.", "Cut it no deeper than two thirds."],
  "joint.cutter": [
    "Pins or fingers {pin} wide are narrower than the joint cutter, {cutter}.",
    "Make the joint pitch or the pin width more, or take a narrower cutter.",
  ],
  "joint.dadoNearEnd": [
    "A dado {inset} from the end of the side leaves short grain that breaks out.",
    "Common practice is a dado inset of 1/4 in (6 mm) or more; at the very end it is a rabbet.",
  ],
  "box.rearClearance": ["The box leaves {behind} behind it; the rear clearance is {rear}.", "Make the box less deep."],
  "slide.overloaded": [
    (_, unit) =>
      `The slides carry {rating} ${weight(unit)}; an estimated {load} ${weight(unit)} and the drawer's own {box} make {total}.`,
    (_, unit) =>
      `Take slides rated for {needs} ${weight(unit)} or more, or tell what it carries under Load. The maker's data and local codes decide.`,
  ],
  "slide.nearRating": [
    (_, unit) =>
      `The slides carry {rating} ${weight(unit)}, of which {total} are used, the drawer's own {box} among them.`,
    "Take the next rating, or weigh what goes in: a tenth is soon used up. The maker's data and local codes decide.",
  ],
  "slide.beyond": [
    (_, unit) =>
      `An estimated {load} ${weight(unit)} and the drawer's own {box} are more than slides are commonly sold for, {most} ${weight(unit)}.`,
    "Divide the drawer, or find such slides: the maker's data and local codes decide.",
  ],
  "blocking.unknown": [
    "Behind a face frame, these slides need blocking out to the opening's side.",
    "Give the Case width.",
  ],
  "blocking.narrow": [
    "The case is narrower than the frame's opening, by {by} a side.",
    "Measure the Case width behind the frame again.",
  ],
  "box.noSideSpace": [
    "The side space is {space}: the box is as wide as its opening, or wider.",
    "See the slide's own data sheet for its side clearance or undermount deduction.",
  ],
  "fit.unlikely": [
    (data, unit) => `The side space is likely up to ${missWords(data, unit)} of what the slide allows.`,
    (data, unit) =>
      `${changeWords(data, unit)} A larger or smaller box is set by the ${data.slide === "undermount" ? "undermount deduction, as the slide's data sheet allows" : "side clearance, with slide tolerances that end where the slide's do"}.`,
  ],
  "screw.through": [
    "A {name} of {size} comes out of its stock, {most} in all.",
    "Take a shorter one, or set its length to auto.",
  ],
  "screw.pocket": [
    "A pocket screw of {size} is too long for stock {stock} thick: its point may come out.",
    ({ most }) =>
      isZero(most)
        ? "Take thicker stock, or another corner joint or fastening."
        : "Take one of {most}, or set the corner screw length to auto.",
  ],
  "screw.short": [
    "A {name} of {size} holds nothing: it goes through {through} first.",
    "Take a longer one, or set its length to auto.",
  ],
  "pull.meetsCabinet": [
    "Screws of a pull meet the cabinet's end, top or rail behind the front: the drawer does not shut.",
    "Move the pull so that its holes lie before the box: pull line, pull height or pull spacing.",
  ],
  "pull.meetsSide": [
    "A hole of a pull lies before the end of the box's side, where no screw goes in from inside.",
    "Move the pull line, or take pulls of another spacing.",
  ],
  "pull.pastBox": [
    "Holes of a pull lie {where} the box: their screws go through the front alone.",
    "Put that pull on before the front and see that its screw heads clear slide and cabinet, or move it.",
  ],
  "pull.holesOff": [
    "Holes {spacing} apart miss a shop-made pull {length} long.",
    "Make the pull length more, or the pull spacing less.",
  ],
  "pull.holesNearEnd": [
    "The holes leave {left} to the ends of a shop-made pull {length} long, which may split there.",
    "Make the pull length more, or the pull spacing less: at least 1/2 in (12 mm) at each end.",
  ],
  "pull.platePast": [
    "A shop-made pull {length} long reaches past the side of a front {width} wide.",
    "Make the pull length less, or take fewer pulls.",
  ],
  "screw.none": [
    "None of the screw lengths suits as {name} for this stock.",
    "Add a screw length, or fasten it in another way.",
  ],
  "pull.noLine": [
    "None of the places of pull line falls on this front: it gets no pull.",
    "Add a place to pull line, or set it to none.",
  ],
  "pull.pastSide": [
    "The holes of a pull lie past the side of a front {width} wide.",
    "Take fewer or shorter pulls, or move the pull line.",
  ],
  "pull.pastEdge": [
    "A pull {down} down from the upper edge misses a front {height} high.",
    "Set the pull height to center, or less.",
  ],
  "stock.none": [
    ({ thickness }) => `{parts}: there is no stock of {material}${thickness ? " {thickness} thick" : ""}.`,
    ({ material }) =>
      `Add a row of stock of that material, as thick to within 1/32 in (0.8 mm)${isSolidWood(material) ? ", or solid stock up to 3/8 in (10 mm) thicker" : ""}.`,
  ],
  "stock.roughUnknown": [
    "{material} is sold by the board foot, and its row has no thickness: it is tallied as thick as its finished parts.",
    "Give its rough thickness, as yards tally it: 1 in for 4/4, which yields up to 13/16 in.",
  ],
  "stock.roughThin": [
    "Parts {thickness} thick from {material} {rough} thick: that leaves {left} to plane.",
    "Rough stock loses about 3/16 in until it is flat: take the next quarter, unless it is sold planed.",
  ],
  "stock.short": [
    (data) => `${stockOf(data)}: no way was found to cut all parts from the sheets that are available.`,
    "Raise Available, or leave it blank where more can be bought.",
  ],
  "stock.uncut": [
    (data, unit) => `${stockOf(data)} cannot be laid out. ${message(data.fault, unit)}`,
    ({ fault }) => remedyOf(fault),
  ],
  "stock.nominal": [
    "The {part} is given as {thickness}; sanded plywood sold by that name may measure {least} to {most} in (PS 1); hardwood plywood for cabinets (HP-1) is often thinner.",
    "Measure the sheet, and give what it measures.",
  ],
});

/** Sheets of one kind. */
const stockOf = ({ material, thickness }: { material: string; thickness: Rational | undefined }): string =>
  [material && "{material}", thickness && "{thickness} thick"].filter(Boolean).join(" ") || "The stock";

/** What to do about an opening that is not everywhere of one size. */
const SQUARING = {
  width: "True the opening up, or shim the slides where it is wider.",
  height: "True the opening up where the gaps of its fronts would show it.",
  depth: "Slides have room everywhere, unless one number was misread.",
} as const;

/** What two overlays leave of what they meet on. */
const meeting = ({ room }: { room: Rational }) =>
  isNegative(room) ? ", and collide" : isZero(room) ? ", and meet" : ": that leaves {room}, and the front gap is {gap}";

/** By how much a solid piece moves, where its wood is known. */
const yearWords = ({ moves }: { moves?: number }, unit: Unit, begin: string) =>
  moves === undefined ? "" : (`${begin} by an estimated {moves} ${unit} between {low} and {high} % humidity` as const);

function heldAllRound(data: { moves?: number }, unit: Unit) {
  return `The bottom is of {material}, which reads as solid wood, and is held all round ({fit}): it cannot move with the seasons${yearWords(data, unit, ",")}.` as const;
}

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
  [/^divider\./, "Ask for fewer or thinner dividers, or for dadoes less deep."],
  [/^runner\./, "Give less play, or a groove less deep, for a side so thick."],
  [/^box\./, "Measure again, or take thinner stock or slides that need less room."],
  [/^groove\.playEatsHold/, "Allow less play, or cut the groove deeper."],
  [/^joint\.|^groove\./, "Make the cut less deep than its stock, and give it where the joint needs it."],
  [/^cabinet\./, "Give them one value, or different names under Cabinet."],
  [/^argument\.date|^length\.tooLarge/, "Format the cell as text before typing a fraction."],
  [/^sheets\.(part|group)TooLarge/, "Take a larger sheet, or let the grain run the other way."],
  [/^sheets\.tooFine/, "Give openings, kerf, trim and sheets in one unit, as a ruler reads."],
  [/^sheets\.noneAvailable/, "Raise Available, or leave it blank where more can be bought."],
  [/^(sheets|stock)\.priceMissing/, "Give the row its price; a quote cannot be given before."],
  [/^stock\.severalMeasures/, "Give one of the rows another Material or Thickness."],
  [/^rates\.|^quote\./, "Correct the table rates; a quote cannot be given before."],
  [/^table\.|^openings\./, "Correct the table; nothing can be planned before."],
];

/** What to mind where a piece is small, or hardly anything comes off. */
export const cutCautions = ({ caution, shaves }: Pick<SawCut, "caution" | "shaves">, unit: Unit): string[] => [
  ...(caution ? [CUT_CAUTIONS[caution]] : []),
  ...(shaves
    ? [`Caution: only ${len(shaves, unit)} comes off, less than the blade is wide: feed slowly, for it bends away.`]
    : []),
];

const CUT_CAUTIONS = {
  short:
    "Caution: a short piece. Clamp it to a sled against its stop, or cut it from a longer one, never by hand or along the fence, as the saw's manual says.",
  narrow:
    "Caution: a narrow rip. Use push blocks and a splitter or riving knife, or rip it from a wider piece, as the saw's manual says.",
};
