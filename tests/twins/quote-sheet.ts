import type { Rows, Value } from "../libreoffice";

/** What a person who quotes in a sheet of their own has before them: the plan, the cut list, sheets as counted, rates. */
export interface QuoteJob {
  /** Rows of PLAN and of PARTS, one a part and drawer, their headings left out. */
  plan: readonly (readonly Value[])[];
  parts: readonly (readonly Value[])[];
  /** Labels of the openings whose bottoms slide in under the back, on screws. */
  openBacks: readonly string[];
  sheets: readonly SheetStock[];
  /** Solid wood by the board foot: its material, price and percent of waste. */
  boards?: { material: string; price: number; waste: number };
  /** By name; all of them numbers. */
  rates: Readonly<Record<string, number>>;
  charge: "whole" | "used";
  gain: "markup" | "margin";
  taxOn: "all" | "materials";
}

export interface SheetStock {
  thickness: number;
  length: number;
  width: number;
  price: number;
  /** How many the layout takes. */
  count: number;
}

/** The lines of a quote whose quantity, rate and amount the sheet works out, in order. */
export interface QuoteSheet {
  rows: Rows;
  /** Where the lines begin, from 0: section, item, quantity, rate, amount. */
  first: number;
}

/**
 * The same quote as native formulas: every quantity from the sizes of the plan and the cut list, every amount from
 * quantity and rate, down to the total.
 */
export function quoteSheet(job: QuoteJob): QuoteSheet {
  const sheet: Value[][] = [];
  const add = (...cells: Value[]): number => sheet.push(cells);
  const rate: Record<string, string> = {};
  for (const [name, value] of Object.entries(job.rates)) rate[name] = `$B$${add(name, value)}`;
  const stock = job.sheets.map((row) => add("sheet", row.thickness, row.length, row.width, row.price, row.count));
  const board = job.boards && add("board foot", job.boards.material, job.boards.price, job.boards.waste);

  // Columns of a drawer's row: A–N as PLAN, O pulls, P bottom screws, Q front screws, R round the front.
  const drawers = job.plan.map((row) => {
    const r = sheet.length + 1;
    const bottom = job.openBacks.includes(String(row[1])) ? `=MAX(2,ROUNDUP(L${r}/8,0))` : 0;
    return add(...row, `=IF(C${r}<24,1,2)`, bottom, `=IF(C${r}<24,2,4)`, `=2*(C${r}+D${r})`);
  });
  // Columns of a part's row: A–H as PARTS, I its area, J its volume, K pocket screws.
  const parts = job.parts.map((row) => {
    const r = sheet.length + 1;
    return add(
      ...row.slice(0, 8),
      `=C${r}*D${r}*E${r}`,
      `=I${r}*F${r}`,
      `=IF(OR(A${r}="Box front",A${r}="Box back"),2*C${r}*MAX(2,ROUNDUP(E${r}/4,0)),0)`,
    );
  });
  const ofDrawers = (column: string) => `$${column}$${drawers[0]}:$${column}$${drawers.at(-1)}`;
  const ofParts = (column: string) => `$${column}$${parts[0]}:$${column}$${parts.at(-1)}`;
  const count = `COUNTA(${ofDrawers("A")})`;
  const hours = (name: string) => `${count}*${rate[name]}/60`;
  const boxes = ["Side", "Box front", "Box back", "Bottom"];
  const area = (names: readonly string[]) =>
    names.map((n) => `SUMIF(${ofParts("A")},"${n}",${ofParts("I")})`).join("+");
  const solid = job.boards?.material;

  const first = sheet.length;
  const amounts: Record<string, number[]> = {};
  const line = (section: string, quantity: string, price: string, percent = false): number => {
    const r = sheet.length + 1;
    add(section, null, `=${quantity}`, `=${price}`, `=ROUND(C${r}*D${r}${percent ? "/100" : ""},2)`);
    (amounts[section] ??= []).push(r);
    return r;
  };
  const sumOf = (...sections: string[]) =>
    sections
      .flatMap((section) => amounts[section] ?? [])
      .map((r) => `E${r}`)
      .join("+") || "0";

  job.sheets.forEach((row, i) => {
    const r = stock[i]!;
    // What is sold by the board foot is on no sheet.
    const own = `SUMIFS(${ofParts("I")},${ofParts("F")},B${r}${solid ? `,${ofParts("G")},"<>${solid}"` : ""})`;
    if (row.count > 0) line("Sheets", job.charge === "whole" ? `F${r}` : `${own}/(C${r}*D${r})`, `E${r}`);
  });
  if (board) {
    line("Solid stock", `SUMIF(${ofParts("G")},B${board},${ofParts("J")})/144*(1+D${board}/100)`, `C${board}`);
  }
  line("Hardware", count, rate["slide price"]!);
  line("Hardware", `SUM(${ofDrawers("O")})`, rate["pull price"]!);
  if (rate["edge band price"]) {
    line("Hardware", `ROUNDUP(SUM(${ofDrawers("R")})/12,1)`, rate["edge band price"]);
  }
  // Three screws in each half of both slides; in the corners; in bottoms and fronts; two a pull.
  const screws = `${count}*12+SUM(${ofParts("K")})+SUM(${ofDrawers("P")})+SUM(${ofDrawers("Q")})+2*SUM(${ofDrawers("O")})`;
  line("Hardware", screws, rate["screw price"]!);
  line("Finish", `(${area(boxes)})/144`, rate["box finish price"]!);
  line("Finish", `(${area(["Front"])})/144`, rate["front finish price"]!);
  for (const name of ["box minutes", "front minutes", "fitting minutes"]) {
    line("Labor", hours(name), rate["labor rate"]!);
  }
  const materials = sumOf("Sheets", "Solid stock", "Hardware", "Finish");
  line("Overhead", rate.overhead!, `${materials}+${sumOf("Labor")}`, true);
  const cost = `${materials}+${sumOf("Labor", "Overhead")}`;
  if (job.gain === "markup") line("Markup", rate.markup!, cost, true);
  else line("Margin", rate.margin!, `ROUND((${cost})/(1-${rate.margin}/100),2)`, true);
  for (const name of Object.keys(rate).filter((each) => each.startsWith("extra"))) line("Extras", "1", rate[name]!);
  const price = `${cost}+${sumOf("Markup", "Margin", "Extras")}`;
  add("Price", null, null, null, `=${price}`);
  line("Tax", rate.tax!, job.taxOn === "all" ? `E${sheet.length}` : materials, true);
  add("Total", null, null, null, `=E${sheet.length - 1}+E${sheet.length}`);
  return { rows: sheet, first };
}
