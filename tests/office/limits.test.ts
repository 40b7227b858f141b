import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PLAN } from "../../src/functions";
import { openings } from "../functions/tables";
import { Office, PROTOCOLS, type Session } from "./office";

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

/** So many openings of ten drawers each. */
const bench = (count: number): unknown[][] =>
  openings(...Array.from({ length: count }, (_, i) => [`Bay ${i + 1}`, 18 + (i % 32) / 16, 40, 23.25, 10]));

/** The program on the web refuses a larger batch, seen by others there, and the cell hears nothing of it. */
const BATCH_LIMIT = 5_000_000;

describe.each(PROTOCOLS)("answers near the program's limits, protocol of the %s", (protocol) => {
  let session: Session;
  beforeAll(async () => {
    session = await office.open({ protocol, batchLimit: BATCH_LIMIT });
    await session.ready();
  });
  afterAll(() => session.close());

  test("the largest that is given arrives whole", async () => {
    const [answer] = await session.call([["PLAN", [bench(200)]]]);
    globalThis.drawerHost = { showsNumberFormats: true };
    expect(answer!.value).toEqual(PLAN(bench(200)));
    globalThis.drawerHost = undefined;
  });

  test("a larger one is refused with words that arrive, and the next call is answered", async () => {
    const alternates = [
      ["", ...Array.from({ length: 120 }, (_, i) => `${"long ".repeat(6_000)}${i}`)],
      ["side thickness", 0.5],
    ];
    const stock = [
      ["Length", "Width"],
      [96, 48],
    ];
    const [plan] = await session.call([["PLAN", [bench(700)]]]);
    const [compared] = await session.call([["ALTERNATES", [openings(["A", 18, 8, 23.25, 1]), alternates, stock]]]);
    for (const { ok, value } of [plan!, compared!]) {
      expect(ok).toBe(false);
      expect(JSON.stringify(value)).toContain("Give fewer openings or parts a call");
    }
    expect(await session.value("VERSION")).toMatch(/^\d/);
  });
});
