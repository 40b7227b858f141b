import type { TypedFractions } from "./lengthEntry";
import { openInGrid, type OpenInGrid } from "./session";
import type { KeptWork } from "./kept";
import type { Shelf } from "./storage";
import type { Grid } from "./univer";

/** The workbook that is being worked on: what it is called, and whether its changes are in a file. */
export class Work {
  private open: OpenInGrid | undefined;
  private kept: Omit<KeptWork, "edits"> = { name: "", bytes: new Uint8Array(), saved: [] };
  typed: TypedFractions | undefined;

  private listener: () => void = () => undefined;

  constructor(
    private readonly grid: Grid,
    private readonly shelf: Shelf,
  ) {}

  /** Calls back now, when another workbook is open, and after every change of one. */
  listen(listener: () => void): void {
    this.listener = listener;
    listener();
  }

  get opened(): OpenInGrid {
    return this.open!;
  }

  get name(): string {
    return this.kept.name;
  }

  get isSaved(): boolean {
    return JSON.stringify(this.opened.workbook.changes) === JSON.stringify(this.kept.saved);
  }

  /** @throws FileFault where the bytes are no usable workbook; what was open then stays */
  put({ name, bytes, saved, edits }: KeptWork): void {
    this.open = openInGrid(
      this.grid,
      bytes,
      name,
      edits,
      this.open,
      () => this.typed,
      () => this.listener(),
    );
    this.kept = { name, bytes, saved };
    this.listener();
  }

  /** The file as it is to be stored. */
  file(): Uint8Array {
    return this.opened.workbook.save();
  }

  markSaved(): void {
    this.kept.saved = this.opened.workbook.changes;
    this.listener();
  }

  /** @returns false where the browser keeps nothing */
  keep(): Promise<boolean> {
    return this.shelf.keep({ ...this.kept, edits: this.opened.workbook.changes });
  }
}
