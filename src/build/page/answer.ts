import type { IncomingMessage } from "node:http";
import type { PageFiles } from "./build";

export interface Answer {
  status: number;
  headers: Record<string, string>;
  body: Uint8Array;
}

/**
 * The answer to a request. It is looked at as it is written, and nothing in it is decoded: the files' names need none.
 * @param port the server's own
 */
export function answer(
  files: PageFiles,
  port: number,
  { method, url = "", headers }: Pick<IncomingMessage, "method" | "url" | "headers">,
): Answer {
  if (!isOwnName(headers.host, port)) return inWords(403, `This server answers at http://127.0.0.1:${port}/ alone.`);
  if (method !== "GET" && method !== "HEAD") {
    return inWords(405, "Only GET and HEAD are answered.", { Allow: "GET, HEAD" });
  }
  if (!url.startsWith("/")) return inWords(400, "That is no path.");
  const file = files.get(/^\/([^?#]*)/.exec(url)![1] || "index.html");
  if (!file) return inWords(404, "There is no such file.");
  return { status: 200, headers: { "Content-Type": file.type }, body: file.bytes };
}

/** Another name may have been made to lead here, so that a page of others would count as one of ours. */
const isOwnName = (host: string | undefined, port: number): boolean =>
  ["127.0.0.1", "localhost", "[::1]"].some((name) => {
    const given = host?.toLowerCase();
    return given === `${name}:${port}` || (port === 80 && given === name);
  });

const inWords = (status: number, sentence: string, headers: Record<string, string> = {}): Answer => ({
  status,
  headers: { "Content-Type": "text/plain; charset=utf-8", ...headers },
  body: new TextEncoder().encode(`${sentence}\n`),
});
