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
  zones: Zone[];
  stock: BoxStock;
  /** What each box has room for, until they are matched to others. */
  heights: Size[];
}
