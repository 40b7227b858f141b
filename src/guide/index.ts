export { STANDARD_GROUPS, STANDARDS_HELP, usualInWords, type StandardGroup, type StandardHelp } from "./standards";
