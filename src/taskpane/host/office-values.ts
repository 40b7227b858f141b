import { HostFault } from "./host";
import { blocksOf } from "./office-blocks";
import { equalAreas, type Area } from "./style-areas";

/** Cells that are values in a copy. */
export interface FrozenValues {
  areas: readonly Area[];
  /** Number formats that values bring, where the cells have none of their own. */
  formats: ReadonlyMap<string, readonly Area[]>;
}

/** Cells that are asked for at a time: each tells much of itself. */
const BLOCK = 2_000;

/**
 * @param filled what each formula has filled
 * @throws HostFault where one of them is still being worked out
 */
export async function readValues(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  filled: readonly Area[],
  tellsFormats: boolean,
): Promise<FrozenValues> {
  const marks: string[][] = [];
  for (const { top, left, bottom, right } of filled)
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++) (marks[row] ??= [])[column] = "value";
  const areas = equalAreas(marks).get("value") ?? [];
  const formats: string[][] = [];
  for (const { top, left, bottom, right } of areas) {
    const place = { rowIndex: top, columnIndex: left, rowCount: bottom - top + 1, columnCount: right - left + 1 };
    for (const block of blocksOf(sheet, place, Infinity, BLOCK)) {
      block.load(`values, rowIndex, columnIndex${tellsFormats ? ", valuesAsJson, numberFormat" : ""}`);
      // One block after the other, for together they may be too large.
      // eslint-disable-next-line office-addins/no-context-sync-in-loop
      await context.sync();
      if (block.values.flat().some((value) => UNDONE.includes(String(value)))) throw new HostFault("working");
      if (!tellsFormats) continue;
      // A program may be ahead of the library that it is asked by.
      const { rowIndex, columnIndex, numberFormat, valuesAsJson = [] } = block as Told;
      valuesAsJson.forEach((row, r) =>
        row.forEach((value, c) => {
          const format = "numberFormat" in value ? value.numberFormat : undefined;
          if (typeof format === "string" && numberFormat[r]![c] === "General")
            (formats[rowIndex + r] ??= [])[columnIndex + c] = format;
        }),
      );
    }
  }
  return { areas, formats: equalAreas(formats) };
}

/** What a cell shows while a function of an add-in works on it. */
const UNDONE = ["#BUSY!", "#GETTING_DATA", "#CONNECT!"];

type Told = Pick<Excel.Range, "rowIndex" | "columnIndex" | "numberFormat"> & Partial<Pick<Excel.Range, "valuesAsJson">>;
