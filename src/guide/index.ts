export { functionHelp, GUIDE_PAGES, pageAddress, type GuidePage } from "./pages";
export { STANDARD_GROUPS, STANDARDS_HELP, usualInWords } from "./standards";
