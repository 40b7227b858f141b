import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { Office, PROTOCOLS, type Opening, type Session } from "./office";

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

/** An invented instrument maker's own list, and sheets with names that a job would take. */
const SHOP: Opening["sheets"] = [
  {
    name: "Tom's list",
    cells: Object.fromEntries(
      [
        ["Bay", "W (in)", "Tall", "Deep", "Drawer count", "Remarks"],
        ["Strings", 18.0625, 26, 22.5, 3, "by the window"],
        ["Bows", 24, "", 22.5, 2, ""],
      ].flatMap((cells, r) =>
        cells.flatMap((value, c) =>
          value === "" ? [] : [[`${"BCDEFG"[c]}${r + 3}`, { formula: String(value), value }] as const],
        ),
      ),
    ),
  },
  { name: "Quote", cells: { A1: { formula: "Sent in spring" } } },
  { name: "job" },
];

async function opened(opening: Opening): Promise<Session> {
  const session = await office.open({ sheets: SHOP, ...opening });
  await session.inPane("#new-job button", "New job…").click();
  return session;
}
const begin = (session: Session) => session.inPane("#new-job button", "Begin").click();
const done = (session: Session) => session.inPane("#new-job [role=status]", "The job stands on").waitFor();

/** What stands in a cell, what the program makes of it, and its format. */
const cellOf = (session: Session, sheet: string, row: number, column: number) =>
  session.page.evaluate(
    ([name, at]) => {
      const found = window.program.book.sheets.find(({ Name }) => Name === name)!;
      return { ...found.cells.get(at), format: found.formats.get(at) ?? "General" };
    },
    [sheet, `${row - 1},${column}`] as const,
  );

describe.each(PROTOCOLS)("a new job in the spreadsheet program, protocol of the %s", (protocol) => {
  test("stands on sheets beside those that are there: a taken name gets the next free one, and formulas follow", async () => {
    const session = await opened({ protocol });
    const before = await session.page.evaluate(() =>
      window.program.book.sheets.map(({ Name, cells }) => [Name, [...cells]] as const),
    );
    await begin(session);
    await done(session);
    const after = await session.page.evaluate(() =>
      window.program.book.sheets.map(({ Name, cells }) => [Name, [...cells]] as const),
    );
    expect(after.slice(0, 3)).toEqual(before);
    expect(after.slice(3).map(([name]) => name)).toEqual([
      ...["Job 2", "Plan", "Checks", "Prices", "Cut list", "Set-ups", "Hardware", "Mounting", "Fit", "Sheets"],
      ...["Layout", "Cuts", "Quote 2", "Client quote", "Price grid", "Alternates", "What if", "One box", "Workings"],
    ]);
    expect((await cellOf(session, "Plan", 5, 0)).formula).toBe(
      "=DRAWER.PLAN('Job 2'!$A$5:$G$17,'Job 2'!$A$20:$B$" + (await lastStandard(session)) + ")",
    );
    expect(await session.page.evaluate(() => window.program.book.active)).toEqual({ sheet: 3, row: 5, column: 1 });
    expect(session.faults).toEqual([]);
    await session.close();
  });

  test("takes sizes as texts, offers words, stays put at its head, and is printed as it is in the file", async () => {
    const session = await opened({ protocol });
    await begin(session);
    await done(session);
    expect(await cellOf(session, "Job 2", 6, 1)).toMatchObject({ value: "18", format: "@" });
    // 1/2, where nothing is typed, is no date.
    const usual = await session.page.evaluate(() =>
      [...window.program.book.sheets[3]!.cells].filter(([, { value }]) => value === "a date").map(([at]) => at),
    );
    expect(usual).toEqual([]);
    const plan = await session.page.evaluate(() => {
      const { FreezePanes, PageLayout, Gridlines, merged } = window.program.book.sheets.find(
        ({ Name }) => Name === "Plan",
      )!;
      const { Orientation, PaperSize, Zoom, foot, titles } = PageLayout;
      return { rows: FreezePanes.rows, Gridlines, merged, Orientation, PaperSize, Zoom, foot, titles };
    });
    expect(plan).toEqual({
      ...{ rows: 5, Gridlines: false, merged: ["A1:N1", "A2:N2"], Orientation: "Landscape", PaperSize: "Letter" },
      ...{ Zoom: { horizontalFitToPages: 1 }, titles: "$5:$5" },
      foot: { LeftFooter: "&A", CenterFooter: "Page &P of &N", RightFooter: "" },
    });
    const lists = await session.page.evaluate(() =>
      window.program.book.sheets[3]!.looks.filter(({ validation }) => "list" in validation.Rule).map(
        ({ area, validation }) => [area, validation.Rule] as const,
      ),
    );
    expect(lists[0]).toEqual(["B22", { list: { inCellDropDown: true, source: "in,mm" } }]);
    const input = await session.page.evaluate(
      () => window.program.book.sheets[3]!.looks.find(({ format }) => format.Fill.Color === "#FBF1DC")!.area,
    );
    expect(input).toMatch(/^A6:A17|^B6/);
    const names = await session.page.evaluate(() =>
      window.program.book.names.map(({ Name, area }) => [Name, area] as const),
    );
    expect(Object.fromEntries(names)["openings"]).toBe("='Job 2'!$A$5:$G$17");
    await session.close();
  });

  test("follows a table that the shop already has: columns by their headings, a blank stays a blank", async () => {
    const session = await opened({ protocol });
    await session.page.evaluate(() => (window.program.book.selected = [2, 1, 200, 6]));
    await session.inPane("#new-job button", "Use the selected table").click();
    await session.inPane("#new-job p", "2 rows. Which column is which?").waitFor();
    const chosen = (label: string) => session.inPane("#new-job label", label).locator("select").inputValue();
    expect(await chosen("B: Bay")).toBe("Opening");
    expect(await chosen("C: W (in)")).toBe("Width");
    expect(await chosen("F: Drawer count")).toBe("Drawers");
    expect(await chosen("G: Remarks")).toBe("");
    await begin(session);
    await done(session);
    expect((await cellOf(session, "Job 2", 6, 1)).formula).toBe(`=IF('Tom''s list'!C4="","",'Tom''s list'!C4)`);
    expect((await cellOf(session, "Job 2", 7, 2)).formula).toBe(`=IF('Tom''s list'!D5="","",'Tom''s list'!D5)`);
    expect((await cellOf(session, "Plan", 5, 0)).formula).toMatch(/^=DRAWER\.PLAN\('Job 2'!\$A\$5:\$G\$7,/);
    expect(session.faults).toEqual([]);
    await session.close();
  });

  test("a column that was not known is named by hand, and is then no other's", async () => {
    const session = await opened({ protocol });
    await session.page.evaluate(() => (window.program.book.selected = [2, 1, 3, 6]));
    await session.inPane("#new-job button", "Use the selected table").click();
    const column = (label: string) => session.inPane("#new-job label", label).locator("select");
    await column("G: Remarks").selectOption("Width");
    expect(await column("C: W (in)").inputValue()).toBe("");
    await column("G: Remarks").selectOption("");
    await session.inPane("#new-job p", "Width: say which column it is").waitFor();
    await session.close();
  });

  test("says in words why it cannot be: a wrong size, a protected structure, a cell that is edited, nothing selected", async () => {
    const session = await opened({ protocol });
    const said = (text: string) => session.inPane("#new-job [role=status]", text).waitFor();
    const sides = session.inPane("#new-job label", "Box sides").locator("input");
    await sides.fill("thick");
    await begin(session);
    await said("Box sides: write a length, such as 1/2 or 12 mm.");
    await sides.fill("5/8");
    await session.page.evaluate(() => (window.program.book.Protection.Protected = true));
    await begin(session);
    await said("the structure of the workbook is protected");
    await session.page.evaluate(() => {
      window.program.book.Protection.Protected = false;
      window.program.book.isEditing = true;
    });
    await begin(session);
    await said("A cell is being edited.");
    await session.page.evaluate(() => {
      window.program.book.isEditing = false;
      window.program.book.selected = [90, 9, 4, 4];
    });
    await session.inPane("#new-job button", "Use the selected table").click();
    await said("Nothing stands in the selected cells.");
    expect(await session.page.evaluate(() => window.program.book.sheets.length)).toBe(3);
    await session.close();
  });

  test("leaves nothing behind where the program refuses one of the sheets", async () => {
    const session = await opened({ protocol });
    await session.page.evaluate(() => (window.program.book.refuses = "Fit"));
    await begin(session);
    await session.inPane("#new-job [role=status]", "A sheet cannot be called Fit.").waitFor();
    const left = await session.page.evaluate(() => [
      window.program.book.sheets.map(({ Name }) => Name),
      window.program.book.names.map(({ Name }) => Name),
    ]);
    expect(left).toEqual([["Tom's list", "Quote", "job"], []]);
    await session.close();
  });
});

test("a release whose formulas fill one cell each is not offered a job", async () => {
  const sets = { excelapi: "1.11", customfunctions: "1.11", customfunctionsruntime: "1.4", sharedruntime: "1.2" };
  const session = await office.open({ sets: { ...sets, richapiruntime: "1.1" } });
  await session.inPane("#place", "Selected cell").waitFor();
  expect(await session.inPane("#new-job").isVisible()).toBe(false);
  await session.close();
});

/** The row in which the standards end: what is below it is empty. */
const lastStandard = (session: Session): Promise<number> =>
  session.page.evaluate(
    () => 1 + Math.max(...[...window.program.book.sheets[3]!.cells.keys()].map((at) => Number(at.split(",")[0]))),
  );
