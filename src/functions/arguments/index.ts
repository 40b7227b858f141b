export { scalar, type Argument } from "./argument";
export * from "./drawer-label";
export * from "./drawer-words";
export * from "./flag";
export * from "./length";
export * from "./list";
export { oneOf, wholeNumber } from "./number";
export * from "./slide";
export * from "./word";
