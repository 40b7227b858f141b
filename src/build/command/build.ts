import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build, type BuildOptions } from "esbuild";
import { ATTRIBUTIONS, attributions, banner, bundledFiles } from "../notices/index";
import { ENTRY, SCRIPT } from "./compiled";

/** The package's command by the names of its files; it needs no other package beside it. */
export async function buildCommand(): Promise<ReadonlyMap<string, string>> {
  const { outputFiles, metafile } = await bundleScript();
  const entry = await bundle({
    entryPoints: [here("entry.ts")],
    format: "esm",
    banner: { js: `#!/usr/bin/env node\n${notice()}` },
  });
  return new Map([
    [ENTRY, entry.outputFiles[0]!.text],
    [SCRIPT, outputFiles[0]!.text],
    [ATTRIBUTIONS, attributions("The command recalculate", bundledFiles(metafile))],
  ]);
}

/** The script in memory, with esbuild's account of what is in it: a function that is handed `require`. */
export function bundleScript() {
  return bundle({
    entryPoints: [here("../../workbook/node/recalculate.ts")],
    format: "cjs",
    alias: {
      // Its modules: of those for Node alone, nothing that nobody calls would stay out.
      rxjs: library("rxjs/dist/esm/index.js"),
      "rxjs/operators": library("rxjs/dist/esm/operators/index.js"),
      // A function of its own: the loop that fills its tables is slow in one as long as the script. Needs no threads.
      fflate: library("fflate/lib/browser.cjs"),
    },
    define: { "process.env.NODE_ENV": '"production"' },
    banner: { js: `${notice()}\n(function(require){` },
    footer: { js: "})" },
  });
}

const bundle = (options: BuildOptions) =>
  build({
    ...options,
    outdir: "/",
    bundle: true,
    write: false,
    metafile: true,
    minify: true,
    platform: "node",
    target: "node20.9",
    legalComments: "none",
    logLevel: "warning",
  });

const notice = (): string => banner(JSON.parse(readFileSync(here("../../../package.json"), "utf8")).version);

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const library = (file: string): string => here(`../../../node_modules/${file}`);
