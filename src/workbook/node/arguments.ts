import { parseArgs } from "node:util";

export interface Arguments {
  input: string;
  output: string;
  inPlace: boolean;
  quiet: boolean;
  /** Whether results of our functions are written as values. */
  values: boolean;
  /** The sheet that alone is written. */
  sheet?: string;
}

/** A command line that cannot be followed, in one sentence. */
export class UsageFault extends Error {}

/** Reads the command line; `help` where that is asked for. */
export function readArguments(words: string[]): Arguments | "help" {
  const { values, positionals } = parse(words);
  if (values.help) return "help";
  const [input, ...others] = positionals;
  if (input === undefined) throw new UsageFault("Which workbook? Give its file name.");
  if (others.length > 0) throw new UsageFault(`One workbook at a time; “${others.join("”, “")}” is too much.`);
  const inPlace = values["in-place"] ?? false;
  if (inPlace && values.output !== undefined) throw new UsageFault("Give either --output or --in-place, not both.");
  if (!inPlace && values.output === undefined) throw new UsageFault("Where to? Give -o FILE, or --in-place.");
  if (values.sheet !== undefined && !values.values) throw new UsageFault("--sheet goes with --values.");
  const output = values.output ?? input;
  for (const name of [input, output]) refuseNoName(name);
  return {
    input,
    output,
    inPlace,
    quiet: values.quiet ?? false,
    values: values.values ?? false,
    ...(values.sheet === undefined ? {} : { sheet: values.sheet }),
  };
}

function refuseNoName(name: string): void {
  if (name === "") throw new UsageFault("A file name is empty.");
  if (name === "-")
    throw new UsageFault(
      "- is no file here, for a workbook is not read or written piece by piece; write ./- if that is its name.",
    );
}

function parse(words: string[]) {
  try {
    return parseArgs({
      args: words,
      allowPositionals: true,
      options: {
        output: { type: "string", short: "o" },
        "in-place": { type: "boolean" },
        quiet: { type: "boolean", short: "q" },
        values: { type: "boolean" },
        sheet: { type: "string" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (error) {
    throw new UsageFault((error as Error).message.split(". ")[0]!);
  }
}
