import { recalculate, type Report } from "../edit/recalculate";
import type { EngineOptions } from "../engine/index";
import { applySheetEdit } from "../sheets/index";
import { FileFault } from "../xlsx/fault";
import { openWorkbook, type OpenWorkbook } from "../xlsx/open-workbook";
import { PackageDraft } from "../xlsx/package-draft";
import { freezeNames } from "./names";
import { withRanges } from "./ranges";
import { withoutRules } from "./rules";
import { stamped, type Stamp } from "./stamp";
import { freezeTables } from "./tables";
import { toFreeze, type Spot } from "./to-freeze";
import { withValues } from "./values";

export type { Stamp } from "./stamp";

/** A workbook whose results stand in it as values. */
export interface Frozen {
  bytes: Uint8Array;
  /** Of working it out, which comes first. */
  report: Report;
  /** Formulas that are values now; where there were none, and no other sheets, nothing is changed. */
  frozen: number;
}

/**
 * A copy of a workbook in which the results of our functions are plain values, in the formats that they have. Native
 * formulas stay formulas, over ranges where they were over whatever a function of ours had spilled. An error stays the
 * error that it is, for formulas may count on it.
 * @param only the sheet that alone is wanted: what its formulas take from elsewhere becomes values too
 * @throws FileFault where the bytes are no usable workbook, or there is no such sheet
 * @throws SheetFault where the other sheets cannot be taken away
 */
export function freeze(bytes: Uint8Array, options: EngineOptions, stamp: Stamp, only?: string): Frozen {
  const { bytes: worked, report, outcome } = recalculate(bytes, options);
  const opened = openWorkbook(worked);
  const sheet = only === undefined ? undefined : sheetNamed(opened, only);
  const spots = toFreeze(opened, outcome, sheet);
  const others = sheet === undefined ? [] : opened.workbook.sheets.filter((_, i) => i !== sheet);
  if (spots.length === 0 && others.length === 0) return { bytes: worked, report, frozen: 0 };
  const alone = withoutSheets(
    frozen(worked, opened, options, spots, sheet),
    others.map(({ name }) => name),
  );
  const names = sheet === undefined ? namesOf(opened, spots) : [opened.workbook.sheets[sheet]!.name];
  return { bytes: stamped(alone, names, stamp), report, frozen: spots.length };
}

function frozen(
  bytes: Uint8Array,
  before: OpenWorkbook,
  options: EngineOptions,
  spots: readonly Spot[],
  sheet: number | undefined,
): Uint8Array {
  const ranged = openWorkbook(withRanges(before, spots));
  const draft = new PackageDraft(ranged.source);
  withValues(ranged, draft, spots);
  freezeTables(ranged, draft);
  withoutRules(ranged, draft, sheet);
  freezeNames(before, draft, options, sheet);
  return draft.isChanged ? draft.bytes() : bytes;
}

function withoutSheets(bytes: Uint8Array, names: readonly string[]): Uint8Array {
  return names.reduce((left, name) => {
    const opened = openWorkbook(left);
    const ids = opened.workbook.sheets.map((sheet) => sheet.name);
    return applySheetEdit(opened, ids, { kind: "delete", id: name }).bytes;
  }, bytes);
}

function namesOf(opened: OpenWorkbook, spots: readonly Spot[]): string[] {
  return [...new Set(spots.map(({ sheet }) => opened.workbook.sheets[sheet]!.name))];
}

/** Case does not count in sheets' names. */
function sheetNamed({ workbook }: OpenWorkbook, name: string): number {
  const at = workbook.sheets.findIndex((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  if (at < 0) throw new FileFault(`The workbook has no sheet “${name}”; it has ${listed(workbook)}.`);
  if (!workbook.sheets[at]!.isWorksheet) throw new FileFault(`The sheet “${name}” has no cells.`);
  return at;
}

const listed = ({ sheets }: OpenWorkbook["workbook"]): string => sheets.map(({ name }) => `“${name}”`).join(", ");
