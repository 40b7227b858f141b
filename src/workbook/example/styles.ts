import type { StyleDefinition } from "../author/index";

/** Paper, maple and walnut, as in the pane. */
const WALNUT = "8C3D14";
const MAPLE = "C9A877";
const PAPER = "FBF1DC";
const SOFT = "64543F";
const LINE = "E2D6C1";

const LENGTH = "# ??/??";
const SERIF = "Georgia";

const hair = { bottom: { line: "thin", color: LINE } } as const;
const box = {
  left: { line: "thin", color: MAPLE },
  right: { line: "thin", color: MAPLE },
  top: { line: "thin", color: MAPLE },
  bottom: { line: "thin", color: MAPLE },
} as const;
const input: StyleDefinition = { fill: PAPER, borders: box, vertical: "center", font: { color: WALNUT } };

/** Cells that are typed into have a fill and a frame; nothing else has either. */
export const STYLES = {
  title: { font: { name: SERIF, size: 20, bold: true }, vertical: "center" },
  subtitle: { font: { color: SOFT }, vertical: "center" },
  section: {
    font: { name: SERIF, size: 13, bold: true, color: WALNUT },
    borders: { bottom: { line: "medium", color: "A88A66" } },
    vertical: "bottom",
  },
  column: {
    font: { bold: true },
    borders: { bottom: { line: "medium", color: "A88A66" } },
    horizontal: "right",
    vertical: "bottom",
    indent: 1,
  },
  columnText: {
    font: { bold: true },
    borders: { bottom: { line: "medium", color: "A88A66" } },
    horizontal: "left",
    vertical: "bottom",
  },
  finding: { borders: hair, vertical: "center", wrap: true },
  remark: {
    font: { color: SOFT },
    borders: { bottom: { line: "medium", color: "A88A66" } },
    vertical: "bottom",
    indent: 1,
  },
  label: { borders: hair, vertical: "center" },
  input: { ...input, format: LENGTH, horizontal: "right" },
  inputCount: { ...input, horizontal: "right", indent: 1, format: "0" },
  inputWord: { ...input, horizontal: "right", indent: 1 },
  legendInput: { ...input, horizontal: "center" },
  legendResult: { borders: hair, horizontal: "center", vertical: "center" },
  result: { borders: hair, format: LENGTH, horizontal: "right", vertical: "center" },
  resultWord: { borders: hair, horizontal: "right", vertical: "center", indent: 1 },
  unit: { borders: hair, font: { bold: true }, horizontal: "right", vertical: "center", indent: 1 },
  pass: { borders: hair, format: "0", horizontal: "left", vertical: "center" },
  key: { borders: hair, font: { bold: true }, vertical: "center" },
  number: { borders: hair, format: "0", horizontal: "right", vertical: "center", indent: 1 },
  note: { font: { color: SOFT }, vertical: "center", indent: 1 },
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
