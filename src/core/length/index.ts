export * from "./double";
export * from "./fault";
export * from "./parse";
export * from "./rational";
export * from "./root";
export * from "./spelling";
export * from "./tape";
export * from "./unit";
export { writeLength, writeNumber } from "./write";
