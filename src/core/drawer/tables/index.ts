export * from "./job";
export * from "./opening";
export * from "./table";
export { STANDARD_NAMES, type StandardName, type Standards } from "./standards";
export { numberCell, textCell } from "./kinds";
