export { everything, isFew } from "./few";
export { neat } from "./neat";
export { largestRest } from "./offcut";
export * from "./search";
