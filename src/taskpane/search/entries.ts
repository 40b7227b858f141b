import { STANDARDS_HELP, type GuideReference, type GuideSection, type GuideTerm } from "../../guide/index";
import type { FunctionEntry, FunctionGroup } from "../reference";

export type StandardName = keyof typeof STANDARDS_HELP;

/** Something that a search may find. */
export type Entry =
  | { kind: "function"; group: string; about: FunctionEntry }
  | { kind: "standard"; name: StandardName | "unit" }
  | { kind: "heading"; about: GuideTerm & { table: string } }
  | { kind: "word"; about: GuideTerm }
  | { kind: "guide"; about: GuideSection };

/** All that a search may find, and what people call it elsewhere. */
export interface Entries {
  all: readonly Entry[];
  elsewhere: GuideReference["elsewhere"];
}

export const entriesOf = (groups: readonly FunctionGroup[], guide: GuideReference): Entries => ({
  all: [
    ...groups.flatMap(({ name: group, functions }) =>
      functions.map((about) => ({ kind: "function", group, about }) as const),
    ),
    ...(["unit", ...(Object.keys(STANDARDS_HELP) as StandardName[])] as const).map(
      (name) => ({ kind: "standard", name }) as const,
    ),
    ...guide.headings.map((about) => ({ kind: "heading", about }) as const),
    ...guide.words.map((about) => ({ kind: "word", about }) as const),
    ...guide.sections.map((about) => ({ kind: "guide", about }) as const),
  ],
  elsewhere: guide.elsewhere,
});

/**
 * What it is and is called.
 * @example nameOf(entry) // "heading rates labor rate"
 */
export function nameOf(entry: Entry): string {
  if (entry.kind === "function") return `function ${entry.about.name}`;
  if (entry.kind === "standard") return `standard ${entry.name}`;
  if (entry.kind === "heading") return `heading ${entry.about.table} ${entry.about.label}`;
  if (entry.kind === "word") return `word ${entry.about.label}`;
  return `guide ${titleOf(entry.about)}`;
}

export const titleOf = ({ page, title }: GuideSection): string => (title === undefined ? page : `${page}: ${title}`);

/** The names under which it is looked for, and what is said of it. */
export function textOf(entry: Entry): { names: readonly string[]; text: string } {
  if (entry.kind === "function") {
    const { name, description, parameters, returns } = entry.about;
    const about = parameters.map((parameter) => `${parameter.name.replace(/_/g, " ")} ${parameter.description}`);
    return { names: [name], text: [entry.group, description, ...about, returns].join(" ") };
  }
  if (entry.kind === "standard") return { names: [entry.name], text: standardText(entry.name) };
  if (entry.kind === "heading")
    return { names: entry.about.names, text: `${entry.about.table} ${entry.about.meaning}` };
  if (entry.kind === "word") return { names: entry.about.names, text: entry.about.meaning };
  const { page, title, text } = entry.about;
  return { names: [title ?? page], text: `${title === undefined ? "" : page} ${text}` };
}

function standardText(name: StandardName | "unit"): string {
  if (name === "unit") return UNIT_MEANING;
  const { group, meaning, choices = [], detail = "" } = STANDARDS_HELP[name];
  return [group, meaning, ...choices, detail].join(" ");
}

export const UNIT_MEANING = "Of all plain numbers, and of what is given: in or mm.";
