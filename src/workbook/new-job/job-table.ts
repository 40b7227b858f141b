import type { Unit } from "../../core/length/index";
import type { CellDefinition } from "../author/definition";
import { cell } from "./cells";
import type { Style } from "./styles";
import { prefixText } from "../formula/sheet-prefix";
import type { Choices, Filled, ShopTable } from "./choices";

/** What a person types of a job: its columns, one row to begin with, and words that tell of it. */
export interface JobTable {
  columns: readonly [heading: string, style: Style][];
  first: Readonly<Record<Unit, readonly string[]>>;
  /** Under the title. */
  words: readonly [string, string];
}

export function jobTable(choices: Choices): JobTable {
  const { from, shop } = choices;
  const table = TABLES[from];
  const named = Object.keys(shop?.columns ?? filledOf(choices)?.openings[0] ?? {});
  const others = named.filter((name) => !table.columns.some(([one]) => one === name));
  const own = others.map((name): [string, Style] => [name, "input"]);
  // What the job itself has stands in sight, before columns that few jobs need.
  const at = shop ? table.columns.length : SIZES;
  const columns = [...table.columns.slice(0, at), ...own, ...table.columns.slice(at)];
  if (!shop) return { ...table, columns, words: [filledOf(choices)?.words ?? table.words[0], table.words[1]] };
  return {
    ...table,
    columns,
    words: [
      `Read from ${prefixText({ first: shop.sheet })}${areaOf(shop)}; what is changed there follows here.`,
      DRAWERS,
    ],
  };
}

/** The columns that every job fills. */
const SIZES = 5;

const areaOf = ({ columns, first, count }: ShopTable): string => {
  const letters = Object.values(columns).sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
  return `${letters[0]}${first}:${letters[letters.length - 1]}${first + count - 1}`;
};

/** Rows for openings or cabinets: as many as the shop's table has, else a dozen. */
export const roomOf = ({ shop }: Choices): number => shop?.count ?? 12;

/** The rows, the first with something to be typed over; or what stands in the shop's own cells, blanks as blanks. */
export function jobRows(choices: Choices): CellDefinition<Style>[][] {
  const { columns, first } = jobTable(choices);
  const { shop, unit } = choices;
  const filled = filledOf(choices);
  const own = (r: number, name: string, i: number): string | null => {
    if (shop) return NEEDED[name] ?? null;
    if (filled) return filled.openings[r]?.[name] || null;
    return (r === 0 && first[unit][i]) || null;
  };
  return Array.from({ length: roomOf(choices) }, (_, r) =>
    columns.map(([name, style], i) => {
      const letters = shop?.columns[name];
      if (!shop || letters === undefined) return cell(style, own(r, name, i));
      const at = `${prefixText({ first: shop.sheet })}${letters}${shop.first + r}`;
      return cell(style === "inputText" ? "key" : "resultWord", `=IF(${at}="","",${at})`);
    }),
  );
}

/** What is typed from the start, where nothing goes before it. */
export const filledOf = ({ from, shop, filled }: Choices): Filled | undefined =>
  from === "openings" && !shop ? filled : undefined;

/** What holds where the shop's table has no such column, and there must be something. */
const NEEDED: Readonly<Record<string, string>> = { Columns: "1" };

/** What the headings of a table may be, and which of them must be there. */
export const headingsOf = (from: Choices["from"]): { name: string; isNeeded: boolean }[] =>
  TABLES[from].columns.map(([name]) => ({ name, isNeeded: ["Width", "Height", "Depth", "Drawers"].includes(name) }));

const DRAWERS = "Drawers: a number, or heights and parts from the top: 5; 1 part; 2 parts.";

const TABLES: Record<Choices["from"], JobTable> = {
  openings: {
    columns: [
      ["Opening", "inputText"],
      ["Width", "input"],
      ["Height", "input"],
      ["Depth", "input"],
      ["Drawers", "input"],
      ["Cabinet", "input"],
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
