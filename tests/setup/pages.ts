import { buildPage } from "../../src/build/page/build";
import { servePage } from "../../src/build/page/server";
import { INSIDE } from "../browser/inside/index";

/** Where tests find the pages that are built once for all of them: addresses by the module that starts each. */
export const SERVED = "SERVED_PAGES";

export default async function setup(): Promise<() => Promise<void>> {
  const starts = [undefined, INSIDE];
  const servers = await Promise.all(starts.map(async (start) => servePage(await buildPage(start), 0)));
  process.env[SERVED] = JSON.stringify(Object.fromEntries(servers.map(({ address }, i) => [starts[i] ?? "", address])));
  return async () => void (await Promise.all(servers.map((server) => server.close())));
}
