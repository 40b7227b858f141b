import { mkdir } from "node:fs/promises";
import { basename, join } from "node:path";
import { svgOf } from "../../../drawing/index";
import { readShopJob, shopDrawings, shopPages } from "../../../shop-pages/index";
import { EditedWorkbook } from "../../edit/index";
import { bookText } from "../../shop/index";
import { FileFault, shown } from "../../xlsx/fault";
import { UsageFault } from "../arguments";
import type { Streams } from "../cli";
import { readInput } from "../read-input";
import { reason } from "../reason";
import { isSameFile } from "../same-file";
import { outputTarget, writeOutput } from "../write-output";
import { readShopArguments, type ShopArguments } from "./arguments";
import { HELP } from "./help";
import { printPdf } from "./print-pdf";

/** The command, with its words and its streams handed in. Gives the exit code. */
export async function run(words: string[], terminal: Streams): Promise<0 | 2> {
  try {
    const args = readShopArguments(words);
    if (args === "help") HELP.trimEnd().split("\n").forEach(terminal.out);
    else for (const line of await made(args)) terminal.out(shown(line));
    return 0;
  } catch (error) {
    terminal.err(shown(`shop-pages: ${sentence(error)}`));
    return 2;
  }
}

async function made({ input, output, svg, paper }: ShopArguments): Promise<string[]> {
  if (output !== undefined) {
    if (await isSameFile(input, output)) throw new UsageFault("The output is the input itself.");
    await outputTarget(output);
  }
  const job = readShopJob(bookText(new EditedWorkbook(await readInput(input))));
  if ("why" in job) throw new FileFault(job.why);
  const told: string[] = [];
  if (output !== undefined) {
    const html = shopPages(job, basename(input).replace(/\.xlsx$/i, ""));
    const isPdf = /\.pdf$/i.test(output);
    await writeOutput(output, isPdf ? await printPdf(html, paper) : new TextEncoder().encode(html));
    told.push(
      `${output} is written${isPdf ? `, on ${paper === "a4" ? "A4" : "letter"} paper. Print it at 100 %` : ""}.`,
    );
  }
  if (svg !== undefined) {
    await mkdir(svg, { recursive: true }).catch((error: unknown) => {
      throw new FileFault(`${svg} cannot be made: ${reason(error)}.`);
    });
    const drawings = shopDrawings(job);
    for (const [i, drawing] of drawings.entries()) {
      const number = String(i + 1).padStart(String(drawings.length).length, "0");
      const file = join(
        svg,
        `${number} ${drawing.title
          .replace(/[^\p{L}\p{N} .,-]/gu, "")
          .trim()
          .slice(0, 60)}.svg`,
      );
      await writeOutput(file, new TextEncoder().encode(svgOf(drawing, { onPaper: true })));
    }
    told.push(`${drawings.length} drawings are written into ${svg}.`);
  }
  return told;
}

/** One line, whatever happened. */
function sentence(error: unknown): string {
  if (error instanceof UsageFault) return `${error.message} See --help.`;
  if (error instanceof FileFault) return error.message;
  return `The shop pages cannot be made: ${error instanceof Error ? error.message : String(error)}`;
}
