export { crossSection } from "./cross-section";
export { isInside, overlap, type Box, type Drawing, type Label } from "./drawing";
export { elevation } from "./elevation";
export { section } from "./section";
export { sheetLayout, type CutGroup } from "./sheet-layout";
export { svgOf, type SvgOptions } from "./svg";
