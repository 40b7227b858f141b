import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildPage, typeOf } from "../../src/build/page/build";
import { staticFiles } from "../../src/build/page/static";
import { openDesk, type Desk } from "./desk";

/** A plain web space, below a folder, that compresses what it sends and counts it. */
const space = { sent: 0, forThePage: 0, isDown: false };
let desk: Desk;
beforeAll(async () => {
  const files = await staticFiles(await buildPage());
  const server = createServer((request, response) => {
    const name = new URL(request.url!, "http://space").pathname.replace(/^\/workbook\//, "") || "index.html";
    const bytes = space.isDown ? undefined : files.get(name);
    if (!bytes) return void response.writeHead(404).end();
    const body = gzipSync(bytes);
    space.sent += body.length;
    // What is kept comes after the page.
    if (name === "offline.js") space.forThePage = space.sent;
    response.writeHead(200, { "Content-Type": typeOf(name), "Content-Encoding": "gzip" });
    response.end(body);
  });
  await new Promise<void>((listening) => void server.listen(0, "127.0.0.1", listening));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/workbook/`;
  desk = await openDesk(undefined, Promise.resolve({ address, close: async () => void server.close() }));
}, 120_000);
afterAll(() => desk.close());

test("static files in a folder of any web space are the page, and work without a network from then on", async () => {
  const visit = await desk.visit();
  await visit.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const { sent } = space;
  expect(space.forThePage).toBeGreaterThan(1_000_000);
  expect(space.forThePage).toBeLessThan(3_000_000);

  space.isDown = true;
  await visit.page.reload();
  await visit.ready();
  expect(await visit.page.title()).toContain("Groove & Reveal");
  expect(space.sent).toBe(sent);
  const pane = visit.page.frameLocator("iframe").first();
  await pane.locator("body").waitFor();
  expect(visit.faults).toEqual([]);
  expect(visit.elsewhere).toEqual([]);
});
