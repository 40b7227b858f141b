import { EditedWorkbook, isFormula } from "../../edit/index";
import { conditionalLook, readLook, type Look, type Looked } from "../../look/index";
import { difference } from "./difference";
import type { Answers, Kind, OpenedBook, OpenedSheet, Questions, WhatCame } from "./messages";
import { resultsOf, valueAt, type Results } from "./results";

type Answering = { [K in Kind]: (question: Questions[K]) => Answers[K] };

/** Holds one workbook and answers what the page asks about it. Knows nothing of workers. */
export class Bookkeeper implements Answering {
  private workbook!: EditedWorkbook;
  private look!: Look;
  private results!: Results;
  private looked: Looked[] = [];

  /** @throws FileFault where the bytes are no usable workbook */
  answer<K extends Kind>(kind: K, question: Questions[K]): Answers[K] {
    return (this[kind] as (question: Questions[K]) => Answers[K]).call(this, question);
  }

  open({ bytes, edits }: Questions["open"]): OpenedBook {
    this.workbook = new EditedWorkbook(bytes, edits);
    this.look = readLook(this.workbook.opened);
    this.results = resultsOf(this.workbook);
    const { workbook, book } = this.workbook.opened;
    return {
      sheets: workbook.sheets.map(({ name }, i) => ({ name, merged: book.sheets[i]!.merged, cells: this.cells(i) })),
      look: this.look,
      results: this.results,
      changes: this.workbook.changes,
      mended: this.workbook.mended,
    };
  }

  put({ edits }: Questions["put"]): WhatCame {
    let changed = false;
    for (const edit of edits) changed = this.workbook.put(edit) || changed;
    const before = this.results;
    if (!changed) return { changed, difference: difference(before, before) };
    this.results = resultsOf(this.workbook);
    this.looked = [];
    return { changed, difference: difference(before, this.results), changes: this.workbook.changes };
  }

  contents({ cells }: Questions["contents"]): Answers["contents"] {
    return cells.map(({ sheet, row, column }) => this.workbook.content(sheet, row, column));
  }

  looks({ sheet, cells }: Questions["looks"]): Answers["looks"] {
    const looked = (this.looked[sheet] ??= this.rules(sheet));
    return cells.map(({ row, column }) => looked(row, column));
  }

  save(): Uint8Array {
    return this.workbook.save();
  }

  private rules(sheet: number): Looked {
    const outcome = this.workbook.calculate();
    return conditionalLook(this.look.conditions[sheet] ?? [], {
      value: (row, column) => {
        const content = this.workbook.content(sheet, row, column);
        return isFormula(content) || content === null ? valueAt(this.results, sheet, row, column) : content;
      },
      formula: (formula, row, column, rowShift, columnShift) =>
        outcome.ask({ formula, sheet, row, column, rowShift, columnShift }),
    });
  }

  private cells(sheet: number): OpenedSheet["cells"] {
    return [...this.workbook.cells(sheet)].map(({ row, column }) => ({
      row,
      column,
      content: this.workbook.content(sheet, row, column),
    }));
  }
}
