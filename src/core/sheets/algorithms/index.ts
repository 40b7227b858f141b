export { everything, isFew } from "./few";
export { largestRest } from "./offcut";
export * from "./search";
