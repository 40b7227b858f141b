import type { EditedWorkbook } from "../../edit/index";
import type { Result } from "../../engine/index";
import { apply, difference, type Difference } from "./difference";
import { keptResults, resultsOf, type Results } from "./results";

/** All results of a workbook, as they were told last. */
export class ToldResults {
  readonly all: Results;
  private told: readonly Result[];
  private kept: Results;

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
    const { gone, come } = exchanged(this.told, results);
    const before = together(resultsOf(gone, this.ids), this.kept);
    this.told = results;
    this.kept = keptResults(this.workbook, kept);
    const found = difference(before, together(resultsOf(come, this.ids), this.kept));
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

/** The engine gives one and the same result of a formula until that is worked out anew; most of them stand where they stood. */
function exchanged(before: readonly Result[], now: readonly Result[]): { gone: Result[]; come: Result[] } {
  const [old, young] = [before.filter((one, i) => now[i] !== one), now.filter((one, i) => before[i] !== one)];
  const [left, found] = [new Set(old), new Set(young)];
  return { gone: old.filter((one) => !found.has(one)), come: young.filter((one) => !left.has(one)) };
}
