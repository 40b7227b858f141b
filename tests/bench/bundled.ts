import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { build } from "esbuild";

/** A script of a bench as one file, bundled as what is shipped is: tsx names every function anew as it is made. */
export async function bundled(script: URL, folder: string): Promise<(...args: string[]) => string> {
  const file = join(folder, "bench.mjs");
  await build({ entryPoints: [script.pathname], outfile: file, bundle: true, platform: "node", format: "esm" });
  return (...args) => execFileSync("node", [file, ...args], { encoding: "utf8" });
}
