import { fileURLToPath } from "node:url";

/** The module that starts the page where tests do something inside of it. */
export const INSIDE = fileURLToPath(new URL("start.ts", import.meta.url));
