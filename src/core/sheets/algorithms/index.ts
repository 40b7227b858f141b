export * from "./search";
export { largestRest } from "./offcut";
