import type { FunctionEntry, FunctionGroup } from "./reference";

/**
 * The functions in which every word of the query occurs, in name, group, description or arguments, by their groups.
 * @param query words in any order; without any, all functions are found
 */
export function search(groups: readonly FunctionGroup[], query: string): FunctionGroup[] {
  const words = query
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  return groups
    .map(({ name, functions }) => ({
      name,
      functions: functions.filter((entry) => {
        const text = searchable(name, entry);
        return words.every((word) => text.includes(word));
      }),
    }))
    .filter(({ functions }) => functions.length > 0);
}

/** Underscores are read as spaces too, for people look for `box width`. */
function searchable(group: string, { name, description, parameters }: FunctionEntry): string {
  const names = parameters.map((parameter) => `${parameter.name} ${parameter.name.replace(/_/g, " ")}`);
  const texts = parameters.map((parameter) => parameter.description);
  return [`=drawer.${name}(`, group, description, ...names, ...texts].join(" ").toLowerCase();
}
