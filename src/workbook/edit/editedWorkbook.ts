import { contains } from "../address";
import { cellKey, createEngine, type Book, type Cell, type Engine, type Outcome, type Scalar } from "../engine/index";
import { CellError } from "../engine/index";
import type { OpenWorkbook } from "../xlsx/openWorkbook";
import { contentOf, isFormula, sameContent, valueOf, type Content } from "./content";
import { formulaKind } from "./formulaKind";
import { toStored } from "./formulaText";
import { FRACTION_FORMAT } from "./fractionStyles";
import { mendNames } from "./mend-names";
import { NAMESPACE, OWN_FUNCTIONS } from "./ownFunctions";
import { saveEdits } from "./saveEdits";

/** One cell that a person changed. */
export interface CellEdit {
  sheet: number;
  row: number;
  column: number;
  content: Content;
  /** Typed as a fraction, and so to be shown as one where the cell has no number format. */
  isFraction?: boolean;
}

/** A workbook's file, and what was typed into its cells since it was opened. */
export class EditedWorkbook {
  readonly opened: OpenWorkbook;
  /** The file, its calls of our functions mended. */
  readonly bytes: Uint8Array;
  /** How many calls were. */
  readonly mended: number;
  private readonly book: Book;
  private readonly engine: Engine;
  private readonly edits = new Map<string, CellEdit>();
  /** Cells that hold nothing of their own, though the file has what a formula spilled into them. */
  private readonly filled = new Set<string>();
  private outcome: Outcome | undefined;

  /** @throws FileFault where the bytes are no usable workbook */
  constructor(bytes: Uint8Array) {
    ({ opened: this.opened, bytes: this.bytes, mended: this.mended } = mendNames(bytes, OWN_FUNCTIONS, NAMESPACE));
    this.book = {
      ...this.opened.book,
      sheets: this.opened.book.sheets.map((sheet) => ({ ...sheet, cells: new Map(sheet.cells) })),
    };
    this.engine = createEngine({ functions: OWN_FUNCTIONS });
    this.dropFilledCells(this.calculate());
  }

  /** The cells that hold something of their own, sheet by sheet. */
  cells(sheet: number): Iterable<Cell> {
    return this.book.sheets[sheet]!.cells.values();
  }

  content(sheet: number, row: number, column: number): Content {
    return contentOf(this.book.sheets[sheet]!.cells.get(cellKey(row, column)));
  }

  /** The value that the file has for a formula; that of one which nobody can work out is an error. */
  storedValue(sheet: number, row: number, column: number): Scalar {
    return this.book.sheets[sheet]!.cells.get(cellKey(row, column))?.value ?? null;
  }

  /** Puts something into a cell. True where that is a change. */
  put(edit: CellEdit): boolean {
    const { sheet, row, column, content } = edit;
    if (sameContent(this.content(sheet, row, column), content)) return false;
    const key = cellKey(row, column);
    const { cells } = this.book.sheets[sheet]!;
    const first = this.firstContent(sheet, key);
    if (sameContent(first, content)) this.edits.delete(`${sheet} ${key}`);
    else this.edits.set(`${sheet} ${key}`, edit);
    const original = this.opened.book.sheets[sheet]!.cells.get(key);
    if (content === null) cells.delete(key);
    else if (original && sameContent(first, content)) cells.set(key, own(original));
    else cells.set(key, cellOf(edit));
    this.outcome = undefined;
    return true;
  }

  /** Whether what was typed into a cell is to be shown as a fraction. */
  isFraction(sheet: number, row: number, column: number): boolean {
    return this.edits.get(`${sheet} ${cellKey(row, column)}`)?.isFraction === true;
  }

  get changes(): CellEdit[] {
    return [...this.edits.values()];
  }

  /** Works the workbook out, where something has changed. */
  calculate(): Outcome {
    if (this.outcome) return this.outcome;
    this.outcome = this.engine.calculate(this.book);
    return this.outcome;
  }

  /** The file with the changes in it; the parts that they do not touch keep every byte. */
  save(): Uint8Array {
    return saveEdits(this.bytes, this.changes);
  }

  private firstContent(sheet: number, key: number): Content {
    return this.filled.has(`${sheet} ${key}`) ? null : contentOf(this.opened.book.sheets[sheet]!.cells.get(key));
  }

  /**
   * A file also holds what formulas spilled; here those cells are empty, so that whoever types into one is seen to.
   * A formula that is not worked out here keeps what it filled.
   */
  private dropFilledCells(outcome: Outcome): void {
    const kept = new Set(outcome.kept.map(({ sheet, row, column }) => `${sheet} ${cellKey(row, column)}`));
    this.book.sheets.forEach((sheet, i) => {
      const arrays = [...sheet.cells.values()].filter(({ formula }) => formula && formula.kind !== "plain");
      for (const { row, column, formula } of arrays) {
        if (kept.has(`${i} ${cellKey(row, column)}`)) continue;
        for (const cell of [...sheet.cells.values()]) {
          if (cell.formula || !contains(formula!.area, cell.row, cell.column)) continue;
          sheet.cells.delete(cellKey(cell.row, cell.column));
          this.filled.add(`${i} ${cellKey(cell.row, cell.column)}`);
          this.outcome = undefined;
        }
        sheet.cells.set(cellKey(row, column), own(sheet.cells.get(cellKey(row, column))!));
      }
    });
  }
}

/** A dynamic formula that is about to be worked out fills its own cell only; an older array formula its area. */
function own(cell: Cell): Cell {
  const { row, column, formula } = cell;
  if (formula?.kind !== "dynamic") return cell;
  return { ...cell, formula: { ...formula, area: { top: row, left: column, bottom: row, right: column } } };
}

function cellOf({ row, column, content, isFraction }: CellEdit): Cell {
  if (!isFormula(content))
    return { row, column, value: valueOf(content), ...(isFraction && { format: FRACTION_FORMAT }) };
  const text = toStored(content.formula);
  const area = { top: row, left: column, bottom: row, right: column };
  return {
    row,
    column,
    // Until it is worked out, and for good where it calls what nobody knows.
    value: new CellError("#NAME?"),
    formula: { text, rowShift: 0, columnShift: 0, kind: formulaKind(text), area },
  };
}
