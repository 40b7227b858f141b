import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

/** A page with nothing in it but the shelf, for what it does in a real browser. */
export async function serveShelf(): Promise<{ address: string; close(): Promise<void> }> {
  const { outputFiles } = await build({
    stdin: {
      contents: `import { takeShelf } from "./storage"; window.takeShelf = takeShelf; document.body.id = "ready";`,
      resolveDir: fileURLToPath(new URL("../../src/workbook/browser", import.meta.url)),
      loader: "ts",
    },
    bundle: true,
    write: false,
    format: "esm",
    target: "es2022",
  });
  const server = createServer(({ url }, response) =>
    url === "/shelf.js"
      ? response.setHeader("Content-Type", "text/javascript").end(outputFiles[0]!.text)
      : response.setHeader("Content-Type", "text/html").end(`<body><script type="module" src="/shelf.js"></script>`),
  );
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
