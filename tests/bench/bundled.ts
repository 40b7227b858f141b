import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";

/** Gives what a bundled script prints, called with these words. */
type Run = (...words: string[]) => string;

/**
 * A script of a bench as one file, bundled as what is shipped is: tsx names every function anew as it is made.
 * @param work may put files of its own into the folder, which is gone once it is done
 */
export async function bundled(script: URL, work: (run: Run, folder: string) => void): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  try {
    const file = join(folder, "bench.mjs");
    await build({ entryPoints: [script.pathname], outfile: file, bundle: true, platform: "node", format: "esm" });
    work((...words) => execFileSync("node", [file, ...words], { encoding: "utf8" }), folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
