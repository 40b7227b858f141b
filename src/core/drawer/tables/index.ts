export * from "./job";
export * from "./opening";
export { STANDARD_NAMES, type StandardName, type Standards } from "./standards";
export * from "./table";
