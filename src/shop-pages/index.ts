export { readShopJob, type BookText, type ShopJob } from "./book";
export { shopPages } from "./document";
export { shopDrawings } from "./drawings";
export { formulaCall, type CallArgument, type RangeName } from "./formula-call";
export { SCRIPT_HASH } from "./script";
