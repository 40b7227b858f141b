import {
  HostFault,
  type Host,
  type HostFaultCode,
  type Selection,
  type StuckCells,
} from "../../src/taskpane/host/host";

/** A spreadsheet of few cells, of which one is selected. */
export class FakeHost implements Host {
  readonly name = "Fake";
  stuck?: StuckCells;
  can = { insert: true, tellSelection: true, showNumberFormats: false };
  cells: Record<string, string> = {};
  selected = "Sheet1!B2";
  /** What every call is answered with, where it is set. */
  fault: HostFaultCode | undefined;
  #listeners = new Set<(selection: Selection) => void>();

  async selection(): Promise<Selection> {
    if (this.fault) throw new HostFault(this.fault, "Something said no.");
    const formula = this.cells[this.selected] ?? "";
    return { address: this.selected, formula, value: formula };
  }

  async insertFormula(formula: string): Promise<void> {
    this.cells[this.selected] = formula;
  }

  async insertCells(texts: readonly string[]): Promise<{ address: string; wasFree: boolean }> {
    const address = this.selected;
    if (this.fault) throw new HostFault(this.fault, "Something said no.");
    const wasFree = this.cells[address] === undefined;
    if (wasFree) this.cells[address] = texts.join(" | ");
    return { address, wasFree };
  }

  async onSelectionChanged(listener: (selection: Selection) => void): Promise<() => Promise<void>> {
    this.#listeners.add(listener);
    return async () => void this.#listeners.delete(listener);
  }

  get listening(): number {
    return this.#listeners.size;
  }

  async select(address: string): Promise<void> {
    this.selected = address;
    const selection = await this.selection();
    this.#listeners.forEach((listener) => listener(selection));
  }
}
