import { bracketed, type FunctionEntry, type FunctionGroup } from "../taskpane/reference";
import { resultCells } from "../taskpane/result-text";
import { markdownTable } from "./generated";
import { anchorOf } from "./guide/links";

/** Every function in full, for the guide. */
export const functionHelpText = (groups: readonly FunctionGroup[]): string =>
  [groups.map(contents).join(""), ...groups.map(group)].join("\n");

const contents = ({ name, functions }: FunctionGroup): string =>
  `- ${name}: ${functions.map((one) => `[${one.name}](#${anchorOf(one.name)})`).join(", ")}\n`;

/** The heading is not the name alone, for Plan would have the anchor of PLAN. */
const group = ({ name, functions }: FunctionGroup): string =>
  `## ${name}: ${functions.length} functions\n\n${functions.map(help).join("\n")}`;

const help = (entry: FunctionEntry): string =>
  `${[
    `### ${entry.name}`,
    entry.description,
    fenced(`=DRAWER.${entry.name}(${entry.parameters.map(bracketed).join(", ")})`),
    ...(entry.parameters.length > 0
      ? [
          markdownTable([
            ["Argument", ""],
            ...entry.parameters.map((one) => [`\`${bracketed(one)}\``, one.description]),
          ]).trimEnd(),
        ]
      : []),
    `**Result.** ${sentence(entry.returns)}`,
    ...entry.throws.filter((text) => text !== "nothing").map((text) => `**Error.** ${sentence(text)}`),
    ...entry.examples.flatMap(example),
    `**Source.** ${sentence(entry.sources.join("; "))}`,
  ].join("\n\n")}\n`;

const fenced = (text: string): string => `\`\`\`\n${text}\n\`\`\``;

/** A single value stands in the line; a table's first row are its headings. */
function example({ formula, result }: FunctionEntry["examples"][number]): string[] {
  const rows = resultCells(result);
  const columns = Math.max(...rows.map(({ length }) => length));
  if (rows.length === 1 && columns === 1) return [`**Example**, which gives \`${rows[0]![0]}\`:`, fenced(formula)];
  const even = rows.map((row) => [...row, ...Array<string>(columns - row.length).fill("")]);
  const table = markdownTable(columns === 1 ? [[""], ...even] : even).trimEnd();
  return ["**Example:**", fenced(formula), table];
}

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
