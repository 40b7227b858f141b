import { cellName } from "../address";
import { formulaKind } from "../engine/index";
import { toStored } from "../edit/formula-text";
import { escapeText } from "../xlsx/xml";
import type { CellDefinition, RuleLook, SheetDefinition } from "./definition";
import { PAGE_HEAD, pageXml } from "./page-part";
import { rulesXml } from "./rules-part";

/**
 * A worksheet's part. Formulas have no values yet; working the file out puts them in.
 * @param mark of formulas that may spill
 */
export function sheetPart(
  sheet: SheetDefinition,
  styleNumber: (style: string) => number,
  lookNumber: (look: RuleLook) => number,
  mark = "1",
): string {
  const { widths, rows, merged, page, rules = [], lists = [] } = sheet;
  const columns = widths.map((width, i) => `<col min="${i + 1}" max="${i + 1}" width="${width}" customWidth="1"/>`);
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
    PAGE_HEAD +
    `<sheetViews><sheetView showGridLines="0" workbookViewId="0">${view(sheet)}</sheetView></sheetViews>` +
    '<sheetFormatPr defaultRowHeight="15"/>' +
    `<cols>${columns.join("")}</cols>` +
    `<sheetData>${rows.map((_, i) => row(sheet, i, styleNumber, mark)).join("")}</sheetData>` +
    (merged.length === 0
      ? ""
      : `<mergeCells count="${merged.length}">${merged.map((ref) => `<mergeCell ref="${ref}"/>`).join("")}</mergeCells>`) +
    rulesXml(rules, lookNumber) +
    listsXml(lists) +
    pageXml(page) +
    "</worksheet>"
  );
}

function view({ selected, frozen }: SheetDefinition): string {
  const selection = `activeCell="${selected}" sqref="${selected}"/>`;
  if (!frozen) return `<selection ${selection}`;
  const first = cellName(frozen, 0);
  return (
    `<pane ySplit="${frozen}" topLeftCell="${first}" activePane="bottomLeft" state="frozen"/>` +
    `<selection pane="bottomLeft" ${selection}`
  );
}

function listsXml(lists: NonNullable<SheetDefinition["lists"]>): string {
  if (lists.length === 0) return "";
  // Other words stay possible: a cell of ours says itself what it takes.
  const each = lists.map(
    ({ area, words }) =>
      `<dataValidation type="list" allowBlank="1" sqref="${area}"><formula1>"${escapeText(words.join(","))}"</formula1></dataValidation>`,
  );
  return `<dataValidations count="${lists.length}">${each.join("")}</dataValidations>`;
}

function row({ rows }: SheetDefinition, i: number, styleNumber: (style: string) => number, mark: string): string {
  const { height, cells } = rows[i]!;
  const inRow = cells.map((cell, column) =>
    cell ? cellElement(cellName(i, column), cell, styleNumber(cell.style), mark) : "",
  );
  const size = height === undefined ? "" : ` ht="${height}" customHeight="1"`;
  return `<row r="${i + 1}"${size}>${inRow.join("")}</row>`;
}

function cellElement(name: string, { content }: CellDefinition, style: number, mark: string): string {
  const head = `<c r="${name}" s="${style}"`;
  if (content === null) return `${head}/>`;
  if (typeof content === "number") return `${head}><v>${content}</v></c>`;
  if (!content.startsWith("="))
    return `${head} t="inlineStr"><is><t xml:space="preserve">${escapeText(content)}</t></is></c>`;
  const formula = toStored(content);
  if (formulaKind(formula) === "plain") return `${head}><f>${escapeText(formula)}</f></c>`;
  return `${head} cm="${mark}"><f t="array" ref="${name}">${escapeText(formula)}</f></c>`;
}
