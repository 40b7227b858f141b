export { crossSection } from "./cross-section";
export { isInside, overlap, type Drawing } from "./drawing";
export { elevation } from "./elevation";
export { section } from "./section";
export { sheetLayout, type CutGroup } from "./sheet-layout";
export { checkRuler } from "./check-ruler";
export { storyStick } from "./story-stick";
export { SHARED, svgOf } from "./svg";
export { drawable } from "./text";
