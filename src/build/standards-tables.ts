import { STANDARD_GROUPS, STANDARDS_HELP, usualInWords } from "../guide/index";
import { markdownTable } from "./generated";

type Name = keyof typeof STANDARDS_HELP;

/** Every standard by its group, with what holds where it is left out, for the guide. */
export const standardsTables = (): string =>
  STANDARD_GROUPS.map((group) => {
    const names = (Object.keys(STANDARDS_HELP) as Name[]).filter((name) => STANDARDS_HELP[name].group === group);
    return `## ${group}\n\n${markdownTable([["Standard", "Default, in | mm", "Meaning"], ...names.map(row)])}`;
  }).join("\n");

const row = (name: Name): string[] => {
  const { meaning, choices, detail } = STANDARDS_HELP[name];
  const words = choices && `One of: ${choices.join(", ")}.`;
  const usual = new Set([usualInWords(name, "in"), usualInWords(name, "mm")]);
  return [`\`${name}\``, [...usual].join(" | "), [meaning, words, detail].filter(Boolean).join(" ")];
};
