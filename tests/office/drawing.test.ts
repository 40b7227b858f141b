import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { Office, PROTOCOLS, type Opening, type Session } from "./office";

let office: Office;
beforeAll(async () => {
  office = await Office.start();
});
afterAll(() => office.close());

/** An invented shop's tool cabinet, and its plan. */
const SHEETS: Opening["sheets"] = [
  {
    name: "Plan",
    cells: {
      A1: { formula: "=DRAWER.PLAN('The job'!A1:E2)", value: "Drawer" },
      C3: { formula: "=SUM(1)", value: 1 },
    },
  },
  {
    name: "The job",
    cells: Object.fromEntries(
      [
        ["Opening", "Width", "Height", "Depth", "Drawers"],
        ["A", 18, 26.25, 23.25, 3],
      ].flatMap((cells, r) =>
        cells.map((value, c) => [`${"ABCDE"[c]}${r + 1}`, { formula: String(value), value }] as const),
      ),
    ),
  },
];

const drawn = (session: Session) => session.inPane("#drawing figure").first();
const widthOf = (session: Session) => drawn(session).locator('[data-of="A Opening width"]').first();
const pictures = (session: Session) =>
  session.page.evaluate(() =>
    window.program.book.sheets[0]!.shapes.map(({ Name, Left, Top, Width, Height, AltTextDescription, Placement }) => ({
      ...{ Name, Left, Top, Width, Height, AltTextDescription, Placement },
    })),
  );

describe.each(PROTOCOLS)("the pane's drawing in the spreadsheet program, protocol of the %s", (protocol) => {
  test("is drawn anew once the workbook has been worked out anew, though the selection stays", async () => {
    const session = await office.open({ protocol, sheets: SHEETS });
    await widthOf(session).getByText("18 in").waitFor();
    await session.page.evaluate(() => {
      window.program.book.sheets[1]!.cells.set("1,1", { formula: "20", value: 20 });
      window.recalculated();
      window.recalculated();
    });
    await widthOf(session).getByText("20 in").waitFor();
    expect(session.faults).toEqual([]);
    await session.close();
  });

  test("goes into the workbook as a picture: to scale, beside the cells, beneath another, renewed where it is put again", async () => {
    const session = await office.open({ protocol, sheets: SHEETS });
    const put = async (title: string, said: string) => {
      const figure = session.inPane("#drawing figure", title);
      await figure.getByRole("button", { name: "Put beside the cells" }).click();
      await figure.getByRole("status").getByText(said).waitFor();
    };
    await put("Front elevation of A", "The picture stands on the sheet Plan");
    await put("Section through A", "The picture stands on the sheet Plan");
    const [elevation, section] = await pictures(session);
    expect(elevation).toMatchObject({ Name: "Front elevation of A", Top: 0, Placement: "OneCell" });
    expect(elevation!.AltTextDescription).toBe("Front elevation of A");
    // Right of column C, where the last content stands.
    expect(elevation!.Left).toBe(3 * 48 + 12);
    expect(section!.Top).toBeCloseTo(elevation!.Height + 12, 3);
    const box = await drawn(session).locator("svg").first().getAttribute("viewBox");
    expect(elevation!.Width).toBeCloseTo((Number(box!.split(" ")[2]) * 72) / 25.4, 1);
    await session.page.evaluate(() =>
      Object.assign(window.program.book.sheets[0]!.shapes[0]!, { Left: 500, Top: 40, Width: 300 }),
    );
    await put("Front elevation of A", "The picture on the sheet Plan is renewed.");
    const after = await pictures(session);
    expect(after.map(({ Name }) => Name)).toEqual([section!.Name, "Front elevation of A"]);
    expect(after[1]).toMatchObject({ Left: 500, Top: 40, Width: 300 });
    expect(session.faults).toEqual([]);
    await session.close();
  });

  test("says why it cannot: the sheet is protected", async () => {
    const session = await office.open({ protocol, sheets: SHEETS });
    await drawn(session).waitFor();
    await session.page.evaluate(() => (window.program.book.sheets[0]!.Protection.Protected = true));
    await drawn(session).getByRole("button", { name: "Put beside the cells" }).click();
    await drawn(session).getByRole("status").getByText("its sheet is protected").waitFor();
    expect(await pictures(session)).toEqual([]);
    await session.close();
  });
});

describe.each(PROTOCOLS)("the shop pages from the spreadsheet program, protocol of the %s", (protocol) => {
  test(`are ${protocol === "web" ? "opened in a tab of their own" : "saved as one file"}, of the workbook's job as it is`, async () => {
    const session = await office.open({ protocol, sheets: SHEETS });
    const html = await (protocol === "web" ? opened(session) : saved(session));
    expect(html).toContain("<title>Shop pages: Tool cabinet</title>");
    expect(html).toContain("3 drawers, sizes in");
    expect(session.faults).toEqual([]);
    await session.close();
  });

  test("are none where no cell plans drawers, in a sentence", async () => {
    const session = await office.open({ protocol, sheets: [{ name: "Empty" }] });
    await session.inPane("#shop-pages button").click();
    await session.inPane("#status", "No cell of this workbook plans drawers").waitFor();
    await session.close();
  });
});

async function opened(session: Session): Promise<string> {
  const [page] = await Promise.all([
    session.page.context().waitForEvent("page"),
    session.inPane("#shop-pages button").click(),
  ]);
  await session.inPane("#status", "The shop pages are open in a tab of their own.").waitFor();
  await page.waitForSelector(".label-sheet");
  return page.content();
}

async function saved(session: Session): Promise<string> {
  const [file] = await Promise.all([
    session.page.waitForEvent("download"),
    session.inPane("#shop-pages button").click(),
  ]);
  await session.inPane("#status", "The shop pages are saved as shop pages.html").waitFor();
  expect(file.suggestedFilename()).toBe("shop pages.html");
  return readFileSync(await file.path(), "utf8");
}
