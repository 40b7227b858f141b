import { MAX_ROWS, parseArea, type Area } from "../address";
import { tokens } from "../formula/lexer";
import type { OpenWorkbook } from "../xlsx/open-workbook";
import { isTrue } from "../xlsx/workbook-part";
import { decodeEscapes, readXml } from "../xlsx/xml";

/** How a sheet is printed, as its file says. Rows and columns count from 0, lengths are inches. */
export interface PageSetup {
  paper?: "letter" | "A4";
  landscape: boolean;
  /** The most pages beside one another, and one below another; 0 as many as it takes. */
  fit?: { wide: number; tall: number };
  /** In percent, where it is not fitted. */
  scale: number;
  margins: Record<"left" | "right" | "top" | "bottom" | "header" | "footer", number>;
  centered: boolean;
  gridlines: boolean;
  header: string;
  footer: string;
  /** What is printed, where somebody chose it. */
  area?: Area;
  /** Rows that stand at the head of every page. */
  repeated?: { top: number; bottom: number };
  /** Rows that a page begins with. */
  breaks: number[];
}

/** Reads how a sheet is printed; undefined where it has no cells. */
export function readPageSetup({ workbook, sheets }: OpenWorkbook, at: number): PageSetup | undefined {
  const sheet = sheets[at];
  if (!sheet) return undefined;
  const setup: PageSetup = {
    landscape: false,
    scale: 100,
    margins: { left: 0.7, right: 0.7, top: 0.75, bottom: 0.75, header: 0.3, footer: 0.3 },
    centered: false,
    gridlines: false,
    header: "",
    footer: "",
    breaks: [],
  };
  readInto(setup, sheet.text, sheet.part);
  for (const { name, text, sheet: of } of workbook.names) {
    if (of !== at) continue;
    if (/^_xlnm\.Print_Area$/i.test(name)) setup.area = areaOf(text);
    if (/^_xlnm\.Print_Titles$/i.test(name)) setup.repeated = rowsOf(text);
  }
  return setup;
}

function readInto(setup: PageSetup, text: string, part: string): void {
  let fits = false;
  let inBreaks = false;
  let foot: "header" | "footer" | undefined;
  readXml(text, part, {
    open({ name, attributes }) {
      if (name === "pageSetUpPr") fits = isTrue(attributes.fitToPage);
      if (name === "printOptions") {
        setup.centered = isTrue(attributes.horizontalCentered);
        setup.gridlines = isTrue(attributes.gridLines);
      }
      if (name === "pageMargins")
        for (const side of Object.keys(setup.margins) as (keyof PageSetup["margins"])[])
          setup.margins[side] = within(attributes[side], 0, 5) ?? setup.margins[side];
      if (name === "pageSetup") readSetup(setup, attributes, fits);
      if (name === "rowBreaks" || name === "colBreaks") inBreaks = name === "rowBreaks";
      if (name === "brk" && inBreaks) setup.breaks.push(Number(attributes.id));
      if (name === "oddHeader" || name === "oddFooter") foot = name === "oddHeader" ? "header" : "footer";
    },
    text(found) {
      if (foot) setup[foot] += decodeEscapes(found);
    },
    close(name) {
      if (name === "oddHeader" || name === "oddFooter") foot = undefined;
    },
  });
  if (fits) setup.fit ??= { wide: 1, tall: 1 };
}

function readSetup(setup: PageSetup, attributes: Record<string, string>, fits: boolean): void {
  // Numbers of paper sizes: ECMA-376, 18.3.1.63.
  const paper = ({ 1: "letter", 9: "A4" } as const)[Number(attributes.paperSize)];
  if (paper) setup.paper = paper;
  setup.landscape = attributes.orientation === "landscape";
  setup.scale = within(attributes.scale, 10, 400) ?? 100;
  if (fits)
    setup.fit = { wide: within(attributes.fitToWidth, 0, 1e4) ?? 1, tall: within(attributes.fitToHeight, 0, 1e4) ?? 1 };
}

function within(text: string | undefined, least: number, most: number): number | undefined {
  const value = Number(text ?? Number.NaN);
  return value >= least && value <= most ? value : undefined;
}

/** Of several areas the first; the spreadsheet program gives each a page of its own. */
function areaOf(text: string): Area | undefined {
  const bare = tokens(text).filter(({ kind }) => kind !== "sheet");
  const [first = ""] = bare
    .map((token) => token.text)
    .join("")
    .split(",");
  return parseArea(first.replaceAll("$", ""));
}

function rowsOf(text: string): PageSetup["repeated"] {
  const rows = tokens(text).find(({ kind }) => kind === "rows");
  const [top, bottom] = rows?.text.replaceAll("$", "").split(":").map(Number) ?? [];
  if (top === undefined || bottom === undefined || bottom > MAX_ROWS) return undefined;
  return { top: Math.min(top, bottom) - 1, bottom: Math.max(top, bottom) - 1 };
}
