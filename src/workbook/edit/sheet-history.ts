import { namesSheet, withSheetRenamed } from "../formula/sheet-names";
import { applySheetEdit, type SheetEdit } from "../sheets/index";
import { openWorkbook, type OpenWorkbook } from "../xlsx/open-workbook";
import { withFormula, type CellEdit } from "./cell-edit";
import { isFormula, sameContent } from "./content";

/** A change of the sheets as it is kept: a deletion with what was typed that it took away, so that it can be undone. */
export type KeptSheetEdit = SheetEdit & { lost?: CellEdit[] };

/** The workbook's file after the last change of its sheets, and what was typed, in the terms of that file. */
export interface Stage {
  bytes: Uint8Array;
  opened: OpenWorkbook;
  ids: readonly string[];
  cells: readonly CellEdit[];
}

/** The changes of a workbook's sheets, each of which can be taken back. */
export class SheetHistory {
  private steps: readonly Step[] = [];

  /** @param first the file as it was opened */
  constructor(private readonly first: Omit<Stage, "cells">) {}

  copy(): SheetHistory {
    const copy = new SheetHistory(this.first);
    copy.steps = this.steps;
    return copy;
  }

  get edits(): KeptSheetEdit[] {
    return this.steps.map(({ edit }) => edit);
  }

  /**
   * What comes of one more change. One that takes the last one back leaves neither; a deleted sheet that is added again
   * comes back with what stood in it, and with what referred to it.
   * @throws SheetFault where it is refused; nothing has then been changed
   */
  apply(edit: KeptSheetEdit, now: Stage): Stage {
    if (edit.kind === "add") {
      const deleted = this.steps.findIndex((step) => step.edit.kind === "delete" && step.edit.id === edit.id);
      if (deleted >= 0) return this.restore(deleted, now);
    }
    const back = this.takenBack(edit, now);
    if (back) {
      this.steps = this.steps.slice(0, -1);
      return back;
    }
    const { step, stage } = taken(edit, now);
    this.steps = [...this.steps, step];
    return stage;
  }

  /** The state before the last change, where the edit leads back to it. */
  private takenBack(edit: SheetEdit, now: Stage): Stage | undefined {
    const last = this.steps.at(-1)?.edit;
    if (!last || last.id !== edit.id) return undefined;
    const before = this.before(this.steps.length - 1);
    if (last.kind === "add" && edit.kind === "delete") {
      const isUsed = ({ sheet, content }: CellEdit) =>
        sheet === edit.id || (isFormula(content) && namesSheet(content.formula, nameOf(now, edit.id)));
      return now.cells.some(isUsed) ? undefined : { ...before, cells: now.cells };
    }
    if (last.kind === "rename" && edit.kind === "rename") {
      const [name, old] = [nameOf(now, edit.id), nameOf(before, edit.id)];
      if (old !== edit.name) return undefined;
      const cells = now.cells.map((cell) => withFormula(cell, (typed) => withSheetRenamed(typed, name, old)));
      return { ...before, cells };
    }
    if (last.kind === "move" && edit.kind === "move") {
      const after = now.ids.filter((id) => id !== edit.id);
      const place = edit.before === undefined ? -1 : after.indexOf(edit.before);
      after.splice(place < 0 ? after.length : place, 0, edit.id);
      return inGrid(now, after) === inGrid(before, before.ids) ? { ...before, cells: now.cells } : undefined;
    }
    return undefined;
  }

  /** Takes a deletion back, whatever came after it. */
  private restore(at: number, now: Stage): Stage {
    const { edit, changed } = this.steps[at]!;
    const later = this.steps.slice(at + 1);
    const steps: Step[] = [];
    let stage: Stage = { ...this.before(at), cells: edit.lost ?? [] };
    let seen = (edit.lost ?? []).map((cell) => changed(cell));
    for (const { edit: next, changed: change } of later) {
      seen = seen.map((cell) => cell && change(cell));
      const done = taken(next, stage);
      steps.push(done.step);
      stage = done.stage;
    }
    // What was typed since stays; all else comes back as it was.
    const cells = new Map(stage.cells.map((cell) => [placeOf(cell), cell]));
    const untouched = new Set(
      seen.flatMap((cell) => (cell ? [`${placeOf(cell)} ${JSON.stringify(cell.content)}`] : [])),
    );
    for (const cell of now.cells)
      if (!untouched.has(`${placeOf(cell)} ${JSON.stringify(cell.content)}`)) cells.set(placeOf(cell), cell);
    this.steps = [...this.steps.slice(0, at), ...steps];
    return { ...stage, cells: [...cells.values()] };
  }

  private before(at: number): Omit<Stage, "cells"> {
    return at === 0 ? this.first : reopened(this.steps[at - 1]!);
  }
}

/** One change, the file after it, and what it does to what was typed before. */
interface Step {
  edit: KeptSheetEdit;
  bytes: Uint8Array;
  ids: readonly string[];
  changed(cell: CellEdit): CellEdit | undefined;
}

const reopened = ({ bytes, ids }: Step): Omit<Stage, "cells"> => ({ bytes, ids, opened: openWorkbook(bytes) });

function taken(edit: KeptSheetEdit, now: Stage): { step: Step; stage: Stage } {
  const { bytes, ids, formula } = applySheetEdit(now.opened, now.ids, edit);
  const changed = (cell: CellEdit) =>
    edit.kind === "delete" && cell.sheet === edit.id ? undefined : withFormula(cell, formula);
  const cells = now.cells.flatMap((cell) => changed(cell) ?? []);
  const kept = { ...edit };
  if (edit.kind === "delete") {
    const lost = now.cells.filter((cell) => {
      const after = changed(cell);
      return !after || !sameContent(after.content, cell.content);
    });
    kept.lost = lost.length > 0 ? lost : edit.lost;
    if (!kept.lost) delete kept.lost;
  }
  return { step: { edit: kept, bytes, ids, changed }, stage: { bytes, ids, cells, opened: openWorkbook(bytes) } };
}

const placeOf = ({ sheet, row, column }: CellEdit): string => `${sheet} ${row} ${column}`;

function nameOf({ ids, opened }: Omit<Stage, "cells">, id: string): string {
  return opened.workbook.sheets[ids.indexOf(id)]!.name;
}

/** The order of the sheets with cells: no other is seen where sheets are moved. */
function inGrid({ ids, opened }: Omit<Stage, "cells">, order: readonly string[]): string {
  return order.filter((id) => opened.workbook.sheets[ids.indexOf(id)]?.isWorksheet).join("/");
}
