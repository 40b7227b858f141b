import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { Office, PROTOCOLS } from "./office";
import type { SheetSpec } from "./program/book";

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

const asleep = (formula: string) => ({ formula, value: "#NAME?" });

/** A bicycle workshop's book that was opened before the add-in had loaded. */
const SHEETS: SheetSpec[] = [
  {
    name: "Bench",
    cells: {
      A1: { formula: "Opening" },
      B7: asleep("=DRAWER.BOXWIDTH(24)"),
      AB900: asleep("=DRAWER.PLAN(A1:E4)"),
      C3: asleep("=foo(1)"),
      C4: asleep("=DRAWER.NOSUCH(1)"),
      C5: { formula: "=DRAWER.BOXWIDTH(30)", value: 29 },
    },
  },
  { name: "Empty" },
  { name: "Spare parts", isProtected: true, cells: { A1: asleep("=DRAWER.TAPE(B1)") } },
  { name: "Old file", cells: { D2: asleep("=_xldudf_DRAWER_LENGTH(A1)") } },
];

const WRITTEN = [
  { address: "Bench!B7", formula: "=DRAWER.BOXWIDTH(24)" },
  { address: "Bench!AB900", formula: "=DRAWER.PLAN(A1:E4)" },
  { address: "'Old file'!D2", formula: "=DRAWER.LENGTH(A1)" },
];

describe.each(PROTOCOLS)("cells that show #NAME? though the functions are there, protocol of the %s", (protocol) => {
  test("are found, counted and named, woken by one button, and no other cell is touched", async () => {
    const session = await office.open({ protocol, sheets: SHEETS });
    const said = session.inPane("#stuck p");
    await said.waitFor();
    expect(await said.textContent()).toBe(
      "4 cells of this workbook show #NAME?, for the spreadsheet knew no drawer functions yet when it came to them: " +
        "2 on Bench, 1 on Spare parts, 1 on Old file. Spare parts is protected: unprotect it first.",
    );
    await session.inPane("#stuck button").click();
    await session.inPane("#status", "3 cells are being worked out.").waitFor();
    expect(await session.page.evaluate(() => window.program.book.written)).toEqual(WRITTEN);
    expect(await said.textContent()).toMatch(/^1 cell of this workbook shows .* 1 on Spare parts\./);
    // No answer of the program holds more cells than it can carry.
    expect(Math.max(...(await session.page.evaluate(() => window.program.book.blocks)))).toBeLessThanOrEqual(20_000);
    await session.close();
  });
});

test("a book without such cells is not spoken of, and none of its cells is written", async () => {
  const session = await office.open({
    sheets: [SHEETS[1]!, { name: "Fine", cells: { A1: { formula: "=1", value: 1 } } }],
  });
  await session.inPane("#place", "Selected cell").waitFor();
  await session.page.waitForFunction(() => window.program.book.blocks.length > 2, undefined, { polling: 50 });
  expect(await session.inPane("#stuck").isVisible()).toBe(false);
  expect(await session.page.evaluate(() => window.program.book.written)).toEqual([]);
  await session.close();
});
