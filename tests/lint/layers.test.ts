import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { cruise, type ICruiseOptions, type ICruiseResult } from "dependency-cruiser";
import { ESLint } from "eslint";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const rules = createRequire(import.meta.url)("../../.dependency-cruiser.cjs") as {
  options: ICruiseOptions;
  allowed: unknown[];
  forbidden: unknown[];
};

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "layers-"));
  for (const name of ["fraction.js", "zod", "fflate"]) {
    write(`node_modules/${name}/package.json`, JSON.stringify({ name, version: "1.0.0", main: "index.js" }));
    write(`node_modules/${name}/index.js`, "exports.it = 1;\n");
  }
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

const FOLDERS = [
  "core/length",
  "core/wood",
  "core/drawer",
  "core/sheets",
  "core/money",
  "functions",
  "guide",
  "drawing",
  "shop-pages",
  "taskpane",
  "workbook",
];

/** The rooms of the workbook, each with those that it may take. */
const WORKBOOK: Record<string, string[]> = {
  formula: [],
  engine: ["formula"],
  xlsx: ["formula", "engine"],
  look: ["formula", "engine", "xlsx"],
  sheets: ["formula", "xlsx"],
  edit: ["formula", "engine", "xlsx", "look", "sheets"],
  freeze: ["formula", "engine", "xlsx", "sheets", "edit"],
  author: ["formula", "engine", "xlsx", "sheets", "edit"],
  "new-job": ["formula", "author"],
  shop: ["engine", "edit"],
  browser: ["engine", "xlsx", "look", "sheets", "edit", "freeze", "author", "new-job", "shop"],
  node: ["engine", "xlsx", "sheets", "edit", "freeze", "shop"],
};

const ROOMS = ["cells", "arguments", "tables", "words", "calls"];

/** Whether a file in one folder may import what stands in another, as the rule sees it. */
async function mayImport(from: string, target: string, more: Record<string, string> = {}): Promise<boolean> {
  rmSync(join(root, "src"), { recursive: true, force: true });
  for (const folder of FOLDERS) write(`src/${folder}/index.ts`, "export const it = 1;\n");
  write("src/core/length/inner.ts", "export const it = 1;\n");
  for (const room of ROOMS) write(`src/functions/${room}/index.ts`, "export const it = 1;\n");
  write("src/functions/cells/inner.ts", "export const it = 1;\n");
  for (const room of Object.keys(WORKBOOK)) write(`src/workbook/${room}/index.ts`, "export const it = 1;\n");
  write("src/taskpane/host/host.ts", "export const it = 1;\n");
  write("src/taskpane/reference.ts", "export const it = 1;\n");
  write("package.json", "{}");
  write("tsconfig.json", "{}");
  write(`src/${from}/importer.ts`, `import "${target}";\nexport const it = 1;\n`);
  for (const [name, text] of Object.entries(more)) write(name, text);
  const { output } = await cruise(["src"], {
    ...rules.options,
    tsConfig: undefined,
    baseDir: root,
    validate: true,
    ruleSet: { allowed: rules.allowed, allowedSeverity: "error", forbidden: rules.forbidden },
  } as ICruiseOptions);
  return (output as ICruiseResult).summary.error === 0;
}

function write(name: string, text: string): void {
  mkdirSync(dirname(join(root, name)), { recursive: true });
  writeFileSync(join(root, name), text);
}

const up = (from: string) => "../".repeat(from.split("/").length);
const folderIn = (from: string, to: string) => mayImport(from, `${up(from)}${to}/index`);

describe("who may import whom", () => {
  const allowed: Record<string, string[]> = {
    "core/length": [],
    "core/wood": ["core/length"],
    "core/drawer": ["core/length", "core/wood"],
    "core/sheets": ["core/length"],
    "core/money": ["core/length", "core/drawer", "core/sheets"],
    functions: ["core/length", "core/wood", "core/drawer", "core/sheets", "core/money"],
    drawing: ["core/length", "core/wood", "core/drawer", "core/sheets", "core/money"],
    guide: ["core/length", "core/drawer"],
    "shop-pages": ["core/length", "core/wood", "core/drawer", "core/sheets", "core/money", "drawing"],
    taskpane: [
      "core/length",
      "core/wood",
      "core/drawer",
      "core/sheets",
      "core/money",
      "guide",
      "drawing",
      "shop-pages",
    ],
    workbook: ["core/length", "functions", "guide", "drawing", "shop-pages"],
  };

  test.each(FOLDERS)("%s imports what the table allows it, and nothing else", async (from) => {
    for (const to of FOLDERS.filter((folder) => folder !== from)) {
      expect(await folderIn(from, to), `${from} → ${to}`).toBe(allowed[from]!.includes(to));
    }
  });

  test.each(ROOMS)("%s of functions takes the rooms beneath it, by their indexes, and nothing else", async (from) => {
    const beneath: Record<string, string[]> = {
      cells: [],
      arguments: ["cells"],
      tables: ["cells"],
      words: ["cells"],
      calls: ["cells", "arguments", "tables", "words"],
    };
    for (const to of ROOMS.filter((room) => room !== from)) {
      expect(await mayImport(`functions/${from}`, `../${to}/index`), `${from} → ${to}`).toBe(
        beneath[from]!.includes(to),
      );
    }
    expect(await mayImport(`functions/${from}`, "../index")).toBe(false);
    if (from !== "cells") expect(await mayImport(`functions/${from}`, "../cells/inner")).toBe(false);
  });

  test.each(Object.keys(WORKBOOK))("%s of the workbook takes the rooms beneath it, and nothing else", async (from) => {
    for (const to of Object.keys(WORKBOOK).filter((room) => room !== from)) {
      expect(await mayImport(`workbook/${from}`, `../${to}/index`), `${from} → ${to}`).toBe(
        WORKBOOK[from]!.includes(to),
      );
    }
  });

  test("a cell function takes any room by its index alone, and no other cell function", async () => {
    for (const room of ROOMS) expect(await mayImport("functions", `./${room}/index`)).toBe(true);
    expect(await mayImport("functions", "./cells/inner")).toBe(false);
  });

  test("no files import each other in a circle, types included", async () => {
    const circle = (importer: string) => mayImport("core/drawer", "./other", { "src/core/drawer/other.ts": importer });
    expect(await circle("export const it = 1;\n")).toBe(true);
    expect(await circle('import type { it } from "./importer";\nexport type Other = typeof it;\n')).toBe(false);
  });

  test("the workbook's files are held to it as well", async () => {
    const importer = 'import type { it } from "./importer";\nexport type Other = typeof it;\n';
    expect(await mayImport("workbook/edit", "./other", { "src/workbook/edit/other.ts": importer })).toBe(false);
  });

  test("functions take a core folder by its index alone", async () => {
    expect(await mayImport("functions", "../core/length/inner")).toBe(false);
  });

  test("only what the pane draws reads cells as the functions do, by the indexes of their rooms", async () => {
    expect(await mayImport("taskpane/drawing", "../../functions/calls/index")).toBe(true);
    expect(await mayImport("taskpane/drawing", "../../functions/index")).toBe(false);
    expect(await mayImport("taskpane/drawing", "../../functions/cells/inner")).toBe(false);
    expect(await mayImport("taskpane", "../functions/calls/index")).toBe(false);
  });

  test("workbook takes the pane's host interface and the type of the reference, and nothing else of the pane", async () => {
    expect(await mayImport("workbook", "../taskpane/reference")).toBe(true);
    expect(await mayImport("workbook", "../taskpane/host/host")).toBe(true);
    expect(await mayImport("workbook", "../taskpane/index")).toBe(false);
  });

  test("core and functions know no package and no Node", async () => {
    expect(await mayImport("core/length", "fraction.js")).toBe(false);
    expect(await mayImport("core/drawer", "zod")).toBe(false);
    expect(await mayImport("workbook/browser", "zod")).toBe(true);
    expect(await mayImport("workbook/edit", "zod")).toBe(false);
    expect(await mayImport("workbook/xlsx", "fflate")).toBe(true);
    expect(await mayImport("core/drawer", "fflate")).toBe(false);
    expect(await mayImport("functions", "fraction.js")).toBe(false);
    expect(await mayImport("core/length", "node:fs")).toBe(false);
    expect(await mayImport("functions", "node:fs")).toBe(false);
    expect(await mayImport("workbook", "node:fs")).toBe(false);
    expect(await mayImport("workbook/node", "node:fs")).toBe(true);
  });
});

describe("what no import shows", () => {
  test.each([
    ["src/core/length/a.ts", "document.title", "no-restricted-globals"],
    ["src/core/drawer/a.ts", "process.argv", "no-restricted-globals"],
    ["src/core/drawer/a.ts", "Date.now()", "no-restricted-properties"],
    ["src/core/sheets/a.ts", "Math.random()", "no-restricted-properties"],
    ["src/core/sheets/a.ts", "new Date()", "no-restricted-syntax"],
    ["src/functions/a.ts", "Office.context", "no-restricted-globals"],
    ["src/functions/a.ts", "fetch('/')", "no-restricted-globals"],
    ["src/taskpane/a.ts", "Excel.run", "no-restricted-globals"],
    ["src/workbook/a.ts", "document.title", "no-restricted-globals"],
    ["src/workbook/node/a.ts", "Office.context", "no-restricted-globals"],
  ])("%s may not say %s", async (filePath, expression, rule) => {
    const eslint = new ESLint({ overrideConfigFile: ".eslint.config.mjs" });
    const [result] = await eslint.lintText(`export const it = () => ${expression};\n`, { filePath });
    expect(result!.messages.map(({ ruleId }) => ruleId)).toContain(rule);
  });
});
