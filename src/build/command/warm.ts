import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { optimizeLater, scriptOf, stamped } from "./compiled";

/** `warm SCRIPT COMPILED WORD…`: runs the command's script with these words, and writes what V8 compiled for that. */
const [file, target] = process.argv.splice(2, 2);
optimizeLater();
const source = readFileSync(file!);
const script = scriptOf(source);
process.once("exit", () => {
  const compiled = stamped(source, script.createCachedData());
  if (compiled) writeFileSync(target!, compiled);
});
script.runInThisContext()(createRequire(import.meta.url));
