import { Refusal } from "./batch";

/** A sheet as a test describes it: cells by name (`B2`) with their formula and what they show. */
export interface SheetSpec {
  name: string;
  isProtected?: boolean;
  cells?: Record<string, CellSpec>;
  /** At the left of the printed foot. */
  foot?: string;
  visibility?: "Visible" | "Hidden";
  /** Names that this sheet alone knows. */
  names?: Record<string, string>;
}

interface CellSpec {
  formula: string;
  value?: unknown;
  /** What it fills, itself among it. */
  spills?: unknown[][];
  /** The cell's own number format. */
  format?: string;
}

/** A workbook of the played program, as far as the add-in asks. Members with a capital are those of the wire. */
export class Book {
  sheets: Sheet[];
  readonly Name = "Tool cabinet.xlsx";
  readonly names: DefinedName[] = [];
  readonly Protection = { Protected: false };
  /** A range that is selected; the active cell where none is told. */
  selected: [row: number, column: number, rows: number, columns: number] | undefined;
  /** A person is typing into a cell: the program refuses every batch. */
  isEditing = false;
  active = { sheet: 0, row: 0, column: 0 };
  /** The add-in asked to be told of every sheet that is worked out anew. */
  tellsCalculated = false;
  nextShape = 0;
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
      GetActiveWorksheet: () => sheets[this.active.sheet],
      Add: (name: string) => this.add(name),
      GetItem: (key: string) => sheets.find(({ Id, Name }) => Id === key || Name === key) ?? null,
      GetItemOrNullObject: (key: string) => sheets.find(({ Id, Name }) => Id === key || Name === key) ?? null,
      _RegisterCalculatedEvent: () => void (this.tellsCalculated = true),
      _UnregisterCalculatedEvent: () => void (this.tellsCalculated = false),
    };
  }

  get Names(): object {
    const { names } = this;
    return {
      Items: names,
      Add: (name: string, area: string) => {
        if (names.some(({ Name }) => Name === name)) throw new Refusal("ItemAlreadyExists", `${name} is taken.`);
        const added = new DefinedName(names, name, area);
        names.push(added);
        return added;
      },
      GetItemOrNullObject: (key: string) => names.find(({ Name }) => Name === key) ?? null,
    };
  }

  readonly Application = {
    SuspendApiCalculationUntilNextSync: () => undefined,
    SuspendScreenUpdatingUntilNextSync: () => undefined,
  };

  /** Tables by name, each with its sheet's. */
  tables: Record<string, string> = {};

  get Tables(): object {
    return { Items: Object.entries(this.tables).map(([Name, sheet]) => ({ Name, Worksheet: { Name: sheet } })) };
  }

  /** A copy goes by the name of what was copied, with a number, until it is given another. */
  copy(sheet: Sheet): Sheet {
    if (this.Protection.Protected) throw new Refusal("AccessDenied", "The workbook's structure is protected.");
    const copy = new Sheet(this, { name: `${sheet.Name} (2)` }, this.sheets.length + 100);
    this.sheets.push(copy);
    return copy;
  }

  rename(sheet: Sheet, name: string): void {
    if (name.length > 31 || name === this.refuses || this.sheets.some((one) => one !== sheet && one.Name === name))
      throw new Refusal("InvalidArgument", `A sheet cannot be called ${name}.`);
  }

  /** A sheet whose name the program does not take, told by the test. */
  refuses: string | undefined;

  private add(name: string): Sheet {
    if (this.Protection.Protected) throw new Refusal("AccessDenied", "The workbook's structure is protected.");
    if (this.sheets.some(({ Name }) => Name.toLowerCase() === name.toLowerCase()) || name === this.refuses)
      throw new Refusal("ItemAlreadyExists", `A sheet cannot be called ${name}.`);
    const sheet = new Sheet(this, { name }, this.sheets.length);
    this.sheets.push(sheet);
    return sheet;
  }

  GetSelectedRange(): Range {
    const { sheet, row, column } = this.active;
    return new Range(this.sheets[sheet]!, ...(this.selected ?? [row, column, 1, 1]));
  }

  GetActiveCell(): Range {
    const { sheet, row, column } = this.active;
    return new Range(this.sheets[sheet]!, row, column, 1, 1);
  }

  /** What a cell shows once it has been written; told by the test. */
  shows: (formula: string) => unknown = (formula) => formula;
}

class DefinedName {
  constructor(
    private readonly list: DefinedName[],
    readonly Name: string,
    readonly area: string,
  ) {}

  get Formula(): string {
    return this.area;
  }

  Delete(): void {
    this.list.splice(this.list.indexOf(this), 1);
  }
}

interface Cell {
  formula: string;
  value: unknown;
  /** Row, column and size of what it is part of. */
  anchor?: readonly [row: number, column: number, rows: number, columns: number];
}

class Sheet {
  Gridlines = true;
  readonly PageLayout = new PageLayout();
  readonly FreezePanes = { rows: 0, FreezeRows: (count: number) => void (this.FreezePanes.rows = count) };
  readonly looks: { area: string; format: Format; validation: Validation; rules: Rule[] }[] = [];
  readonly merged: string[] = [];
  readonly Id: string;
  private name: string;
  readonly Protection: { Protected: boolean };
  readonly cells = new Map<string, Cell>();
  readonly formats = new Map<string, string>();
  readonly properties: Record<string, string> = {};
  readonly Names: { Items: DefinedName[] };

  constructor(
    readonly book: Book,
    { name, isProtected = false, cells = {}, foot = "", visibility = "Visible", names = {} }: SheetSpec,
    index: number,
  ) {
    this.Id = `{sheet-${index}}`;
    this.name = name;
    this.Visibility = visibility;
    this.PageLayout.foot.LeftFooter = foot;
    this.Protection = { Protected: isProtected };
    this.Names = { Items: [] };
    for (const [own, area] of Object.entries(names))
      this.Names.Items.push(new DefinedName(this.Names.Items, own, area));
    for (const [cell, { formula, value = formula, spills = [[value]], format }] of Object.entries(cells)) {
      const [row, column] = placeOf(cell);
      const anchor = spills.flat().length > 1 ? ([row, column, spills.length, spills[0]!.length] as const) : undefined;
      spills.forEach((values, r) =>
        values.forEach((shown, c) => {
          const isFirst = r + c === 0;
          const at = key(row + r, column + c);
          this.cells.set(at, {
            formula: isFirst ? formula : String(shown),
            value: shown,
            ...(anchor ? { anchor } : {}),
          });
          if (format !== undefined) this.formats.set(at, format);
        }),
      );
    }
  }

  shapes: Shape[] = [];

  get Shapes(): object {
    return {
      Items: this.shapes,
      AddImage: (base64: string) => {
        if (this.Protection.Protected) throw new Refusal("AccessDenied", "The sheet is protected.");
        const shape = new Shape(this, base64);
        this.shapes.push(shape);
        return shape;
      },
      GetItem: (key: string) => this.shapes.find(({ Id, Name }) => Id === key || Name === key) ?? null,
    };
  }
  Visibility: "Visible" | "Hidden";

  get Name(): string {
    return this.name;
  }

  set Name(name: string) {
    this.book.rename(this, name);
    this.name = name;
  }

  /** Whatever stands and is set up there. */
  Copy(place: string): Sheet {
    if (place !== "End") throw new Refusal("InvalidArgument", "A copy goes to the end.");
    const copy = this.book.copy(this);
    for (const [at, cell] of this.cells) copy.cells.set(at, { ...cell });
    for (const [at, format] of this.formats) copy.formats.set(at, format);
    Object.assign(copy.PageLayout.foot, this.PageLayout.foot);
    copy.Visibility = this.Visibility;
    copy.Protection.Protected = this.Protection.Protected;
    return copy;
  }

  readonly CustomProperties = {
    Add: (name: string, value: string) => {
      this.properties[name] = value;
      return { Key: name, Value: value };
    },
  };

  Activate(): void {
    this.book.active.sheet = this.book.sheets.indexOf(this);
  }

  Delete(): void {
    this.book.sheets = this.book.sheets.filter((sheet) => sheet !== this);
  }

  GetRange(address: string): Range {
    const [first, last = first] = address.replaceAll("$", "").split(":") as [string, string?];
    const [top, left] = placeOf(first);
    const [bottom, right] = placeOf(last);
    return new Range(this, top, left, bottom - top + 1, right - left + 1);
  }

  /** The program's limit is 8,192 characters. */
  GetRanges(addresses: string): object {
    if (addresses.length > 8_192) throw new Refusal("InvalidArgument", "The addresses are too many.");
    return { Format: this.looksOf(addresses).format };
  }

  looksOf(area: string): Sheet["looks"][number] {
    const look = { area, format: new Format(), validation: new Validation(), rules: [] };
    this.looks.push(look);
    return look;
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

/** A picture over the cells; it begins as large as it is, in the corner of the sheet. */
class Shape {
  readonly Id: string;
  Name = "Picture";
  AltTextDescription = "";
  Left = 0;
  Top = 0;
  LockAspectRatio = true;
  Placement = "TwoCell";
  private width: number;
  private height: number;

  constructor(
    private readonly sheet: Sheet,
    readonly base64: string,
  ) {
    this.Id = `shape-${this.sheet.book.nextShape++}`;
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    if (bytes[0] !== 0x89) throw new Refusal("InvalidArgument", "This is no picture.");
    const size = new DataView(bytes.buffer);
    this.width = (size.getUint32(16) * 72) / 96;
    this.height = (size.getUint32(20) * 72) / 96;
  }

  get Width(): number {
    return this.width;
  }

  set Width(width: number) {
    if (this.LockAspectRatio) this.height *= width / this.width;
    this.width = width;
  }

  get Height(): number {
    return this.height;
  }

  set Height(height: number) {
    if (this.LockAspectRatio) this.width *= height / this.height;
    this.height = height;
  }

  Delete(): void {
    this.sheet.shapes = this.sheet.shapes.filter((shape) => shape !== this);
  }
}

class Range {
  /** Of cells as wide and high as they come. */
  get Left(): number {
    return this.ColumnIndex * 48;
  }

  get Top(): number {
    return this.RowIndex * 15;
  }

  get Width(): number {
    return this.ColumnCount * 48;
  }

  private readonly look: Sheet["looks"][number];

  constructor(
    private readonly sheet: Sheet,
    readonly RowIndex: number,
    readonly ColumnIndex: number,
    readonly RowCount: number,
    readonly ColumnCount: number,
  ) {
    this.look = sheet.looksOf("");
    this.look.area = this.Address.split("!").at(-1)!;
  }

  get Format(): Format {
    return this.look.format;
  }

  get DataValidation(): Validation {
    return this.look.validation;
  }

  get ConditionalFormats(): object {
    return {
      Add: (type: string) => {
        const rule = new Rule(type);
        // The program puts a new one before those that are there.
        this.look.rules.unshift(rule);
        return rule;
      },
    };
  }

  get NumberFormat(): string[][] {
    return this.each((at) => this.sheet.formats.get(at) ?? "General");
  }

  set NumberFormat(rows: string[][]) {
    const { RowCount, ColumnCount } = this;
    if (rows.length !== RowCount || rows.some((row) => row.length !== ColumnCount))
      throw new Refusal("InvalidArgument", "The formats are not as many as the cells.");
    this.sheet.book.formatted.push({ address: this.Address, format: rows[0]![0]! });
    rows.forEach((row, r) =>
      row.forEach((format, c) => this.sheet.formats.set(key(this.RowIndex + r, this.ColumnIndex + c), format)),
    );
  }

  Merge(): void {
    this.sheet.merged.push(this.look.area);
  }

  GetUsedRangeOrNullObject(): Range | null {
    const used = this.sheet.GetUsedRangeOrNullObject();
    if (!used) return null;
    const top = Math.max(this.RowIndex, used.RowIndex);
    const left = Math.max(this.ColumnIndex, used.ColumnIndex);
    const rows = Math.min(this.RowIndex + this.RowCount, used.RowIndex + used.RowCount) - top;
    const columns = Math.min(this.ColumnIndex + this.ColumnCount, used.ColumnIndex + used.ColumnCount) - left;
    return rows > 0 && columns > 0 ? new Range(this.sheet, top, left, rows, columns) : null;
  }

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
        const at = key(cell.RowIndex, cell.ColumnIndex);
        if (this.sheet.formats.get(at) === "@") return void this.sheet.cells.set(at, { formula, value: formula });
        for (const name of sheetsIn(formula))
          if (!book.sheets.some(({ Name }) => Name === name))
            throw new Refusal("InvalidArgument", `${formula} names ${name}, which is not there.`);
        this.sheet.cells.set(at, { formula, value: book.shows(formula) });
        book.written.push({ address: cell.Address, formula });
      }),
    );
  }

  get Worksheet(): Sheet {
    return this.sheet;
  }

  GetSpillParentOrNullObject(): Range | null {
    const anchor = this.sheet.cells.get(key(this.RowIndex, this.ColumnIndex))?.anchor;
    return anchor ? new Range(this.sheet, anchor[0], anchor[1], 1, 1) : null;
  }

  GetSpillingToRangeOrNullObject(): Range | null {
    const anchor = this.sheet.cells.get(key(this.RowIndex, this.ColumnIndex))?.anchor;
    return anchor && anchor[0] === this.RowIndex && anchor[1] === this.ColumnIndex
      ? new Range(this.sheet, ...anchor)
      : null;
  }

  /** Values alone: what stood there goes, and what it had filled. */
  CopyFrom(source: Range, type: string): void {
    if (type !== "Values") throw new Refusal("NotImplemented", `This program copies no ${type}.`);
    if (this.sheet.Protection.Protected) throw new Refusal("AccessDenied", "The sheet is protected.");
    source.each((from, r, c) => {
      const cell = source.sheet.cells.get(from);
      const at = key(this.RowIndex + r, this.ColumnIndex + c);
      if (cell) this.sheet.cells.set(at, { formula: String(cell.value), value: cell.value });
      else this.sheet.cells.delete(at);
      return undefined;
    });
  }

  /** The packaged runtime asks for it, and does not read what it gets. */
  get ValuesAsJson(): unknown[][] {
    return this.each((at) => ({ type: "String", basicValue: this.sheet.cells.get(at)?.value ?? "" }));
  }

  private each<T>(of: (at: string, row: number, column: number) => T): T[][] {
    return Array.from({ length: this.RowCount }, (_, r) =>
      Array.from({ length: this.ColumnCount }, (_unused, c) => of(key(this.RowIndex + r, this.ColumnIndex + c), r, c)),
    );
  }

  Select(): void {
    const { book } = this.sheet;
    book.active = { sheet: book.sheets.indexOf(this.sheet), row: this.RowIndex, column: this.ColumnIndex };
  }

  GetCell(row: number, column: number): Range {
    return new Range(this.sheet, this.RowIndex + row, this.ColumnIndex + column, 1, 1);
  }

  GetResizedRange(rows: number, columns: number): Range {
    return new Range(this.sheet, this.RowIndex, this.ColumnIndex, this.RowCount + rows, this.ColumnCount + columns);
  }

  get Values(): unknown[][] {
    return this.map(({ value }) => value);
  }

  /**
   * What the program makes of what is written: a null leaves a cell alone, an apostrophe tells a text, a formula in a
   * text cell stays a text, and what looks like a fraction or a date becomes one everywhere else.
   */
  set Values(rows: unknown[][]) {
    rows.forEach((row, r) =>
      row.forEach((content, c) => {
        if (content === null) return;
        const at = key(this.RowIndex + r, this.ColumnIndex + c);
        const isText = this.sheet.formats.get(at) === "@";
        const value =
          typeof content !== "string"
            ? content
            : content.startsWith("'")
              ? content.slice(1)
              : isText
                ? content
                : guessed(content);
        this.sheet.cells.set(at, { formula: String(value), value });
        const { Address: address } = new Range(this.sheet, this.RowIndex + r, this.ColumnIndex + c, 1, 1);
        this.sheet.book.written.push({ address, formula: String(content) });
      }),
    );
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

/** What is set on a range's looks, as the program names it. */
class Format {
  readonly Font = { Name: "", Size: 0, Bold: false, Italic: false, Color: "" };
  readonly Fill = { Color: "" };
  readonly borders = new Map<string, { Style: string; Weight: string; Color: string }>();
  readonly Borders = {
    GetItem: (side: string) => {
      const border = this.borders.get(side) ?? { Style: "None", Weight: "Thin", Color: "" };
      this.borders.set(side, border);
      return border;
    },
  };
  HorizontalAlignment = "";
  VerticalAlignment = "";
  WrapText = false;
  IndentLevel = 0;
  ColumnWidth = 48;
  RowHeight = 15;
  NumberFormat = "";
}

class Validation {
  Rule: object = {};
  ErrorAlert: object = {};
}

class Rule {
  readonly Custom = { Rule: { Formula: "" }, Format: new Format() };
  readonly ColorScale = { Criteria: {} };

  constructor(readonly type: string) {}
}

class PageLayout {
  Orientation = "Portrait";
  PaperSize = "Letter";
  Zoom: object = {};
  CenterHorizontally = false;
  readonly foot = { LeftFooter: "", CenterFooter: "", RightFooter: "" };
  readonly HeadersFooters = { DefaultForAllPages: this.foot };
  titles = "";

  SetPrintTitleRows(rows: string): void {
    this.titles = rows;
  }
}

const sheetsIn = (formula: string): string[] =>
  [...formula.replace(/"[^"]*"/g, "").matchAll(/(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!/gu)].map(
    ([, quoted, plain]) => quoted?.replaceAll("''", "'") ?? plain!,
  );

/** 7/16 is the 16th of July. */
const guessed = (text: string): unknown =>
  /^\d+\/\d+$/.test(text) ? "a date" : text.trim() !== "" && Number.isFinite(Number(text)) ? Number(text) : text;

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
