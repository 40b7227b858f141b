/** What of a material's name tells it, and its density in kg/m³ as it is in a shop, at about 12 % moisture. */
type Line = [name: RegExp, density: number];

/**
 * A sheet's density differs by a tenth or more from maker to maker: a maker's own figure is better.
 * @source birch plywood: generic sanded sheets (EN 13986, EN 314-3), 670 to 695; the others: common practice, round
 *   figures, from memory
 */
const SHEETS: Line[] = [
  [/mdf|hdf|fib(er|re) ?board/i, 750],
  [/\bosb\b|strand/i, 640],
  [/particle ?board|chip ?board|melamine|laminate/i, 700],
  [/hard ?board/i, 950],
  [/birch.*ply|ply.*birch|baltic/i, 685],
  [/ply|veneer|block ?board/i, 600],
  [/glass/i, 2500],
  [/acrylic|plastic|polycarbonate|phenolic/i, 1200],
  [/alumini?um/i, 2700],
  [/steel|metal/i, 7850],
];

/**
 * Specific gravity at 12 % moisture, of the dry wood's weight, times 1.12.
 * @source Wood Handbook, FPL-GTR-190 (2010), Table 5-3, from memory: averages, single boards differ by a tenth
 */
const WOODS: Line[] = [
  [/hickory|pecan/i, 800],
  [/white oak/i, 760],
  [/locust/i, 770],
  [/oak/i, 710],
  [/beech/i, 720],
  [/(hard|sugar|rock) ?maple|maple, sugar/i, 710],
  [/big ?leaf|silver maple|maple, silver/i, 540],
  [/maple/i, 600],
  [/birch/i, 690],
  [/ash\b/i, 670],
  [/walnut/i, 620],
  [/cherry/i, 560],
  [/elm|sycamore|sweetgum/i, 570],
  [/chestnut|alder|tulip|poplar/i, 470],
  [/aspen|basswood|linden|butternut|cottonwood/i, 430],
  [/douglas|larch|tamarack/i, 540],
  [/cedar|redwood/i, 420],
  [/pine|spruce|fir\b|hemlock|cypress/i, 450],
];

/** A heavy hardwood, where the name tells nothing: what is carried is rather over- than understated. */
const UNKNOWN = 720;

/** The density of a material by its name, in kg/m³. */
export const densityOf = (material: string): number =>
  [...SHEETS, ...WOODS].find(([name]) => name.test(material))?.[1] ?? UNKNOWN;

/** Exact by definition (NIST SP 811): 1 lb = 0.45359237 kg, 1 ft = 0.3048 m. */
export const KG_PER_LB = 0.45359237;
export const KG_M3_PER_LB_FT3 = KG_PER_LB / 0.3048 ** 3;
