import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { version } from "../../package.json";
import { Office, PROTOCOLS, type Opening, type Session } from "./office";

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

/** An invented luthier's workbook: a table that has spilled, native formulas over it, over other sheets and names. */
const SHOP: Opening["sheets"] = [
  { name: "Job", cells: { A1: { formula: "Opening" }, B1: { formula: "24", value: 24 } } },
  {
    name: "Plan",
    foot: "Luthier",
    names: { least: "=Job!$B$1" },
    cells: {
      A1: { formula: "Plan" },
      A3: {
        formula: "=DRAWER.PLAN(Job!A1:B1)",
        spills: [
          ["Drawer", "Box width", "Remark"],
          ["A1", 23.0625, "7/16"],
        ],
      },
      E3: { formula: "=SUM(B4:B4)", value: 23.0625 },
      E4: { formula: "=ROWS(A3#)", value: 2 },
      E5: { formula: "=Job!B1*2", value: 48 },
      E6: { formula: "=least+1", value: 25 },
      E7: { formula: '=IF(A1="Quote!A3#",$A$3#,"Job!B1")', value: "Job!B1" },
      F3: { formula: "=DRAWER.BOXWIDTH(24)", value: 23, format: "0.00" },
      F4: { formula: "=1+DRAWER.NONE()", value: "#NAME?" },
    },
  },
  {
    name: "Quote",
    cells: {
      A3: { formula: "=DRAWER.QUOTE(Job!A1:B1)", spills: [["Total"], [719.68]] },
      B3: { formula: "=Plan!B4+MAX(Plan!A3#)", value: 46.125 },
      B4: { formula: "=Plan!B4+Job!B1", value: 47.0625 },
      B5: { formula: '=INDIRECT("Plan!B4")', value: 23.0625 },
      B6: { formula: "=SUM(Rates[Price])", value: 5 },
      B7: { formula: "=SUM(Plan:Quote!A9)", value: 0 },
    },
  },
  { name: "Notes", cells: { A1: { formula: "=Plan!B4", value: 23.0625 } } },
];

const openOn = async (sheet: number, opening: Opening): Promise<Session> => {
  const session = await office.open({ sheets: SHOP, ...opening });
  await session.inPane("#copies button").first().waitFor();
  await session.page.evaluate((active) => {
    window.program.book.active = { sheet: active, row: 0, column: 0 };
    window.program.book.tables = { Rates: "Job" };
  }, sheet);
  return session;
};
const freeze = (session: Session, what: "this sheet" | "all sheets") =>
  session.inPane("#copies button", `Freeze ${what}`).click();
const said = (session: Session, text: string) => session.inPane("#status", text).waitFor();

/** What stands in a sheet's cells, by name and by row and column. */
const cellsOf = (session: Session, name: string) =>
  session.page.evaluate((wanted) => {
    const { cells, formats } = window.program.book.sheets.find(({ Name }) => Name === wanted)!;
    return Object.fromEntries([...cells].map(([at, { formula, value }]) => [at, [formula, value, formats.get(at)]]));
  }, name);
const everything = (session: Session) =>
  session.page.evaluate(() =>
    window.program.book.sheets.slice(0, 4).map(({ Name, cells, formats }) => [Name, [...cells], [...formats]]),
  );
const names = (session: Session) => session.page.evaluate(() => window.program.book.sheets.map(({ Name }) => Name));

const date = (): string => {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
};

describe.each(PROTOCOLS)("a frozen copy in the spreadsheet program, protocol of the %s", (protocol) => {
  test("of one sheet holds results of ours, and what it took from elsewhere, as values; native formulas over itself stay", async () => {
    const session = await openOn(1, { protocol });
    const before = await everything(session);
    await freeze(session, "this sheet");
    const copy = `Plan ${date()}`;
    await said(session, `The copy stands on the new sheet ${copy}.`);
    const { "2,0": first, ...cells } = await cellsOf(session, copy);
    expect(first).toEqual(["Drawer", "Drawer", undefined]);
    expect(cells).toMatchObject({
      "3,1": ["23.0625", 23.0625, undefined],
      // A text that looks like a date stays a text.
      "3,2": ["7/16", "7/16", undefined],
      "2,4": ["=SUM(B4:B4)", expect.anything(), undefined],
      "3,4": ["=ROWS(A3:C4)", expect.anything(), undefined],
      "4,4": ["48", 48, undefined],
      "5,4": ["25", 25, undefined],
      "6,4": ['=IF(A1="Quote!A3#",$A$3:$C$4,"Job!B1")', expect.anything(), undefined],
      "2,5": ["23", 23, "0.00"],
      "3,5": ["#NAME?", "#NAME?", undefined],
    });
    // What was there is as it was.
    expect(await everything(session)).toEqual(before);
    expect(await names(session)).toEqual(["Job", "Plan", "Quote", "Notes", copy]);
    expect(session.faults).toEqual([]);
    await session.close();
  });

  test("tells its date and version: in its name, its properties, and at the foot where nothing stands", async () => {
    const session = await openOn(2, { protocol });
    await freeze(session, "all sheets");
    await said(session, `The copies stand on 2 new sheets, Plan ${date()} first.`);
    const told = await session.page.evaluate(() =>
      window.program.book.sheets.slice(4).map(({ properties, PageLayout }) => [properties, PageLayout.foot.LeftFooter]),
    );
    const properties = { "Values of": date(), "Values by": `Groove & Reveal ${version}` };
    expect(told).toEqual([
      [properties, "Luthier"],
      [properties, `&8Values of ${date()}, Groove && Reveal ${version}`],
    ]);
    expect(await session.page.evaluate(() => window.program.book.active.sheet)).toBe(4);
    await session.close();
  });

  test("of all sheets that call our functions reads its own copies, and holds values of the sheets that go on changing", async () => {
    const session = await openOn(0, { protocol });
    await freeze(session, "all sheets");
    await said(session, "The copies stand on 2 new sheets");
    const [plan, quote] = [`Plan ${date()}`, `Quote ${date()}`];
    expect(await names(session)).toEqual(["Job", "Plan", "Quote", "Notes", plan, quote]);
    expect(await cellsOf(session, quote)).toMatchObject({
      "2,0": ["Total", "Total", undefined],
      "3,0": ["719.68", 719.68, undefined],
      "2,1": [`='${plan}'!B4+MAX('${plan}'!A3:C4)`, expect.anything(), undefined],
      "3,1": ["47.0625", 47.0625, undefined],
      "4,1": ["23.0625", 23.0625, undefined],
      "5,1": ["5", 5, undefined],
      "6,1": ["0", 0, undefined],
    });
    await session.close();
  });

  test("a name that is taken gets a number, and a long one room for it", async () => {
    const long = "A very long name of a sheet, yes";
    const session = await openOn(1, {
      protocol,
      sheets: [
        ...SHOP,
        { name: `PLAN ${date()}` },
        { name: long.slice(0, 31), cells: { A1: { formula: "=DRAWER.VERSION()" } } },
      ],
    });
    await freeze(session, "all sheets");
    await said(session, "The copies stand on 3 new sheets");
    expect((await names(session)).slice(6)).toEqual([
      `Plan ${date()} (2)`,
      `Quote ${date()}`,
      `${long.slice(0, 20)} ${date()}`,
    ]);
    await session.close();
  });

  test("says in words why it cannot be, and leaves nothing behind", async () => {
    const session = await openOn(3, { protocol });
    const refused = async (what: "this sheet" | "all sheets", text: string) => {
      await freeze(session, what);
      await said(session, text);
      expect(await names(session)).toEqual(["Job", "Plan", "Quote", "Notes"]);
    };
    await refused("this sheet", "This sheet calls none of the functions");
    await session.page.evaluate(() => (window.program.book.Protection.Protected = true));
    await refused("all sheets", "the structure of the workbook is protected");
    await session.page.evaluate(() => {
      window.program.book.Protection.Protected = false;
      window.program.book.sheets[2]!.Protection.Protected = true;
    });
    await refused("all sheets", "The cell may not be changed");
    await session.page.evaluate((copy) => {
      window.program.book.sheets[2]!.Protection.Protected = false;
      window.program.book.refuses = copy;
    }, `Quote ${date()}`);
    await refused("all sheets", `A sheet cannot be called Quote ${date()}.`);
    await session.page.evaluate(() => {
      window.program.book.refuses = undefined;
      window.program.book.sheets[1]!.cells.get("2,5")!.value = "#BUSY!";
    });
    await refused("all sheets", "Some results are still being worked out.");
    expect(session.faults).toEqual([]);
    await session.close();
  });
});

test("a release that cannot tell what has spilled is not offered a copy", async () => {
  const session = await office.open({
    sets: {
      excelapi: "1.11",
      customfunctions: "1.11",
      customfunctionsruntime: "1.4",
      sharedruntime: "1.2",
      richapiruntime: "1.1",
    },
  });
  await session.inPane("#place", "Selected cell").waitFor();
  expect(await session.inPane("#copies").isVisible()).toBe(false);
  await session.close();
});
