/** Recalculation of .xlsx files, on bytes, without a screen and without files. */
export { recalculate } from "./edit/recalculate";
export { FileFault } from "./xlsx/fault";
