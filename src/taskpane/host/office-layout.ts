import type { SheetDefinition, WorkbookDefinition } from "../../workbook/author/definition";
import { addRules } from "./office-rules";
import { styleCells } from "./office-styles";

/** Lays sheets out after the others, all in the batch that is being written, and shows the first. */
export function layOut(context: Excel.RequestContext, { sheets, styles, names = {} }: WorkbookDefinition): void {
  const { workbook } = context;
  // Else each sheet would be worked out as soon as it stands, from sheets that do not stand yet.
  context.application.suspendApiCalculationUntilNextSync();
  context.application.suspendScreenUpdatingUntilNextSync();
  const laid = sheets.map((definition) => ({ definition, sheet: workbook.worksheets.add(definition.name) }));
  for (const { sheet, definition } of laid) {
    styleCells(sheet, definition, styles);
    fill(sheet, definition);
  }
  // Formulas name other sheets, which must be there.
  for (const { sheet, definition } of laid) {
    putFormulas(sheet, definition);
    addRules(sheet, definition.rules ?? []);
    setUp(sheet, definition);
  }
  for (const [name, area] of Object.entries(names)) workbook.names.add(name, `=${area}`);
  laid[0]?.sheet.activate();
  laid[0]?.sheet.getRange(sheets[0]!.selected).select();
}

/** Everything but formulas. A null leaves a cell as it is. */
function fill(sheet: Excel.Worksheet, { rows }: SheetDefinition): void {
  const used = rows.map(({ cells }) =>
    cells.map((cell) => (isFormula(cell?.content) ? null : constant(cell?.content))),
  );
  used.forEach((cells, r) => {
    if (cells.every((content) => content === null)) return;
    sheet.getRangeByIndexes(r, 0, 1, cells.length).values = [cells];
  });
}

function putFormulas(sheet: Excel.Worksheet, { rows }: SheetDefinition): void {
  rows.forEach(({ cells }, r) =>
    cells.forEach((cell, column) => {
      if (isFormula(cell?.content)) sheet.getCell(r, column).formulas = [[cell!.content]];
    }),
  );
}

const isFormula = (content: string | number | null | undefined): boolean =>
  typeof content === "string" && content.startsWith("=");

/** A text that the spreadsheet would read as a number or a date is told to be one. */
const constant = (content: string | number | null | undefined): string | number | null =>
  typeof content === "string" && /^[-+@'\d.]/.test(content) ? `'${content}` : (content ?? null);

function setUp(sheet: Excel.Worksheet, { widths, rows, merged, frozen, lists = [], page }: SheetDefinition): void {
  widths.forEach((width, i) => {
    sheet.getRangeByIndexes(0, i, 1, 1).format.columnWidth = width * POINTS;
  });
  for (const [first, count, height] of runs(rows.map(({ height }) => height)))
    if (height !== undefined) sheet.getRangeByIndexes(first, 0, count, 1).format.rowHeight = height;
  for (const area of merged) sheet.getRange(area).merge();
  if (frozen) sheet.freezePanes.freezeRows(frozen);
  sheet.showGridlines = false;
  for (const { area, words } of lists) {
    const { dataValidation } = sheet.getRange(area);
    dataValidation.rule = { list: { inCellDropDown: true, source: words.join(",") } };
    // Other words stay possible: a cell of ours says itself what it takes.
    dataValidation.errorAlert = { showAlert: false, message: "", title: "", style: "Information" };
  }
  setUpPage(sheet.pageLayout, page ?? { orientation: "landscape" });
}

function setUpPage(layout: Excel.PageLayout, page: NonNullable<SheetDefinition["page"]>): void {
  const { orientation, paper, onePage, footer = "", repeated } = page;
  layout.orientation = orientation === "portrait" ? "Portrait" : "Landscape";
  if (paper) layout.paperSize = paper === "letter" ? "Letter" : "A4";
  layout.zoom = { horizontalFitToPages: 1, ...(onePage ? { verticalFitToPages: 1 } : {}) };
  layout.centerHorizontally = true;
  const foot = layout.headersFooters.defaultForAllPages;
  const [, left = "", center = ""] = /^(?:&L(.*?))?(?:&C(.*))?$/.exec(footer) ?? [];
  if (left) foot.leftFooter = left;
  if (center) foot.centerFooter = center;
  if (repeated !== undefined) layout.setPrintTitleRows(`$${repeated}:$${repeated}`);
}

/** Equal neighbors as one: first, how many, and what they are. */
function runs<T>(list: readonly T[]): [first: number, count: number, value: T][] {
  const found: [number, number, T][] = [];
  list.forEach((value, i) => {
    const last = found[found.length - 1];
    if (last && last[2] === value) last[1]++;
    else found.push([i, 1, value]);
  });
  return found;
}

/** Of one character of a column's width: seven pixels. */
const POINTS = 5.25;
