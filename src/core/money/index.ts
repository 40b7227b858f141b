export { rounded } from "./currency";
export { readPercent, readPrice } from "./amount";
export * from "./solid-stock";
export * from "./rates";
export * from "./quote";
export { pieceAreas } from "./finish";
export { drawerCount } from "./labour";
export { insideVolume } from "./volume";
export type { Line, Section, What } from "./line";
