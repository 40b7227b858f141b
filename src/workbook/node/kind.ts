import type { Stats } from "node:fs";

/** What stands at a path that is no file, in words. */
export function kindOf(found: Stats): string {
  if (found.isDirectory()) return "a folder";
  if (found.isFIFO()) return "a pipe";
  if (found.isSocket()) return "a socket";
  return "a device";
}
