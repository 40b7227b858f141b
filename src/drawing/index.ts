export { crossSection } from "./cross-section";
export { isInside, overlap, type Drawing } from "./drawing";
export { elevation } from "./elevation";
export { section } from "./section";
export { sheetLayout, type CutGroup } from "./sheet-layout";
export { svgOf } from "./svg";
