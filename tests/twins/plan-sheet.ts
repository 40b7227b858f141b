import type { Rows, Value } from "../libreoffice";

/** A job for a sheet of native formulas: what a careful person would put into its input cells. */
export interface SheetJob {
  name: string;
  unit: "in" | "mm";
  style: "overlay" | "inset";
  faceFrame: boolean;
  /** All by name, for the formulas to refer to. */
  standards: Record<string, number>;
  /** Width, height, depth, and the drawers: a fixed height, or parts. */
  openings: { size: [number, number, number]; drawers: ({ fixed: number } | { parts: number })[] }[];
}

/** The columns of a drawer's row that PLAN and PARTS also give. */
export const COLUMNS = [
  "Front width",
  "Front height",
  "Front bottom",
  "Box width",
  "Box height",
  "Box depth",
  "Box bottom",
  "Slide length",
  "Slide centerline",
  "Inside width",
  "Inside depth",
  "Inside height",
  "Box back height",
  "Bottom width",
  "Bottom depth",
] as const;

/**
 * The plan as native formulas: standards above, a row an opening, a row a drawer. Every size is a formula of cells.
 * @returns the sheet, and where its drawers begin (row and column from 0)
 */
export function planSheet(job: SheetJob): { rows: Rows; first: number; column: number } {
  const sheet = new Sheet();
  const standard = new Map<string, string>();
  for (const [name, value] of Object.entries(job.standards)) standard.set(name, `$B$${sheet.add([name, value])}`);
  const s = (name: string): string => standard.get(name)!;
  const openings = job.openings.map((opening, i) => addOpening(sheet, job, opening, i, s));
  const first = sheet.rows.length;
  job.openings.forEach(({ drawers }, o) => {
    const top = sheet.rows.length + 1;
    drawers.forEach((drawer, d) => addDrawer(sheet, job, drawer, d, drawers.length, top, openings[o]!, s));
  });
  return { rows: sheet.rows, first, column: 4 };
}

class Sheet {
  readonly rows: Value[][] = [];
  /** Adds a row; gives its number. */
  add(cells: Value[]): number {
    return this.rows.push(cells);
  }
}

/** Cells of an opening's row: A width, B height, C depth, D count, E fixed in all, F parts in all, G lower edge, H upper edge, I front width, J shared room. */
function addOpening(
  sheet: Sheet,
  { style, faceFrame, openings }: SheetJob,
  { size, drawers }: SheetJob["openings"][number],
  i: number,
  s: (name: string) => string,
): number {
  const row = sheet.rows.length + 1;
  const fixed = drawers.reduce((sum, d) => sum + ("fixed" in d ? d.fixed : 0), 0);
  const parts = drawers.reduce((sum, d) => sum + ("parts" in d ? d.parts : 0), 0);
  const inner = `(${s("partition thickness")}-${s("front gap")})/2`;
  const end = `${s("cabinet thickness")}-${s("end reveal")}`;
  const shares = `${i === 0 ? end : inner}+${i === openings.length - 1 ? end : inner}`;
  const [low, high, wide] =
    style === "inset"
      ? [s("inset gap"), `B${row}-${s("inset gap")}`, `A${row}-2*${s("inset gap")}`]
      : faceFrame
        ? [`-${s("frame overlay")}`, `B${row}+${s("frame overlay")}`, `A${row}+2*${s("frame overlay")}`]
        : [
            `-(${s("cabinet thickness")}-${s("bottom reveal")})`,
            `B${row}+${s("cabinet thickness")}-${s("top reveal")}`,
            `A${row}+${shares}`,
          ];
  sheet.add([
    ...size,
    drawers.length,
    fixed,
    parts,
    `=${low}`,
    `=${high}`,
    `=${wide}`,
    `=H${row}-G${row}-(D${row}-1)*${s("front gap")}-E${row}`,
  ]);
  return row;
}

/** Cells of a drawer's row: A fixed, B parts, C rounded share, D own box height, E on as in COLUMNS, T zone bottom, U zone top, V height before the step. */
function addDrawer(
  sheet: Sheet,
  job: SheetJob,
  drawer: { fixed: number } | { parts: number },
  place: number,
  count: number,
  top: number,
  o: number,
  s: (name: string) => string,
): void {
  const r = sheet.rows.length + 1;
  const end = top + count - 1;
  const share = `J${o}*B${r}/F${o}`;
  const down = (sum: string, step: string) => (job.standards[step] === 0 ? sum : `FLOOR(ROUND(${sum},9),${s(step)})`);
  const spare =
    job.standards["front step"] === 0
      ? "0"
      : `IF(COUNT(B${r}:B${end})<=INT(ROUND((J${o}-SUM(C${top}:C${end}))/${s("front step")},9)),${s("front step")},0)`;
  const height = "fixed" in drawer ? `A${r}` : `C${r}+${spare}`;
  const bottom = place === 0 ? `H${o}-F${r}` : `G${r - 1}-${s("front gap")}-F${r}`;
  const zoneTop = place === 0 ? `MIN(B${o},H${o})` : `T${r - 1}`;
  const zoneBottom = place === count - 1 ? `MAX(0,G${r})` : `(G${r}+G${r + 1}+F${r + 1})/2`;
  const setback = job.style === "inset" ? s("front thickness") : "0";
  const slides = `MIN(${s("longest slide")},FLOOR(C${o}-${s("rear clearance")}-${setback},${s("slide step")}))`;
  const [side, ends] = [s("side thickness"), s("end thickness")];
  sheet.add([
    "fixed" in drawer ? drawer.fixed : null,
    "parts" in drawer ? drawer.parts : null,
    "parts" in drawer ? `=${down(share, "front step")}` : null,
    `=${down(`U${r}-T${r}-${s("space below")}-${s("space above")}`, "height step")}`,
    `=I${o}`,
    `=${height}`,
    `=${bottom}`,
    `=A${o}-2*${s("side clearance")}`,
    `=MIN(${Array.from({ length: count }, (_, i) => `IF(ABS(V${top + i}-V${r})<0.000001,D${top + i},9999)`).join(",")})`,
    `=L${r}`,
    `=T${r}+${s("space below")}`,
    `=${slides}`,
    `=K${r}+I${r}/2`,
    `=H${r}-2*${side}`,
    `=J${r}-2*${ends}`,
    `=I${r}-${s("groove offset")}-${s("bottom thickness")}`,
    `=P${r}`,
    `=H${r}-2*${side}+2*${s("groove depth")}-${s("bottom play")}`,
    `=J${r}-${ends}+${s("groove depth")}-${s("bottom play")}`,
    `=${zoneBottom}`,
    `=${zoneTop}`,
    "fixed" in drawer ? `=A${r}` : `=${share}`,
  ]);
}
