export { STANDARD_GROUPS, STANDARDS_HELP, usualInWords } from "./standards";
