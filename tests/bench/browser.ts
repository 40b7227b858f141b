import { writeWorkbook } from "../../src/workbook/author/index";
import { standardCell } from "../workbook/support/bench-places";
import { BOX_WIDTH, WIDTH } from "../browser/bench";
import { openDesk, type Desk, type Visit } from "../browser/desk";

const VISITS = 5;
const EDITS = 15;
/** Cells of ours on one sheet. */
const MANY = 2_000;

/** The embedded workbook in a real browser: until the first cell is there, and until an edit is worked out and shown. */
export async function benchBrowser(): Promise<void> {
  const started = performance.now();
  const desk = await openDesk();
  console.log(`page built and served, browser started: ${ms(performance.now() - started)}`);
  try {
    const { all, afterArrival } = await firstCells(desk);
    console.log(`until the parts bench is there, nothing of it kept, in a window that is open: ${summary(all)}`);
    console.log(`of that, after the last file that the page waits for has arrived: ${summary(afterArrival)}`);
    const visit = await desk.visit();
    console.log(`an edit at once, which a worker must begin for: ${await edits(visit, WIDTH, () => "=17", 1)}`);
    console.log(`an edit on the parts bench: ${await edits(visit, WIDTH, (i) => `=18+${i}/16`)}`);
    await visit.expectAt(BOX_WIDTH, 18 + (EDITS - 1) / 16 - 1);
    console.log(
      `one that every drawer and price hangs on: ${await edits(visit, standardCell("front gap"), (i) => `=1/8+${i}/64`)}`,
    );
    const other = await desk.visit();
    await other.open("many.xlsx", many());
    await other.page.getByText("many.xlsx is open.").waitFor();
    console.log(
      `an edit with ${MANY.toLocaleString("en")} cells of ours: ${await edits(other, "A1", (i) => `=24+${i}`)}`,
    );
  } finally {
    await desk.close();
  }
}

/** A window of a browser that has just been opened loads pages of its own: a person's is open already. */
const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 3_000));

async function firstCells(desk: Desk): Promise<Record<"all" | "afterArrival", number[]>> {
  const times: Awaited<ReturnType<typeof firstCells>> = { all: [], afterArrival: [] };
  for (let i = 0; i < VISITS; i++) {
    const visit = await desk.visit({}, settled);
    times.all.push(await visit.page.evaluate(() => performance.getEntriesByName("ready")[0]!.startTime));
    times.afterArrival.push(await visit.page.evaluate(sinceArrival));
    await visit.close();
  }
  return times;
}

/**
 * Runs in the page: how long it took until the grid could be used, from the arrival of the last of the files that it
 * waits for: styles, scripts, and the example.
 */
const sinceArrival = (): number => {
  const files = performance.getEntriesByType("resource") as PerformanceResourceTiming[];
  const named = [...document.querySelectorAll<HTMLLinkElement>('link[rel="stylesheet"], link[rel="modulepreload"]')];
  const waitedFor = new Set(named.map(({ href }) => href));
  const [ready] = performance.getEntriesByName("ready");
  const arrivals = files
    .filter(({ name }) => waitedFor.has(name) || /\/parts-bench\./.test(name))
    .map(({ responseEnd }) => ready!.startTime - responseEnd);
  // The worker asks for some of the scripts once more, later.
  return Math.min(...arrivals.filter((before) => before > 0));
};

/** Writes formulas into a cell, another each time, until the picture with all that follows from it. */
async function edits(visit: Visit, cell: string, formula: (i: number) => string, count = EDITS): Promise<string> {
  await visit.goTo(cell);
  const times: number[] = [];
  for (let i = 0; i < count; i++) times.push(await visit.page.evaluate(timedEdit, formula(i)));
  return summary(times);
}

/** Runs in the page: from the write to the frame after the grid has told what its cells hold now. */
async function timedEdit(formula: string): Promise<number> {
  const host = await window.spreadsheetHost!;
  const start = performance.now();
  let stop: (() => Promise<void>) | undefined;
  const told = new Promise<void>((resolve) => {
    void host.onSelectionChanged(({ formula: now }) => now === formula && resolve()).then((found) => (stop = found));
  });
  await host.insertFormula(formula);
  await told;
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  const time = performance.now() - start;
  await stop?.();
  return time;
}

/** One opening, and boxes that all follow from it. */
function many(): Uint8Array {
  const formulas = Array.from({ length: MANY / 2 }, (_, i) => ({
    cells: [`=DRAWER.BOXWIDTH($A$1+${i}/16)`, `=DRAWER.ENDLENGTH(A${i + 2},1/2)`].map((content) => ({
      style: "plain",
      content,
    })),
  }));
  const rows = [{ cells: [{ style: "plain", content: 24 }] }, ...formulas];
  return writeWorkbook({
    styles: { plain: {} },
    sheets: [{ name: "Many", widths: [12, 12], rows, merged: [], selected: "A1" }],
  });
}

const ms = (time: number): string => `${Math.round(time)} ms`;

function summary(times: number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  return `${ms(sorted[Math.floor(sorted.length / 2)]!)} (${ms(sorted[0]!)} to ${ms(sorted.at(-1)!)})`;
}
