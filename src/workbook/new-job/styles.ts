import type { RuleLook, StyleDefinition } from "../author/definition";

/** Paper, maple and walnut, as in the pane. */
const WALNUT = "8C3D14";
const MAPLE = "C9A877";
const PAPER = "FBF1DC";
const SOFT = "64543F";
const LINE = "E2D6C1";

const MONEY = "#,##0.00";
const DRAWERS = '[=1]0" drawer"_);0" drawers"_)';
const SERIF = "Georgia";

/** Under what heads a table or a part of a sheet. */
const rule = { bottom: { line: "medium", color: "A88A66" } } as const;
const hair = { bottom: { line: "thin", color: LINE } } as const;
const box = {
  left: { line: "thin", color: MAPLE },
  right: { line: "thin", color: MAPLE },
  top: { line: "thin", color: MAPLE },
  bottom: { line: "thin", color: MAPLE },
} as const;
const input: StyleDefinition = { fill: PAPER, borders: box, vertical: "center", font: { color: WALNUT } };
/** Sizes are typed as texts, so that 7/16 stays one. */
const typed: StyleDefinition = { ...input, indent: 1, format: "@" };

/** Looks of rules, over those of the cells. Each says all that it wants, for some programs let one rule alone count. */
export const LOOKS = {
  line: { borders: hair },
  again: { font: { color: "7D6B52" }, borders: hair },
  whole: { borders: hair, format: "#,##0_)" },
  sum: { font: { bold: true }, borders: hair },
  total: {
    font: { bold: true, color: WALNUT },
    borders: { top: { line: "thin", color: "A88A66" }, bottom: { line: "thin", color: "A88A66" } },
    format: `${MONEY}_)`,
  },
  best: { font: { bold: true }, fill: "FFD766", borders: { ...box } },
  beyond: { font: { italic: true } },
} satisfies Record<string, RuleLook>;

/** From little to much: maple for money, moss for room; text stays readable on all of them. */
export const SCALES = { money: ["FFFDF8", "E3B884"], room: ["FFFDF8", "A9C6A0"] } as const;

/** Cells that are typed into have a fill and a frame, but on a page that is handed over; nothing else has either. */
export const STYLES = {
  title: { font: { name: SERIF, size: 20, bold: true }, vertical: "center" },
  subtitle: { font: { color: SOFT }, vertical: "center" },
  section: {
    font: { name: SERIF, size: 13, bold: true, color: WALNUT },
    borders: rule,
    vertical: "bottom",
  },
  column: {
    font: { bold: true },
    borders: rule,
    horizontal: "right",
    vertical: "bottom",
    indent: 1,
  },
  columnSize: {
    font: { bold: true },
    borders: rule,
    horizontal: "right",
    vertical: "bottom",
  },
  columnText: {
    font: { bold: true },
    borders: rule,
    horizontal: "left",
    vertical: "bottom",
  },
  finding: { borders: hair, vertical: "center", wrap: true },
  remark: {
    font: { color: SOFT },
    borders: rule,
    vertical: "bottom",
    indent: 1,
  },
  inputText: { ...typed, horizontal: "left" },
  inputMoney: { ...input, horizontal: "right", indent: 1, format: MONEY },
  inputPlain: { ...input, horizontal: "right", indent: 1 },
  inputDrawers: { ...input, horizontal: "right", format: DRAWERS },
  drawers: { borders: hair, horizontal: "right", vertical: "center", format: DRAWERS },
  money: { borders: hair, format: `${MONEY}_)`, horizontal: "right", vertical: "center" },
  volume: { borders: hair, format: "0.0_)", horizontal: "right", vertical: "center" },
  words: { borders: hair, horizontal: "left", vertical: "center", indent: 1 },
  sentence: { borders: hair, horizontal: "left", vertical: "center" },
  bareText: { vertical: "center" },
  bareKey: { font: { bold: true }, vertical: "center" },
  bareWords: { horizontal: "left", vertical: "center", wrap: true },
  bareCount: { format: "0", horizontal: "right", vertical: "center", indent: 1 },
  bareMoney: { format: MONEY, horizontal: "right", vertical: "center", indent: 1 },
  bareChange: { format: "+#,##0.00;-#,##0.00;0.00", horizontal: "right", vertical: "center", indent: 1 },
  bareRoom: { format: "0.0", horizontal: "right", vertical: "center", indent: 1 },
  bareRoomChange: { format: "+0.0;-0.0;0.0", horizontal: "right", vertical: "center", indent: 1 },
  bareNumber: { format: "#,##0.00_)", horizontal: "right", vertical: "center" },
  label: { borders: hair, vertical: "center" },
  input: { ...typed, horizontal: "right" },
  /** A formula to be typed over. */
  inputResult: { ...input, horizontal: "right", indent: 1 },
  inputCount: { ...input, horizontal: "right", indent: 1, format: "0" },
  /** Typed into as well, on a page that is handed over. */
  typed: { borders: hair, font: { color: WALNUT }, horizontal: "left", vertical: "center", indent: 1 },
  result: { borders: hair, horizontal: "right", vertical: "center" },
  /** A size as its function shows it: one that no tape has comes with decimals. */
  size: { borders: hair, horizontal: "right", vertical: "center" },
  resultWord: { borders: hair, horizontal: "right", vertical: "center", indent: 1 },
  unit: { borders: hair, font: { bold: true }, horizontal: "right", vertical: "center", indent: 1 },
  pass: { borders: hair, format: "0", horizontal: "left", vertical: "center" },
  key: { borders: hair, font: { bold: true }, vertical: "center" },
  number: { borders: hair, format: "0", horizontal: "right", vertical: "center", indent: 1 },
  amount: { borders: hair, format: "#,##0.0_)", horizontal: "right", vertical: "center" },
  percent: { borders: hair, format: "0 %_)", horizontal: "right", vertical: "center" },
  note: { font: { color: SOFT }, horizontal: "left", vertical: "center", indent: 1 },
  plainNote: { font: { color: SOFT }, vertical: "top", wrap: true },
  caution: {
    fill: "FBE9DF",
    borders: { left: { line: "thick", color: WALNUT } },
    vertical: "center",
    wrap: true,
    indent: 1,
  },
} satisfies Record<string, StyleDefinition>;

export type Style = keyof typeof STYLES;
