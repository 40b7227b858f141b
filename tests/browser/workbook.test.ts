import ExcelJS from "exceljs";
import { unzipSync } from "fflate";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { openingCell } from "../workbook/support/bench-places";
import { BOX_WIDTH, FREE, HEIGHT, WIDTH, WIDTHS } from "./bench";
import { openDesk, type Desk, type Visit } from "./desk";
import { shopWorkbook } from "./shop-workbook";

let desk: Desk;
let visit: Visit;

beforeAll(async () => {
  desk = await openDesk();
  visit = await desk.visit();
});
afterAll(() => desk.close());

beforeEach(() => visit.startOver());
afterEach(() => {
  expect(visit.faults).toEqual([]);
  expect(visit.elsewhere).toEqual([]);
});

describe("the grid", () => {
  test("opens with the parts bench, and shows what the worked example says", async () => {
    expect(await visit.selection()).toEqual({ address: `Job!${WIDTH}`, formula: "18", value: "18" });
    await visit.sheet("Plan");
    expect((await visit.at("G11")).value).toBe(7.5);
    expect((await visit.at("G13")).value).toBe(16.75);
    await visit.expectAt(BOX_WIDTH, 17);
  });

  test("works out everything that follows from an input", async () => {
    await visit.enter(openingCell("B", "Drawers"), "5");
    await expect.poll(async () => (await visit.at("A4")).value).toMatch(/^Planned: 10 drawers\. Checks: 0 wrong, /);
    await visit.sheet("Plan");
    await visit.expectValue("D13", 5.4375);
    await visit.expectValue("A13", "B5");
    await visit.expectValue("A14", "C1");
  });

  test("offers our functions as they are typed, explains their arguments, and takes an offered name", async () => {
    await visit.sheet("Prices");
    await visit.goTo("J5");
    await visit.page.keyboard.type("=DRAWER.BOXW");
    const offer = visit.page.getByText("DRAWER.BOXWIDTH", { exact: true }).first();
    await offer.waitFor();
    await visit.page.keyboard.press("Tab");
    await visit.page
      .getByText(/opening_width/)
      .first()
      .waitFor();
    await visit.page.keyboard.type("24");
    await visit.page.keyboard.press("Enter");
    await visit.expectValue("J5", 23);
    expect((await visit.selection()).formula).toBe("=DRAWER.BOXWIDTH(24)");
  });

  test("offers and explains the spreadsheet program's own functions too", async () => {
    await visit.goTo("J6");
    await visit.page.keyboard.type("=XLOOK");
    await visit.page.getByText("XLOOKUP", { exact: true }).first().waitFor();
    await visit.page.keyboard.press("Tab");
    await visit.page
      .getByText(/lookup_array/)
      .first()
      .waitFor();
    for (let i = 0; i < 3; i++) await visit.page.keyboard.press("Escape");
    expect((await visit.selection()).formula).toBe("");
  });

  test("spills, and reads a spilled range by its first cell and #", async () => {
    await visit.enter("M8", '=DRAWER.FRONTHEIGHTS("27 5/8", "1 part; 2 parts", 0.125, 0, 0, "1/16")');
    await visit.expectValue("M9", 18.375);
    await visit.enter("N8", "=SUM(M8#)");
    await visit.expectValue("N8", 27.5);
    expect((await visit.selection()).formula).toBe("=SUM(M8#)");
    await visit.enter("M9", "in the way");
    expect(await visit.at("M8")).toMatchObject({ value: "#SPILL!", message: expect.stringContaining("not empty") });
  });

  test("shows what formulas have spilled, in a workbook that was opened after another too", async () => {
    await visit.sheet("Plan");
    await visit.goTo("A6");
    await visit.page.keyboard.press("Control+c");
    await expect.poll(() => visit.page.evaluate(() => navigator.clipboard.readText())).toMatch(/^A1\s*$/);
  });

  test("shows rules about looks: the cheapest and the roomiest choice stand out, and others where prices change", async () => {
    await visit.sheet("Price grid");
    await expect.poll(async () => (await marked(visit, "#ffd766")).length).toBe(2);
    const [cheapest, roomiest] = await marked(visit, "#ffd766");
    // The cheapest stands in the upper grid to the left, the roomiest in the lower one to the right.
    expect(cheapest!.left).toBeLessThan(roomiest!.left);
    expect(cheapest!.top).toBeLessThan(roomiest!.top);
    // Another width gets cheaper; the price that was the least is what it was.
    await visit.enter("D14", "12");
    await expect.poll(async () => (await marked(visit, "#ffd766"))[0]!.left).toBeGreaterThan(cheapest!.left);
    await visit.sheet("Job");
    await expect.poll(() => marked(visit, "#ffd766")).toEqual([]);
  });

  test("shows the result of a formula that is typed over one with the same result", async () => {
    const shown = async () => {
      await visit.page.keyboard.press("Control+c");
      return (await visit.page.evaluate(() => navigator.clipboard.readText())).trim();
    };
    await visit.enter(FREE, `=DRAWER.BOXWIDTH(${WIDTH})`);
    await visit.expectValue(FREE, 17);
    for (const formula of [`=${WIDTH}-1`, `=${WIDTH}-1`]) {
      await visit.enter(FREE, formula);
      await visit.expectValue(FREE, 17);
      await expect.poll(shown).toBe("17");
    }
    await visit.goTo(FREE);
    await expect.poll(shown).toBe("17");
  });

  test("shows a length in inches as a fraction where the cell has no format", async () => {
    await visit.enter(FREE, "=DRAWER.BOXWIDTH(24.4375)");
    await visit.expectValue(FREE, 23.4375);
    await visit.page.keyboard.press("Control+c");
    await expect.poll(() => visit.page.evaluate(() => navigator.clipboard.readText())).toMatch(/^23\s+7\/16\s*$/);
  });

  test("reads a typed fraction as a length, never as a date", async () => {
    await visit.enter(FREE, "7/16");
    await visit.expectValue(FREE, 0.4375);
    await visit.enter(WIDTH, "20 1/2");
    await visit.expectAt(BOX_WIDTH, 19.5);
  });

  test("leaves a cell as it is that is opened for editing and closed again", async () => {
    await visit.goTo(HEIGHT);
    await visit.page.keyboard.press("F2");
    await visit.page.keyboard.press("Enter");
    await visit.expectValue(HEIGHT, "26 1/4");
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
  });

  test("copies a formula, whose references move with it", async () => {
    await visit.enter("M9", "=DRAWER.ENDLENGTH(M8,Job!$B$6)");
    await visit.goTo("M9");
    await visit.page.keyboard.press("Control+c");
    await visit.goTo("N12");
    await visit.page.keyboard.press("Control+v");
    await expect.poll(async () => (await visit.selection()).formula).toBe("=DRAWER.ENDLENGTH(N11,Job!$B$6)");
    await expect.poll(async () => (await visit.selection()).message).toContain("box_width is blank");
  });

  test("says why a formula is not worked out", async () => {
    await visit.enter(FREE, "=NOSUCH(1)");
    await visit.expectValue(FREE, "#NAME?");
    expect((await visit.selection()).message).toContain("calls NOSUCH, which is not known here");
  });

  test("takes back and does again", async () => {
    await visit.enter(WIDTH, "20");
    await visit.expectAt(BOX_WIDTH, 19);
    await visit.page.click("#undo");
    await visit.expectAt(BOX_WIDTH, 17);
    await visit.page.click("#redo");
    await visit.expectAt(BOX_WIDTH, 19);
    await visit.page.keyboard.press("Control+z");
    await visit.expectAt(BOX_WIDTH, 17);
    await expect.poll(() => visit.page.textContent("#file-state")).toBe("");
  });

  test("changes cells alone, and says so", async () => {
    await visit.goTo(WIDTH);
    await visit.page.keyboard.press("Control+b");
    await visit.page
      .getByRole("alert")
      .getByText(/Only what stands in cells/)
      .waitFor();
  });
});

/** Where the grid's picture has fields of a color, from the top. */
async function marked({ page }: Visit, color: string): Promise<{ left: number; top: number }[]> {
  return page.evaluate((wanted) => {
    const rgb = [1, 3, 5].map((at) => Number.parseInt(wanted.slice(at, at + 2), 16));
    const found: { left: number; top: number; bottom: number }[] = [];
    for (const canvas of document.querySelectorAll<HTMLCanvasElement>("#grid canvas")) {
      const { width, height } = canvas;
      if (width === 0 || height === 0) continue;
      const { data } = canvas.getContext("2d")!.getImageData(0, 0, width, height);
      for (let y = 0; y < height; y++) {
        for (let x = 0; x < width; x++) {
          const at = (y * width + x) * 4;
          if (rgb.some((channel, i) => data[at + i] !== channel)) continue;
          const field = found.find(({ bottom }) => y - bottom <= 20);
          if (field) field.bottom = y;
          else found.push({ left: x, top: y, bottom: y });
        }
      }
    }
    return found.map(({ left, top }) => ({ left, top }));
  }, color);
}

describe("the pane", () => {
  test("shows the message behind an error of ours in the selected cell", async () => {
    await visit.enter(WIDTHS[1]!, "1");
    await visit.sheet("Plan");
    await visit.goTo("C9");
    await visit.pane
      .getByText("#VALUE! Opening B: opening width is 1 in. With 1/2 in for the slide on each side")
      .waitFor();
    await visit.sheet("Job");
    await visit.enter(openingCell("C", "Depth"), "9");
    await visit.sheet("Plan");
    await visit.goTo("C10");
    await visit.pane.getByText("#N/A Opening C: No slide fits: an inside depth of 9 in leaves 8 1/2 in").waitFor();
    await visit.sheet("Job");
    await visit.enter(openingCell("C", "Depth"), "23 1/4");
    await visit.sheet("Plan");
    await visit.goTo("C10");
    await expect.poll(() => visit.pane.locator("#place").textContent()).toBe("Selected cell: Plan!C10");
  });

  test("inserts an example into the selected cell, and leaves a full one alone", async () => {
    await visit.goTo(FREE);
    await visit.pane.getByText("BOXWIDTH", { exact: true }).click();
    const insert = visit.pane.getByRole("button", { name: "Insert =DRAWER.BOXWIDTH(24)", exact: true });
    await insert.click();
    await visit.pane.getByText(`=DRAWER.BOXWIDTH(24) now stands in Job!${FREE}.`).waitFor();
    expect(await visit.selection()).toMatchObject({ formula: "=DRAWER.BOXWIDTH(24)", value: 23 });
    await insert.click();
    await visit.pane.getByText(`Job!${FREE} is not empty and was left as it is.`).waitFor();
  });

  test("does not write while a cell is being edited", async () => {
    await visit.pane.getByText("BOXWIDTH", { exact: true }).click();
    await visit.goTo(FREE);
    await visit.page.keyboard.type("=1+");
    const refused = visit.page.evaluate(() =>
      window.spreadsheetHost!.then((host) => host.insertFormula("=1")).catch((fault: { code: string }) => fault.code),
    );
    expect(await refused).toBe("editing");
    await visit.page.keyboard.press("Escape");
  });
});

describe("files", () => {
  test("opens, is edited and saved, and keeps every part that was not touched byte for byte", async () => {
    const given = await shopWorkbook();
    await visit.open("shop.xlsx", given);
    await visit.page.getByText("shop.xlsx is open.").waitFor();
    expect(await visit.at("B2")).toMatchObject({ address: "Job!B2", formula: "=DRAWER.BOXWIDTH(A2)", value: 23 });
    await visit.enter("A2", "30");
    await visit.expectValue("B2", 29);
    await visit.enter("C2", "=DRAWER.FRONTHEIGHTS(27.625,3)");
    await visit.enter("A5", "kick plate");
    const { name, bytes } = await visit.save();
    expect(name).toBe("shop.xlsx");
    const [before, after] = [unzipSync(given), unzipSync(bytes)];
    const touched = Object.keys(after).filter(
      (part) => Buffer.compare(after[part]!, before[part] ?? new Uint8Array()) !== 0,
    );
    // The styles gain the format that the formula's result brings.
    expect(touched.sort()).toEqual(["xl/styles.xml", "xl/worksheets/sheet1.xml"]);
    const read = new ExcelJS.Workbook();
    await read.xlsx.load(Buffer.from(bytes) as never);
    const sheet = read.getWorksheet("Job")!;
    expect(sheet.getCell("A2").value).toBe(30);
    expect(sheet.getCell("B2").result).toBe(29);
    expect(sheet.getCell("C2").numFmt).toBe("# ??/??");
    expect(sheet.getCell("C2").formula).toBe("_xldudf_DRAWER_FRONTHEIGHTS(27.625,3)");
    expect([2, 3, 4].map((row) => sheet.getCell(row, 3).result ?? sheet.getCell(row, 3).value)).toEqual([
      9.125, 9.125, 9.125,
    ]);
    expect(sheet.getCell("A5").value).toBe("kick plate");
    expect(await visit.page.textContent("#file-state")).toBe("");
  });

  test("gives the file back that it saved", async () => {
    const drawers = openingCell("A", "Drawers");
    await visit.enter(drawers, "2");
    const { bytes } = await visit.save();
    await visit.open("again.xlsx", bytes);
    await visit.page.getByText("again.xlsx is open.").waitFor();
    await visit.expectValue(drawers, "2");
    await visit.sheet("Plan");
    await visit.expectValue("D7", 13.75);
  });

  test("saves a file that nobody has changed as it was, as often as somebody wants", async () => {
    const given = await shopWorkbook();
    await visit.open("shop.xlsx", given);
    await visit.page.getByText("shop.xlsx is open.").waitFor();
    for (let times = 0; times < 2; times++) expect(Buffer.compare((await visit.save()).bytes, given)).toBe(0);
    await visit.enter("A2", "30");
    await visit.expectValue("B2", 29);
  });

  test("says in plain words why a file is not opened, and keeps the one that is", async () => {
    await visit.open("list.txt", new TextEncoder().encode("sides, 4 off"));
    await visit.page.getByRole("alert").getByText("list.txt was not opened. The file is no .xlsx workbook.").waitFor();
    await visit.expectValue(WIDTH, "18");
    await visit.open("nothing.xlsx", new Uint8Array());
    await visit.page.getByRole("alert").getByText("nothing.xlsx was not opened. The file is empty.").waitFor();
  });

  test("keeps unsaved work on this device across a reload, and asks before it is left", async () => {
    await visit.enter(WIDTH, "21");
    await visit.expectAt(BOX_WIDTH, 20);
    await visit.untilKept();
    const asked = new Promise<string>((resolve) =>
      visit.page.once("dialog", async (dialog) => {
        resolve(dialog.type());
        await dialog.accept();
      }),
    );
    await visit.page.reload();
    expect(await asked).toBe("beforeunload");
    await visit.ready();
    await visit.expectAt(BOX_WIDTH, 20);
    expect(await visit.page.textContent("#file-state")).toContain("changed, not saved");
  });

  test("keeps the work of two pages apart, and gives a closed page's work to the next that is opened", async () => {
    await visit.enter(WIDTH, "21");
    await visit.expectValue(WIDTH, "21");
    const second = await visit.another();
    await second.expectValue(WIDTH, "18");
    await second.enter(WIDTH, "22");
    await second.expectAt(BOX_WIDTH, 21);
    await second.untilKept();
    await second.page.close();
    const third = await visit.another();
    await third.expectValue(WIDTH, "22");
    await third.page.close();
    await visit.expectValue(WIDTH, "21");
  });

  test("asks before unsaved work makes way for the example", async () => {
    await visit.enter(WIDTH, "21");
    await visit.page.click("#example");
    await visit.page.getByRole("button", { name: "Stay here" }).click();
    await visit.expectValue(WIDTH, "21");
    await visit.page.click("#example");
    await visit.page.getByRole("button", { name: "Go on without saving" }).click();
    await visit.expectValue(WIDTH, "18");
  });
});
