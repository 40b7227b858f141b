import type { Size } from "../size";
import type { Cabinet, Opening } from "../opening";
import type { BoxStock, Zone } from "./box-plan";
import type { Face } from "./face";
import type { Fronts } from "./front-plan";

/** An opening on its way to a plan. */
export interface Draft {
  opening: Opening;
  cabinet: Cabinet;
  face: Face;
  fronts: Fronts;
  /** The place of the first front with a box behind it. */
  first: number;
  zones: Zone[];
  /** None where no front has one. */
  stock?: BoxStock;
  /** What each box has room for, until they are matched to others. */
  heights: Size[];
}
