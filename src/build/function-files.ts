import { readdirSync } from "node:fs";
import { join } from "node:path";

/** The files that hold a cell function each: every script right in `folder` but its index. */
export const functionFiles = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".ts") && name !== "index.ts")
    .sort()
    .map((name) => join(folder, name));
