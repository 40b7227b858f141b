/**
 * A workbook that is edited, worked out, and written back with everything else as it was.
 *
 * `new EditedWorkbook(bytes, changes)` opens a file and does once more what was done to it before. From then on:
 * - `sheets` are the sheets as they are, each with an id that stays: `sheet-0`, `sheet-1` … in the file's order, and
 *   whatever ids the caller gives to those that it adds. Every method takes an id, or a place in the present order;
 *   `calculate()` counts by that order.
 * - `put({sheet, row, column, content})` writes a cell; `content`, `cells`, `format`, `storedValue` read it.
 * - `changeSheets(edit)` adds, renames, moves or deletes a sheet, and gives the cells whose content changed with it
 *   (a deleted sheet's own cells are not among them). It throws a `SheetFault` with a line for a person, and has then
 *   changed nothing; `refusal(edit)` asks beforehand. Undone it is by the edit that leads back: another rename or move; `delete` for a sheet that was added; `add` with the id of a sheet that was
 *   deleted brings that one back with all that it held, and with the formulas that referred to it.
 * - `opened` is the file with its sheets as they are now (its looks and rules too, to be read anew after a change of
 *   sheets); what was typed into cells is not in it.
 * - `changes` is plain data, for `JSON` or a database: a list of cell edits `{sheet, row, column, content, format?}`,
 *   whose `sheet` is an id (a number from an older version is the place in the file), and of sheet edits
 *   `{kind: "add" | "rename", id, name, before?}`, `{kind: "move", id, before?}`, `{kind: "delete", id, lost?}`: sheets
 *   first. `before` is the id of the sheet in front of which it stands; without, it stands last. `lost` is a list of cell edits.
 * - `save()` gives the bytes of the file, read back and compared; where they do not hold what is here, it throws.
 */
export type { CellEdit } from "./cell-edit";
export { isFormula, type Content } from "./content";
export { EditedWorkbook, type Change, type Put } from "./edited-workbook";
export { FRACTION_FORMAT } from "./number-formats";
export type { KeptSheetEdit } from "./sheet-history";
export { SheetFault, type SheetEdit } from "../sheets/index";
