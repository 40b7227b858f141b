import { footText } from "./foot-text";
import { PAPERS, PIXELS, type Paper } from "./paper";
import type { PrintedSheet } from "./printed-sheet";
import { tableOf } from "./table";

/** What all pages know of the workbook that they are of. */
export interface Printing {
  paper: Paper;
  file: string;
  now: Date;
  date1904: boolean;
}

/**
 * Lays sheets out as pages, each a section as large as its paper, in an element that takes part in the page's layout, for
 * the heights of rows are measured.
 */
export function layOut(room: HTMLElement, sheets: readonly PrintedSheet[], printing: Printing): void {
  room.replaceChildren(paperStyle(printing.paper));
  const all = sheets.flatMap((sheet) => pagesOf(room, sheet, printing).map((page) => ({ page, sheet })));
  all.forEach(({ page, sheet }, i) => {
    room.append(page);
    const on = {
      page: i + 1,
      pages: all.length,
      sheet: sheet.name,
      file: printing.file,
      date: printing.now.toLocaleDateString(),
      time: printing.now.toLocaleTimeString(undefined, { timeStyle: "short" }),
    };
    for (const place of ["header", "footer"] as const) {
      const text = footText(sheet.page[place], on);
      if (Object.values(text).every((said) => said === "")) continue;
      const line = document.createElement(place);
      for (const side of ["left", "center", "right"] as const) {
        const part = document.createElement("span");
        part.textContent = text[side];
        line.append(part);
      }
      const { left, right } = sheet.page.margins;
      Object.assign(line.style, { left: `${left}in`, right: `${right}in` });
      line.style[place === "header" ? "top" : "bottom"] = `${sheet.page.margins[place]}in`;
      page.append(line);
    }
  });
}

/** Both ways of turning the paper, each a kind of page by its name. */
function paperStyle(paper: Paper): HTMLStyleElement {
  const { width, height } = PAPERS[paper];
  const style = document.createElement("style");
  style.textContent =
    `@page { size: ${inches(width)} ${inches(height)}; margin: 0 }` +
    `@page upright { size: ${inches(width)} ${inches(height)}; margin: 0 }` +
    `@page sideways { size: ${inches(height)} ${inches(width)}; margin: 0 }`;
  return style;
}

const inches = (length: number): string => `${Math.round(length * 1e4) / 1e4}in`;

interface Size {
  width: number;
  height: number;
}

function pagesOf(room: HTMLElement, sheet: PrintedSheet, { paper, date1904 }: Printing): HTMLElement[] {
  if (sheet.rows.length === 0) return [];
  const { page, columns, rows, head } = sheet;
  const turned = page.landscape ? { width: "height", height: "width" } : { width: "width", height: "height" };
  const size = { width: PAPERS[paper][turned.width as "width"], height: PAPERS[paper][turned.height as "height"] };
  const { left, right, top, bottom } = page.margins;
  const inside = { width: (size.width - left - right) * PIXELS, height: (size.height - top - bottom) * PIXELS };
  const numbered = rows.map((row, at) => ({ row, at }));
  const whole = tableOf(sheet, numbered, 0, columns.length, () => false, date1904);
  const { scale, heights } = fitted(room, sheet, whole, inside);
  const isHead = (at: number): boolean => at >= head.first && at < head.first + head.count;
  const across = parts(
    columns.map((width) => width * scale),
    page.fit?.wide === 1 ? Infinity : inside.width,
  );
  const repeated = numbered.filter(({ at }) => isHead(at));
  return across.flatMap(({ from, to }) =>
    broken(sheet, heights, inside.height).map((chosen) => {
      const begun = chosen[0]! > head.first && head.count > 0;
      const shown = begun ? [...repeated, ...chosen.map((at) => numbered[at]!)] : chosen.map((at) => numbered[at]!);
      const table = tableOf(sheet, shown, from, to, (at) => begun && isHead(at), date1904);
      return pageOf(sheet, table, size, scale);
    }),
  );
}

function pageOf({ page }: PrintedSheet, table: HTMLTableElement, size: Size, scale: number): HTMLElement {
  const section = document.createElement("section");
  section.className = page.landscape ? "sideways" : "upright";
  const { left, right, top, bottom } = page.margins;
  Object.assign(section.style, {
    width: inches(size.width),
    // A hair less than the paper, so that rounding never makes an empty page.
    height: `calc(${inches(size.height)} - 1px)`,
    padding: `${top}in ${right}in ${bottom}in ${left}in`,
  });
  section.style.setProperty("--s", String(scale));
  if (page.gridlines) table.classList.add("lined");
  if (page.centered) table.classList.add("centered");
  section.append(table);
  return section;
}

/** How much smaller the sheet is printed, and how high its rows are then. */
function fitted(
  room: HTMLElement,
  { page: { fit, scale: percent } }: PrintedSheet,
  table: HTMLTableElement,
  inside: Size,
): { scale: number; heights: number[] } {
  const measured = (scale: number): { width: number; heights: number[] } => {
    table.style.setProperty("--s", String(scale));
    return {
      width: table.getBoundingClientRect().width,
      heights: [...table.rows].map((row) => row.getBoundingClientRect().height),
    };
  };
  room.append(table);
  let scale = fit ? 1 : percent / 100;
  let { width, heights } = measured(scale);
  // Twice, for texts that wrap are not shrunk evenly.
  for (let round = 0; fit && round < 3; round++) {
    const wide = fit.wide === 0 ? 1 : Math.min(1, (inside.width * fit.wide) / width);
    const tall = fit.tall === 0 ? 1 : Math.min(1, (inside.height * fit.tall) / sum(heights));
    if (Math.min(wide, tall) >= 1) break;
    scale *= Math.min(wide, tall) * 0.998;
    ({ width, heights } = measured(scale));
  }
  table.remove();
  return { scale, heights };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** Columns that stand beside one another on a page. */
function parts(widths: readonly number[], room: number): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  let [from, used] = [0, 0];
  widths.forEach((width, at) => {
    // A hair of room, for what fits exactly.
    if (at > from && used + width > room + 0.5) {
      found.push({ from, to: at });
      [from, used] = [at, 0];
    }
    used += width;
  });
  return [...found, { from, to: widths.length }];
}

/** The rows of each page. No row is cut, nor what is joined over several, unless it is higher than a page. */
function broken({ rows, merged, head }: PrintedSheet, heights: readonly number[], room: number): number[][] {
  const joined = new Set(
    merged.flatMap(({ top, bottom }) => Array.from({ length: bottom - top }, (_, i) => top + 1 + i)),
  );
  const headHeight = sum(heights.slice(head.first, head.first + head.count));
  const pages: number[][] = [];
  let page: number[] = [];
  let used = 0;
  for (let at = 0; at < rows.length;) {
    let next = at + 1;
    while (next < rows.length && joined.has(next)) next++;
    const height = sum(heights.slice(at, next));
    const repeats = pages.length > 0 && at >= head.first + head.count ? headHeight : 0;
    const isFull = used + height > room + 0.5;
    if (page.length > 0 && (isFull || rows[at]!.isFirst)) {
      pages.push(page);
      page = [];
      used = at >= head.first + head.count ? headHeight : 0;
    } else if (page.length === 0) used = Math.max(used, repeats);
    for (let one = at; one < next; one++) page.push(one);
    used += height;
    at = next;
  }
  return page.length > 0 ? [...pages, page] : pages;
}
