export * from "./double";
export * from "./fault";
export * from "./parse";
export * from "./rational";
export * from "./read";
export * from "./root";
export * from "./tape";
export * from "./unit";
export { writeLength, writeNumber } from "./write";
