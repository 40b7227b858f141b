/** A wood, and the share of its width, in hundred thousandths, that one percent of moisture moves it by. */
export interface Species {
  name: string;
  /** Quarter sawn. */
  radial: number;
  /** Flat sawn. */
  tangential: number;
}

type Line = [name: string, radial: number, tangential: number];

/** @source Wood Handbook, FPL-GTR-190 (2010), Table 13-5: dimensional change coefficients, 6 to 14 % */
const HARDWOODS: Line[] = [
  ["Alder, red", 151, 256],
  ["Apple", 205, 376],
  ["Ash, black", 172, 274],
  ["Ash, green", 169, 274],
  ["Ash, Oregon", 141, 285],
  ["Ash, pumpkin", 126, 219],
  ["Ash, white", 169, 274],
  ["Aspen, quaking", 119, 234],
  ["Basswood, American", 230, 330],
  ["Beech, American", 190, 431],
  ["Birch, paper", 219, 304],
  ["Birch, river", 162, 327],
  ["Birch, sweet", 256, 338],
  ["Birch, yellow", 256, 338],
  ["Buckeye, yellow", 123, 285],
  ["Butternut", 116, 223],
  ["Catalpa, northern", 85, 169],
  ["Cherry, black", 126, 248],
  ["Chestnut, American", 116, 234],
  ["Cottonwood, black", 123, 304],
  ["Cottonwood, eastern", 133, 327],
  ["Elm, American", 144, 338],
  ["Elm, cedar", 183, 419],
  ["Elm, rock", 165, 285],
  ["Elm, slippery", 169, 315],
  ["Elm, winged", 183, 419],
  ["Hackberry", 165, 315],
  ["Hickory, pecan", 169, 315],
  ["Honeylocust", 144, 230],
  ["Locust, black", 158, 252],
  ["Madrone, Pacific", 194, 451],
  ["Maple, bigleaf", 126, 248],
  ["Maple, black", 165, 353],
  ["Maple, red", 137, 289],
  ["Maple, silver", 102, 252],
  ["Maple, sugar", 165, 353],
  ["Oak, black", 123, 230],
  ["Persimmon", 278, 403],
  ["Red oak, commercial", 158, 369],
  ["Red oak, water/laurel/willow", 151, 350],
  ["Sassafras", 137, 216],
  ["Sweetgum", 183, 365],
  ["Sycamore", 172, 296],
  ["Tanoak", 169, 423],
  ["Tupelo, black", 176, 308],
  ["Tupelo, water", 144, 267],
  ["Walnut, black", 190, 274],
  ["White oak, commercial", 180, 365],
  ["White oak, live", 230, 338],
  ["White oak, Oregon", 144, 327],
  ["White oak, overcup", 183, 462],
];

/**
 * From memory of the same table. Each agrees with the total shrinkage of that wood in Table 4-3 (from memory as well)
 * by Eq. 13-3, at 10 % and with fiber saturation at 30 %, in redwood, western redcedar and northern white-cedar 22 %.
 * @source Wood Handbook, FPL-GTR-190 (2010), Table 13-5
 */
const FROM_MEMORY: Line[] = [
  ["Yellow-poplar", 158, 289],
  ["Willow, black", 112, 308],
  ["Baldcypress", 130, 216],
  ["Cedar, Alaska", 95, 208],
  ["Cedar, Atlantic white", 99, 187],
  ["Cedar, eastern red", 106, 162],
  ["Cedar, incense", 112, 180],
  ["Cedar, northern white", 101, 229],
  ["Cedar, Port-Orford", 158, 241],
  ["Cedar, western red", 111, 234],
  ["Douglas-fir, coast", 165, 267],
  ["Douglas-fir, interior north", 130, 241],
  ["Douglas-fir, interior west", 165, 263],
  ["Fir, balsam", 99, 241],
  ["Fir, California red", 155, 278],
  ["Fir, noble", 148, 293],
  ["Fir, Pacific silver", 151, 327],
  ["Fir, subalpine", 88, 259],
  ["Fir, white", 112, 245],
  ["Hemlock, eastern", 102, 237],
  ["Hemlock, western", 144, 274],
  ["Larch, western", 155, 323],
  ["Pine, eastern white", 71, 212],
  ["Pine, jack", 126, 230],
  ["Pine, loblolly", 165, 259],
  ["Pine, lodgepole", 148, 234],
  ["Pine, longleaf", 176, 263],
  ["Pine, ponderosa", 133, 216],
  ["Pine, red", 130, 252],
  ["Pine, shortleaf", 158, 271],
  ["Pine, slash", 187, 267],
  ["Pine, sugar", 99, 194],
  ["Pine, Virginia", 144, 252],
  ["Pine, western white", 141, 259],
  ["Redwood, old-growth", 120, 205],
  ["Redwood, second-growth", 101, 229],
  ["Spruce, black", 141, 237],
  ["Spruce, Engelmann", 130, 248],
  ["Spruce, red", 130, 274],
  ["Spruce, Sitka", 148, 263],
  ["Tamarack", 126, 259],
];

export const SPECIES: readonly Species[] = [...HARDWOODS, ...FROM_MEMORY].map(([name, radial, tangential]) => ({
  name,
  radial,
  tangential,
}));
