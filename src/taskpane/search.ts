import type { FunctionEntry, FunctionGroup } from "./reference";

/**
 * The functions in which every word of the query occurs, in name, group, description or arguments, by their groups.
 * @param query words in any order; without any, all functions are found
 */
export function search(groups: readonly FunctionGroup[], query: string): FunctionGroup[] {
  const found = finder(query);
  return groups
    .map(({ name, functions }) => ({
      name,
      functions: functions.filter((entry) => found(searchable(name, entry))),
    }))
    .filter(({ functions }) => functions.length > 0);
}

/** Underscores are read as spaces too, for people look for `box width`. */
function searchable(group: string, { name, description, parameters }: FunctionEntry): string {
  const names = parameters.map((parameter) => `${parameter.name} ${parameter.name.replace(/_/g, " ")}`);
  const texts = parameters.map((parameter) => parameter.description);
  return [`=drawer.${name}(`, group, description, ...names, ...texts].join(" ");
}

/** Tells whether every word of a query, in any order, occurs in a text. */
export function finder(query: string): (text: string) => boolean {
  const words = query
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  return (text) => words.every((word) => text.toLowerCase().includes(word));
}
