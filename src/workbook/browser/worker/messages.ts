import type { WorkbookDefinition } from "../../author/definition";
import type { CellEdit, Change, Content, EditedWorkbook, KeptSheetEdit, Put } from "../../edit/index";
import type { CellStyle, Look, SheetLook, StyleChange } from "../../look/index";
import type { Area } from "../../address";
import type { PrintedSheet } from "../print/printed-sheet";
import type { Difference } from "./difference";
import type { Results } from "./results";

/** What the page asks of the worker that holds its workbook; each kind has one kind of answer. */
export interface Answers {
  open: OpenedBook;
  put: WhatCame;
  sheets: SheetsChanged;
  contents: Content[];
  looks: (StyleChange | undefined)[];
  save: Uint8Array;
  printed: PrintedSheet[];
  freeze: { bytes: Uint8Array; frozen: number };
  names: string[];
  addSheets: Uint8Array;
  shopPages: { html: string } | { why: string };
}

/** Sheets are known by their ids, wherever they stand; rows and columns count from 0. */
export interface Questions {
  open: { bytes: Uint8Array; edits: Edits };
  put: { edits: readonly Placed[] };
  /** One sheet is added, renamed, moved or deleted; refused with a `SheetFault`. */
  sheets: { edit: KeptSheetEdit };
  contents: { cells: readonly Place[] };
  /** What rules about looks change in cells of one sheet. */
  looks: { sheet: string; cells: readonly Omit<Place, "sheet">[] };
  save: Record<never, never>;
  /** Sheets as they are to be printed. */
  printed: { sheets: readonly string[] };
  /** A copy with values, of the whole workbook or of one sheet. */
  freeze: { date: string; sheet: string | undefined };
  /** What the workbook calls by name, apart from its sheets. */
  names: Record<never, never>;
  /** The file with more sheets behind its own; the workbook stays as it is. */
  addSheets: { workbook: WorkbookDefinition };
  /** The pages for the shop, under the workbook's name. */
  shopPages: { title: string };
}

/** What was changed in an earlier visit, or before the last worker ended. */
export type Edits = ConstructorParameters<typeof EditedWorkbook>[1] & {};

/** What is put into a cell. */
export type Placed = Put & { sheet: string };

export type Kind = keyof Answers;

export interface Place {
  sheet: string;
  row: number;
  column: number;
}

/** A workbook that was just opened, with all that a grid shows of it. */
export interface OpenedBook {
  sheets: OpenedSheet[];
  styles: CellStyle[];
  date1904: boolean;
  results: Results;
  changes: Change[];
  mended: number;
  /** What is not shown of how it looks, in one line for a person each. */
  unshown: string[];
}

/** What the page knows of a sheet from then on. */
export interface SheetFacts {
  id: string;
  name: string;
  isHidden: boolean;
  /** Charts and dialogs have no cells, and are in no grid. */
  hasCells: boolean;
  conditions: Look["conditions"][number];
}

export interface OpenedSheet extends SheetFacts {
  look: SheetLook | undefined;
  merged: Area[];
  cells: { row: number; column: number; content: Content }[];
}

/** What came of a change of the sheets. */
export interface SheetsChanged {
  /** All sheets in their order. */
  sheets: SheetFacts[];
  /** The one that was not there before, with what stands in it: a deleted one comes back full. */
  added: OpenedSheet | undefined;
  /** The cells of other sheets that hold something else because of it. */
  cells: CellEdit[];
  difference: Difference;
  changes: Change[];
}

/** What came of putting something into cells. */
export interface WhatCame {
  /** False where all of it stood there already. */
  changed: boolean;
  difference: Difference;
  /** Everything that differs from the file; left out where nothing has changed. */
  changes?: Change[];
}

/** Requests and replies carry a number, for replies may come long after. */
export type Request = { [K in Kind]: { number: number; kind: K; question: Questions[K] } }[Kind];

export type Reply = { number: number } & ({ answer: Answers[Kind] } | { fault: WorkerFault });

/** What went wrong, as far as it can be sent. */
export interface WorkerFault {
  message: string;
  /** The file is no usable workbook, or the sheets may not be changed so; else the fault is ours. */
  of: "file" | "sheets" | "page";
}
