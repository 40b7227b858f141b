import type { FunctionEntry, FunctionGroup } from "../taskpane/reference";

const START = "<!-- functions -->";
const END = "<!-- /functions -->";

/**
 * Writes the function list between its two markers, and leaves all other text as it is.
 * @param readme a text with the markers `<!-- functions -->` and `<!-- /functions -->`, once each and in this order
 */
export function withFunctionList(readme: string, groups: readonly FunctionGroup[]): string {
  const [before, rest, ...more] = readme.split(START);
  const [, after, ...others] = (rest ?? "").split(END);
  if (after === undefined || more.length > 0 || others.length > 0) {
    throw new Error(`The function list belongs between one ${START} and one ${END} after it.`);
  }
  return `${before}${START}\n${groups.map(groupTable).join("\n")}${END}${after}`;
}

const groupTable = ({ name, functions }: FunctionGroup): string =>
  `### ${name}\n\n| Function | |\n|---|---|\n${functions.map(row).join("")}`;

const row = ({ name, parameters, description }: FunctionEntry): string => {
  const names = parameters.map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name));
  return `| \`${name}(${names.join(", ")})\` | ${description.replaceAll("|", "\\|")} |\n`;
};
