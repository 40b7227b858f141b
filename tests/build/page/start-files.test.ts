import * as formulas from "@univerjs/engine-formula";
import { build, type Plugin } from "esbuild";
import { describe, expect, test } from "vitest";
import { characterSets } from "../../../src/build/page/character-sets";
import { lightGrid, listAlone, withoutList } from "../../../src/build/page/light-grid";
import { withPreloads } from "../../../src/build/page/preloads";
import { exampleFiles } from "../../../src/workbook/browser/example/make";
import { EXAMPLE_FILE, EXAMPLE_OPENED } from "../../../src/workbook/browser/example/names";
import { fromText } from "../../../src/workbook/browser/example/text";
import { Bookkeeper } from "../../../src/workbook/browser/worker/bookkeeper";

describe("the example beside the page", () => {
  test("is the workbook, and all that a worker answers when it opens it", () => {
    const files = exampleFiles();
    const opened = fromText(new TextDecoder().decode(files.get(EXAMPLE_OPENED)));
    expect(opened.results.values.size).toBeGreaterThan(100);
    expect(opened).toEqual(new Bookkeeper().answer("open", { bytes: files.get(EXAMPLE_FILE)!, edits: [] }));
  });
});

describe("the parts of the page's script", () => {
  const imports = (...all: [path: string, kind: "import-statement" | "dynamic-import"][]) => ({
    imports: all.map(([path, kind]) => ({ path, kind })),
    exports: [],
    inputs: {},
    bytes: 1,
  });

  test("are named in the page, once each; not what they fetch when it is wanted", () => {
    const up = "../".repeat(process.cwd().split("/").length - 1);
    const outputs = {
      [`${up}grid.js`]: imports([`${up}parts/a.js`, "import-statement"], [`${up}parts/page.js`, "dynamic-import"]),
      [`${up}parts/a.js`]: imports(),
      [`${up}parts/page.js`]: imports([`${up}parts/a.js`, "import-statement"], [`${up}parts/lao.js`, "dynamic-import"]),
      [`${up}parts/lao.js`]: imports(),
    };
    expect(withPreloads("<head>\n  </head>", { inputs: {}, outputs })).toBe(
      `<head>\n    <link rel="modulepreload" href="parts/a.js" />\n    <link rel="modulepreload" href="parts/page.js" />\n  </head>`,
    );
  });
});

/** The library itself, which works its expressions out from Unicode's tables, is what they are held against. */
describe("expressions that tell characters, worked out when the page is built", () => {
  const bundled = async (plugins: Plugin[]) => {
    const { outputFiles } = await build({
      stdin: {
        contents: `import * as sets from "cjk-regex";
          export default ["all", "letters", "punctuations"].map((name) => String(sets[name]().toRegExp()));`,
        resolveDir: process.cwd(),
      },
      bundle: true,
      write: false,
      format: "esm",
      plugins,
    });
    const { text } = outputFiles[0]!;
    const { default: expressions } = await import(`data:text/javascript,${encodeURIComponent(text)}`);
    return { size: text.length, expressions: expressions as string[] };
  };

  test("are those of their library", async () => {
    const built = await bundled([characterSets]);
    expect(built.size).toBeLessThan(10_000);
    expect(built.expressions).toEqual((await bundled([])).expressions);
  });
});

/** The library as it is published is what the lightened one is held against. */
describe("the grid's library, lightened", () => {
  test("explains every function that it knows, once that is fetched, in words that are there", async () => {
    const { outputFiles } = await build({
      stdin: {
        contents: `export { FUNCTION_LIST as list } from "./native-function-list";
          export { default as words } from "@univerjs/sheets-formula/locale/en-US";`,
        resolveDir: process.cwd(),
      },
      bundle: true,
      write: false,
      format: "esm",
      platform: "node",
      plugins: [lightGrid],
    });
    const made = await import(`data:text/javascript,${encodeURIComponent(outputFiles[0]!.text)}`);
    const explained = new Set(made.list.map(({ functionName }: { functionName: string }) => functionName));
    // The arithmetic signs are functions of the library too.
    const signs = ["COMPARE", "DIVIDED", "MINUS", "MULTIPLY", "PLUS", "CUBE"];
    expect(
      [...formulas.ALL_IMPLEMENTED_FUNCTIONS_SET].filter(
        (name) => !explained.has(name) && !signs.includes(name as string),
      ),
    ).toEqual([]);
    const wordAt = (key: string): unknown =>
      key.split(".").reduce((at: unknown, name) => (at as Record<string, unknown> | undefined)?.[name], made.words);
    for (const { abstract } of made.list) expect(wordAt(abstract), abstract).toEqual(expect.any(String));
  });

  test("is not made of a library that has changed in these places", () => {
    for (const change of [listAlone, withoutList]) expect(() => change("export const name = 1;\n")).toThrow(/found/);
  });
});
