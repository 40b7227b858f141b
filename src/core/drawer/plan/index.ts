export * from "./box-plan";
export * from "./face";
export * from "./front-plan";
export * from "./plan";
export * from "./parts";
export * from "./working";
