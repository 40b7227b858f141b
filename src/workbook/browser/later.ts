/** What the page does without until the grid is there. */
export { example, ownJob } from "./laid-out";
export { explainNativeFunctions } from "./native-functions";
export { askForJob } from "./new-job-dialog";
