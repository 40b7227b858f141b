export * from "./search";
