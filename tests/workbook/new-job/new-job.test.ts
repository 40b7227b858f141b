import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { describe, expect, test } from "vitest";
import { CellError } from "../../../src/workbook/engine/index";
import { convert } from "../../libreoffice";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { DEFAULT_CHOICES, newJob as newJobDefinition, type Choices } from "../../../src/workbook/new-job/index";

const newJob = (choices: Choices): Uint8Array => writeWorkbook(newJobDefinition(choices));

const SLIDES = ["side-mount", "center-mount", "wood runner", "undermount"] as const;
const ALL: Choices[] = (["in", "mm"] as const).flatMap((unit) =>
  (["openings", "cabinets"] as const).flatMap((from) =>
    (["frameless", "face frame"] as const).flatMap((construction) =>
      (from === "openings" ? SLIDES : (["side-mount", "undermount"] as const)).map((slide) => ({
        ...DEFAULT_CHOICES[unit],
        from,
        construction,
        slide,
        dataSheet: slide === "undermount" ? { "undermount deduction": unit === "in" ? "1 21/32" : "42" } : {},
      })),
    ),
  ),
);

/** What a sheet's one formula shows. */
function table(workbook: EditedWorkbook, name: string): unknown[][] {
  const sheet = workbook.sheets.findIndex((one) => one.name === name);
  const found = workbook.calculate().results.find((one) => one.sheet === sheet && one.row === 4);
  return (found?.values ?? []) as unknown[][];
}
const put = (workbook: EditedWorkbook, row: number, column: number, content: string | number) =>
  workbook.put({ sheet: 0, row: row - 1, column, content });

describe("a new job", () => {
  test.each(ALL)("$unit, from $from, $construction, $slide: every sheet shows its result", (choices) => {
    const workbook = new EditedWorkbook(newJob(choices));
    const { results, kept } = workbook.calculate();
    expect(kept).toEqual([]);
    const wrong = results.filter(({ values }) => values.flat().some((value) => value instanceof CellError));
    expect(wrong.map(({ sheet, values }) => [workbook.sheets[sheet]!.name, values.flat()[0]])).toEqual([]);
    expect(
      table(workbook, "Plan")
        .slice(1)
        .map(([label]) => label),
    ).toEqual(choices.from === "openings" ? ["A1", "A2", "A3", "A4"] : ["Base1", "Base2", "Base3"]);
    expect(
      table(workbook, "Checks")
        .slice(1)
        .filter(([, level]) => level === "wrong"),
    ).toEqual([]);
  });

  test("what an undermount slide's data sheet says is planned with; the rest of it is asked for, and nothing else", () => {
    const dataSheet = {
      "undermount deduction": "1 21/32",
      "undermount depth difference": "3/8",
      "undermount hook hole": "none",
    };
    const workbook = new EditedWorkbook(newJob({ ...DEFAULT_CHOICES.in, slide: "undermount", dataSheet }));
    expect(table(workbook, "Plan")[1]!.slice(7, 10)).toEqual([21.625, expect.any(Number), 22]);
    const asked = table(workbook, "Checks").find(([, , finding]) => /^Nothing is given for/.test(String(finding)))!;
    expect(String(asked[2]).match(/undermount [a-z]+ [a-z]+(?=,)/g)).toEqual([
      "undermount thickest side",
      "undermount space below",
      "undermount space above",
      "undermount bottom recess",
      "undermount notch width",
      "undermount notch height",
    ]);
    const row = rowOf(workbook, "undermount hook hole");
    const cells = [...workbook.cells(0)].filter((cell) => cell.row === row - 1).map(({ value }) => value);
    expect(cells.slice(0, 3)).toEqual(["undermount hook hole", "none", "not known"]);
  });

  test("what is typed over its inputs is planned at once: sizes as texts, openings added, a standard changed", () => {
    const workbook = new EditedWorkbook(newJob(DEFAULT_CHOICES.in));
    put(workbook, 7, 0, "B");
    ["15 1/16; 15", "28", "22 3/4", "5; 1 part; 2 parts"].forEach((text, i) => put(workbook, 7, i + 1, text));
    const plan = table(workbook, "Plan");
    expect(plan.slice(5).map(([label, , , height, , width]) => [label, height, width])).toEqual([
      ["B1", 5, 14],
      ["B2", expect.any(Number), 14],
      ["B3", expect.any(Number), 14],
    ]);
    const clearance = rowOf(workbook, "side clearance");
    put(workbook, clearance, 1, "7/16");
    expect(table(workbook, "Plan")[5]![5]).toBe(14.125);
  });

  test.each([
    ["5/8", ["1/4", "1/2", "3/4", "5/8"]],
    ["15/32", ["1/4", "1/2", "3/4"]],
    ["", ["1/4", "1/2", "3/4"]],
  ])("has stock for sides of %j, so that sheets are bought from the start", (sideThickness, thicknesses) => {
    const workbook = new EditedWorkbook(newJob({ ...DEFAULT_CHOICES.in, sideThickness }));
    const stock = [...workbook.cells(numberOf(workbook, "Prices"))].filter(
      ({ row, column }) => column === 1 && row >= 4 && row <= 13,
    );
    expect(stock.flatMap(({ value }) => value ?? [])).toEqual(thicknesses);
    expect(table(workbook, "Sheets")[0]![0]).toBe("Material");
  });

  test("its quote ends in a total, which follows the price of the slides", () => {
    const workbook = new EditedWorkbook(newJob(DEFAULT_CHOICES.mm));
    const total = (): number => table(workbook, "Quote").at(-1)!.at(-1) as number;
    const before = total();
    expect(before).toBeGreaterThan(0);
    const sheet = numberOf(workbook, "Prices");
    const row = rowOf(workbook, "slide price", sheet);
    workbook.put({ sheet, row: row - 1, column: 1, content: 25 });
    expect(total()).toBeGreaterThan(before + 40);
  });
});

describe("a new job from cabinets", () => {
  const cabinets: Choices = { ...DEFAULT_CHOICES.in, from: "cabinets" };

  test("takes outside sizes, of which the openings are what ends, toe kick, top, bottom and back leave", () => {
    const workbook = new EditedWorkbook(newJob(cabinets));
    // 24 wide: less two ends of 3/4. 34 1/2 high: less toe kick, top and bottom. 24 deep: less a back of 1/4.
    ["Sink", "24", "34 1/2", "24", "1 part; 2 parts", "1", "", "4", "1/4"].forEach((text, i) =>
      put(workbook, 7, i, text),
    );
    const openings = table(workbook, "Openings");
    expect(openings[2]!.slice(0, 6)).toEqual(["Sink", "Sink", 22.5, 29, 23.75, "1 part; 2 parts"]);
    const plan = table(workbook, "Plan");
    expect(plan.slice(1).map(([label]) => label)).toEqual(["Base1", "Base2", "Base3", "Sink1", "Sink2"]);
    // Side-mount slides take half an inch on each side.
    expect(plan[4]![5]).toBe(21.5);
  });

  test("several columns of one cabinet are openings side by side", () => {
    const workbook = new EditedWorkbook(newJob(cabinets));
    put(workbook, 6, 5, "2");
    expect(
      table(workbook, "Openings")
        .slice(1)
        .map((cells) => [cells[0], cells[2]]),
    ).toEqual([
      ["Base A", 13.875],
      ["Base B", 13.875],
    ]);
  });
});

describe("a new job's comparisons", () => {
  const cells = (workbook: EditedWorkbook, name: string, area: (row: number, column: number) => boolean) => {
    const sheet = workbook.sheets.findIndex((one) => one.name === name);
    return workbook
      .calculate()
      .results.filter((one) => one.sheet === sheet && area(one.row, one.column))
      .flatMap(({ values }) => values.flat());
  };
  const prices = (workbook: EditedWorkbook) =>
    cells(workbook, "Price grid", (row, column) => row >= 14 && row <= 18 && column > 0) as number[];

  test.each(ALL.filter(({ slide }) => slide === "undermount"))(
    "$unit, from $from, $construction: prices by width and count, and the two usual alternates beside the job",
    (choices) => {
      const workbook = new EditedWorkbook(newJob(choices));
      const grid = prices(workbook);
      expect(grid).toHaveLength(30);
      // Wider costs more, and so does one drawer more.
      expect(grid[5]).toBeGreaterThan(grid[0]!);
      expect(grid[24]).toBeGreaterThan(grid[0]!);
      const compared = table(workbook, "Alternates");
      expect(compared.slice(1).map(([name]) => name)).toEqual([
        "As it is",
        choices.unit === "in" ? "3/4 sides" : "19 sides",
        "Inset fronts",
      ]);
      const total = table(workbook, "Quote").at(-1)!.at(-1);
      expect(compared[1]![3]).toBe(total);
      expect(compared[1]![8]).toBe(table(workbook, "Checks").filter(([, level]) => level === "doubtful").length);
    },
  );

  test("the grid's opening is as high and as deep as the job's first, and what is typed over it counts", () => {
    const workbook = new EditedWorkbook(newJob(DEFAULT_CHOICES.in));
    const before = prices(workbook)[0]!;
    put(workbook, 6, 3, "14");
    const shallow = prices(workbook)[0]!;
    expect(shallow).toBeLessThan(before);
    const sheet = workbook.sheets.findIndex(({ name }) => name === "Price grid");
    workbook.put({ sheet, row: 4, column: 1, content: "22 3/4" });
    expect(prices(workbook)[0]).toBe(before);
  });

  test("a third alternate is compared once it has a name", () => {
    const workbook = new EditedWorkbook(newJob(DEFAULT_CHOICES.in));
    const sheet = workbook.sheets.findIndex(({ name }) => name === "Alternates");
    workbook.put({ sheet, row: 10, column: 4, content: "Thick too" });
    workbook.put({ sheet, row: 11, column: 4, content: "3/4" });
    expect(table(workbook, "Alternates")[4]![0]).toBe("Thick too");
    expect(table(workbook, "Alternates")[4]!.slice(1)).toEqual(table(workbook, "Alternates")[2]!.slice(1));
  });
});

describe("a new job's file", () => {
  test.each(ALL.filter(({ slide }) => slide === "side-mount"))(
    "$unit, from $from, $construction: no text cell holds a formula, which the spreadsheet program would show as text",
    (choices) => {
      const { sheets, styles } = newJobDefinition(choices);
      const found = sheets.flatMap(({ name, rows }) =>
        rows.flatMap(({ cells }, r) =>
          cells.flatMap((cell) =>
            cell && styles[cell.style].format === "@" && String(cell.content).startsWith("=") ? [[name, r + 1]] : [],
          ),
        ),
      );
      expect(found).toEqual([]);
    },
  );

  test("is told in millimeters once they are typed as its unit, and its defaults with it", () => {
    const workbook = new EditedWorkbook(newJob(DEFAULT_CHOICES.in));
    const unit = rowOf(workbook, "unit");
    const clearance = rowOf(workbook, "rear clearance");
    const usual = () =>
      workbook
        .calculate()
        .results.find(({ sheet, row, column }) => sheet === 0 && row === clearance - 1 && column === 2)!.values;
    expect(usual()).toEqual([["1/2"]]);
    put(workbook, unit, 1, "mm");
    expect(usual()).toEqual([["12"]]);
  });

  test.each(["openings", "cabinets"] as const)(
    "has names for its tables, from %s, that formulas of one's own may use",
    (from) => {
      const workbook = new EditedWorkbook(newJob({ ...DEFAULT_CHOICES.in, from }));
      const own = (formula: string) => {
        workbook.put({ sheet: 0, row: 0, column: 20, content: { formula } });
        const { values } = workbook.calculate().results.find(({ row, column }) => row === 0 && column === 20)!;
        return values as unknown[][];
      };
      expect(own("=DRAWER.PLAN(openings,standards)")).toEqual(table(workbook, "Plan"));
      expect(own("=DRAWER.PRICE(openings,standards,stock,rates)")).toEqual([[table(workbook, "Quote").at(-1)!.at(-1)]]);
    },
  );

  test("has heads that stay as the rest is scrolled, and offers the words that a cell takes", async () => {
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(newJob(DEFAULT_CHOICES.in).buffer as ArrayBuffer);
    expect(book.getWorksheet("Plan")!.views[0]).toMatchObject({ state: "frozen", ySplit: 5 });
    expect(book.getWorksheet("Job")!.getCell("B22").dataValidation).toMatchObject({
      type: "list",
      formulae: ['"in,mm"'],
    });
  });

  test("reads in LibreOffice Calc: names, formats, sizes as texts, headings on every page", async () => {
    const folder = mkdtempSync(join(tmpdir(), "new-job-"));
    writeFileSync(join(folder, "job.xlsx"), newJob(DEFAULT_CHOICES.in));
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(convert(join(folder, "job.xlsx"), join(folder, "out"), "xlsx"));
    rmSync(folder, { recursive: true });
    expect(book.definedNames.getRanges("openings").ranges).toEqual(["Job!$A$5:$G$17"]);
    const job = book.getWorksheet("Job")!;
    expect(job.getCell("B6").numFmt).toBe("@");
    expect(job.getCell("B6").value).toBe("18");
    expect(job.getCell("B22").value).toBe("in");
    const plan = book.getWorksheet("Plan")!;
    expect(plan.pageSetup).toMatchObject({ orientation: "landscape", fitToWidth: 1, printTitlesRow: "5:5" });
  });
});

const numberOf = (workbook: EditedWorkbook, name: string): number =>
  workbook.sheets.findIndex((sheet) => sheet.name === name);

/** The row, from 1, whose first cell holds a name. */
function rowOf(workbook: EditedWorkbook, name: string, sheet = 0): number {
  const cell = [...workbook.cells(sheet)].find(({ column, value }) => column === 0 && value === name);
  return cell!.row + 1;
}
