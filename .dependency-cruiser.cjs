/** Who may import whom. The list is the whole of what is allowed: whatever it does not name is an error. */
const ours = {
  "core/length": [],
  "core/wood": ["core/length"],
  "core/drawer": ["core/length", "core/wood"],
  "core/sheets": ["core/length"],
  "core/money": ["core/length", "core/drawer", "core/sheets"],
  guide: ["core/length", "core/drawer"],
  drawing: ["core/length", "core/wood", "core/drawer", "core/sheets", "core/money"],
};

/** Packages that a folder may use; a folder that is not named uses none. */
const packages = {
  "workbook/engine/univer": "@univerjs/",
  "workbook/xlsx": "fflate|saxes",
  "workbook/author": "fflate",
  "workbook/browser": "@univerjs/|numfmt|zod",
  // A browser that prints.
  "workbook/node": "playwright-core",
};

const core = ["length", "wood", "drawer", "sheets", "money"];
const coreIndexes = core.map((folder) => `^src/core/${folder}/index\\.ts$`);

/** The rooms of functions: what each stands on. A cell function may use all of them. */
const rooms = {
  cells: [],
  arguments: ["cells"],
  tables: ["cells"],
  words: ["cells"],
  calls: ["arguments", "tables", "words", "cells"],
};
const room = (name) => ({ path: `^src/functions/${name}/index\\.ts$` });

/** The rooms of the workbook, likewise; browser/ alone may use the DOM, node/ alone Node. */
const workbook = {
  formula: [],
  engine: ["formula"],
  xlsx: ["engine", "formula"],
  look: ["xlsx", "engine", "formula"],
  sheets: ["xlsx", "formula"],
  edit: ["sheets", "look", "xlsx", "engine", "formula"],
  freeze: ["edit", "sheets", "xlsx", "engine", "formula"],
  author: ["edit", "sheets", "engine", "xlsx", "formula"],
  "new-job": ["author", "formula"],
  shop: ["edit", "engine"],
  browser: ["shop", "new-job", "author", "freeze", "edit", "sheets", "look", "xlsx", "engine"],
  node: ["shop", "freeze", "edit", "sheets", "xlsx", "engine"],
};

const within = (folder) => ({ from: { path: `^src/${folder}/` }, to: { path: `^src/${folder}/` } });

module.exports = {
  allowedSeverity: "error",
  allowed: [
    ...Object.entries(ours).flatMap(([folder, others]) => [
      within(folder),
      ...others.map((other) => ({ from: { path: `^src/${folder}/` }, to: { path: `^src/${other}/index\\.ts$` } })),
    ]),
    ...Object.entries(packages).map(([folder, names]) => ({
      from: { path: `^src/${folder}/` },
      to: { path: `^node_modules/(${names})` },
    })),
    { from: { path: "^src/functions/index\\.ts$" }, to: { path: "^src/functions/[^/]+\\.ts$" } },
    ...Object.keys(rooms).map((name) => ({ from: { path: "^src/functions/[^/]+\\.ts$" }, to: room(name) })),
    ...Object.entries(rooms).flatMap(([name, others]) => [
      within(`functions/${name}`),
      ...others.map((other) => ({ from: { path: `^src/functions/${name}/` }, to: room(other) })),
    ]),
    ...coreIndexes.map((path) => ({ from: { path: "^src/functions/" }, to: { path } })),
    { from: { path: "^src/functions/version\\.ts$" }, to: { path: "^package\\.json$" } },

    // Pages for the shop are made of cells, which are read as the functions do; what cannot be is said in their words.
    within("shop-pages"),
    ...coreIndexes.map((path) => ({ from: { path: "^src/shop-pages/" }, to: { path } })),
    { from: { path: "^src/shop-pages/" }, to: { path: "^src/drawing/index\\.ts$" } },
    { from: { path: "^src/shop-pages/" }, to: { path: "^src/functions/(calls|cells|words)/index\\.ts$" } },
    { from: { path: "^src/(taskpane|workbook|build)/" }, to: { path: "^src/shop-pages/index\\.ts$" } },

    within("taskpane"),
    ...coreIndexes.map((path) => ({ from: { path: "^src/taskpane/" }, to: { path } })),
    { from: { path: "^src/taskpane/" }, to: { path: "^src/(drawing|guide)/index\\.ts$" } },
    // A new job is the same data, whether it is written as a file or laid out in the spreadsheet program.
    {
      from: { path: "^src/taskpane/(host|new-job)/" },
      to: { path: "^src/workbook/(address|author/definition|new-job/index)\\.ts$" },
    },
    // So is what becomes of formulas in a copy with values.
    {
      from: { path: "^src/taskpane/host/" },
      to: { path: "^src/workbook/(formula/(nodes|parse|sheet-names)|freeze/(needs|in-ranges|date))\\.ts$" },
    },
    { from: { path: "^src/taskpane/copies/" }, to: { path: "^package\\.json$" } },
    // What it draws and finds it reads from cells as the functions do, and says in their words.
    {
      from: { path: "^src/taskpane/(drawing|findings|better-sheets)/" },
      to: { path: "^src/functions/(calls|cells|words)/index\\.ts$" },
    },

    ...Object.entries(workbook).flatMap(([name, others]) => [
      within(`workbook/${name}`),
      ...others.map((other) => ({
        from: { path: `^src/workbook/${name}/` },
        to: { path: `^src/workbook/${other}/` },
      })),
    ]),
    { from: { path: "^src/workbook/[^/]+/" }, to: { path: "^src/workbook/(address|text-edits)\\.ts$" } },
    { from: { path: "^src/workbook/index\\.ts$" }, to: { path: "^src/workbook/(edit|xlsx)/" } },
    { from: { path: "^src/workbook/node/" }, to: { dependencyTypes: ["core"] } },
    { from: { path: "^src/workbook/" }, to: { path: "^src/(functions|core/length)/index\\.ts$" } },
    { from: { path: "^src/workbook/" }, to: { path: "^src/(drawing|guide)/index\\.ts$" } },
    { from: { path: "^src/workbook/" }, to: { path: "^src/taskpane/(host/|new-job/job-form\\.ts)" } },
    // What the build writes and both pages read.
    { from: { path: "^src/(workbook|build)/" }, to: { path: "^src/taskpane/reference\\.ts$" } },
    { from: { path: "^src/workbook/" }, to: { path: "^package\\.json$" } },

    // Build helpers run in Node and are imported by nothing in src.
    within("build"),
    // What stands beside the page as a file is worked out when the page is built.
    { from: { path: "^src/build/page/" }, to: { path: "^src/workbook/browser/example/make\\.ts$" } },
    // What the command compiles at its build is what the example needs.
    { from: { path: "^src/build/command/" }, to: { path: "^src/workbook/(author|new-job)/index\\.ts$" } },
    { from: { path: "^src/build/" }, to: { path: "^src/guide/index\\.ts$" } },
    { from: { path: "^src/build/" }, to: { path: "^src/taskpane/result-text\\.ts$" } },
    { from: { path: "^src/build/" }, to: { dependencyTypes: ["core", "npm-dev"] } },
  ],
  forbidden: [
    {
      name: "no-circles",
      comment: "Files that import each other can only be understood together; types count as well.",
      severity: "error",
      from: { path: "^src/" },
      to: { circular: true },
    },
  ],
  options: {
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: {
      extensions: [".ts", ".js", ".mjs", ".json"],
      exportsFields: ["exports"],
      conditionNames: ["import", "default"],
    },
  },
};
