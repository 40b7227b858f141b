import { describe, expect, test } from "vitest";
import { writeWorkbook } from "../../../src/workbook/author/index";
import { EditedWorkbook } from "../../../src/workbook/edit/index";
import { CellError } from "../../../src/workbook/engine/index";
import { beside, DEFAULT_CHOICES, newJob, type Choices } from "../../../src/workbook/new-job/index";

const job = newJob(DEFAULT_CHOICES.in);
const contents = (workbook: typeof job) =>
  workbook.sheets.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells.map((cell) => cell?.content)));

describe("a job's sheets beside others", () => {
  test("are the same where no name is taken", () => {
    expect(beside(job, { sheets: ["Shop"], names: ["kerfs"] })).toEqual(job);
  });

  test("get the next free name where one is taken in whatever case, which is not that of another of them", () => {
    const taken = { sheets: ["JOB", "Job 2", "cut list"], names: ["Rates", "rates_2"] };
    const { sheets, names } = beside(job, taken);
    expect(sheets.map(({ name }) => name)).toEqual(
      job.sheets.map(({ name }) => ({ Job: "Job 3", "Cut list": "Cut list 2" })[name] ?? name),
    );
    expect(Object.keys(names!)).toEqual(["openings", "standards", "stock", "rates_3"]);
    expect(names!["openings"]).toBe("'Job 3'!$A$5:$G$17");
  });

  test("have formulas that follow: what they give is what it was", () => {
    const results = (workbook: typeof job) =>
      new EditedWorkbook(writeWorkbook(workbook)).calculate().results.map(({ values }) => values);
    const renamed = beside(job, { sheets: job.sheets.map(({ name }) => name), names: [] });
    expect(contents(renamed).filter((content) => /(^|[^'])\b(Job|Prices)!/.test(String(content)))).toEqual([]);
    expect(results(renamed)).toEqual(results(job));
  });
});

describe("a job from a table that the shop has", () => {
  const choices = (more: Partial<Choices>): Choices => ({ ...DEFAULT_CHOICES.in, ...more });
  const shop = { sheet: "Tom's list", first: 3, count: 3 };
  const SHOP: (string | number | null)[][] = [
    ["Kitchen of an invented client"],
    ["Bay", "W", "H", "D", "Drs", "Sides", "Note"],
    ["Left", 18.0625, "28 1/2", 22.75, "1 part; 2 parts", "3/4", "by the range"],
    [],
    ["Right", "24; 23 15/16", 28, 22.75, 3, null, null],
  ];
  const opened = (made: typeof job, rows = SHOP) =>
    new EditedWorkbook(
      writeWorkbook({
        ...made,
        sheets: [
          ...made.sheets,
          {
            ...{ name: shop.sheet, widths: [], merged: [], selected: "A1" },
            rows: rows.map((cells) => ({
              cells: cells.map((content) => (content === null ? null : { style: "label" as const, content })),
            })),
          },
        ],
      }),
    );
  const table = (workbook: EditedWorkbook, name: string) => {
    const sheet = workbook.sheets.findIndex((one) => one.name === name);
    return workbook.calculate().results.find((one) => one.sheet === sheet && one.row === 4)!.values as unknown[][];
  };
  const columns = { Opening: "A", Width: "B", Height: "C", Depth: "D", Drawers: "E", "side thickness": "F" };

  test("plans its openings: an empty row is none, an empty size the usual, and its own standards count", () => {
    const workbook = opened(newJob(choices({ shop: { ...shop, columns } })));
    const plan = table(workbook, "Plan");
    expect(plan.slice(1).map(([label]) => label)).toEqual(["Left1", "Left2", "Right1", "Right2", "Right3"]);
    // Less half an inch on each side; inside, less two sides.
    expect([plan[1]![5], plan[1]![11]]).toEqual([17.0625, 15.5625]);
    expect([plan[3]![5], plan[3]![11]]).toEqual([22.9375, 21.9375]);
    const { results, kept } = workbook.calculate();
    expect(kept).toEqual([]);
    expect(results.flatMap(({ values }) => values.flat()).filter((value) => value instanceof CellError)).toEqual([]);
  });

  test("takes cabinets by their outside sizes, of one column each where the table has none for it", () => {
    const made = newJob(
      choices({
        from: "cabinets",
        shop: { ...shop, columns: { Cabinet: "A", Width: "B", Height: "C", Depth: "D", Drawers: "E" } },
      }),
    );
    const rows = SHOP.map((cells, r) =>
      r === 3 ? ["Middle", 30, 28, 24, 2] : r === 4 ? ["Right", 24, 28, 24, 3] : cells,
    );
    const openings = table(opened(made, rows), "Openings");
    expect(openings.slice(1).map(([label, , width]) => [label, width])).toEqual([
      ["Left", 16.5625],
      ["Middle", 28.5],
      ["Right", 22.5],
    ]);
  });
});
