import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { ATTRIBUTIONS, attributions, banner, bundledFiles } from "../notices/index";

/** The package's command by the names of its files; it needs no other package beside it. */
export async function buildCommand(): Promise<ReadonlyMap<string, string>> {
  const { outputFiles, metafile } = await bundleCommand();
  return new Map([
    ["recalculate.mjs", outputFiles[0]!.text],
    [ATTRIBUTIONS, attributions("The command recalculate", bundledFiles(metafile))],
  ]);
}

/** The script in memory, with esbuild's account of what is in it. */
export function bundleCommand() {
  const { version } = JSON.parse(readFileSync(here("../../../package.json"), "utf8"));
  return build({
    entryPoints: [here("../../workbook/node/recalculate.ts")],
    outdir: "/",
    outExtension: { ".js": ".mjs" },
    bundle: true,
    write: false,
    metafile: true,
    minify: true,
    platform: "node",
    format: "esm",
    target: "node20.9",
    // A script of one byte a character is read and compiled sooner.
    charset: "ascii",
    legalComments: "none",
    logLevel: "warning",
    // Its modules: of those for Node alone, nothing that nobody calls would stay out.
    alias: { rxjs: rxjs("index.js"), "rxjs/operators": rxjs("operators/index.js") },
    define: { "process.env.NODE_ENV": '"production"' },
    banner: { js: `#!/usr/bin/env node\n${banner(version)}` },
  });
}

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const rxjs = (file: string): string => here(`../../../node_modules/rxjs/dist/esm/${file}`);
