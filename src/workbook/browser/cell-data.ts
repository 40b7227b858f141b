import { CellValueType, type ICellData } from "@univerjs/core";
import type { Scalar } from "../engine/index";
import type { Content } from "../edit/index";

/** A value as the grid keeps it: numbers must say that they are, and errors are texts. */
export function cellData(value: Scalar): ICellData {
  if (value === null) return {};
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: shownValue(value), t: CellValueType.STRING };
}

/** A value as a reader sees it. An error that came from the worker is no longer a `CellError`, but has its code. */
export const shownValue = (value: Exclude<Scalar, null>): string | number | boolean =>
  typeof value === "object" ? value.code : value;

/** What a person put into a cell of the grid. */
export function contentOfGrid(cell: ICellData | null | undefined, formula: string | null | undefined): Content {
  if (formula) return { formula };
  if (!cell) return null;
  const { v, t, p } = cell;
  const text = p?.body?.dataStream.replace(/\r\n$/, "");
  if (text !== undefined) return text === "" ? null : text;
  if (v === undefined || v === null || v === "") return null;
  if (t === CellValueType.NUMBER) return Number(v);
  if (t === CellValueType.BOOLEAN) return Number(v) === 1 || v === true;
  return typeof v === "number" || typeof v === "boolean" ? v : String(v);
}
