import type { Unit } from "../../core/length/index";
import type { CellDefinition } from "../author/index";
import { cell } from "../example/cells";
import type { Style } from "../example/styles";
import type { Choices } from "./choices";

/** What a person types of a job: its columns, one row to begin with, and words that tell of it. */
export interface JobTable {
  columns: readonly [heading: string, style: Style][];
  first: Readonly<Record<Unit, readonly string[]>>;
  /** Under the title. */
  words: readonly [string, string];
}

export const jobTable = ({ from }: Choices): JobTable => TABLES[from];

/** Rows for openings or cabinets, the first among them. */
export const ROOM = 12;

export const jobRows = (choices: Choices): CellDefinition<Style>[][] => {
  const { columns, first } = jobTable(choices);
  const values = first[choices.unit];
  return Array.from({ length: ROOM }, (_, r) =>
    columns.map(([, style], i) => cell(style, (r === 0 && values[i]) || null)),
  );
};

const DRAWERS = "Drawers: a number, or heights and parts from the top: 5; 1 part; 2 parts.";

const TABLES: Record<Choices["from"], JobTable> = {
  openings: {
    columns: [
      ["Opening", "inputText"],
      ["Width", "input"],
      ["Height", "input"],
      ["Depth", "input"],
      ["Drawers", "input"],
      ["Cabinet", "inputWord"],
      ["Quantity", "inputCount"],
    ],
    first: { in: ["A", "18", "28", "22 3/4", "4"], mm: ["A", "450", "700", "560", "4"] },
    words: [
      "Type over the first opening, and add yours below it; everything on the other sheets follows at once. Clear sizes, measured.",
      `Several measurements stand in one cell: 18; 17 15/16. ${DRAWERS}`,
    ],
  },
  cabinets: {
    columns: [
      ["Cabinet", "inputText"],
      ["Width", "input"],
      ["Height", "input"],
      ["Depth", "input"],
      ["Drawers", "input"],
      ["Columns", "input"],
      ["Quantity", "inputCount"],
      ["Toe kick", "input"],
      ["Back thickness", "input"],
    ],
    first: {
      in: ["Base", "30", "34 1/2", "24", "3", "1", "", "4"],
      mm: ["Base", "600", "720", "560", "3", "1"],
    },
    words: [
      "Type over the first cabinet, and add yours below it; everything on the other sheets follows at once. Outside sizes.",
      `Columns: how many openings stand side by side, or their widths. ${DRAWERS}`,
    ],
  },
};
