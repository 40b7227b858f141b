import { sameArea } from "../../address";
import type { EditedWorkbook } from "../../edit/index";
import { CellError, type Result } from "../../engine/index";
import { apply, difference, sameSpill, type Difference } from "./difference";
import { isSpilled, keptResults, resultsOf } from "./found-results";
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
      const result = results[at]!;
      const { row, column, area, values } = result;
      const sheet = ids[result.sheet]!;
      const own = (this.places[at] ??= place(sheet, row, column));
      const value = values[0]?.[0] ?? 0;
      if (!Object.is(value, this.all.values.get(own))) found.values.set.set(own, value);
      if (isSpilled(result)) found.spills.set.set(own, { sheet, row, column, area, values });
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

/** Results that no longer stand, those that came, and where those are that give other values where they stood. */
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
    if (was && is && isInItsPlace(was, is)) {
      if (!sameSpill(was, is)) valued.push(i);
      continue;
    }
    if (was) old.push(was);
    if (is) young.push(is);
  }
  const [left, found] = [new Set(old), new Set(young)];
  const isInPlace = old.length === 0 && young.length === 0;
  return { gone: old.filter((one) => !found.has(one)), come: young.filter((one) => !left.has(one)), valued, isInPlace };
}

/** The same cells in the same formats, and no error in them: nothing is told of such a result but its values. */
const isInItsPlace = (was: Result, is: Result): boolean =>
  was.row === is.row &&
  was.column === is.column &&
  was.sheet === is.sheet &&
  sameArea(was.area, is.area) &&
  sameFormats(was.formats, is.formats) &&
  hasNoError(was) &&
  hasNoError(is);

const hasNoError = ({ values }: Result): boolean =>
  values.every((line) => line.every((value) => !(value instanceof CellError)));

const sameFormats = (a: Result["formats"], b: Result["formats"]): boolean =>
  a === b ||
  (a !== undefined && b !== undefined && a.every((line, y) => line.every((format, x) => format === b[y]?.[x])));
