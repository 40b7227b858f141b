export { balanceOf } from "./balance";
export { acrossFront, movingOf, type Moving } from "./moving";
export { bottomScrewsOf, slotOf, type Slot } from "./slot";
export { carriedBy, type Carried } from "./load";
export { RATINGS, ratingFor, ratingToOrder } from "./rating";
export { saggingOf, type Sagging } from "./sagging";
export { balanceRows, estimatesOf } from "./working";
export { boxWeight } from "./weight";
