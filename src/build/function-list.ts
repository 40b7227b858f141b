import type { FunctionGroup } from "../taskpane/reference";
import { markdownTable } from "./generated";
import { anchorOf } from "./guide/links";

/** Every function in a line, for the README; each name leads to its help. */
export const functionList = (groups: readonly FunctionGroup[]): string =>
  groups
    .map(
      ({ name, functions }) =>
        `### ${name}\n\n${markdownTable([
          ["Function", ""],
          ...functions.map((one) => [`[\`${one.name}\`](${HELP}#${anchorOf(one.name)})`, one.description]),
        ])}`,
    )
    .join("\n");

const HELP = "src/guide/pages/functions.md";
