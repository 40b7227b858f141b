export { functionHelp, GUIDE_PAGES, pageAddress, type GuidePage } from "./pages";
export type { GuideReference, GuideSection, GuideTerm } from "./reference";
export { STANDARD_GROUPS, STANDARDS_HELP, usualInWords } from "./standards";
