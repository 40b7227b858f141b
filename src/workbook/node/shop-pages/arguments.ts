import { parseArgs } from "node:util";
import { UsageFault } from "../arguments";

const PAPERS = ["letter", "a4"] as const;

export interface ShopArguments {
  input: string;
  /** A PDF, or the pages as they are in a browser. */
  output?: string;
  /** The folder for all drawings. */
  svg?: string;
  paper: (typeof PAPERS)[number];
}

/** Reads the command line; `help` where that is asked for. @throws UsageFault */
export function readShopArguments(words: string[]): ShopArguments | "help" {
  const { values, positionals } = parse(words);
  if (values.help) return "help";
  const [input, ...others] = positionals;
  if (!input) throw new UsageFault("Which workbook? Give its file name.");
  if (others.length > 0) throw new UsageFault(`One workbook at a time; “${others.join("”, “")}” is too much.`);
  const { output, svg, paper = "letter" } = values;
  if (!output && !svg) throw new UsageFault("Where to? Give -o FILE.pdf, or --svg FOLDER.");
  if (output && !/\.(pdf|html)$/i.test(output)) throw new UsageFault("The pages are written as .pdf or as .html.");
  const known = PAPERS.find((one) => one === paper.toLowerCase());
  if (!known) throw new UsageFault(`The paper is letter or a4, not “${paper}”.`);
  return { input, ...(output && { output }), ...(svg && { svg }), paper: known };
}

function parse(words: string[]) {
  try {
    return parseArgs({
      args: words,
      allowPositionals: true,
      options: {
        output: { type: "string", short: "o" },
        svg: { type: "string" },
        paper: { type: "string" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (error) {
    throw new UsageFault((error as Error).message.split(". ")[0]!);
  }
}
