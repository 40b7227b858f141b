import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openWorkbook } from "../../src/workbook/xlsx/open-workbook";
import { openDesk, type Desk, type Visit } from "./desk";

let desk: Desk;
let visit: Visit;
let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "print-"));
  desk = await openDesk();
  visit = await desk.visit();
  // A browser without a screen asks nobody; what it would print is looked at as a PDF.
  await visit.page.evaluate(() => (window.print = () => void (document.body.dataset["printed"] = "yes")));
});
afterAll(async () => {
  await desk.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens the dialog by keys, chooses, prints, and gives the PDF's pages as texts, with the size of each in points. */
async function printed(sheets: readonly string[], paper: "letter" | "A4"): Promise<{ text: string; size: string }[]> {
  const { page } = visit;
  await page.keyboard.press("Control+p");
  const dialog = page.getByRole("dialog", { name: "Print" });
  for (const box of await dialog.getByRole("checkbox").all()) await box.uncheck();
  for (const name of sheets) await dialog.getByRole("checkbox", { name, exact: true }).check();
  await dialog.getByLabel("Paper").selectOption(paper);
  await page.evaluate(() => delete document.body.dataset["printed"]);
  await dialog.getByRole("button", { name: "Print", exact: true }).click();
  await page.waitForSelector("body[data-printed]");
  const pdf = join(folder, `${sheets.join("-")}-${paper}.pdf`);
  writeFileSync(pdf, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  if (process.env["KEEP_PRINTS"])
    writeFileSync(join(process.env["KEEP_PRINTS"], `${sheets[0]}-${paper}.pdf`), readFileSync(pdf));
  const sizes = execFileSync("pdfinfo", ["-f", "1", "-l", "99", pdf], { encoding: "utf8" });
  const texts = execFileSync("pdftotext", ["-layout", pdf, "-"], { encoding: "utf8" }).split("\f").slice(0, -1);
  return texts.map((text, i) => ({
    text,
    size: new RegExp(`Page +${i + 1} size: +([\\d.]+) x ([\\d.]+)`)
      .exec(sizes)!
      .slice(1)
      .map(Number)
      .map(Math.round)
      .join(" x "),
  }));
}

describe("printed sheets are pages by their page set-up", () => {
  test("the quote stands upright on one page, letter and A4, with its foot, and nothing of the page round it", async () => {
    for (const [paper, size] of [
      ["letter", "612 x 792"],
      ["A4", "595 x 842"],
    ] as const) {
      const pages = await printed(["Quote"], paper);
      expect(pages).toHaveLength(1);
      const [{ text, size: found }] = pages as [(typeof pages)[0]];
      expect(found).toBe(size);
      for (const said of ["Side-mount slide", "Before tax", "Total", "Page 1 of 1"]) expect(text).toContain(said);
      expect(text).not.toMatch(/Undo|Functions|Plan\s+Checks/);
    }
  });

  test.each(["letter", "A4"] as const)(
    "the client's quote is one upright page of %s that tells no cost",
    async (paper) => {
      const pages = await printed(["Client quote"], paper);
      expect(pages).toHaveLength(1);
      for (const said of ["Q-104", "What is built", "Boxes: plywood", "Total", "Terms", "Accepted"])
        expect(pages[0]!.text).toContain(said);
      expect(pages[0]!.text).not.toMatch(/hour|labor|overhead|margin|subtotal/i);
    },
  );

  test("a long table repeats its head on each page, cuts no row, prints no empty one, and turns the paper", async () => {
    const pages = await printed(["Cuts"], "letter");
    expect(pages.length).toBeGreaterThan(1);
    for (const { text, size } of pages) {
      expect(size).toBe("792 x 612");
      expect(text).toMatch(/Sheet\s+Material/);
      expect(text.trim().split("\n").length).toBeGreaterThan(3);
    }
    expect(pages[0]!.text.indexOf("Cutting the sheets up")).toBeLessThan(pages[0]!.text.search(/Sheet\s+Material/));
    // Every row once: what the grid has, in the order that it has it.
    const rows = pages.flatMap(({ text }) => [...text.matchAll(/^\s*(\d+)\s+Plywood/gm)].map((match) => match[1]));
    const { bytes } = await visit.save();
    const { book } = openWorkbook(bytes);
    const cuts = book.sheets.find(({ name }) => name === "Cuts")!;
    const there = [...cuts.cells.values()].filter(({ value, column }) => column === 1 && value === "Plywood");
    expect(rows).toHaveLength(there.length);
  });

  test("every sheet at once: none is empty, fractions are fractions, and pages are counted through", async () => {
    const names = await visit.page.evaluate(() => [
      ...new Set(
        [...document.querySelectorAll<HTMLInputElement>("#print-pages input")].map((box) =>
          box.parentElement!.textContent!.trim(),
        ),
      ),
    ]);
    const pages = await printed(names, "A4");
    expect(pages.length).toBeGreaterThanOrEqual(names.length);
    for (const { text } of pages) expect(text.trim()).not.toBe("");
    expect(pages.map(({ text }) => text).join("\n")).toMatch(/\d+ \d+\/16/);
    expect(visit.faults).toEqual([]);
  });

  test("no row and no cell reaches beyond its page", async () => {
    const beyond = await visit.page.evaluate(() => {
      const pages = [...document.querySelectorAll<HTMLElement>("#pages section")];
      return pages.flatMap((page, i) => {
        const edge = page.getBoundingClientRect();
        const { paddingBottom, paddingRight } = getComputedStyle(page);
        const table = page.querySelector("table")!.getBoundingClientRect();
        const [down, right] = [edge.bottom - parseFloat(paddingBottom), edge.right - parseFloat(paddingRight)];
        return table.bottom > down + 1 || table.right > right + 1
          ? [`${i}: ${table.bottom - down}, ${table.right - right}`]
          : [];
      });
    });
    expect(beyond).toEqual([]);
  });

  test("a dialog without a sheet says so, and the browser's own print command tells where to go", async () => {
    const { page } = visit;
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    await page.getByRole("button", { name: "Print…" }).click();
    const dialog = page.getByRole("dialog", { name: "Print" });
    for (const box of await dialog.getByRole("checkbox").all()) await box.uncheck();
    await dialog.getByRole("button", { name: "Print", exact: true }).click();
    expect(await dialog.getByText("Choose a sheet.").isVisible()).toBe(true);
    await dialog.getByRole("button", { name: "Cancel" }).click();
    await page.emulateMedia({ media: "print" });
    expect(await page.getByText("it lays the sheets out as pages").isVisible()).toBe(true);
    expect(await page.locator("#tools").isVisible()).toBe(false);
    await page.emulateMedia({ media: "screen" });
  });
});

// What a program without the functions gets.
test("Freeze… saves a copy with values of the sheet that is open, or of the whole workbook, and changes nothing here", async () => {
  const { page } = visit;
  const state = await page.textContent("#file-state");
  await visit.sheet("Quote");
  const copy = async (what: RegExp) => {
    await page.getByRole("button", { name: "Freeze…" }).click();
    const dialog = page.getByRole("dialog", { name: "A copy with values" });
    await dialog.getByRole("radio", { name: what }).check();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      dialog.getByRole("button", { name: "Save the copy" }).click(),
    ]);
    return { name: download.suggestedFilename(), opened: openWorkbook(readFileSync(await download.path())) };
  };
  const one = await copy(/the sheet Quote alone/);
  expect(one.name).toBe("parts-bench-Quote-values.xlsx");
  expect(one.opened.workbook.sheets.map(({ name }) => name)).toEqual(["Quote"]);
  const all = await copy(/the whole workbook/);
  expect(all.name).toBe("parts-bench-values.xlsx");
  const formulas = all.opened.book.sheets.flatMap(({ cells }) =>
    [...cells.values()].map(({ formula }) => formula?.text ?? ""),
  );
  expect(formulas.join("\n")).not.toMatch(/_xldudf_/);
  expect(await page.textContent("#file-state")).toBe(state);
  await page.getByText(/parts-bench-values\.xlsx was saved: \d+ formulas are values in it\./).waitFor();
  expect(visit.faults).toEqual([]);
});
