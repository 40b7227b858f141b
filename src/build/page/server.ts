import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import type { PageFiles } from "./build";

/** The page, served on this machine alone. */
export interface PageServer {
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves the files at 127.0.0.1.
 * @param port the one that is wanted; where it is taken, any that is free
 */
export async function servePage(files: PageFiles, port: number): Promise<PageServer> {
  const server = createServer((request, response) => {
    const name = new URL(request.url ?? "/", "http://page").pathname.slice(1) || "index.html";
    const file = request.method === "GET" || request.method === "HEAD" ? files.get(name) : undefined;
    if (!file) {
      response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" }).end("There is no such file.\n");
      return;
    }
    response.writeHead(200, { "Content-Type": file.type, "Content-Length": file.bytes.length, ...HEADERS });
    response.end(request.method === "HEAD" ? undefined : file.bytes);
  });
  await listen(server, port).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== "EADDRINUSE" && error.code !== "EACCES") throw error;
    return listen(server, 0);
  });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

const listen = (server: Server, port: number): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      resolve();
    });
  });

/**
 * Nothing but what is served here, with two exceptions that the grid's library needs: styles in elements and in
 * attributes ('unsafe-inline'), by which it places its popups and editor, and the small pictures in its own script
 * (data:), which mark cells. No code is made out of texts, and nothing is asked from elsewhere.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "frame-src 'self'",
  "frame-ancestors 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const HEADERS = {
  "Content-Security-Policy": POLICY,
  "Cache-Control": "no-store",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
};
