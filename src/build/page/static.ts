import { createHash } from "node:crypto";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { PageFiles } from "./build";
import { POLICY } from "./server";

/**
 * The page as files that any web space serves, without a program there: each page brings its policy with it, and a
 * service worker keeps the files where the page was opened, for use without a network.
 */
export async function staticFiles(page: PageFiles): Promise<Map<string, Uint8Array>> {
  const files = new Map([...page].map(([name, { bytes }]) => [name, bytes] as const));
  const change = (name: string, into: (html: string) => string): void =>
    void files.set(name, new TextEncoder().encode(into(new TextDecoder().decode(files.get(name)))));
  for (const name of files.keys()) if (name.endsWith(".html")) change(name, withPolicy);
  files.set("offline-start.js", new TextEncoder().encode(START));
  change("index.html", (html) =>
    html.replace("</head>", '  <script type="module" src="offline-start.js"></script>\n  </head>'),
  );
  files.set("offline.js", await keeper(files));
  return files;
}

/** After the page, which is not to wait for it. */
const START = 'addEventListener("load", () => navigator.serviceWorker?.register("offline.js"));\n';

/** Where a page says itself what it may do, the words on who may frame it do not count, and are refused. */
function withPolicy(html: string): string {
  const policy = POLICY.replace(/ ?frame-ancestors [^;]*;/, "");
  return html.replace(
    /<meta charset="utf-8" \/>/i,
    (charset) => `${charset}\n    <meta http-equiv="Content-Security-Policy" content="${policy}" />`,
  );
}

/** All but what only some countries’ texts need, which is kept once it was wanted; the grid wants British hyphens always. */
async function keeper(files: ReadonlyMap<string, Uint8Array>): Promise<Uint8Array> {
  const kept = [...files.keys()].filter((name) => !/^parts\/(?!(chunk|page|libraries|later|en-gb)-)/.test(name)).sort();
  const hash = createHash("sha256");
  for (const name of kept) hash.update(name).update("\n").update(files.get(name)!);
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL("../../workbook/browser/offline/keep.ts", import.meta.url))],
    bundle: true,
    write: false,
    minify: true,
    format: "iife",
    target: "es2022",
    define: { KEPT: JSON.stringify({ name: `groove-and-reveal ${hash.digest("hex").slice(0, 16)}`, files: kept }) },
  });
  return outputFiles[0]!.contents;
}
