import { createEngine, type Cell, type Engine, type Outcome, type Scalar } from "../engine/index";
import { SheetFault, type SheetEdit } from "../sheets/index";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import type { CellEdit } from "./cell-edit";
import { checkSaved } from "./check-saved";
import { contentOf } from "./cell-content";
import { sameContent, type Content } from "./content";
import { Contents } from "./contents";
import { mendNames } from "./mend-names";
import { NAMESPACE } from "./namespace";
import { OWN_FUNCTIONS } from "./own-functions";
import { saveEdits } from "./save-edits";
import { SheetHistory, type KeptSheetEdit, type Stage } from "./sheet-history";

/** A sheet by its id, or by its place in the order, counted from 0. */
export type SheetRef = string | number;

/** What has been changed since the file was opened: plain data, to be kept and to be given to the same file again. */
export type Change = CellEdit | KeptSheetEdit;

/** What is put into a cell. */
export type Put = Omit<CellEdit, "sheet"> & { sheet: SheetRef };

/** A sheet as it is now. */
export interface SheetState {
  id: string;
  name: string;
  /** Sheets of charts and dialogs have no cells. */
  isWorksheet: boolean;
}

/** A workbook's file, and what was changed in its cells and sheets since it was opened. */
export class EditedWorkbook {
  /** The file, its calls of our functions mended. */
  readonly bytes: Uint8Array;
  /** How many calls were. */
  readonly mended: number;
  private readonly engine: Engine = createEngine({ functions: OWN_FUNCTIONS });
  private readonly history: SheetHistory;
  private readonly edits = new Map<string, CellEdit>();
  private stage: Omit<Stage, "cells">;
  private contents: Contents;

  /**
   * @param changes what was changed since, in an earlier visit
   * @throws FileFault where the bytes are no usable workbook
   */
  constructor(bytes: Uint8Array, changes: readonly (Put | KeptSheetEdit)[] = []) {
    const { opened, ...mended } = mendNames(bytes, OWN_FUNCTIONS, NAMESPACE);
    ({ bytes: this.bytes, mended: this.mended } = mended);
    this.stage = { bytes: this.bytes, opened, ids: opened.workbook.sheets.map((_, i) => `sheet-${i}`) };
    this.history = new SheetHistory(this.stage);
    this.contents = new Contents(opened, this.engine);
    for (const change of changes) {
      if ("kind" in change) this.changeSheets(change);
      else this.put(change);
    }
  }

  /** The file, its sheets as they are now; what was typed into cells is not in it. */
  get opened(): OpenWorkbook {
    return this.stage.opened;
  }

  /** The sheets in their order. */
  get sheets(): SheetState[] {
    const { ids, opened } = this.stage;
    return opened.workbook.sheets.map(({ name, isWorksheet }, i) => ({ id: ids[i]!, name, isWorksheet }));
  }

  /** The cells that hold something of their own, sheet by sheet. */
  cells(sheet: SheetRef): Iterable<Cell> {
    return this.contents.cells(this.place(sheet));
  }

  /** What a person put into a cell; what a formula fills holds nothing of its own, whether it is worked out or not. */
  content(sheet: SheetRef, row: number, column: number): Content {
    const place = this.place(sheet);
    if (this.contents.isKeptFilled(place, row, column)) return null;
    return contentOf(this.contents.cell(place, row, column));
  }

  /** The cells that formulas fill which are not worked out, with the values that the file has for them. */
  keptCells(sheet: SheetRef): Iterable<Cell> {
    return this.contents.keptCells(this.place(sheet));
  }

  /** The value that the file has for a formula; that of one which nobody can work out is an error. */
  storedValue(sheet: SheetRef, row: number, column: number): Scalar {
    return this.contents.cell(this.place(sheet), row, column)?.value ?? null;
  }

  /** Puts something into a cell. True where that is a change. */
  put({ sheet, row, column, content, format }: Put): boolean {
    const place = this.place(sheet);
    if (sameContent(this.content(place, row, column), content) && this.format(place, row, column) === format)
      return false;
    const id = this.stage.ids[place]!;
    const key = `${id} ${row} ${column}`;
    this.edits.delete(key);
    // Taken out first, for what an array formula fills hangs on what was typed into it.
    this.contents.put(place, row, column);
    if (sameContent(this.content(place, row, column), content) && format === undefined) return true;
    this.edits.set(key, { sheet: id, row, column, content, ...(format === undefined ? {} : { format }) });
    this.contents.put(place, row, column, { content, ...(format === undefined ? {} : { format }) });
    return true;
  }

  /** The number format that a cell's number was typed with. */
  format(sheet: SheetRef, row: number, column: number): string | undefined {
    return this.edits.get(`${this.stage.ids[this.place(sheet)]} ${row} ${column}`)?.format;
  }

  /**
   * Adds, renames, moves or deletes a sheet.
   * @returns the cells whose content is another because of it: formulas that name the sheet, and all that comes back
   * @throws SheetFault where it is refused; nothing has then been changed
   */
  changeSheets(edit: KeptSheetEdit): CellEdit[] {
    const before = this.allContents();
    const { cells, ...stage } = this.history.apply(edit, { ...this.stage, cells: [...this.edits.values()] });
    this.stage = stage;
    this.contents = new Contents(stage.opened, this.engine);
    this.edits.clear();
    for (const cell of cells) this.put(cell);
    const after = this.allContents();
    return [...after.values()].filter((cell) => {
      const old = before.get(placeOf(cell));
      return cell.content !== null && !(old && sameContent(old.content, cell.content));
    });
  }

  /** Why a change of the sheets would be refused, in one line for a person; undefined where it would not. */
  refusal(edit: SheetEdit): string | undefined {
    try {
      this.history.copy().apply(edit, { ...this.stage, cells: [...this.edits.values()] });
      return undefined;
    } catch (error) {
      if (error instanceof SheetFault) return error.message;
      throw error;
    }
  }

  /** Sheets first, in the order in which they were changed; then cells, as they are named after that. */
  get changes(): Change[] {
    return [...this.history.edits, ...this.edits.values()];
  }

  /** Works the workbook out, where something has changed. Sheets are counted in their order. */
  calculate(): Outcome {
    return this.contents.calculate();
  }

  /**
   * The file with the changes in it; the parts that they do not touch keep every byte.
   * @throws FileFault where what was written does not read back as what is here
   */
  save(): Uint8Array {
    const formats = new Map(
      this.calculate().results.map((result) => [`${result.sheet} ${result.row} ${result.column}`, result.formats]),
    );
    const edits = [...this.edits.values()].map((edit) => {
      const sheet = this.place(edit.sheet);
      return { ...edit, sheet, formats: formats.get(`${sheet} ${edit.row} ${edit.column}`) };
    });
    const saved = saveEdits(this.stage.bytes, edits, (sheet, row, column) => this.contents.isKept(sheet, row, column));
    if (saved !== this.bytes) checkSaved(saved, this);
    return saved;
  }

  private place(sheet: SheetRef): number {
    const place = typeof sheet === "number" ? sheet : this.stage.ids.indexOf(sheet);
    if (this.stage.ids[place] === undefined) throw new SheetFault(`There is no sheet ${sheet} in the workbook.`);
    return place;
  }

  private allContents(): Map<string, CellEdit> {
    const all = new Map<string, CellEdit>();
    this.stage.ids.forEach((sheet, place) => {
      for (const cell of this.contents.cells(place)) {
        const { row, column } = cell;
        const edit = { sheet, row, column, content: this.content(place, row, column) };
        all.set(placeOf(edit), edit);
      }
    });
    return all;
  }
}

const placeOf = ({ sheet, row, column }: CellEdit): string => `${sheet} ${row} ${column}`;
