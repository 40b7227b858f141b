import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { SCRIPT_HASH } from "../../shop-pages/index";
import { answer } from "./answer";
import type { PageFiles } from "./build";

/** The page, served on this machine alone. */
export interface PageServer {
  readonly address: string;
  close(): Promise<void>;
}

/** For how many milliseconds somebody is waited for, and how often that is looked at. */
const PATIENCE = { headers: 10_000, request: 30_000, idle: 120_000, checked: 5_000 };

/**
 * Serves the files at 127.0.0.1. Every page that is open in a browser here can ask this server whatever it likes, so
 * nothing that arrives may end it.
 * @param port the one that is wanted; where it is taken, any that is free
 */
export async function servePage(files: PageFiles, port: number, patience = PATIENCE): Promise<PageServer> {
  const server = createServer(
    {
      headersTimeout: patience.headers,
      requestTimeout: patience.request,
      connectionsCheckingInterval: patience.checked,
    },
    (request, response) => {
      const { port: own } = server.address() as AddressInfo;
      const { status, headers, body } = answer(files, own, request);
      response.writeHead(status, { ...headers, "Content-Length": body.length, ...HEADERS });
      response.end(request.method === "HEAD" ? undefined : body);
    },
  );
  server.setTimeout(patience.idle);
  await listen(server, port).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== "EADDRINUSE" && error.code !== "EACCES") throw error;
    return listen(server, 0);
  });
  // A connection that cannot be taken, for want of descriptors for instance, is nobody's end but its own.
  server.on("error", () => undefined);
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
export const POLICY = [
  "default-src 'none'",
  // The pages for the shop, which open as a document of their own, bring the one script that they run.
  `script-src 'self' '${SCRIPT_HASH}'`,
  "worker-src 'self'",
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
  "Cross-Origin-Resource-Policy": "same-origin",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
};
