import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { COMPILED, ofStamped, SCRIPT, scriptOf } from "./compiled";

/** What the package's command begins with: runs the script beside it, compiled already where that can be trusted. */
const source = readFileSync(new URL(SCRIPT, import.meta.url));
scriptOf(source, compiled()).runInThisContext()(createRequire(import.meta.url));

/** It only saves time: whatever is wrong with it, the script does the same without. */
function compiled(): Uint8Array | undefined {
  try {
    return ofStamped(source, readFileSync(new URL(COMPILED, import.meta.url)));
  } catch {
    return undefined;
  }
}
