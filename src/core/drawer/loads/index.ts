export { balanceOf } from "./balance";
export { acrossFront, movingOf, type Moving } from "./moving";
export { bottomScrewsOf, slotOf } from "./slot";
export { carriedBy } from "./load";
export { RATINGS, ratingFor, ratingToOrder } from "./rating";
export { saggingOf } from "./sagging";
export { balanceRows, estimatesOf } from "./working";
