import { usualWritten, type StandardName } from "../core/drawer";
import type { Unit } from "../core/length";

/** What a standard is for, as a person reads it beside the cell where they type it. */
export interface StandardHelp {
  group: StandardGroup;
  meaning: string;
  /** The words that it takes, where it takes words alone. */
  choices?: readonly string[];
  /** What holds where it is left empty and follows another. */
  otherwise?: string | Readonly<Record<Unit, string>>;
  /** What there is to say besides, on the guide's page, where there is room. */
  detail?: string;
}

export const STANDARD_GROUPS = [
  "Cabinet",
  "Slides",
  "Undermount slides",
  "Wood runners",
  "Box",
  "Heights",
  "Fronts",
  "Pulls",
  "Materials",
  "Screws, nails and glue",
  "Tolerances",
  "Loads and wood",
  "Saw and sheets",
] as const;
type StandardGroup = (typeof STANDARD_GROUPS)[number];

const help = (
  group: StandardGroup,
  meaning: string,
  more: Pick<StandardHelp, "choices" | "otherwise" | "detail"> = {},
): StandardHelp => ({ group, meaning, ...more });

/** What only the data sheet of an undermount slide can say. None: it asks for nothing. */
const sheet = (meaning: string, detail?: string, otherwise = "not known"): StandardHelp =>
  help("Undermount slides", meaning, { otherwise, ...(detail && { detail }) });

/** Of one edge of the fronts. */
const ownBand = (edge: string): StandardHelp =>
  help("Fronts", `Thickness, on the ${edge} edge.`, {
    otherwise: "as the edge band",
    detail: "none: that edge is bare, and is not milled for a band.",
  });

/** Every standard's meaning; the compiler finds the one that has none. */
export const STANDARDS_HELP: Record<StandardName, StandardHelp> = {
  construction: help("Cabinet", "With a face frame the sizes are those of the frame's openings.", {
    choices: ["frameless", "face frame"],
  }),
  "cabinet thickness": help("Cabinet", "The carcase's ends, top and bottom."),
  "partition thickness": help("Cabinet", "Between two openings of a cabinet.", {
    otherwise: "as the cabinet",
    detail: "To the right of its opening.",
  }),
  "frame overlay": help("Cabinet", "How far fronts lap a face frame, on all four sides.", {
    detail: "From the edge of the frame's opening.",
  }),
  "stile width": help("Cabinet", "The face frame between two openings.", {
    otherwise: { in: "1 1/2", mm: "38" },
    detail:
      "To the right of the opening, and at both ends of the cabinet. Between openings a partition thickness that is given counts in its place.",
  }),
  "rail width": help("Cabinet", "The face frame above, below and between stacked openings.", {
    detail: "At the top and bottom of the cabinet.",
  }),
  "floor offset": help("Cabinet", "Behind a face frame: how far the case's floor lies below the rail's top edge.", {
    otherwise: "none",
    detail: "Heights are measured from that edge.",
  }),
  "rail above": help("Cabinet", "Height of a rail shared with another opening above.", {
    detail: "None: the carcase's own top.",
  }),
  "rail below": help("Cabinet", "The same below.", { detail: "None: the carcase's own bottom." }),

  slide: help("Slides", "Center-mount slides lie under the bottom. The maker's data sheet comes first.", {
    choices: ["side-mount", "center-mount", "wood runner", "undermount"],
  }),
  "side clearance": help("Slides", "Room for the slide on each side of the box.", {
    otherwise: { in: "by the slide: 1/2, 1/8, 1/16", mm: "by the slide: 12.7, 3, 1.5" },
    detail:
      "Of side-mount, of center-mount slides, of wood runners; beside integral and lipped fronts on wood runners the inset gap.",
  }),
  "slide lengths": help("Slides", "The lengths that you buy, separated by semicolons."),
  "rear clearance": help("Slides", "Free behind the slide."),
  "slide centerline": help("Slides", "center of the box, bottom (lower edges flush), or a length up the box's side."),
  "slide height": help("Slides", "Of the part on the box, for spacers.", {
    detail: "The height of the slide's profile.",
  }),
  "center slide height": help("Slides", "Of a center-mount slide, which lies under the box.", {
    detail: "See its own data sheet.",
  }),
  "slide rating": help("Slides", "What a pair carries, from its data sheet, in lb or kg.", { otherwise: "none" }),

  "undermount deduction": help(
    "Undermount slides",
    "Opening width less inside width of the box. This and the next come from the slide's data sheet, which decides.",
    { otherwise: "none", detail: "Box width = opening − deduction + 2 × side thickness." },
  ),
  "undermount thickest side": sheet("The thickest sides that it takes."),
  "undermount space below": sheet("The least space that it asks for below the box."),
  "undermount space above": sheet("The least space that it asks for above the box, to lift it off."),
  "undermount bottom recess": sheet(
    "From the sides' lower edge up to the bottom, which the slide lies under.",
    "Held against the groove offset, within the cut tolerance.",
  ),
  "undermount depth difference": sheet(
    "By how much the box is shorter than the slide; none: equally long.",
    "Where it is not given, common practice is planned with: equally long.",
    "0",
  ),
  "undermount notch width": sheet(
    "Of the notches in a back that hangs below its bottom: from the side's inner face.",
    "Whatever the joint.",
  ),
  "undermount notch height": sheet("Of the same, from the back's lower edge."),
  "undermount hook hole": sheet("Diameter of the holes in the back that its hooks go into; none: it has no hooks."),
  "undermount hook inset": sheet("From the side's inner face to the hole's center."),
  "undermount hook height": sheet("From the underside of the bottom up to the hole's center."),
  "undermount hook depth": sheet("How deep the holes are; none: through the back."),

  load: help(
    "Loads and wood",
    "What each drawer carries, or a list from the top: a weight, even, or files. An estimate.",
    {
      detail:
        "In lb or kg. even: the load rate over the inside. files: for every row of files, 12 in (305 mm) of width, 2 lb an inch or 0.36 kg a centimeter of inside depth.",
    },
  ),
  "load rate": help("Loads and wood", "Over the inside of a drawer, in lb/ft² or kg/m²."),
  density: help("Loads and wood", "Of the drawer's stock, in lb/ft³ or kg/m³: one for all, or Plywood 38; Maple 44."),
  stiffness: help("Loads and wood", "Of bottoms, in psi or MPa, or a panel's name. auto: by the bottom's material.", {
    detail: "auto: the lowest published of the bottom's material.",
  }),
  "sag limit": help("Loads and wood", "How far a bottom may sag, as a share of its shorter span."),
  species: help("Loads and wood", "Of solid fronts and bottoms.", { otherwise: "as the material names it" }),
  "humidity low": help("Loads and wood", "Of the air over a year, in %."),
  "humidity high": help("Loads and wood", "The same at the damp end."),
  temperature: help("Loads and wood", "Of the air; a plain number is in °F with inches, in °C with millimeters."),
  "cabinet weight": help(
    "Loads and wood",
    "Without its drawers, in lb or kg: then CHECKS tells whether it tips. Anchor tall cabinets in any case.",
    { otherwise: "not reckoned" },
  ),
  "balance depth": help(
    "Loads and wood",
    "From the tipping line (its front edge, front feet or toe kick) back to its center of weight. center: half its depth, less the toe recess.",
  ),
  "toe recess": help(
    "Loads and wood",
    "How far toe kick or front feet stand behind the cabinet's front, which is where it tips. auto: 3 in or 75 mm where there is a toe kick.",
  ),

  runner: help("Wood runners", "Strips under the box, or strips that run in grooves of its sides.", {
    choices: ["under", "side groove"],
  }),
  "runner thickness": help("Wood runners", "Of the strip.", {
    otherwise: "as the sides",
    detail: "The height of the strips, and the thickness of their stock.",
  }),
  "runner width": help("Wood runners", "Of the strip.", {
    detail: "From the case inward, under the box; strips in grooves are as wide as groove and side space ask for.",
  }),
  "runner material": help("Wood runners", "What the strips are cut from.", {
    otherwise: "as the sides",
    detail: "Hardwood wears best.",
  }),
  "runner groove depth": help("Wood runners", "Of the groove in the box's side.", { otherwise: "half of the side" }),
  "runner play": help("Wood runners", "Of the strip in its groove.", {
    detail: "By how much the groove is higher than its strip, and deeper than the strip reaches.",
  }),

  "box depth": help("Box", "slide: as long as the slide; or a length of its own."),
  "side thickness": help("Box", "Measured, not nominal."),
  "end thickness": help("Box", "Of box front and back.", { otherwise: "as the sides" }),
  "corner joint": help("Box", "Between sides and ends.", {
    choices: ["butt", "rabbet", "dado", "dovetail", "half-blind dovetail", "box joint"],
  }),
  "joint depth": help("Box", "Of a rabbet or dado in the side, or of half-blind sockets in the end.", {
    otherwise: "none",
  }),
  "joint pitch": help("Box", "From pin to pin: SETUPS then lays out dovetails and box joints.", {
    otherwise: "none",
    detail:
      "The nearest that comes out even over the height: half pins at both edges, or an odd number of fingers, two to a pitch. Marks are measured from the upper edge.",
  }),
  "pin width": help(
    "Box",
    "Of dovetails laid out by pitch, where their pins are narrowest. auto: a third of the pitch.",
  ),
  "joint cutter": help(
    "Box",
    "The narrowest that cuts between tails or fingers; CHECKS finds pins that are narrower.",
    {
      otherwise: "none",
    },
  ),
  "dado inset": help("Box", "How far a dado stands in from both ends of the side."),
  "bottom thickness": help("Box", "Measured, not nominal."),
  "bottom fit": help("Box", "Grooved all round, slid in under the back, or applied from below.", {
    choices: ["grooved", "under back", "applied"],
  }),
  "bottom overhang": help("Box", "An applied bottom is cut larger by it on every edge, then trimmed flush."),
  "bottom grain": help("Box", "Which way it runs; any: as the sheets are best used.", {
    choices: ["any", "side to side", "front to back"],
  }),
  "box grain": help("Box", "Of sides, box front and box back: which way it runs.", {
    choices: ["horizontal", "vertical", "any"],
    detail: "vertical suits tall narrow parts of plywood; any: as the sheets are best used.",
  }),
  "box end grain": help("Box", "The same of box front and box back alone.", {
    choices: ["horizontal", "vertical", "any"],
    otherwise: "as the box grain",
  }),
  dividers: help("Box", "What divides each drawer, or a list from the top, as none; 3; 4 in.", {
    detail:
      "A whole number: so many, at equal distances. A length, its unit with it where it is whole: the clear room between two, as many as go in; what is left stands behind the last, at the right or at the back.",
  }),
  "divider run": help("Box", "Which way dividers run.", { choices: ["front to back", "side to side"] }),
  "divider fit": help("Box", "In dadoes of what they meet, or loose.", { choices: ["dado", "loose"] }),
  "divider dado depth": help("Box", "How deep those dadoes are, at both ends."),
  "divider thickness": help("Box", "Measured, not nominal; as wide as the dadoes."),
  "divider height": help("Box", "Up from the bottom; inside: as high as the box is inside."),
  "divider play": help("Box", "What dividers are made shorter by, in all."),
  "divider material": help("Box", "What they are cut from.", { otherwise: "as the sides" }),
  "cutout width": help(
    "Box",
    "Cut out of each drawer round plumbing, from behind, or a list from the top, as 10; none.",
    {
      detail:
        "In the clear. CHECKS and WORKING tell what is left inside at both sides and before it, once it is walled round. The other tables have the box whole: back, bottom and dividers are cut out by hand.",
    },
  ),
  "cutout depth": help("Box", "How far it reaches in from the box's back.", {
    detail: "Measure trap, valves and lines, and leave room for a hand.",
  }),
  "cutout left": help("Box", "Where it begins, from the box's left; center: in the middle."),
  "hanging files": help("Box", "What hangs in each drawer, or a list from the top, as none; none; letter.", {
    choices: ["none", "letter", "legal"],
    detail:
      "HARDWARE then gives their rails, 12 1/4 in (311 mm) apart for letter folders and 15 1/4 in (387 mm) for legal, as is common practice: measure your own folders first. They run the way in which the most files go in.",
  }),
  "groove depth": help("Box", "For the bottom, in sides and ends."),
  "groove offset": help("Box", "Lower edge of the side to lower edge of the groove."),
  "bottom play": help("Box", "Of the bottom in its grooves, in all."),

  "space below": help("Heights", "Under each box, within its part of the opening."),
  "space above": help("Heights", "Over each box, to tilt it in and out."),
  "height step": help("Heights", "Box heights are rounded down to it."),
  "match heights": help("Heights", "Boxes behind equal fronts get the least of their heights, within this circle.", {
    choices: ["opening", "none", "cabinet", "job"],
    detail:
      "none: each box as high as its own space allows; opening, cabinet, job: the circle in which equal fronts are compared.",
  }),

  "front style": help(
    "Fronts",
    "Before the carcase, or within the opening. Integral and lipped fronts are their boxes' own.",
    {
      choices: ["overlay", "inset", "integral", "lipped"],
      detail:
        "integral: inset, the sides joined to it; lipped: a rabbet round it lets it in, and its lip laps the opening.",
    },
  ),
  "front thickness": help("Fronts", "Inset fronts set the slides back by it."),
  "false fronts": help("Fronts", "So many fronts from the top, or all, have no box behind them, as before a sink.", {
    detail:
      "none, a count, or all. They are sized, matched and banded like the others, have no pulls, and are screwed to cleats in the case. They count among the drawers wherever these are listed one by one.",
  }),
  "front gap": help("Fronts", "Between fronts."),
  "inset gap": help("Fronts", "Round what of a front stands in the opening.", {
    detail: "On all four sides of the face.",
  }),
  "front joint": help("Fronts", "Between the sides and an integral or lipped front.", {
    choices: ["half-blind dovetail", "dovetail", "box joint", "rabbet"],
    detail: "dovetail and box joint come through to the face: the front must be as wide as its box, and have no lip.",
  }),
  "front lap": help("Fronts", "What of an integral front stands before half-blind sockets or a rabbet."),
  lip: help("Fronts", "Of lipped fronts: the width of the rabbet round them.", {
    detail: "That is how far they reach past what goes into the opening; they lap it by the lip less the inset gap.",
  }),
  "lip thickness": help("Fronts", "Of the lip, behind which sockets and rabbets end."),
  "front step": help("Fronts", "Heights of fronts that share are rounded down to it."),
  "top reveal": help("Fronts", "How far fronts stay short of the carcase's upper edge.", {
    detail: "Negative: past it.",
  }),
  "bottom reveal": help("Fronts", "The same below; negative where they hang over it."),
  "end reveal": help("Fronts", "The same at both ends of a cabinet.", {
    detail: "Negative, to cover an end panel that is added later.",
  }),
  "end clearance": help(
    "Fronts",
    "What fronts must keep from the cabinet's ends, for a handle, a door or a wall there.",
    {
      detail:
        "CHECKS then finds fronts that keep less; none: nothing is in the way. In an inside corner it is what the other run's fronts and pulls stand out before its carcase, less the filler between the two.",
    },
  ),
  "door hinges": help("Fronts", "Of a door before the drawers: how high its hinges stand, or none.", {
    detail:
      "As 3; 21, from the opening's lower edge up to their centers. CHECKS then finds drawers so high that they do not pass a hinge on the open door's stile.",
  }),
  "hinge room": help("Fronts", "How far the open door, with its hinges, stands into the opening.", {
    detail: "Within 1 in or 25 mm of a hinge's center. Measure yours, or see the maker's data sheet.",
  }),
  "left reveal": help("Fronts", "At the left end alone.", { otherwise: "as the end reveal" }),
  "right reveal": help("Fronts", "At the right end alone.", { otherwise: "as the end reveal" }),
  "front grain": help("Fronts", "Which way it runs.", { choices: ["vertical", "horizontal"] }),
  "front match": help(
    "Fronts",
    "Fronts that are cut in order from one strip, so that the grain runs on: opening, those of an opening from the top; cabinet, those beside each other in a cabinet that have one height and level. Or from one panel, both ways: panel, all of a cabinet, at least two by two in one grid.",
    {
      choices: ["none", "opening", "cabinet", "panel"],
      detail: "What no sheet is large enough for is refused; CHECKS names fronts that match nothing beside them.",
    },
  ),
  "edge band": help("Fronts", "Thickness, on all four edges."),
  "top edge band": ownBand("upper"),
  "bottom edge band": ownBand("lower"),
  "left edge band": ownBand("left"),
  "right edge band": ownBand("right"),
  "box edge band": help("Box", "Thickness, on the upper edges of sides, box front, box back and dividers."),
  "edge band allowance": help("Fronts", "Bought for each banded edge besides its length, to be trimmed."),
  "pre-mill": help("Fronts", "What the bander takes off each edge first."),

  "pulls per front": help("Pulls", "A number, or auto: two on wide fronts.", { detail: "0, 1 or 2." }),
  "two pulls from": help("Pulls", "A front so wide gets two."),
  "pull spacing": help("Pulls", "Between the holes of a pull."),
  "pull height": help("Pulls", "center, or a length down from the front's upper edge."),
  "pull line": help("Pulls", "Places across the cabinet that pulls line up with, or none.", {
    detail: "As 12; 38, from the cabinet's left outer edge: each front takes those that fall on it, two at most.",
  }),
  "pull kind": help("Pulls", "Shop-made ones enter the cut list.", {
    choices: ["bought", "shop-made"],
    detail: "A plate and a spacer strip each.",
  }),
  "pull length": help("Pulls", "Of a shop-made pull."),
  "pull width": help("Pulls", "Of a shop-made pull's plate."),
  "pull standoff": help("Pulls", "Of a shop-made pull from the front."),

  "side material": help("Materials", "Of sides and ends, as it is called in the stock."),
  "bottom material": help("Materials", "Of bottoms."),
  "front material": help("Materials", "Of fronts."),

  "slide pack": help("Slides", "How many pairs are sold together.", {
    otherwise: "none",
    detail: "HARDWARE then tells the packs of each length, and what is left over; QUOTE charges whole packs.",
  }),
  "fastener pack": help("Screws, nails and glue", "How many screws or nails are sold together.", {
    otherwise: "none",
    detail: "HARDWARE then tells the packs of each kind and length, and what is left over; QUOTE charges whole packs.",
  }),
  "screw lengths": help("Screws, nails and glue", "The lengths that you keep, separated by semicolons.", {
    detail: "Of screws and nails.",
  }),
  "slide screws": help("Screws, nails and glue", "In each half of a slide."),
  "slide screw length": help("Screws, nails and glue", "A length, or auto.", {
    detail: "auto: the longest up to 5/8 in (16 mm) that its stock takes.",
  }),
  "corner fastening": help("Screws, nails and glue", "What holds the corners besides glue.", {
    choices: ["auto", "pocket screws", "screws", "nails", "none"],
    detail:
      "auto: pocket screws in butt joints, nails in rabbets and dadoes, glue alone in other joints. screws go through the side.",
  }),
  "corner screws": help("Screws, nails and glue", "In each corner, or auto.", {
    detail: "Screws or nails; auto: one to every 4 in (100 mm) of height, at least two.",
  }),
  "corner screw length": help("Screws, nails and glue", "A length, or auto.", {
    detail: "auto: by the stock's thickness.",
  }),
  "nail spacing": help("Screws, nails and glue", "Along an applied bottom.", { detail: "Of the nails all round it." }),
  "bottom screws": help(
    "Screws, nails and glue",
    "Under the back, or auto; in slots where the bottom is of solid wood.",
    { detail: "Up into the back; auto: one to every 8 in (200 mm), at least two." },
  ),
  "bottom screw length": help("Screws, nails and glue", "A length, or auto.", {
    detail: "Of screws or nails; auto: three times the bottom's thickness.",
  }),
  "front screws": help("Screws, nails and glue", "From the box into its front, or auto.", {
    detail: "auto: two, or four on wide fronts.",
  }),
  "four screws from": help("Screws, nails and glue", "A front so wide gets four."),
  "front screw length": help("Screws, nails and glue", "A length, or auto.", {
    detail: "auto: the longest that stays 1/8 in (3 mm) inside the front.",
  }),
  "pull screw length": help("Screws, nails and glue", "A length, or auto.", {
    detail:
      "auto: through box and front and 1/4 in (6 mm) into a bought pull; to 1/8 in (3 mm) below the face of a shop-made one.",
  }),
  glue: help("Screws, nails and glue", "Whether joints are glued.", { choices: ["joints", "none"] }),

  "opening tolerance": help("Tolerances", "How true the openings are, plus or minus."),
  "thickness tolerance": help("Tolerances", "Of the stock."),
  "cut tolerance": help("Tolerances", "Of your cuts."),
  "slide tolerance low": help(
    "Tolerances",
    "How far the room beside the box may fall short of the nominal. Of undermount slides half of what the data sheet lets the inside width exceed its own.",
  ),
  "slide tolerance high": help(
    "Tolerances",
    "How far it may exceed it. Of undermount slides half of what the data sheet lets the inside width fall short.",
  ),

  kerf: help("Saw and sheets", "What the blade cuts away."),
  "sheet trim": help("Saw and sheets", "Taken off each edge of a sheet first."),
  "sheet effort": help("Saw and sheets", "How long the layout of sheets is searched.", {
    choices: ["quick", "standard", "thorough"],
  }),
};

/** What holds where a standard is left empty, in words. */
export function usualInWords(name: StandardName, unit: Unit): string {
  const { otherwise = "none" } = STANDARDS_HELP[name];
  return usualWritten(name, unit)?.replace(/;/g, "; ") ?? (typeof otherwise === "string" ? otherwise : otherwise[unit]);
}
