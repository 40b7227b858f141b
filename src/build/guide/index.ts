export { guideFiles } from "./files";
export { guideReference } from "./guide-reference";
export { GuidePlugin } from "./plugin";
