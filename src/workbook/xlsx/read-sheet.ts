import { MAX_COLUMNS, MAX_ROWS, parseArea, parseCell } from "../address";
import { FileFault, shown } from "./fault";
import type { CellText, FormulaText, RowText, SheetText } from "./sheet-text";
import { TextCollector } from "./strings";
import { isTrue } from "./workbook-part";
import { decodeEscapes, readXml, type Tag } from "./xml";

/** Reads a worksheet part and remembers where everything stands. */
export function readSheet(text: string, part: string, dynamicMarks: ReadonlySet<string>): SheetText {
  const data = { start: -1, end: -1, tagEnd: -1, inner: -1, selfClosing: false };
  const reader = new SheetReader(
    { part, text, prefix: "", rows: [], data, merged: [], hiddenRows: new Set() },
    dynamicMarks,
  );
  readXml(text, part, reader);
  return reader.sheet;
}

class SheetReader {
  private inData = false;
  private row?: RowText;
  private cell?: CellText;
  private formula?: FormulaText;
  private inValue = false;
  private valueStart = 0;
  private inlineStart = 0;
  private readonly inline = new TextCollector();

  constructor(
    readonly sheet: SheetText,
    private readonly dynamicMarks: ReadonlySet<string>,
  ) {}

  open = (tag: Tag): void => {
    if (this.inData) return this.openInData(tag);
    const { name, attributes } = tag;
    if (name === "worksheet") this.openSheet(tag);
    if (name === "sheetData") {
      this.inData = true;
      const { start, end, selfClosing } = tag;
      this.sheet.data = { start, end, tagEnd: end, inner: end, selfClosing };
    }
    const area = attributes.ref === undefined ? undefined : parseArea(attributes.ref);
    if (!area) return;
    if (name === "dimension") this.sheet.dimension = { start: tag.start, end: tag.end, area };
    if (name === "mergeCell") this.sheet.merged.push(area);
    if (name === "autoFilter") this.sheet.filter = area;
  };

  text = (found: string): void => {
    if (!this.cell) return;
    if (this.formula) this.formula.text += found;
    else if (this.inValue) this.cell.content = (this.cell.content ?? "") + found;
    else this.inline.text(found);
  };

  close = (name: string, _prefix: string, start: number, end: number): void => {
    if (!this.inData) return this.closeOutside(name, end);
    if (name === "sheetData") {
      this.inData = false;
      Object.assign(this.sheet.data, { inner: start, end });
    } else if (name === "row" && this.row) {
      this.row.inner = start;
      this.row.end = end;
      // A list that was added to has room for more, and a sheet has many rows.
      this.row.cells = this.row.cells.slice();
      this.row = undefined;
    } else if (name === "c" && this.cell) {
      this.cell.end = end;
      this.cell = undefined;
    } else if (this.cell) this.closeInCell(this.cell, name, end);
  };

  private openSheet({ prefix, end, selfClosing }: Tag): void {
    this.sheet.prefix = prefix;
    // Nothing can be written into a sheet that closes itself; none but a broken file has one.
    if (selfClosing) throw new FileFault(`The file's part ${shown(this.sheet.part)} is empty.`);
    this.placeOfData(end);
  }

  /** A sheet without the element for its rows gets it after what must stand before it (ECMA-376, 18.3.1.99). */
  private closeOutside(name: string, end: number): void {
    if (BEFORE_DATA.has(name) && this.sheet.data.start === this.sheet.data.end) this.placeOfData(end);
  }

  private placeOfData(at: number): void {
    this.sheet.data = { start: at, end: at, tagEnd: at, inner: at, selfClosing: true };
  }

  private openInData(tag: Tag): void {
    if (tag.name === "row") this.openRow(tag);
    else if (tag.name === "c" && this.row) this.openCell(tag, this.row);
    else if (this.cell) this.openInCell(tag);
  }

  private openRow(tag: Tag): void {
    const { rows } = this.sheet;
    const row = tag.attributes.r === undefined ? (rows.at(-1)?.row ?? -1) + 1 : Number(tag.attributes.r) - 1;
    if (!Number.isInteger(row) || row <= (rows.at(-1)?.row ?? -1)) throw this.disordered(`row ${tag.attributes.r}`);
    if (row >= MAX_ROWS) throw this.beyond(`row ${row + 1}`);
    this.row = {
      start: tag.start,
      end: tag.end,
      tagEnd: tag.end,
      inner: tag.end,
      row,
      selfClosing: tag.selfClosing,
      cells: [],
    };
    if (isTrue(tag.attributes.hidden)) this.sheet.hiddenRows.add(row);
    rows.push(this.row);
  }

  private openCell(tag: Tag, row: RowText): void {
    const { attributes } = tag;
    const last = row.cells.at(-1)?.column ?? -1;
    const place = attributes.r === undefined ? { row: row.row, column: last + 1 } : parseCell(attributes.r);
    if (!place || place.row !== row.row || place.column <= last) throw this.disordered(`cell ${attributes.r}`);
    if (place.column >= MAX_COLUMNS) throw this.beyond(`cell ${place.column + 1} of row ${row.row + 1}`);
    // No copy of the place, and every field at once: objects that grow take half as much again, and longer.
    this.cell = {
      row: place.row,
      column: place.column,
      start: tag.start,
      end: tag.end,
      tagEnd: tag.end,
      selfClosing: tag.selfClosing,
      type: attributes.t ?? "n",
      hasRichValue: attributes.vm !== undefined,
      isDynamic: attributes.cm !== undefined && this.dynamicMarks.has(attributes.cm),
      content: undefined,
      formula: undefined,
      value: undefined,
      inline: undefined,
    };
    row.cells.push(this.cell);
  }

  private openInCell(tag: Tag): void {
    const { name, attributes, start, end } = tag;
    if (name === "f") {
      const area = attributes.ref === undefined ? undefined : parseArea(attributes.ref);
      const kind = attributes.t ?? "normal";
      this.formula = { start, end, tagEnd: end, kind, area, sharedIndex: attributes.si, text: "" };
    } else if (name === "v") {
      this.inValue = true;
      this.valueStart = start;
    } else if (name === "is") {
      this.inlineStart = start;
      this.inline.start();
    } else this.inline.open(name);
  }

  private closeInCell(cell: CellText, name: string, end: number): void {
    if (name === "f" && this.formula) {
      this.formula.end = end;
      this.formula.text = decodeEscapes(this.formula.text);
      cell.formula = this.formula;
      this.formula = undefined;
    } else if (name === "v") {
      cell.content ??= "";
      cell.value = { start: this.valueStart, end };
      this.inValue = false;
    } else if (name === "is") {
      cell.content = this.inline.finish();
      cell.inline = { start: this.inlineStart, end };
    } else this.inline.close(name);
  }

  private beyond(what: string): FileFault {
    return new FileFault(`The file's part ${shown(this.sheet.part)} has its ${what} beyond what a sheet has.`);
  }

  private disordered(what: string): FileFault {
    return new FileFault(`The file's part ${shown(this.sheet.part)} has its ${shown(what)} out of order.`);
  }
}

const BEFORE_DATA = new Set(["sheetPr", "dimension", "sheetViews", "sheetFormatPr", "cols"]);
