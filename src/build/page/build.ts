import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { functionFiles } from "../function-files";
import { functionReference } from "../function-reference";
import { guideFiles, guideReference } from "../guide/index";
import { exampleFiles } from "../../workbook/browser/example/make";
import { ATTRIBUTIONS, attributions, banner, bundledFiles } from "../notices/index";
import { withColors } from "../styles";
import { characterSets } from "./character-sets";
import { lightGrid } from "./light-grid";
import { panePage } from "./pane-page";
import { withPreloads } from "./preloads";

/** The page's files by name: everything that the embedded workbook needs, and nothing from elsewhere. */
export type PageFiles = ReadonlyMap<string, { type: string; bytes: Uint8Array }>;

/**
 * Builds the grid, the worker that works its workbook out, and the pane beside it.
 * @param start the module that starts the page
 */
export async function buildPage(start?: string): Promise<PageFiles> {
  const { outputFiles, metafile } = await bundlePage(start);
  const files = new Map(outputFiles.map(({ path, contents }) => [path.slice(1), contents]));
  const page = readFileSync(here("../../workbook/browser/index.html"), "utf8");
  files.set("index.html", new TextEncoder().encode(withPreloads(page, metafile)));
  files.set("icon.svg", readFileSync(here("../../../manifest/icon.svg")));
  files.set(
    "taskpane.css",
    new TextEncoder().encode(withColors(readFileSync(here("../../taskpane/taskpane.css"), "utf8"))),
  );
  files.set(
    "pane.html",
    new TextEncoder().encode(panePage(readFileSync(here("../../taskpane/taskpane.html"), "utf8"))),
  );
  for (const [name, bytes] of [...guideFiles(), ...exampleFiles()]) files.set(name, bytes);
  files.set(ATTRIBUTIONS, new TextEncoder().encode(attributions("The page", bundledFiles(metafile))));
  return new Map([...files].map(([name, bytes]) => [name, { type: typeOf(name), bytes }]));
}

/** The scripts and styles in memory, with esbuild's account of what is in them. */
export function bundlePage(start = here("../../workbook/browser/main.ts")) {
  const reference = functionReference(functionFiles(here("../../functions")));
  const { version } = JSON.parse(readFileSync(here("../../../package.json"), "utf8"));
  return build({
    entryPoints: {
      grid: start,
      worker: here("../../workbook/browser/worker/worker.ts"),
      pane: here("../../taskpane/index.ts"),
      "better-sheets": here("../../taskpane/better-sheets/worker.ts"),
    },
    outdir: "/",
    bundle: true,
    // What only some countries' texts need stands in files of its own, which are fetched when they are wanted.
    splitting: true,
    chunkNames: "parts/[name]-[hash]",
    write: false,
    metafile: true,
    minify: true,
    format: "esm",
    target: "es2022",
    charset: "utf8",
    legalComments: "none",
    banner: { js: banner(version), css: banner(version) },
    logLevel: "warning",
    plugins: [characterSets, lightGrid],
    // Its form for bundlers: what nobody calls of it stays out, and nothing of it is read before it is called.
    alias: { "opentype.js": "opentype.js/dist/opentype.mjs" },
    define: {
      FUNCTION_REFERENCE: JSON.stringify(reference),
      GUIDE_REFERENCE: JSON.stringify(guideReference()),
      "process.env.NODE_ENV": '"production"',
    },
    loader: { ".woff": "dataurl", ".woff2": "dataurl", ".ttf": "dataurl" },
  });
}

/** A file's media type, by its ending. */
export const typeOf = (name: string): string => TYPES[name.split(".").at(-1)!]!;

const TYPES: Record<string, string> = {
  html: "text/html; charset=utf-8",
  js: "text/javascript; charset=utf-8",
  css: "text/css; charset=utf-8",
  svg: "image/svg+xml",
  json: "application/json; charset=utf-8",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  txt: "text/plain; charset=utf-8",
};

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
