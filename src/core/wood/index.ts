export * from "./find-species";
export * from "./load";
export * from "./moisture";
export * from "./movement";
export * from "./panels";
export * from "./sag";
export * from "./species";
export * from "./tipping";
