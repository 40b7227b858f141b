import type { CallArgument } from "../../shop-pages/index";
import type { PlainCell } from "../host/host";
import { MESSAGES } from "../messages";
import type { Progress } from "./progress";

type Found = Extract<Progress, { sheets: number }>;

/**
 * A sheet of a layout that was found: the layout as values, and beside it what SHEETS and CUTS make of it. A cell tells
 * whether the parts still are those that were searched for.
 * @param args of the call that was searched for; `sheet` is the one that its formula stands in
 */
export function written(
  { unit, sheets, cost }: Found,
  layout: readonly (readonly (string | number | boolean)[])[],
  args: readonly CallArgument[],
  sheet: string,
): PlainCell[][] {
  const bottom = TOP + layout.length - 1;
  const rest = args.slice(1).map((argument) => textOf(argument, sheet));
  const call = (name: string, parts: string): string => `DRAWER.${name}(${[parts, ...rest].join(",")})`;
  const own = `$A$${TOP}:$J$${bottom}`;
  // The same pieces have the same number and the same areas, however they lie.
  const area = (length: string, width: string): string => `SUMPRODUCT(${length},${width})`;
  const column = (letter: string): string => `${letter}${TOP + 1}:${letter}${bottom}`;
  const now = call("LAYOUT", textOf(args[0]!, sheet));
  const same = `ABS(${area(`INDEX(${now},0,8)`, `INDEX(${now},0,9)`)}-${area(column("H"), column("I"))})<0.001`;
  const number = `ROWS(${now})=${layout.length}`;
  return [
    ["Better sheets"],
    [
      `Found by a search: ${MESSAGES.sheets(sheets)}${cost === undefined ? "" : `, ${cost.toFixed(2)}`}. The layout is values; SHEETS and CUTS beside it follow it.`,
    ],
    [
      {
        formula: `=IF(IFERROR(AND(${number},${same}),FALSE),"The parts are those that were searched for.","The parts have changed since: search again.")`,
      },
    ],
    [],
    ...layout.map((row, i): PlainCell[] => [
      ...row.map((value, c) => cellOf(value, i > 0 && LENGTHS.has(c) && unit === "in")),
      ...(i === 0
        ? [
            null,
            { formula: `=${call("SHEETS", own)}` },
            ...Array<null>(9).fill(null),
            { formula: `=${call("CUTS", own)}` },
          ]
        : []),
    ]),
  ];
}

/** The layout's first row. */
const TOP = 5;
/** Thickness, places and sides. */
const LENGTHS = new Set([2, 5, 6, 7, 8]);

const cellOf = (value: string | number | boolean, isLength: boolean): PlainCell => {
  if (typeof value === "boolean") return value ? "yes" : "";
  return isLength && typeof value === "number" ? { value, format: FRACTIONS } : value;
};

/** As LAYOUT shows its lengths. */
const FRACTIONS = "# ??/??";

/** An argument as a formula of another sheet has it. */
function textOf(argument: CallArgument, sheet: string): string {
  if ("other" in argument) return argument.other;
  if ("range" in argument) {
    const { sheet: of = sheet, address, isSpilled } = argument.range;
    return `'${of.replace(/'/g, "''")}'!${address.replace(/[A-Z]+|\d+/g, "$$$&")}${isSpilled ? "#" : ""}`;
  }
  const { value } = argument;
  if (value === undefined) return "";
  return typeof value === "string" ? `"${value.replace(/"/g, '""')}"` : String(value).toUpperCase();
}
