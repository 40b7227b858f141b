export { guideFiles } from "./files";
export { GuidePlugin } from "./plugin";
