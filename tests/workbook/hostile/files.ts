import { CROWDED_FILES } from "./crowded-files";
import { LINKED_FILES } from "./linked-files";
import { PACKED_FILES } from "./packed-files";
import { SHARED_FORMULA_FILES } from "./shared-formula-files";
import { UNTRUE_FILES } from "./untrue-files";
import type { HostileCase } from "./hostile-case";

/** Files that are large, false, or made to lead nowhere. */
export const HOSTILE_FILES: HostileCase[] = [
  ...CROWDED_FILES,
  ...UNTRUE_FILES,
  ...PACKED_FILES,
  ...LINKED_FILES,
  ...SHARED_FORMULA_FILES,
];
