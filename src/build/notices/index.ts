export { attributions } from "./attributions";
export { AttributionsPlugin } from "./attributions-plugin";
export { ATTRIBUTIONS, banner } from "./banner";
export { bundledFiles } from "./bundled-files";
