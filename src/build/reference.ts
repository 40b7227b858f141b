import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { functionFiles } from "./function-files";
import { functionReference } from "./function-reference";
import { withFunctionList } from "./readme-list";

/**
 * Writes the function list into README.md; with `--check` writes nothing, and fails where the list is not the one
 * that the doc comments give. Another file may be named instead.
 */
function main(args: readonly string[]): void {
  const file = args.find((argument) => !argument.startsWith("--")) ?? here("../../README.md");
  const now = readFileSync(file, "utf8");
  const wanted = withFunctionList(now, functionReference(functionFiles(here("../functions"))));
  if (now === wanted) return console.log(`The function list in ${file} is right.`);
  if (args.includes("--check")) throw new Error(`The function list in ${file} is out of date: run npm run reference.`);
  writeFileSync(file, wanted);
  console.log(`Wrote the function list into ${file}.`);
}

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

try {
  main(process.argv.slice(2));
} catch (thrown) {
  console.error((thrown as Error).message);
  process.exitCode = 1;
}
