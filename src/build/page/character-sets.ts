import { pathToFileURL } from "node:url";
import type { Plugin } from "esbuild";

/**
 * The expressions that tell Chinese, Japanese and Korean characters, as they come out. The grid's library would work
 * them out at every start of the page, from 450 kB of tables.
 */
export const characterSets: Plugin = {
  name: "character sets worked out",
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]cjk-regex[\\/]lib[\\/]index\.js$/ }, async ({ path }) => {
      const sets = (await import(pathToFileURL(path).href)) as Record<string, () => { toRegExp(): RegExp }>;
      const lines = Object.entries(sets).map(
        ([name, make]) => `export const ${name} = () => ({ toRegExp: () => ${make().toRegExp()} });`,
      );
      return { contents: lines.join("\n"), loader: "js" };
    });
  },
};
