import { formulaCall, type CallArgument } from "../../shop-pages/index";
import { cellIn } from "../drawing/place-in";
import { readArguments } from "../drawing/read-arguments";
import type { Ranges } from "../host/host";
import { foundIn, isOfJob, tablesOf, type Told } from "./found";

/** What is found in a job, the cell of each finding as it is selected, and whether the selected cell is of `CHECKS`. */
export type Findings =
  { found: readonly (Omit<Told, "place"> & { cell: Cell | undefined })[]; isAsked: boolean } | { why: string };

export interface Cell {
  sheet: string;
  address: string;
}

/** Finds what is wrong or doubtful in the job of the selected cell, and goes on with that job where a cell tells of none. */
export class FindingsFollower {
  private last: { name: string; tables: readonly (CallArgument | undefined)[]; sheet: string } | undefined;
  private known: { key: string; findings: Findings } | undefined;

  constructor(private readonly ranges: Ranges) {}

  /** @returns undefined where no cell of a job was selected yet; the same object as before where nothing has changed */
  async at(): Promise<Findings | undefined> {
    const shown = await this.ranges.shownBy();
    const call = shown && formulaCall(shown.formula);
    if (shown && call && isOfJob(call.name))
      this.last = { name: call.name, tables: tablesOf(call.name, call.args), sheet: shown.sheet };
    if (!this.last) return undefined;
    const { name, tables, sheet } = this.last;
    const read = await readArguments(
      this.ranges,
      tables.map((one) => one ?? { value: undefined }),
      sheet,
    );
    if ("why" in read) return read;
    // Equal tables give equal findings: sheets are not laid out anew at every step through the cells.
    const key = JSON.stringify([name, tables, sheet, read.raw]);
    if (this.known?.key !== key)
      this.known = { key, findings: withCells(foundIn(read.raw), tables, sheet, name === "CHECKS") };
    return this.known.findings;
  }
}

function withCells(
  found: ReturnType<typeof foundIn>,
  tables: readonly (CallArgument | undefined)[],
  own: string,
  isAsked: boolean,
): Findings {
  if ("why" in found) return found;
  return {
    isAsked,
    found: found.map(({ place, ...told }) => {
      const table = place && tables[place.table];
      if (!place || !table || !("range" in table)) return { ...told, cell: undefined };
      const { sheet = own, address } = table.range;
      return { ...told, cell: { sheet, address: cellIn(address, place.row, place.column) } };
    }),
  };
}
