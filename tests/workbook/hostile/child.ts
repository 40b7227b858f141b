import "../../host";
import { createInterface } from "node:readline";
import { parseCell } from "../../../src/workbook/address";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { CellError, cellKey, type Scalar } from "../../../src/workbook/engine/index";
import { readLook } from "../../../src/workbook/look/index";
import { describe } from "../../../src/workbook/node/describe";
import { recalculate } from "../../../src/workbook/edit/recalculate";
import { FileFault } from "../../../src/workbook/xlsx/fault";
import { openWorkbook } from "../../../src/workbook/xlsx/open-workbook";
import { HOSTILE } from "./cases";
import { NOTHING_FALSE, type Came } from "./came";

/** Works out the cases whose numbers come in, line by line, and says of each what came of it and what it took. */
for await (const line of createInterface({ input: process.stdin })) {
  const { make, expect } = HOSTILE[Number(line)]!;
  const start = process.cpuUsage();
  const bytes = make();
  const before = process.cpuUsage();
  const came = tried(bytes, "refused" in expect ? [] : Object.keys(expect));
  const seconds = ({ user, system }: NodeJS.CpuUsage): number => (user + system) / 1e6;
  const took = { seconds: seconds(process.cpuUsage(before)), whole: seconds(process.cpuUsage(start)) };
  process.stdout.write(`${JSON.stringify({ ...came, ...took, megabytes: process.resourceUsage().maxRSS / 1024 })}\n`);
}

function tried(bytes: Uint8Array, cells: readonly string[]): Omit<Came, "seconds" | "whole" | "megabytes"> {
  try {
    const { bytes: written, report } = recalculate(bytes, { functions: OWN_FUNCTIONS });
    const said = Object.values(describe(report)).flat().join("\n");
    const opened = openWorkbook(written);
    const { book, sheets } = opened;
    // As the page does, which shows what it has worked out.
    readLook(opened);
    const kept = new Map(report.kept.map(({ sheet, cell, reason }) => [`${sheet} ${cell}`, reason]));
    const { name, cells: found } = book.sheets[0]!;
    const shown = cells.map((cell) => {
      const reason = kept.get(`${name} ${cell}`);
      const { row, column } = parseCell(cell)!;
      return [cell, reason === undefined ? plain(found.get(cellKey(row, column))?.value ?? null) : `kept: ${reason}`];
    });
    const falsehoods = NOTHING_FALSE.filter((wrong) => sheets.some((sheet) => sheet && wrong.test(sheet.text)));
    return {
      cells: Object.fromEntries(shown),
      said: said.slice(0, 2_000),
      length: said.length,
      falsehoods: falsehoods.map(String),
    };
  } catch (error) {
    if (error instanceof FileFault) return { refused: error.message };
    return { broken: (error as Error).stack?.slice(0, 2_000) ?? String(error) };
  }
}

function plain(value: Scalar): number | string | boolean | null {
  return value instanceof CellError ? value.code : value;
}
