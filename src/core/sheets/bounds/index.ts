export * from "./least-weight";
