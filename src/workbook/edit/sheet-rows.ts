import { firstRowOf, type CustomFunction } from "../engine/index";

/** The tables that our functions take, by their arguments' places; messages name rows by these names. */
const TABLES: Record<string, readonly string[]> = {
  ...Object.fromEntries(
    ["CHECKS", "FIT", "HARDWARE", "MOUNTING", "PARTS", "PIECES", "PLAN", "SETUPS"].map((name) => [
      name,
      ["openings", "standards"],
    ]),
  ),
  OPENINGS: ["cabinets", "standards"],
  WORKING: ["openings", "", "standards"],
  ...Object.fromEntries(["CUTS", "LAYOUT", "SHEETS"].map((name) => [name, ["parts", "stock"]])),
  ...Object.fromEntries(
    ["ALTERNATES", "PRICE", "QUOTE"].map((name) => [name, ["openings", "standards", "stock", "rates"]]),
  ),
};

/**
 * The same functions, whose messages name the row of the sheet beside that of the table, where the table is a range:
 * `openings, row 3 (row 7 of the sheet), Width`. A table that a formula made stands in no row of any sheet.
 */
export function namingSheetRows(functions: Record<string, CustomFunction>): Record<string, CustomFunction> {
  return Object.fromEntries(
    Object.entries(functions).map(([name, call]) => {
      const tables = TABLES[name];
      return [name, tables ? placed(call as (...args: unknown[]) => unknown, tables) : call];
    }),
  );
}

function placed(call: (...args: unknown[]) => unknown, tables: readonly string[]): CustomFunction {
  return (...args: unknown[]): unknown => {
    const first = new Map(tables.map((table, i) => [table, firstRowOf(args[i])]));
    try {
      return inResult(call(...args), first);
    } catch (error) {
      throw inError(error, first);
    }
  };
}

type FirstRows = ReadonlyMap<string, number | undefined>;

/** Results are remembered, and so are left as they are. */
function inResult(result: unknown, first: FirstRows): unknown {
  if (!Array.isArray(result)) return result;
  return result.map((row: unknown) => (Array.isArray(row) ? row.map((cell: unknown) => inCell(cell, first)) : row));
}

const inCell = (cell: unknown, first: FirstRows): unknown =>
  typeof cell === "string" ? inText(cell, first) : isHostError(cell) ? inError(cell, first) : cell;

function inError(error: unknown, first: FirstRows): unknown {
  if (!isHostError(error) || !error.message) return error;
  const text = inText(error.message, first);
  return text === error.message ? error : new CustomFunctions.Error(error.code as CustomFunctions.ErrorCode, text);
}

const isHostError = (value: unknown): value is { code: string; message?: string } =>
  typeof value === "object" && value !== null && "code" in value && typeof value.code === "string";

/** Where the table begins in the sheet's first row, both rows are one. */
function inText(text: string, first: FirstRows): string {
  // Most texts name no row, and are told from others sooner than they are gone through.
  if (!text.includes(" row")) return text;
  const inSheet = (table: string, row: string): number | undefined => {
    const top = first.get(table);
    return top === undefined || top === 1 ? undefined : top + Number(row) - 1;
  };
  return text
    .replace(/\b(cabinets|openings|standards|parts|stock|rates), row (\d+)/g, (found, table: string, row: string) => {
      const at = inSheet(table, row);
      return at === undefined ? found : `${found} (row ${at} of the sheet)`;
    })
    .replace(
      /^(cabinets|openings|standards|rates)( has .* in rows )(\d+) and (\d+)/,
      (found, table: string, _: string, row: string, other: string) => {
        const [at, and] = [inSheet(table, row), inSheet(table, other)];
        return at === undefined ? found : `${found} (rows ${at} and ${and} of the sheet)`;
      },
    )
    .replace(/\brows (\d+) and (\d+) of stock/, (found, row: string, other: string) => {
      const [at, and] = [inSheet("stock", row), inSheet("stock", other)];
      return at === undefined ? found : `${found} (rows ${at} and ${and} of the sheet)`;
    });
}
