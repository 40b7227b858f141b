/** Recalculation of .xlsx files, on bytes, without a screen and without files. */
export { recalculate, type Report } from "./recalculate";
export type { EngineOptions, CustomFunction, Dimensions } from "./engine/index";
export { FileFault } from "./xlsx/fault";
