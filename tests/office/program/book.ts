import { Refusal } from "./batch";

/** A sheet as a test describes it: cells by name (`B2`) with their formula and what they show. */
export interface SheetSpec {
  name: string;
  isProtected?: boolean;
  cells?: Record<string, { formula: string; value?: unknown }>;
}

/** A workbook of the played program, as far as the add-in asks. Members with a capital are those of the wire. */
export class Book {
  readonly sheets: Sheet[];
  /** A person is typing into a cell: the program refuses every batch. */
  isEditing = false;
  active = { sheet: 0, row: 0, column: 0 };
  /** Cells read, one batch after the other, to see that none asks for too many. */
  readonly blocks: number[] = [];
  readonly written: { address: string; formula: string }[] = [];
  readonly formatted: { address: string; format: string }[] = [];

  constructor(specs: readonly SheetSpec[] = [{ name: "Sheet1" }]) {
    this.sheets = specs.map((spec, i) => new Sheet(this, spec, i));
  }

  get Worksheets(): object {
    const { sheets } = this;
    return {
      Items: sheets,
      GetItem: (key: string) => sheets.find(({ Id, Name }) => Id === key || Name === key) ?? null,
      GetItemOrNullObject: (key: string) => sheets.find(({ Id, Name }) => Id === key || Name === key) ?? null,
    };
  }

  GetActiveCell(): Range {
    const { sheet, row, column } = this.active;
    return new Range(this.sheets[sheet]!, row, column, 1, 1);
  }

  /** What a cell shows once it has been written; told by the test. */
  shows: (formula: string) => unknown = (formula) => formula;
}

class Sheet {
  readonly Id: string;
  readonly Name: string;
  readonly Protection: { Protected: boolean };
  readonly cells = new Map<string, { formula: string; value: unknown }>();

  constructor(
    readonly book: Book,
    { name, isProtected = false, cells = {} }: SheetSpec,
    index: number,
  ) {
    this.Id = `{sheet-${index}}`;
    this.Name = name;
    this.Protection = { Protected: isProtected };
    for (const [cell, { formula, value = formula }] of Object.entries(cells)) {
      const [row, column] = placeOf(cell);
      this.cells.set(key(row, column), { formula, value });
    }
  }

  readonly Visibility = "Visible";

  Activate(): void {
    this.book.active.sheet = this.book.sheets.indexOf(this);
  }

  GetRange(address: string): Range {
    const [first = "A1", last = first] = address.split(":");
    const [[top, left], [bottom, right]] = [placeOf(first), placeOf(last)];
    return new Range(this, top, left, bottom - top + 1, right - left + 1);
  }

  GetUsedRangeOrNullObject(): Range | null {
    const places = [...this.cells.keys()].map((text) => text.split(",").map(Number) as [number, number]);
    if (places.length === 0) return null;
    const [rows, columns] = [places.map(([row]) => row), places.map(([, column]) => column)];
    const [top, left] = [Math.min(...rows), Math.min(...columns)];
    return new Range(this, top, left, Math.max(...rows) - top + 1, Math.max(...columns) - left + 1);
  }

  GetRangeByIndexes(row: number, column: number, rows: number, columns: number): Range {
    return new Range(this, row, column, rows, columns);
  }

  GetCell(row: number, column: number): Range {
    return new Range(this, row, column, 1, 1);
  }
}

class Range {
  constructor(
    private readonly sheet: Sheet,
    readonly RowIndex: number,
    readonly ColumnIndex: number,
    readonly RowCount: number,
    readonly ColumnCount: number,
  ) {}

  get Address(): string {
    const { RowIndex: row, ColumnIndex: column, RowCount: rows, ColumnCount: columns } = this;
    const name = /^\w+$/.test(this.sheet.Name) ? this.sheet.Name : `'${this.sheet.Name.replaceAll("'", "''")}'`;
    const last = rows * columns > 1 ? `:${nameOf(row + rows - 1, column + columns - 1)}` : "";
    return `${name}!${nameOf(row, column)}${last}`;
  }

  get Formulas(): unknown[][] {
    return this.map(({ formula }) => formula);
  }

  set Formulas(rows: string[][]) {
    if (this.sheet.Protection.Protected) throw new Refusal("AccessDenied", "The sheet is protected.");
    const { book } = this.sheet;
    rows.forEach((row, r) =>
      row.forEach((formula, c) => {
        const cell = new Range(this.sheet, this.RowIndex + r, this.ColumnIndex + c, 1, 1);
        this.sheet.cells.set(key(cell.RowIndex, cell.ColumnIndex), { formula, value: book.shows(formula) });
        book.written.push({ address: cell.Address, formula });
      }),
    );
  }

  get Worksheet(): Sheet {
    return this.sheet;
  }

  /** Nothing spills in this book. */
  GetSpillParentOrNullObject(): null {
    return null;
  }

  Select(): void {
    const { book } = this.sheet;
    book.active = { sheet: book.sheets.indexOf(this.sheet), row: this.RowIndex, column: this.ColumnIndex };
  }

  GetResizedRange(rows: number, columns: number): Range {
    return new Range(this.sheet, this.RowIndex, this.ColumnIndex, this.RowCount + rows, this.ColumnCount + columns);
  }

  set NumberFormat(formats: string[][]) {
    this.sheet.book.formatted.push({ address: this.Address, format: formats[0]![0]! });
  }

  /** Values go in as formulas do; here none is told from a text. */
  set Values(rows: string[][]) {
    this.Formulas = rows;
  }

  get Values(): unknown[][] {
    return this.map(({ value }) => value);
  }

  private map(read: (cell: { formula: string; value: unknown }) => unknown): unknown[][] {
    this.sheet.book.blocks.push(this.RowCount * this.ColumnCount);
    return Array.from({ length: this.RowCount }, (_, r) =>
      Array.from({ length: this.ColumnCount }, (_unused, c) =>
        read(this.sheet.cells.get(key(this.RowIndex + r, this.ColumnIndex + c)) ?? { formula: "", value: "" }),
      ),
    );
  }
}

const key = (row: number, column: number): string => `${row},${column}`;

function placeOf(cell: string): [number, number] {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(cell) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return [Number(digits) - 1, column];
}

function nameOf(row: number, column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row + 1}`;
}
