import { HOSTILE_FILES } from "./files";
import { HOSTILE_FORMULAS } from "./formulas";
import type { HostileCase } from "./hostile-case";

/** All of them; they are known by their numbers here. */
export const HOSTILE: readonly HostileCase[] = [...HOSTILE_FORMULAS, ...HOSTILE_FILES];
