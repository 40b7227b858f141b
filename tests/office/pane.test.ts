import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { Office, PROTOCOLS } from "./office";

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

describe.each(PROTOCOLS)("the pane beside a workbook, protocol of the %s", (protocol) => {
  test("puts a standard and its value into two empty cells as texts, so that 1/8 is no date, and writes over nothing", async () => {
    const session = await office.open({ protocol, sheets: [{ name: "Job", cells: { B2: { formula: "18" } } }] });
    await session.inPane("#place", "Selected cell").waitFor();
    await session.inPane("#query").fill("front gap");
    await session.inPane("#found summary").first().click();
    const insert = session.inPane("#found button", "1/8 in").first();
    await insert.click();
    await session.inPane("#status", "front gap, 1/8 in now stands in Job!A1:B1.").waitFor();
    const { written, formatted } = await session.page.evaluate(() => window.program.book);
    expect(written).toEqual([
      { address: "Job!A1", formula: "front gap" },
      { address: "Job!B1", formula: "1/8 in" },
    ]);
    expect(formatted).toEqual([{ address: "Job!A1:B1", format: "@" }]);
    await session.page.evaluate(() => window.changeSelection(0, 1, 0));
    await session.inPane("#place", "Job!A2").waitFor();
    await insert.click();
    await session.inPane("#status", "Job!A2:B2 is not empty and was left as it is.").waitFor();
    expect(await session.page.evaluate(() => window.program.book.written.length)).toBe(2);
    expect(session.faults).toEqual([]);
    await session.close();
  });

  test("lists the findings of the selected job, and selects the cell at fault of the one that is chosen", async () => {
    const row = (number: number, cells: readonly (string | number)[]) =>
      cells.map((value, i) => [`${"ABCDE"[i]}${number}`, { formula: String(value), value }] as const);
    const cells = Object.fromEntries([
      ...row(1, ["Opening", "Width", "Height", "Depth", "Drawers"]),
      ...row(2, ["A", 18, 26.25, 23.25, 3]),
      ...row(3, ["B", 24, 26.25, 9, 1]),
    ]);
    const plan = { formula: "=DRAWER.PLAN('The job'!A1:E3)", value: "Drawer" };
    const sheets = [
      { name: "Plan", cells: { A1: plan } },
      { name: "The job", cells },
    ];
    const session = await office.open({ protocol, sheets });
    const finding = session.inPane("button.finding", "No slide fits");
    await finding.waitFor();
    expect(await session.inPane("#findings-title").textContent()).toMatch(/^Findings: 1 wrong, /);
    await finding.click();
    await session.inPane("#status", "The job!D3 is selected.").waitFor();
    expect(await session.page.evaluate(() => window.program.book.active)).toEqual({ sheet: 1, row: 2, column: 3 });
    expect(session.faults).toEqual([]);
    await session.close();
  });
});
