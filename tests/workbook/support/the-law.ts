import { cellName } from "../../../src/workbook/address";
import { EditedWorkbook, isFormula } from "../../../src/workbook/edit/index";
import { CellError, type Scalar } from "../../../src/workbook/engine/index";
import { readLook, type Look } from "../../../src/workbook/look/index";
import type { OpenWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { chanceOf, randomStep } from "./random-edits";

/** What happened, step by step, and what is wrong after the last one; undefined where nothing is. */
export interface Broken {
  steps: string[];
  fault: string;
}

/**
 * Does so many random things to a workbook, some of them taken back, and compares after each what the model says with
 * what the saved file says when it is opened: sheets, contents, values of formulas, the number formats of both.
 */
export function tryTheLaw(bytes: Uint8Array, seed: number, steps: number): { broken?: Broken; saved: Uint8Array } {
  const chance = chanceOf(seed);
  const workbook = new EditedWorkbook(bytes);
  const told: string[] = [];
  const done: ((workbook: EditedWorkbook) => void)[] = [];
  let ids = 0;
  let saved = bytes;
  for (let i = 0; i < steps; i++) {
    try {
      const back = chance(6) === 0 ? done.pop() : undefined;
      if (back) {
        told.push("undo");
        back(workbook);
      } else {
        const step = randomStep(workbook, chance, () => `added-${ids++}`);
        told.push(step.told);
        done.push(step.do(workbook));
      }
      saved = workbook.save();
      const fault = difference(said(workbook), said(new EditedWorkbook(saved)));
      if (fault) return { broken: { steps: told, fault }, saved };
    } catch (error) {
      return { broken: { steps: told, fault: (error as Error).stack ?? String(error) }, saved };
    }
  }
  const again = new EditedWorkbook(bytes, JSON.parse(JSON.stringify(workbook.changes)) as never);
  const fault = difference(said(workbook), said(again));
  return fault ? { broken: { steps: [...told, "kept and opened again"], fault }, saved } : { saved };
}

/**
 * Every cell: what it holds, what it shows, and a number's format.
 * @param withLooks false where formats are not asked for, which takes less time
 */
export function said(workbook: EditedWorkbook, withLooks = true): Map<string, string> {
  const outcome = workbook.calculate();
  const { sheets } = workbook;
  const all = new Map<string, string>([["sheets", sheets.map(({ name }) => name).join("/")]]);
  const at = (sheet: number, row: number, column: number) => `${sheets[sheet]!.name} ${cellName(row, column)}`;
  const look = withLooks ? lookOf(workbook.opened) : undefined;
  const show = (sheet: number, row: number, column: number, value: Scalar, brought?: string): void => {
    all.set(`${at(sheet, row, column)} shows`, shown(value));
    if (!look || typeof value !== "number") return;
    // A cell's own format counts before the one that its number brings.
    const own = look.styles[look.sheets[sheet]?.cells.get(`${row} ${column}`) ?? 0]?.format;
    all.set(`${at(sheet, row, column)} looks`, own ?? brought ?? "General");
  };
  sheets.forEach((_, sheet) => {
    for (const { row, column, value } of workbook.cells(sheet)) {
      const content = workbook.content(sheet, row, column);
      if (isFormula(content)) all.set(at(sheet, row, column), content.formula);
      else show(sheet, row, column, value, workbook.format(sheet, row, column));
    }
  });
  for (const { sheet, area, values, formats } of outcome.results)
    values.forEach((line, y) =>
      line.forEach((value, x) => show(sheet, area.top + y, area.left + x, value, formats?.[y]?.[x])),
    );
  for (const { sheet, row, column } of outcome.kept)
    all.set(`${at(sheet, row, column)} shows`, `kept ${shown(workbook.storedValue(sheet, row, column))}`);
  return all;
}

/** Files are seldom others, for what is typed is not in them. */
function lookOf(opened: OpenWorkbook): Look {
  let look = looks.get(opened);
  if (!look) looks.set(opened, (look = readLook(opened)));
  return look;
}

const looks = new WeakMap<OpenWorkbook, Look>();

const shown = (value: Scalar): string => (value instanceof CellError ? value.code : JSON.stringify(value));

function difference(model: Map<string, string>, file: Map<string, string>): string | undefined {
  const different = [...new Set([...model.keys(), ...file.keys()])].filter((key) => model.get(key) !== file.get(key));
  if (different.length === 0) return undefined;
  return different
    .slice(0, 5)
    .map((key) => `${key}: here ${model.get(key) ?? "nothing"}, in the file ${file.get(key) ?? "nothing"}`)
    .join("; ");
}
