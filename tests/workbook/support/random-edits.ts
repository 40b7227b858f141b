import { cellName } from "../../../src/workbook/address";
import type { CellEdit, Content, EditedWorkbook, SheetEdit } from "../../../src/workbook/edit/index";

/** A number from 0 up to but not including `below`, from a seed: the same seed gives the same numbers. */
export type Chance = (below: number) => number;

/** Mulberry32, by Tommy Ettinger, in the public domain. */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4_294_967_296) * below);
  };
}

/** One thing that a person does, in the words in which it is told when a law is broken. */
export type Step = { told: string; do(workbook: EditedWorkbook): (workbook: EditedWorkbook) => void };

/** Cells are typed into in a corner of each sheet, so that they meet. */
const SIZE = { rows: 7, columns: 5 };

/** What a person might do next; what it gives back takes it back. */
export function randomStep(workbook: EditedWorkbook, chance: Chance, nextId: () => string): Step {
  const sheets = workbook.sheets.filter(({ isWorksheet }) => isWorksheet);
  const sheet = sheets[chance(sheets.length)]!;
  const kind = chance(100);
  if (kind < 4) return sheetStep({ kind: "add", id: nextId(), name: nameOf(chance), ...before(workbook, chance) });
  if (kind < 8) return sheetStep({ kind: "rename", id: sheet.id, name: nameOf(chance) });
  if (kind < 11) return sheetStep({ kind: "move", id: sheet.id, ...before(workbook, chance) });
  if (kind < 14) return sheetStep({ kind: "delete", id: sheet.id });
  const row = chance(SIZE.rows);
  const column = chance(SIZE.columns);
  const rows = kind < 24 ? 1 + chance(3) : 1;
  const columns = kind < 24 ? 1 + chance(2) : 1;
  const content = kind < 34 ? null : randomContent(workbook, chance);
  const format = typeof content === "number" && chance(3) === 0 ? FORMATS[chance(FORMATS.length)] : undefined;
  const edits: CellEdit[] = [];
  for (let r = 0; r < rows; r++)
    for (let c = 0; c < columns; c++)
      edits.push({ sheet: sheet.id, row: row + r, column: column + c, content, ...(format && { format }) });
  return putStep(edits);
}

const FORMATS = ["# ??/??", "0%", "yyyy-mm-dd", '"$"#,##0.00'];

function putStep(edits: readonly CellEdit[]): Step {
  const told = edits.map(
    ({ sheet, row, column, content }) => `${sheet} ${cellName(row, column)} ${JSON.stringify(content)}`,
  );
  return {
    told: told.join(", "),
    do(workbook) {
      const old = edits.map(({ sheet, row, column }) => {
        const format = workbook.format(sheet, row, column);
        const content = workbook.content(sheet, row, column);
        return { sheet, row, column, content, ...(format === undefined ? {} : { format }) };
      });
      for (const edit of edits) workbook.put(edit);
      return (later) => void old.reverse().forEach((edit) => later.put(edit));
    },
  };
}

function sheetStep(edit: SheetEdit): Step {
  return {
    told: JSON.stringify(edit),
    do(workbook) {
      const { sheets } = workbook;
      const at = sheets.findIndex(({ id }) => id === edit.id);
      if (workbook.refusal(edit) !== undefined) return () => undefined;
      workbook.changeSheets(edit);
      const follower = sheets[at + 1]?.id;
      const back: SheetEdit =
        edit.kind === "add"
          ? { kind: "delete", id: edit.id }
          : edit.kind === "rename"
            ? { kind: "rename", id: edit.id, name: sheets[at]!.name }
            : edit.kind === "move"
              ? { kind: "move", id: edit.id, ...(follower === undefined ? {} : { before: follower }) }
              : { kind: "add", id: edit.id, name: sheets[at]!.name };
      return (later) => void later.changeSheets(back);
    },
  };
}

function before(workbook: EditedWorkbook, chance: Chance): { before?: string } {
  const { sheets } = workbook;
  const id = sheets[chance(sheets.length + 1)]?.id;
  return id === undefined ? {} : { before: id };
}

const NAMES = ["Bench", "Cuts", "What if", "it's", "Q1", "Möbel", "a.b", "2027", "R2", "Plan & <B>", "TRUE"];
const nameOf = (chance: Chance): string => NAMES[chance(NAMES.length)]! + (chance(2) === 0 ? "" : String(chance(9)));

function randomContent(workbook: EditedWorkbook, chance: Chance): Content {
  const pick = <T>(...items: T[]): T => items[chance(items.length)]!;
  switch (chance(9)) {
    case 0:
      return pick<Content>(true, false, "#N/A", "#DIV/0!", "#REF!");
    case 1:
      return pick(
        "oak",
        "24 1/16",
        '1/2"',
        " spaced ",
        "a <b> & ]]> \u0007",
        "_x0041_",
        "'",
        "=no formula",
        "12\n13",
        "",
      );
    case 2:
    case 3:
      return pick<number>(chance(50), chance(1000) / 16, -chance(5), 1e300, 1.5e-9, 0.1);
    default:
      return { formula: `=${randomFormula(workbook, chance)}` };
  }
}

function randomFormula(workbook: EditedWorkbook, chance: Chance): string {
  const pick = (...items: string[]): string => items[chance(items.length)]!;
  const { sheets } = workbook;
  const sheet = (): string => {
    if (chance(3) > 0) return "";
    return `'${sheets[chance(sheets.length)]!.name.replaceAll("'", "''")}'!`;
  };
  const cell = (): string => sheet() + pick("", "$") + cellName(chance(SIZE.rows), chance(SIZE.columns));
  const range = (): string => {
    const [row, column] = [chance(SIZE.rows), chance(SIZE.columns)];
    return `${sheet()}${cellName(row, column)}:${cellName(row + chance(3), column + chance(2))}`;
  };
  const several = `'${[0, sheets.length - 1].map((i) => sheets[i]!.name.replaceAll("'", "''")).join(":")}'!A1:B2`;
  return pick(
    `${cell()}+1`,
    `${cell()}*${cell()}`,
    `SUM(${range()})`,
    `SUM(${several})`,
    `COUNT(${range()})&" of them"`,
    `IF(${cell()}>3,${cell()},"less")`,
    `IFERROR(${cell()},0)`,
    `${cell()}&"it's Bench!A1"`,
    `ISNUMBER(${cell()})`,
    `SEQUENCE(${1 + chance(3)},${1 + chance(2)})`,
    `${range()}*2`,
    range(),
    `TRANSPOSE(${range()})`,
    `SUM(${cell()}#)`,
    `SEQUENCE(COUNT(${range()})+1)`,
    `DRAWER.BOXWIDTH(${cell()})`,
    `DRAWER.FRONTHEIGHTS(27.5,${cell()},0)`,
    `DRAWER.TAPE(${cell()})`,
    `NOSUCH(${cell()})`,
    "1/0",
    "Widths",
    "#REF!",
  );
}
