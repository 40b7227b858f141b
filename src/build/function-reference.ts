import { readFileSync } from "node:fs";
import type { FunctionEntry, FunctionGroup } from "../taskpane/reference";
import { readFunctionDocs, type FunctionDoc } from "./function-doc";
import { GROUPS } from "./groups";
import { EXAMPLE } from "./validate-doc";

/**
 * Reads the reference out of the doc comments.
 * @param files the files of the cell functions
 */
export const functionReference = (files: readonly string[]): FunctionGroup[] =>
  grouped(files.flatMap((file) => readFunctionDocs(readFileSync(file, "utf8"), file)));

/** Puts functions in their groups; groups in their fixed order, functions by name. */
export function grouped(docs: readonly FunctionDoc[]): FunctionGroup[] {
  const byName = [...docs].sort((a, b) => (a.name < b.name ? -1 : 1));
  return GROUPS.map((name) => ({
    name,
    functions: byName.filter((doc) => doc.group[0] === name).map(entry),
  })).filter(({ functions }) => functions.length > 0);
}

const entry = ({ name, description, described, returns, throws, examples, sources }: FunctionDoc): FunctionEntry => ({
  name,
  description,
  parameters: described,
  returns: returns[0] ?? "",
  throws,
  examples: examples.map((text) => {
    const [, formula = text, result = ""] = EXAMPLE.exec(text) ?? [];
    return { formula, result };
  }),
  sources,
});
