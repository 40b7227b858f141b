import type { Busy } from "./busy";
import type { BegunWork } from "./first-work";
import type { Watcher } from "./calculation";
import type { TypedNumbers } from "./typed-numbers";
import { openInGrid, type OpenInGrid } from "./session";
import type { KeptWork } from "./kept";
import type { Shelf } from "./storage";
import type { Grid } from "./univer";

/** The workbook that is being worked on: what it is called, and whether its changes are in a file. */
export class Work {
  private open: OpenInGrid | undefined;
  private kept: Omit<KeptWork, "edits"> = { name: "", bytes: new Uint8Array(), saved: [] };
  typed: TypedNumbers | undefined;

  private listener: () => void = () => undefined;

  constructor(
    private readonly grid: Grid,
    private readonly shelf: Shelf,
    private readonly busy: Busy,
    private readonly words: Pick<Watcher, "onTakenBack" | "onLeftBehind">,
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
    const { calculation, book } = this.opened;
    return (
      !this.kept.isAhead && !calculation.isBehind && JSON.stringify(book.changes) === JSON.stringify(this.kept.saved)
    );
  }

  /** @throws FileFault where the bytes are no usable workbook; what was open then stays */
  put(work: KeptWork): Promise<void> {
    return this.putBegun({ work });
  }

  /** The same, for a workbook of which something is known before. */
  async putBegun(begun: BegunWork): Promise<void> {
    this.open = await openInGrid(this.grid, begun, this.busy, () => this.open, {
      typed: () => this.typed,
      onChange: () => this.listener(),
      ...this.words,
    });
    const { name, bytes, saved, isAhead } = begun.work;
    this.kept = { name, bytes, saved, isAhead };
    this.listener();
  }

  /** Hands the file over as it is to be stored, once all that was typed is in it. */
  async save(store: (bytes: Uint8Array) => void): Promise<void> {
    const { calculation, book } = this.opened;
    await calculation.settled();
    const bytes = await book.save();
    const saved = [...book.changes];
    store(bytes);
    if (this.opened.book === book) this.kept = { ...this.kept, saved, isAhead: false };
    this.listener();
  }

  /** @returns false where the browser keeps nothing */
  keep(): Promise<boolean> {
    return this.shelf.keep({ ...this.kept, edits: [...this.opened.book.changes] });
  }
}
