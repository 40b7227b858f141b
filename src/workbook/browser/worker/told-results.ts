import type { EditedWorkbook } from "../../edit/index";
import { CellError, type Result } from "../../engine/index";
import { apply, difference, type Difference } from "./difference";
import { keptResults, resultsOf } from "./found-results";
import { place, type Results } from "./results";

/** All results of a workbook, as they were told last. */
export class ToldResults {
  readonly all: Results;
  private told: readonly Result[];
  private kept: Results;
  /** Their places in words, for as long as the same cells hold them. */
  private places: string[] = [];

  /** Its sheets stay while it is followed. */
  constructor(private readonly workbook: EditedWorkbook) {
    const { results, kept } = workbook.calculate();
    this.told = results;
    this.kept = keptResults(workbook, kept);
    this.all = together(resultsOf(results, this.ids), this.kept);
  }

  /** Works the workbook out. What comes out as it was is not looked at: an edit changes little. */
  update(): Difference {
    const { results, kept } = this.workbook.calculate();
    const { ids } = this;
    const { gone, come, valued, isInPlace } = exchanged(this.told, results);
    if (!isInPlace) this.places = [];
    const before = together(resultsOf(gone, ids), this.kept);
    this.told = results;
    this.kept = keptResults(this.workbook, kept);
    const found = difference(before, together(resultsOf(come, ids), this.kept));
    for (const at of valued) {
      const { sheet, row, column, values } = results[at]!;
      found.values.set.set((this.places[at] ??= place(ids[sheet]!, row, column)), values[0]![0]!);
    }
    apply(this.all, found);
    return found;
  }

  private get ids(): string[] {
    return this.workbook.sheets.map(({ id }) => id);
  }
}

/** Formulas stand in one or the other. */
function together(worked: Results, kept: Results): Results {
  for (const kind of ["values", "filled", "spills", "messages", "formats"] as const)
    for (const [at, value] of kept[kind]) (worked[kind] as Map<string, unknown>).set(at, value);
  return worked;
}

/** Results that no longer stand, those that came, and where those are that give another value in a cell that had one. */
interface Exchanged {
  gone: Result[];
  come: Result[];
  valued: number[];
  /** Each stands where one of the same cell stood. */
  isInPlace: boolean;
}

/** The engine gives one and the same result of a formula until that is worked out anew; most of them stand where they stood. */
function exchanged(before: readonly Result[], now: readonly Result[]): Exchanged {
  const [old, young, valued]: [Result[], Result[], number[]] = [[], [], []];
  for (let i = 0; i < before.length || i < now.length; i++) {
    const [was, is] = [before[i], now[i]];
    if (was === is) continue;
    if (was && is && isOneValue(was) && isOneValue(is) && isSameCell(was, is)) {
      if (!Object.is(was.values[0]![0], is.values[0]![0])) valued.push(i);
      continue;
    }
    if (was) old.push(was);
    if (is) young.push(is);
  }
  const [left, found] = [new Set(old), new Set(young)];
  const isInPlace = old.length === 0 && young.length === 0;
  return { gone: old.filter((one) => !found.has(one)), come: young.filter((one) => !left.has(one)), valued, isInPlace };
}

/** Nothing more is told of such a result than its value. */
function isOneValue({ area, values, formats }: Result): boolean {
  const isAlone = area.top === area.bottom && area.left === area.right;
  return isAlone && formats === undefined && !(values[0]![0] instanceof CellError);
}

const isSameCell = (a: Result, b: Result): boolean => a.row === b.row && a.column === b.column && a.sheet === b.sheet;
