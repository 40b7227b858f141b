import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { functionFiles } from "./function-files";
import { functionHelpText } from "./function-help";
import { functionList } from "./function-list";
import { functionReference } from "./function-reference";
import { withPart } from "./generated";
import { standardsTables } from "./standards-tables";

/**
 * Writes what comes from the code into the texts that a person reads: the functions into README.md and the guide, the
 * standards into the guide. With `--check` writes nothing, and fails where one is not what the code gives. The texts of
 * another folder may be asked for instead.
 */
function main(args: readonly string[]): void {
  const folder = args.find((argument) => !argument.startsWith("--")) ?? here("");
  const groups = functionReference(functionFiles(here("src/functions")));
  const texts = [
    ["README.md", "functions", functionList(groups)],
    ["src/guide/pages/functions.md", "functions", functionHelpText(groups)],
    ["src/guide/pages/standards.md", "standards", standardsTables()],
  ] as const;
  for (const [file, name, part] of texts) write(join(folder, file), name, part, args.includes("--check"));
}

function write(file: string, name: string, part: string, check: boolean): void {
  const now = readFileSync(file, "utf8");
  const wanted = withPart(now, name, part);
  if (now === wanted) return console.log(`The ${name} in ${file} are right.`);
  if (check) throw new Error(`The ${name} in ${file} are out of date: run npm run reference.`);
  writeFileSync(file, wanted);
  console.log(`Wrote the ${name} into ${file}.`);
}

const here = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

try {
  main(process.argv.slice(2));
} catch (thrown) {
  console.error((thrown as Error).message);
  process.exitCode = 1;
}
