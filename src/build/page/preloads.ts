import { relative } from "node:path";
import type { Metafile } from "esbuild";

/** Names in the page all parts of its script, which would else be asked for only when the part before them has come. */
export function withPreloads(page: string, { outputs }: Metafile): string {
  const links = partsOf("grid.js", outputs).map((name) => `    <link rel="modulepreload" href="${name}" />\n`);
  return page.replace("  </head>", `${links.join("")}  </head>`);
}

/** What the script imports, and what it fetches itself at once; not what its parts fetch when it is wanted. */
function partsOf(script: string, outputs: Metafile["outputs"]): string[] {
  const parts = new Set<string>();
  const follow = (path: string, kinds: readonly string[]): void => {
    for (const imported of outputs[path]!.imports) {
      if (imported.external || !kinds.includes(imported.kind) || parts.has(imported.path)) continue;
      parts.add(imported.path);
      follow(imported.path, ["import-statement"]);
    }
  };
  // The account knows files by where they lie, seen from here.
  follow(relative("", `/${script}`), ["import-statement", "dynamic-import"]);
  return [...parts].map((path) => relative("/", path));
}
