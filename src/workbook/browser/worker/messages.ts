import type { Change, Content, EditedWorkbook, Put } from "../../edit/index";
import type { Look, StyleChange } from "../../look/index";
import type { Area } from "../../address";
import type { Difference } from "./difference";
import type { Results } from "./results";

/** What the page asks of the worker that holds its workbook; each kind has one kind of answer. */
export interface Answers {
  open: OpenedBook;
  put: WhatCame;
  contents: Content[];
  looks: (StyleChange | undefined)[];
  save: Uint8Array;
}

/** Sheets, rows and columns count from 0. */
export interface Questions {
  open: { bytes: Uint8Array; edits: Edits };
  put: { edits: readonly Placed[] };
  contents: { cells: readonly Place[] };
  /** What rules about looks change in cells of one sheet. */
  looks: { sheet: number; cells: readonly Omit<Place, "sheet">[] };
  save: Record<never, never>;
}

/** What was changed in an earlier visit, or before the last worker ended. */
export type Edits = ConstructorParameters<typeof EditedWorkbook>[1] & {};

/** What is put into a cell; sheets by their number. */
export type Placed = Put & { sheet: number };

export type Kind = keyof Answers;

export interface Place {
  sheet: number;
  row: number;
  column: number;
}

/** A workbook that was just opened, with all that a grid shows of it. */
export interface OpenedBook {
  sheets: OpenedSheet[];
  look: Look;
  results: Results;
  changes: Change[];
  mended: number;
}

export interface OpenedSheet {
  name: string;
  merged: Area[];
  cells: { row: number; column: number; content: Content }[];
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
  /** The file is no usable workbook; else the fault is ours. */
  ofFile: boolean;
}
