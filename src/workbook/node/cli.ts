import type { EngineOptions } from "../engine/index";
import { version } from "../../../package.json";
import { recalculate } from "../edit/recalculate";
import { dateOf, freeze } from "../freeze/index";
import { SheetFault } from "../sheets/index";
import { FileFault, shown } from "../xlsx/fault";
import { readArguments, UsageFault, type Arguments } from "./arguments";
import { HELP } from "./help";
import { describe } from "./describe";
import { readInput } from "./read-input";
import { isSameFile } from "./same-file";
import { outputTarget, writeOutput } from "./write-output";

/** Where the command prints. */
export interface Streams {
  out(line: string): void;
  err(line: string): void;
}

/** The command, with its words, the functions and its streams handed in. Gives the exit code. */
export async function run(words: string[], options: EngineOptions, terminal: Streams): Promise<0 | 1 | 2> {
  // Whatever is printed may hold a name or a text out of a file that somebody else wrote.
  const streams = {
    out: (line: string) => terminal.out(shown(line)),
    err: (line: string) => terminal.err(shown(line)),
  };
  try {
    const args = readArguments(words);
    if (args === "help") {
      HELP.trimEnd().split("\n").forEach(streams.out);
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
  await outputTarget(args.output);
  const bytes = await readInput(args.input);
  const {
    bytes: written,
    report,
    frozen,
  } = args.values ? frozenCopy(bytes, options, args.sheet) : worked(bytes, options);
  await writeOutput(args.output, written);
  const { kept, errors, summary } = describe(report);
  if (!args.quiet) streams.out(summary);
  if (!args.quiet && frozen !== undefined) streams.out(frozenLine(frozen));
  if (!args.quiet) errors.forEach(streams.out);
  kept.forEach(streams.err);
  return kept.length > 0 ? 1 : 0;
}

const worked = (bytes: Uint8Array, options: EngineOptions) => ({ ...recalculate(bytes, options), frozen: undefined });

/** Dated by this machine's clock. */
function frozenCopy(bytes: Uint8Array, options: EngineOptions, sheet: string | undefined) {
  const now = options.now ?? new Date();
  return freeze(bytes, { ...options, now }, { date: dateOf(now), version }, sheet);
}

const frozenLine = (count: number): string =>
  count === 1 ? "1 formula is a value now." : `${count === 0 ? "No" : count} formulas are values now.`;

/** One line, whatever happened. */
function sentence(error: unknown): string {
  if (error instanceof UsageFault) return `${error.message} See --help.`;
  if (error instanceof FileFault || error instanceof SheetFault) return error.message;
  return `The file cannot be recalculated: ${error instanceof Error ? error.message : String(error)}`;
}
