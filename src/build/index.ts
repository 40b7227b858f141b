export { AttributionsPlugin } from "./notices/index";
export { functionFiles } from "./function-files";
export { functionReference } from "./function-reference";
export { FunctionsJsonPlugin } from "./functions-json-plugin";
export { fill } from "./fill";
export { ICON_SIZES, renderIcon } from "./icon";
export { fillManifest } from "./manifest";
export { addinOrigin, PLACEHOLDER_ORIGIN } from "./origin";
