import type { WorkbookDefinition } from "../author/index";
import type { Change, Content, SheetEdit } from "../edit/index";
import type { StyleChange } from "../look/index";
import type { Busy, Patience } from "./busy";
import { Stopped, type WorkerClient } from "./worker/client";
import { apply, difference, type Difference } from "./worker/difference";
import type {
  Answers,
  Kind,
  OpenedBook,
  Place,
  Placed,
  Questions,
  SheetFacts,
  SheetsChanged,
  WhatCame,
} from "./worker/messages";
import { beginOpening, type Opening } from "./worker/opening";
import type { Results } from "./worker/results";

/**
 * The workbook that a worker holds, and a copy of all that the page shows of it. Where the worker is ended, the next
 * one begins with the file and the changes that the last one had taken in.
 */
export class Book {
  readonly results: Results;
  /** How many names of functions the spreadsheet program had left unresolved in the file. */
  readonly mended: number;
  /** What is not shown of how the file looks, in one line for a person each. */
  readonly unshown: readonly string[];
  /** Days count from 1904. */
  readonly date1904: boolean;
  /** The sheets in their order, those without cells too. */
  sheets: readonly SheetFacts[];
  /** Another number after every change of the results. */
  version = 0;
  private edits: readonly Change[];

  private working: Working | undefined;
  /** Called with what has become other where the worker that has begun found it otherwise than it is shown. */
  onBegun: (other: Difference) => void = () => undefined;

  private constructor(
    private readonly bytes: Uint8Array,
    opened: OpenedBook,
    private readonly busy: Busy,
  ) {
    this.results = opened.results;
    this.mended = opened.mended;
    this.unshown = opened.unshown;
    this.date1904 = opened.date1904;
    // What stands in the sheets is the grid's from now on.
    this.sheets = opened.sheets.map(({ id, name, isHidden, hasCells, conditions }) => ({
      id,
      name,
      isHidden,
      hasCells,
      conditions,
    }));
    this.edits = opened.changes;
  }

  /**
   * A workbook as its worker finds it.
   * @throws FileFault where the bytes are no usable workbook
   * @throws Stopped
   */
  static async open(bytes: Uint8Array, { client, opened }: Opening, what: string, busy: Busy): Promise<FirstShown> {
    const stop = (tookTooLong: boolean): void => client.end(new Stopped(tookTooLong));
    try {
      const shown = await busy.during(what, opened, stop, "long");
      const book = new Book(bytes, shown, busy);
      book.working = { client, begun: Promise.resolve() };
      return { book, opened: shown };
    } catch (error) {
      client.end();
      throw error;
    }
  }

  /** A workbook that is shown as it was found before; a worker begins with it when it is asked for something. */
  static show(bytes: Uint8Array, opened: OpenedBook, busy: Busy): FirstShown {
    return { book: new Book(bytes, opened, busy), opened };
  }

  /** Lets a worker begin before it is asked for anything. */
  wake(): Working {
    return (this.working ??= this.begin(beginOpening(this.bytes, this.edits)));
  }

  /** Everything in which the workbook differs from its file. */
  get changes(): readonly Change[] {
    return this.edits;
  }

  /** Puts something into cells. Afterwards `results` and `changes` are what came of it. */
  async put(edits: readonly Placed[]): Promise<WhatCame> {
    const put = await this.ask("put", { edits }, "Working out what you changed", "short");
    this.take(put.difference, put.changes);
    return put;
  }

  sheet(id: string): SheetFacts | undefined {
    return this.sheets.find((sheet) => sheet.id === id);
  }

  /**
   * Adds, renames, moves or deletes a sheet. Afterwards `sheets`, `results` and `changes` are what came of it.
   * @throws SheetFault where it is refused, in words; everything is then as it was
   */
  async changeSheets(edit: SheetEdit): Promise<SheetsChanged> {
    const changed = await this.ask("sheets", { edit }, "Changing the sheets", "short");
    this.sheets = changed.sheets;
    this.take(changed.difference, changed.changes);
    return changed;
  }

  /** What stands in cells, as the worker knows it. */
  contents(cells: readonly Place[]): Promise<Content[]> {
    return this.ask("contents", { cells }, "Looking cells up", "short");
  }

  async looks(sheet: string, cells: Questions["looks"]["cells"]): Promise<(StyleChange | undefined)[]> {
    return this.ask("looks", { sheet, cells }, "Working out the rules about looks", "short");
  }

  /** Sheets as they are to be printed, in the order of the workbook. */
  printed(sheets: readonly string[]): Promise<Answers["printed"]> {
    return this.ask("printed", { sheets }, "Laying the pages out", "long");
  }

  /** A copy of the file with values, of the whole workbook or of one sheet. */
  freeze(date: string, sheet: string | undefined): Promise<Answers["freeze"]> {
    return this.ask("freeze", { date, sheet }, "Freezing a copy", "long");
  }

  /** What it calls by name, apart from its sheets. */
  names(): Promise<string[]> {
    return this.ask("names", {}, "Looking names up", "short");
  }

  /** The file with more sheets behind its own; what is open stays as it is. */
  addSheets(workbook: WorkbookDefinition): Promise<Uint8Array> {
    return this.ask("addSheets", { workbook }, "Laying out the sheets", "long");
  }

  /** The file as it is to be stored. */
  save(): Promise<Uint8Array> {
    return this.ask("save", {}, "Writing the file", "long");
  }

  /** The pages for the shop, or why there are none. */
  shopPages(title: string): Promise<Answers["shopPages"]> {
    return this.ask("shopPages", { title }, "Making the shop pages", "long");
  }

  end(): void {
    this.working?.client.end();
    this.working = undefined;
  }

  private async ask<K extends Kind>(kind: K, question: Questions[K], what: string, patience: Patience) {
    const { client, begun } = this.wake();
    const stop = (tookTooLong: boolean): void => client.end(new Stopped(tookTooLong));
    try {
      // How cells look is asked by the page itself, and nobody waits for it.
      await (kind === "looks" ? begun : this.busy.during("Working the workbook out as it was", begun, stop, "endless"));
      const asked: Promise<Answers[K]> = client.ask(kind, question);
      return await this.busy.during(what, asked, stop, patience);
    } catch (error) {
      if (!client.isAlive && this.working?.client === client) this.working = undefined;
      throw error;
    }
  }

  /** Goes on with what a new worker finds, where it was last taken in and what is shown may be otherwise. */
  private begin({ client, opened }: Opening): Working {
    const begun = opened
      .then(({ results, changes }) => {
        const other = difference(this.results, results);
        this.take(other, changes);
        this.onBegun(other);
      })
      .catch((error: unknown) => {
        client.end();
        if (this.working?.client === client) this.working = undefined;
        throw error;
      });
    // Whoever asks next is told.
    begun.catch(() => undefined);
    return { client, begun };
  }

  private take(other: Difference, changes: readonly Change[] | undefined): void {
    apply(this.results, other);
    this.version++;
    if (changes) this.edits = changes;
  }
}

/** A worker, and when it has the workbook. */
interface Working {
  client: WorkerClient;
  begun: Promise<void>;
}

/** A workbook, with all that a grid shows of it. */
interface FirstShown {
  book: Book;
  opened: OpenedBook;
}
