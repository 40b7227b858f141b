import { afterAll, beforeAll, describe, test } from "vitest";
import { Office, PROTOCOLS, type Opening, type Protocol } from "./office";
import type { Answered } from "./program/program";

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

const CALL = { id: 1, name: "BOXWIDTH", values: [24], flags: 12, address: "[Book.xlsx]Sheet1!A1" };
const answered = () => window.program?.results.has(1);

/** What `=DRAWER.BOXWIDTH(24)` shows in a workbook that is opened while the add-in loads. */
async function onOpening(opening: Opening): Promise<Answered> {
  const session = await office.open({ ...opening, calls: [CALL] });
  try {
    await session.page.waitForFunction(answered, undefined, { polling: 50 });
    return await session.page.evaluate(() => window.program.results.get(1)!);
  } finally {
    await session.close();
  }
}

const result = (value: unknown): Answered => ({ ok: true, value });
const RIGHT = result({ type: "Double", basicValue: 23, numberFormat: "# ??/??" });

/** What the page loads, and what that loads; the scripts first. */
const files = (protocol: Protocol): string[] => [
  "taskpane.js",
  "office.js",
  protocol === "web" ? "excel-web-16.00.js" : "excel-win32-16.01.js",
  "functions.js",
  "office_strings.js",
  "taskpane.css",
  "icon-64.png",
];

const scripts = (protocol: Protocol): string[] => files(protocol).slice(0, 4);

/** Each script first and each last, the others in both orders: so of every two, either comes before the other. */
const orders = (list: readonly string[]): string[][] => {
  const turned = (by: number) => [...list.slice(by), ...list.slice(0, by)];
  return list.flatMap((_, by) => [turned(by), turned(by).reverse()]);
};

/** Further apart than what each takes to run. */
const inOrder = (order: readonly string[]): Record<string, number> =>
  Object.fromEntries(order.map((file, i) => [file, 400 * i]));

// Most of this is waiting, and can be done side by side.
describe.concurrent.each(PROTOCOLS)("a cell that calculates as the workbook opens, protocol of the %s", (protocol) => {
  test.for(files(protocol))("is right, its fraction too, with %s 5 s late", async (file, { expect }) => {
    expect(await onOpening({ protocol, late: { [file]: 5_000 } })).toEqual(RIGHT);
  });

  test.for(orders(scripts(protocol)))("is right with %s, %s, %s, %s in this order", async (order, { expect }) => {
    expect(await onOpening({ protocol, late: inOrder(order) })).toEqual(RIGHT);
  });

  test("is right once functions.js comes at all, and the pane says what it waits for until then", async ({
    expect,
  }) => {
    const session = await office.open({ protocol, lacking: { "functions.js": 2 }, calls: [CALL] });
    await session.inPane("#trouble", "have not loaded").waitFor();
    expect(await session.page.evaluate(answered)).toBe(false);
    await session.page.waitForFunction(answered, undefined, { polling: 50 });
    expect(await session.page.evaluate(() => window.program.results.get(1))).toEqual(RIGHT);
    await session.inPane("#trouble", /^$/).waitFor({ state: "attached" });
    await session.close();
  });
});

describe.concurrent("a length in a release", () => {
  const sets = (excelapi: string, customfunctionsruntime: string) => ({
    ...{ excelapi, customfunctionsruntime },
    ...{ customfunctions: "1.11", sharedruntime: "1.2", richapiruntime: "1.1" },
  });

  test.for(PROTOCOLS)("before ExcelApi 1.19 is a FormattedNumber, protocol of the %s", async (protocol, { expect }) => {
    expect(await onOpening({ protocol, sets: sets("1.18", "1.4") })).toEqual(
      result({ type: "FormattedNumber", basicValue: 23, numberFormat: "# ??/??" }),
    );
  });

  test.for(PROTOCOLS)(
    "before CustomFunctionsRuntime 1.4 is a number, protocol of the %s",
    async (protocol, { expect }) => {
      expect(await onOpening({ protocol, sets: sets("1.14", "1.3") })).toEqual(result(23));
    },
  );
});

test.each(PROTOCOLS)(
  "a pane that starts while a cell is edited follows the selection, protocol of the %s",
  async (protocol) => {
    const session = await office.open({ protocol, isEditing: true });
    const place = (text: string) => session.inPane("#place", text).waitFor();
    await place("Select an empty cell");
    await session.page.evaluate(() => (window.program.book.isEditing = false));
    await place("Selected cell: Sheet1!A1");
    await session.page.evaluate(() => window.changeSelection(0, 6, 2));
    await place("Selected cell: Sheet1!C7");
    await session.close();
  },
);
