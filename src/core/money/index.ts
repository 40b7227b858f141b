export { rounded } from "./currency";
export { checkCosts } from "./checks";
export { costed, type Cutting } from "./costed";
export * from "./solid-stock";
export * from "./rates";
export * from "./quote";
export { drawerCount } from "./labor";
export { insideVolume } from "./volume";
export type { Line, What } from "./line";
