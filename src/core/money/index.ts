export { rounded } from "./currency";
export { costed, type Cutting } from "./costed";
export * from "./solid-stock";
export * from "./rates";
export * from "./quote";
export { pieceAreas } from "./finish";
export { drawerCount } from "./labor";
export { insideVolume } from "./volume";
export type { Line, Section, What } from "./line";
