import type { CellDefinition, RowDefinition } from "../author/index";
import type { Style } from "./styles";

type Cell = CellDefinition<Style>;
type Row = RowDefinition<Style>;

export const cell = (style: Style, content: string | number | null): Cell => ({ style, content });

/** A row with the usual air; `null` leaves a cell empty. */
export const row = (...cells: (Cell | null)[]): Row => ({ height: 19.5, cells });

export const gap = (): Row => ({ height: 12, cells: [] });

export const tall = (height: number, ...cells: (Cell | null)[]): Row => ({ height, cells });

/** One label, the same kind of cell for each opening, and a note. */
export const acrossOpenings = (label: string, style: Style, contents: (string | number)[], note = ""): Row =>
  row(cell("label", label), ...contents.map((content) => cell(style, content)), cell("note", note));

/** A heading over columns. */
export const heading = (title: string, columns: string[], remark = ""): Row =>
  tall(27, cell("section", title), ...columns.map((name) => cell("column", name)), cell("remark", remark));
