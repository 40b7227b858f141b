import { readFile, stat } from "node:fs/promises";
import type { EngineOptions } from "../engine/index";
import { recalculate } from "../recalculate";
import { FileFault, shown } from "../xlsx/fault";
import { readArguments, UsageFault, type Arguments } from "./arguments";
import { isSameFile, writeAtomically } from "./files";
import { HELP } from "./help";
import { describe } from "./describe";

/** Where the command prints. */
export interface Streams {
  out(line: string): void;
  err(line: string): void;
}

/** Files larger than this are refused before they are read. */
const LARGEST_FILE = 256 * 1024 * 1024;

/** The command, with its words, the functions and its streams handed in. Gives the exit code. */
export async function run(words: string[], options: EngineOptions, streams: Streams): Promise<0 | 1 | 2> {
  try {
    const args = readArguments(words);
    if (args === "help") {
      streams.out(HELP.trimEnd());
      return 0;
    }
    return await recalculateFile(args, options, streams);
  } catch (error) {
    streams.err(`recalculate: ${sentence(error)}`);
    return 2;
  }
}

async function recalculateFile(args: Arguments, options: EngineOptions, streams: Streams): Promise<0 | 1> {
  if (!args.inPlace && (await isSameFile(args.input, args.output))) {
    throw new UsageFault("The output is the input itself; give --in-place to write over it.");
  }
  const bytes = await readInput(args.input);
  const { bytes: written, report } = recalculate(bytes, options);
  await writeAtomically(args.output, written).catch((error: NodeJS.ErrnoException) => {
    throw new FileFault(`${args.output} cannot be written (${error.code ?? error.message}).`);
  });
  const { kept, errors, summary } = describe(report);
  if (!args.quiet) streams.out(summary);
  if (!args.quiet) errors.forEach(streams.out);
  kept.forEach(streams.err);
  return kept.length > 0 ? 1 : 0;
}

async function readInput(path: string): Promise<Uint8Array> {
  try {
    const found = await stat(path);
    if (!found.isFile()) throw new FileFault(`${path} is no file.`);
    if (found.size > LARGEST_FILE) throw new FileFault(`${path} is larger than ${LARGEST_FILE / 1024 / 1024} MB.`);
    return await readFile(path);
  } catch (error) {
    if (error instanceof FileFault) throw error;
    const { code } = error as NodeJS.ErrnoException;
    throw new FileFault(code === "ENOENT" ? `${path} is not there.` : `${path} cannot be read (${code}).`);
  }
}

/** One line, whatever happened. */
function sentence(error: unknown): string {
  if (error instanceof UsageFault) return shown(`${error.message} See --help.`);
  if (error instanceof FileFault) return shown(error.message);
  return shown(`The file cannot be recalculated: ${error instanceof Error ? error.message : String(error)}`);
}
