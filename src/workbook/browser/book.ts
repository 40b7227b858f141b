import type { WorkbookDefinition } from "../author/index";
import type { Change, Content, SheetEdit } from "../edit/index";
import type { StyleChange } from "../look/index";
import type { Busy, Patience } from "./busy";
import { Stopped, WorkerClient } from "./worker/client";
import { apply, difference, type Difference } from "./worker/difference";
import type {
  Answers,
  Edits,
  Kind,
  OpenedBook,
  Place,
  Placed,
  Questions,
  SheetFacts,
  SheetsChanged,
  WhatCame,
} from "./worker/messages";
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

  private client: Promise<WorkerClient> | undefined;
  /** Called with what has become other where a worker was ended and the next one has begun. */
  onBegun: (other: Difference) => void = () => undefined;

  private constructor(
    private readonly bytes: Uint8Array,
    opened: OpenedBook,
    private readonly busy: Busy,
    client: WorkerClient,
  ) {
    this.client = Promise.resolve(client);
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
   * Opens a workbook in a worker of its own.
   * @throws FileFault where the bytes are no usable workbook
   * @throws Stopped
   */
  static async open(
    bytes: Uint8Array,
    edits: Edits,
    what: string,
    busy: Busy,
  ): Promise<{ book: Book; opened: OpenedBook }> {
    const client = new WorkerClient();
    try {
      const asked = client.ask("open", { bytes, edits });
      const opened = await busy.during(what, asked, (tookTooLong) => client.end(new Stopped(tookTooLong)), "long");
      return { book: new Book(bytes, opened, busy, client), opened };
    } catch (error) {
      client.end();
      throw error;
    }
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
    void this.client?.then(
      (client) => client.end(),
      () => undefined,
    );
    this.client = undefined;
  }

  private async ask<K extends Kind>(kind: K, question: Questions[K], what: string, patience: Patience) {
    const client = await (this.client ??= this.begin());
    const asked: Promise<Answers[K]> = client.ask(kind, question);
    return this.busy
      .during(what, asked, (tookTooLong) => client.end(new Stopped(tookTooLong)), patience)
      .catch((error: unknown) => {
        if (!client.isAlive) this.client = undefined;
        throw error;
      });
  }

  /** Begins again with what was last taken in, after the worker has ended. */
  private async begin(): Promise<WorkerClient> {
    const client = new WorkerClient();
    try {
      const asked = client.ask("open", { bytes: this.bytes, edits: this.edits });
      const end = (): void => client.end(new Stopped(false));
      const { results, changes } = await this.busy.during("Working the workbook out as it was", asked, end, "endless");
      const other = difference(this.results, results);
      this.take(other, changes);
      this.onBegun(other);
      return client;
    } catch (error) {
      client.end();
      this.client = undefined;
      throw error;
    }
  }

  private take(other: Difference, changes: readonly Change[] | undefined): void {
    apply(this.results, other);
    this.version++;
    if (changes) this.edits = changes;
  }
}
