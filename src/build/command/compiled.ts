import { statSync } from "node:fs";
import { setFlagsFromString } from "node:v8";
import { Script } from "node:vm";
import * as zlib from "node:zlib";

/** The names of the command's files; they stand beside each other. */
export const ENTRY = "recalculate.mjs";
export const SCRIPT = "recalculate.cjs";
export const COMPILED = "recalculate.compiled";

/**
 * The command's script, which is an expression, made ready to run.
 * @param source its text
 * @param compiled what V8 made of it in an earlier run; where V8 refuses that, the text is compiled
 */
export function scriptOf(source: Buffer, compiled?: Uint8Array): Script {
  if (compiled) optimizeLater();
  // A name and no path: what V8 made of the text holds it.
  return new Script(source.toString(), { filename: SCRIPT, cachedData: compiled });
}

/**
 * Has V8 wait four times as long before it optimizes a function: most workbooks are worked out before that pays. V8 takes
 * what it made earlier under the same flags alone, and another Node, for which nothing was made, may not know this one.
 */
export const optimizeLater = (): void => setFlagsFromString("--interrupt-budget=264000");

/** What V8 made of a text, with the stamp of both in front, or nothing where this Node cannot stamp it. */
export function stamped(source: Uint8Array, compiled: Uint8Array): Uint8Array | undefined {
  const stamp = stampOf(source, compiled);
  if (stamp === undefined) return undefined;
  const file = new Uint8Array(STAMP_BYTES + compiled.length);
  new DataView(file.buffer).setUint32(0, stamp);
  file.set(compiled, STAMP_BYTES);
  return file;
}

/** What stands behind the stamp, where this very Node made it of this very text and no byte has changed since. */
export function ofStamped(source: Uint8Array, file: Uint8Array): Uint8Array | undefined {
  if (file.length < STAMP_BYTES) return undefined;
  const compiled = file.subarray(STAMP_BYTES);
  const { buffer, byteOffset } = file;
  return new DataView(buffer, byteOffset).getUint32(0) === stampOf(source, compiled) ? compiled : undefined;
}

/** V8 copies what does not begin at a whole word. */
const STAMP_BYTES = 8;

/**
 * V8 itself looks at its own version, at its flags and at how long the text is. Other bytes bring it down, and so may
 * another build of the same version; another text of this length would do what this one says.
 */
function stampOf(source: Uint8Array, compiled: Uint8Array): number | undefined {
  // Built in from Node 20.15 on; without it the sum would take longer than it saves.
  if (!zlib.crc32) return undefined;
  return zlib.crc32(compiled, zlib.crc32(source, zlib.crc32(thisNode())));
}

/** Tells builds of Node from each other. */
function thisNode(): string {
  const { arch, platform, versions, config, execPath } = process;
  return JSON.stringify([arch, platform, versions, config, statSync(execPath).size]);
}
