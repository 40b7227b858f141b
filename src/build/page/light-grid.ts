import { readFile } from "node:fs/promises";
import { dirname } from "node:path";
import type { OnLoadResult, OnResolveArgs, Plugin } from "esbuild";

/**
 * The grid's library without the list that explains the spreadsheet program's functions, which is a module of its own
 * here and is fetched when the grid is there.
 */
export const lightGrid: Plugin = {
  name: "the grid's library, lightened",
  setup({ onLoad, onResolve, resolve }) {
    const lightened = (namespace: string) => async (args: OnResolveArgs) => {
      if (args.pluginData === PASSED) return undefined;
      const { kind, resolveDir } = args;
      const found = await resolve("@univerjs/sheets-formula", { kind, resolveDir, pluginData: PASSED });
      return { path: found.path, namespace, sideEffects: found.sideEffects };
    };
    onResolve({ filter: /^@univerjs\/sheets-formula$/ }, lightened("unexplained"));
    onResolve({ filter: /^\.\/native-function-list$/ }, lightened("list"));
    onLoad({ filter: /./, namespace: "unexplained" }, ({ path }) => load(path, withoutList));
    onLoad({ filter: /./, namespace: "list" }, ({ path }) => load(path, listAlone));
  },
};

const PASSED = "passed";

const load = async (path: string, change: (source: string) => string): Promise<OnLoadResult> => ({
  contents: change(await readFile(path, "utf8")),
  resolveDir: dirname(path),
  loader: "js",
});

/** From the first list of functions to the end of the one that joins them. */
const LIST = /^const FUNCTION_LIST_ARRAY = [^]*^const FUNCTION_LIST = \[[^\]]*\];$/m;

export const withoutList = (source: string): string => {
  listAlone(source);
  return source.replace(LIST, "const FUNCTION_LIST = [];");
};

export function listAlone(source: string): string {
  const [list] = LIST.exec(source) ?? [];
  if (list === undefined) throw new Error("the list of functions was not found");
  const names = [...new Set(list.match(/\b(FunctionType|FUNCTION_NAMES_\w+)\b/g))];
  return `import { ${names.join(", ")} } from "@univerjs/engine-formula";\n${list}\nexport { FUNCTION_LIST };`;
}
