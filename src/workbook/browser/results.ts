import { contains, sameArea, type Area } from "../address";
import { CellError, type Outcome, type Question, type Scalar } from "../engine/index";
import { FRACTION_FORMAT, type EditedWorkbook } from "../edit/index";

/** What the engine last found, in the words of a grid: values, spilled ranges, messages. */
export interface Results {
  /** The value in a cell that holds a formula, or that one has spilled into. */
  at(sheet: number, row: number, column: number): Scalar;
  /** The formulas' own cells. */
  values: ReadonlyMap<string, Scalar>;
  /** What more than one cell shows, by the formula's cell. */
  spills: readonly Spill[];
  /** The sentence behind an error, or behind a formula that is not worked out. */
  message(sheet: number, row: number, column: number): string | undefined;
  /** Whether a cell's value brings the format of a length in inches. */
  isInchLength(sheet: number, row: number, column: number): boolean;
  /** What a formula would give that stands in no cell. */
  ask(question: Question): Scalar;
}

export interface Spill {
  sheet: number;
  row: number;
  column: number;
  area: Area;
  values: readonly (readonly Scalar[])[];
}

export const place = (sheet: number, row: number, column: number): string => `${sheet} ${row} ${column}`;

export function resultsOf(workbook: EditedWorkbook): Results {
  const outcome = workbook.calculate();
  const values = new Map<string, Scalar>();
  const messages = keptMessages(outcome);
  const inches = new Set<string>();
  const spills: Spill[] = [];
  for (const { sheet, row, column, area, values: rows, formats } of outcome.results) {
    values.set(place(sheet, row, column), rows[0]?.[0] ?? 0);
    if (!sameArea(area, { top: row, left: column, bottom: row, right: column }))
      spills.push({ sheet, row, column, area, values: rows });
    rows.forEach((line, y) =>
      line.forEach((value, x) => {
        const at = place(sheet, area.top + y, area.left + x);
        if (value instanceof CellError && value.message) messages.set(at, value.message);
        if (formats?.[y]?.[x] === FRACTION_FORMAT) inches.add(at);
      }),
    );
  }
  for (const { sheet, row, column } of outcome.kept)
    values.set(place(sheet, row, column), workbook.storedValue(sheet, row, column));
  return {
    values,
    spills,
    ask: (question) => outcome.ask(question),
    message: (sheet, row, column) => messages.get(place(sheet, row, column)),
    isInchLength: (sheet, row, column) => inches.has(place(sheet, row, column)),
    at: (sheet, row, column) => {
      const own = values.get(place(sheet, row, column));
      if (own !== undefined) return own;
      const spill = spills.find((found) => found.sheet === sheet && contains(found.area, row, column));
      return spill?.values[row - spill.area.top]?.[column - spill.area.left] ?? null;
    },
  };
}

function keptMessages({ kept, results }: Outcome): Map<string, string> {
  const messages = new Map<string, string>();
  for (const { sheet, row, column, reason } of kept)
    messages.set(place(sheet, row, column), `This formula is not worked out here: it ${reason}.`);
  for (const { sheet, row, column, values } of results) {
    const [value] = values[0] ?? [];
    if (value instanceof CellError && value.code === "#SPILL!") {
      messages.set(
        place(sheet, row, column),
        "The cells that this formula would fill are not empty. Clear them, and it fills them.",
      );
    }
  }
  return messages;
}
