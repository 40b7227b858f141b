import { html, type Html } from "./html";

/** Common practice, on top of the pages it belongs to. The makers' manuals and local codes decide. */
export const CAUTIONS = {
  phone: "The phone stays off the saw's table, and in the pocket while the blade turns.",
  sheets:
    "A whole sheet wants two people, or support on both sides. Guard and riving knife on, push block for narrow strips; the saw's manual and local codes come first. Measure the first piece of every setting.",
  stick:
    "Lay a ruler on the check ruler first: where they disagree, print again at 100 % (actual size, not fitted to the page). Then measure the joined stick from floor to top. Cabinets are tied to the wall before drawers are hung: open drawers tip them. Slides go where their own data sheet says.",
  joints:
    "Lay a ruler on the check ruler first, as for the sticks. Lay the work on a drawing to check it; set saw and router by a test cut in an offcut. Grooves and notches keep hands away from the cutter: push blocks, featherboard, and the machine's manual. The slide's own data sheet decides on notches and holes.",
  labels: "Sizes are as cut; check a piece before its label goes on. Labels come off before glue and finish.",
  hardware:
    "Screws must be shorter than what they go into is thick: try each length in an offcut. The makers' data sheets decide on slides, their ratings and screws; ratings here are estimates.",
  drawings: "Drawings are to scale where they are printed at 100 %. Measure nothing from them: the sizes are written.",
} as const;

/** @param before what is said first, in other words than these */
export const caution = (which: keyof typeof CAUTIONS, before = ""): Html =>
  html`<p class="caution"><strong>Caution.</strong> ${before} ${CAUTIONS[which]}</p>`;
