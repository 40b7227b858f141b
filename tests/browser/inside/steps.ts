import type { IRange } from "@univerjs/core";
import { cellName } from "../../../src/workbook/address";
import type { Chance } from "../../workbook/support/random-edits";
import type { Started } from "./agreement";
import type { Hands } from "./hands";

/** One thing that a person does, in the words in which it is told when the law is broken. */
export interface Step {
  kind: string;
  told: string;
  do(): Promise<unknown>;
}

/** Cells are written in a corner of each sheet, so that they meet. */
const SIZE = { rows: 7, columns: 5 };

/** What a person might do next. */
export function randomStep({ grid }: Started, hands: Hands, chance: Chance): Step {
  const pick = <T>(...items: T[]): T => items[chance(items.length)]!;
  const area = (rows: number, columns: number): IRange => {
    const [row, column] = [chance(SIZE.rows), chance(SIZE.columns)];
    return {
      startRow: row,
      endRow: row + chance(rows),
      startColumn: column,
      endColumn: column + chance(columns),
    };
  };
  const names = grid.api
    .getActiveWorkbook()!
    .getSheets()
    .map((sheet) => sheet.getSheetName());
  const cell = area(1, 1);
  const range = area(3, 2);
  const text = randomText(chance, names);
  const step = (kind: string, what: string, run: () => unknown): Step => ({
    kind,
    told: `${kind} ${what}`,
    do: async () => run(),
  });
  const onSelection = (kind: string, at: IRange, what: string, run: () => unknown): Step =>
    step(kind, `${named(at)} ${what}`, () => {
      hands.select(at);
      return run();
    });
  if (chance(12) === 0) {
    const { kind, what, run } = sheetChange(grid, hands, chance);
    // What follows at once waits for its turn.
    const next = pick(undefined, undefined, "undo", "type") as "undo" | "type" | undefined;
    return step(kind, `${what} ${next ?? ""}`, async () => {
      await run();
      if (next === "undo") await hands.undo();
      if (next === "type") await hands.insert("=1+1").catch(unlessRefused);
    });
  }
  const roll = chance(100);
  if (roll < 34) return onSelection("type", cell, text, () => hands.type(text));
  if (roll < 42) return onSelection("delete", range, "", () => hands.clear());
  if (roll < 50) return step("undo", "", () => hands.undo());
  if (roll < 56) return step("redo", "", () => hands.redo());
  if (roll < 62) return onSelection("copy", range, "", () => hands.copy());
  if (roll < 70)
    return onSelection("paste", chance(2) ? cell : range, JSON.stringify(hands.clipboard.text), () => hands.paste());
  if (roll < 76) {
    const pasted = outside(chance, names);
    return onSelection("paste from elsewhere", cell, JSON.stringify(pasted), () => hands.paste(pasted));
  }
  if (roll < 79) {
    const id = pick("sheet.command.paste-value", "sheet.command.paste-formula", "univer.command.paste");
    return onSelection(id, cell, JSON.stringify(hands.clipboard.text), () => hands.run(id, {}));
  }
  if (roll < 85) {
    const target = extended(range, chance);
    const how = pick(undefined, undefined, "COPY", "SERIES");
    return onSelection("fill", range, `to ${named(target)} ${how ?? ""}`, () => hands.fill(range, target, how));
  }
  if (roll < 89) {
    const id = pick("sheet.command.copy-down", "sheet.command.copy-right", "sheets-formula.command.quick-sum");
    return onSelection(id, range, "", () => hands.run(id));
  }
  if (roll < 92) {
    const formula = `=${randomFormula(chance, names)}`;
    return onSelection("insert", cell, formula, () => hands.insert(formula).catch(unlessRefused));
  }
  if (roll < 94)
    return step("widen", cellName(0, range.startColumn), () => hands.widen(range.startColumn, 40 + chance(90)));
  if (roll < 97) return step("sheet", String(chance(3)), () => hands.sheet(chance(3)));
  const id = REFUSED[chance(REFUSED.length)]!;
  const sheet = grid.api.getActiveWorkbook()!.getActiveSheet();
  const moved = { ...range, startRow: range.startRow + 2, endRow: range.endRow + 2 };
  return onSelection(id, range, "", () =>
    hands.run(id, {
      ...(id === "univer.command.cut" ? {} : { unitId: sheet.getSheet().getUnitId(), subUnitId: sheet.getSheetId() }),
      range,
      ranges: [range],
      fromRange: range,
      toRange: moved,
    }),
  );
}

function unlessRefused(fault: Error): void {
  if (!/refused/.test(String((fault as { code?: string }).code))) throw fault;
}

/** A sheet is added, renamed, moved or deleted; some names are refused, and so is the last deletion. */
function sheetChange({ api }: Started["grid"], hands: Hands, chance: Chance) {
  const sheets = api.getActiveWorkbook()!.getSheets();
  const sheet = sheets[chance(sheets.length)]!;
  const [id, name] = [sheet.getSheetId(), sheet.getSheetName()];
  const [order, called] = [chance(sheets.length), NAMES[chance(NAMES.length)]!];
  const changes = [
    { kind: "add a sheet", what: "", run: () => hands.addSheet() },
    { kind: "rename a sheet", what: `${name} ${called}`, run: () => hands.renameSheet(id, called) },
    { kind: "move a sheet", what: `${name} to ${order}`, run: () => hands.moveSheet(id, order) },
    { kind: "delete a sheet", what: name, run: () => hands.deleteSheet(id) },
  ];
  return changes[chance(changes.length)]!;
}

const NAMES = ["Bench", "What if", "it's", "Q1", "Möbel", "a.b", "2027", "R2", "Plan & <B>", "TRUE", "a/b", "History"];

/** Of what is refused, that which would do most. */
const REFUSED = [
  "univer.command.cut",
  "sheet.command.move-range",
  "sheet.command.insert-range-move-down",
  "sheet.command.delete-range-move-left",
  "sheet.command.insert-row-by-range",
  "sheet.command.remove-col-by-range",
  "sheet.command.add-worksheet-merge-all",
  "sheet.command.clear-selection-all",
  "sheet.command.set-bold",
];

const named = ({ startRow, startColumn, endRow, endColumn }: IRange): string =>
  `${cellName(startRow, startColumn)}:${cellName(endRow, endColumn)}`;

/** As the handle at the corner is dragged: further down, to the right, up or to the left. */
function extended(range: IRange, chance: Chance): IRange {
  const by = 1 + chance(3);
  switch (chance(4)) {
    case 0:
      return { ...range, endRow: range.endRow + by };
    case 1:
      return { ...range, endColumn: range.endColumn + by };
    case 2:
      return { ...range, startRow: Math.max(0, range.startRow - by) };
    default:
      return { ...range, startColumn: Math.max(0, range.startColumn - by) };
  }
}

function randomText(chance: Chance, names: readonly string[]): string {
  if (chance(5) < 3) return `=${randomFormula(chance, names)}`;
  const texts = [
    "7/16",
    "24 1/16",
    "595 mm",
    "oak",
    "'12",
    "TRUE",
    "50%",
    "$1,234.50",
    "2026-07-16",
    "1e3",
    "-3",
    "0",
    "",
  ];
  return chance(2) ? String(chance(50)) : texts[chance(texts.length)]!;
}

function outside(chance: Chance, names: readonly string[]): { text: string; html?: string } {
  const rows = Array.from({ length: 1 + chance(3) }, () =>
    Array.from({ length: 1 + chance(3) }, () => randomText(chance, names)),
  );
  const width = Math.max(...rows.map((row) => row.length));
  const text = rows.map((row) => Array.from({ length: width }, (_, x) => row[x] ?? "").join("\t")).join("\n");
  if (chance(2)) return { text };
  const escaped = (part: string) => part.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
  const lines = rows.map(
    (row) => `<tr>${row.map((part) => `<td style="font-weight:bold">${escaped(part)}</td>`).join("")}</tr>`,
  );
  return { text, html: `<html><body><table>${lines.join("")}</table></body></html>` };
}

function randomFormula(chance: Chance, names: readonly string[]): string {
  const pick = (...items: string[]): string => items[chance(items.length)]!;
  const sheet = (): string => (chance(5) > 0 ? "" : `'${names[chance(names.length)]!.replaceAll("'", "''")}'!`);
  const cell = (): string =>
    sheet() +
    pick("", "", "$") +
    cellName(chance(SIZE.rows), chance(SIZE.columns)).replace(/(?=\d)/, pick("", "", "$"));
  const range = (): string => {
    const [row, column] = [chance(SIZE.rows), chance(SIZE.columns)];
    return `${sheet()}${cellName(row, column)}:${cellName(row + chance(3), column + chance(2))}`;
  };
  return pick(
    `${cell()}+1`,
    `${cell()}*${cell()}`,
    `SUM(${range()})`,
    `COUNT(${range()})&" of them"`,
    `IF(${cell()}>3,${cell()},"less")`,
    `IFERROR(${cell()},0)`,
    cell(),
    `SEQUENCE(${1 + chance(3)},${1 + chance(2)})`,
    `SEQUENCE(${2 + chance(3)})*2`,
    `${range()}*2`,
    range(),
    `TRANSPOSE(${range()})`,
    `SUM(${cell().replaceAll("$", "")}#)`,
    `SEQUENCE(COUNT(${range()})+1)`,
    `DRAWER.BOXWIDTH(${pick(cell(), "24", '"24 1/16"')})`,
    `DRAWER.FRONTHEIGHTS(27.5,${pick(cell(), "3", "2")},0)`,
    `DRAWER.TAPE(${cell()})`,
    `NOSUCH(${cell()})`,
    "1/0",
  );
}
