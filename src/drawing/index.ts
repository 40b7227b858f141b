export { isInside, overlap, type Box, type Drawing, type Label } from "./drawing";
export { elevation } from "./elevation";
export { sheetLayout, type CutGroup } from "./sheet-layout";
export { svgOf, type SvgOptions } from "./svg";
