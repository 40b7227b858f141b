export * from "./load";
