export { balanceOf } from "./balance";
export { movingOf } from "./moving";
export { carriedBy, type Carried } from "./load";
export { RATINGS, ratingFor, ratingToOrder } from "./rating";
export { saggingOf, type Sagging } from "./sagging";
export { estimatesOf } from "./working";
export { boxWeight } from "./weight";
