import { cellName } from "../address";
import { changesOf } from "./changes";
import { CellError, createEngine, type EngineOptions, type Outcome, type Result } from "../engine/index";
import { mendNames } from "./mend-names";
import { shortenCalcChain } from "../xlsx/calc-chain";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import { writeSheet, type CellChange } from "../xlsx/write-sheet";

/** What was recalculated, and what was not. */
export interface Report {
  /** Calls of our functions that the spreadsheet program could not resolve as they were stored, written anew. */
  mended: number;
  /** Formulas worked out. */
  recalculated: number;
  /** Cells whose stored value was another. */
  changed: number;
  /** Times that the workbook was worked out, more than once where spilled ranges changed. */
  rounds: number;
  /** Formulas that kept their stored value, and why. */
  kept: { sheet: string; cell: string; reason: string; functions: readonly string[] }[];
  /** Cells that call a custom function and hold an error, with the sentence that came with it. */
  errors: { sheet: string; cell: string; error: string; message?: string }[];
}

/**
 * Recalculates a workbook's file. Only cells whose value changes are written; every other byte of the parts stays.
 * @throws FileFault where the bytes are no usable workbook
 */
export function recalculate(
  bytes: Uint8Array,
  options: EngineOptions,
): { bytes: Uint8Array; report: Report; outcome: Outcome } {
  const { opened, bytes: whole, mended } = mendNames(bytes, options.functions, options.namespace ?? "DRAWER");
  const outcome = createEngine(options).calculate(opened.book);
  const changes = changesOf(opened, outcome);
  const draft = new PackageDraft(opened.source);
  opened.sheets.forEach((sheet, i) => {
    if (!sheet || changes[i]!.length === 0) return;
    draft.set(sheet.part, writeSheet(sheet, changes[i]!));
  });
  updateCalcChain(opened, changes, draft);
  const written = draft.isChanged ? draft.bytes() : whole;
  return { bytes: written, report: { mended, ...reportOf(opened, outcome, changes) }, outcome };
}

function updateCalcChain(opened: OpenWorkbook, changes: CellChange[][], draft: PackageDraft): void {
  const cleared = new Set<string>();
  changes.forEach((sheet, i) => {
    for (const { row, column, value } of sheet) {
      if (value === null) cleared.add(`${opened.workbook.sheets[i]!.sheetId} ${row} ${column}`);
    }
  });
  if (cleared.size === 0) return;
  shortenCalcChain(opened, draft, (sheetId, row, column) => cleared.has(`${sheetId} ${row} ${column}`));
}

function reportOf({ workbook }: OpenWorkbook, outcome: Outcome, changes: CellChange[][]): Omit<Report, "mended"> {
  const name = (sheet: number) => workbook.sheets[sheet]!.name;
  return {
    recalculated: outcome.results.length,
    changed: changes.flat().filter((change) => change.writesValue).length,
    rounds: outcome.rounds,
    kept: outcome.kept.map(({ sheet, row, column, reason, functions }) => ({
      sheet: name(sheet),
      cell: cellName(row, column),
      reason,
      functions,
    })),
    errors: outcome.results.filter(({ custom }) => custom).flatMap((result) => errorsOf(result, name(result.sheet))),
  };
}

function errorsOf({ values, area }: Result, sheet: string): Report["errors"] {
  return values.flatMap((row, y) =>
    row.flatMap((value, x) => {
      if (!(value instanceof CellError)) return [];
      const message = value.message === undefined ? {} : { message: value.message };
      return [{ sheet, cell: cellName(area.top + y, area.left + x), error: value.code, ...message }];
    }),
  );
}
