import { addSheets } from "../../author/index";
import { EditedWorkbook, isFormula } from "../../edit/index";
import { VERSION } from "../../../functions/index";
import { OWN_FUNCTIONS } from "../../edit/own-functions";
import { freeze } from "../../freeze/index";
import { conditionalLook, readLook, type Look, type Looked } from "../../look/index";
import { printedSheet } from "../print/printed-sheet";
import { shopPagesOf } from "../../shop/index";
import { difference } from "./difference";
import type {
  Answers,
  Kind,
  OpenedBook,
  OpenedSheet,
  Questions,
  SheetFacts,
  SheetsChanged,
  WhatCame,
} from "./messages";
import { valueAt } from "./results";
import { ToldResults } from "./told-results";

type Answering = { [K in Kind]: (question: Questions[K]) => Answers[K] };

/** Holds one workbook and answers what the page asks about it. Knows nothing of workers. */
export class Bookkeeper implements Answering {
  private workbook!: EditedWorkbook;
  private look!: Look;
  private results!: ToldResults;
  private readonly looked = new Map<string, Looked>();

  /** @throws FileFault where the bytes are no usable workbook */
  answer<K extends Kind>(kind: K, question: Questions[K]): Answers[K] {
    return (this[kind] as (question: Questions[K]) => Answers[K]).call(this, question);
  }

  open({ bytes, edits }: Questions["open"]): OpenedBook {
    this.workbook = new EditedWorkbook(bytes, edits);
    this.look = readLook(this.workbook.opened);
    this.results = new ToldResults(this.workbook);
    return {
      sheets: this.workbook.sheets.map((_, i) => this.opened(i)),
      styles: this.look.styles,
      date1904: this.look.date1904,
      results: this.results.all,
      changes: this.workbook.changes,
      mended: this.workbook.mended,
      unshown: this.look.unshown,
    };
  }

  put({ edits }: Questions["put"]): WhatCame {
    let changed = false;
    for (const edit of edits) changed = this.workbook.put(edit) || changed;
    const told = this.results.update();
    if (!changed) return { changed, difference: told };
    this.looked.clear();
    return { changed, difference: told, changes: this.workbook.changes };
  }

  /** @throws SheetFault where it is refused; nothing has then been changed */
  sheets({ edit }: Questions["sheets"]): SheetsChanged {
    const cells = this.workbook.changeSheets(edit);
    const before = this.results.all;
    this.look = readLook(this.workbook.opened);
    this.results = new ToldResults(this.workbook);
    this.looked.clear();
    const { sheets } = this.workbook;
    return {
      sheets: sheets.map((_, i) => this.facts(i)),
      added: edit.kind === "add" ? this.opened(sheets.findIndex(({ id }) => id === edit.id)) : undefined,
      cells: cells.filter(({ sheet }) => !(edit.kind === "add" && sheet === edit.id)),
      difference: difference(before, this.results.all),
      changes: this.workbook.changes,
    };
  }

  contents({ cells }: Questions["contents"]): Answers["contents"] {
    return cells.map(({ sheet, row, column }) => this.workbook.content(sheet, row, column));
  }

  looks({ sheet, cells }: Questions["looks"]): Answers["looks"] {
    const looked = this.lookedAt(sheet);
    return cells.map(({ row, column }) => looked(row, column));
  }

  save(): Uint8Array {
    return this.workbook.save();
  }

  printed({ sheets }: Questions["printed"]): Answers["printed"] {
    return sheets.flatMap(
      (id) => printedSheet(this.workbook, this.look, this.results.all, id, this.lookedAt(id)) ?? [],
    );
  }

  /** @throws SheetFault where one sheet cannot stand alone */
  freeze({ date, sheet }: Questions["freeze"]): Answers["freeze"] {
    const name = this.workbook.sheets.find(({ id }) => id === sheet)?.name;
    return freeze(this.workbook.save(), { functions: OWN_FUNCTIONS }, { date, version: VERSION() }, name);
  }

  names(): string[] {
    return this.workbook.opened.book.names.map(({ name }) => name);
  }

  /** @throws SheetFault where the workbook takes no sheet */
  addSheets({ workbook }: Questions["addSheets"]): Uint8Array {
    return addSheets(this.workbook.save(), workbook);
  }

  private lookedAt(sheet: string): Looked {
    const looked = this.looked.get(sheet) ?? this.rules(sheet);
    this.looked.set(sheet, looked);
    return looked;
  }

  shopPages({ title }: Questions["shopPages"]): Answers["shopPages"] {
    return shopPagesOf(this.workbook, title);
  }

  private rules(id: string): Looked {
    const outcome = this.workbook.calculate();
    const sheet = this.workbook.sheets.findIndex((one) => one.id === id);
    return conditionalLook(this.look.conditions[sheet] ?? [], {
      value: (row, column) => {
        const content = this.workbook.content(id, row, column);
        return isFormula(content) || content === null ? valueAt(this.results.all, id, row, column) : content;
      },
      formula: (formula, row, column, rowShift, columnShift) =>
        outcome.ask({ formula, sheet, row, column, rowShift, columnShift }),
    });
  }

  private facts(place: number): SheetFacts {
    const { id, name } = this.workbook.sheets[place]!;
    const { sheets, hidden, conditions } = this.look;
    return {
      id,
      name,
      isHidden: hidden.has(place),
      hasCells: sheets[place] !== undefined,
      conditions: conditions[place] ?? [],
    };
  }

  private opened(place: number): OpenedSheet {
    const { merged } = this.workbook.opened.book.sheets[place]!;
    return { ...this.facts(place), look: this.look.sheets[place], merged, cells: this.cells(place) };
  }

  private cells(sheet: number): OpenedSheet["cells"] {
    return [...this.workbook.cells(sheet)].map(({ row, column }) => ({
      row,
      column,
      content: this.workbook.content(sheet, row, column),
    }));
  }
}
