import { readFileSync } from "node:fs";
import { readFunctionDocs, type DescribedParameter, type FunctionDoc } from "./function-doc";
import { GROUPS } from "./groups";
import { EXAMPLE } from "./validate-doc";

/** The function reference: what the doc comments say, group by group. */
export interface FunctionGroup {
  name: string;
  functions: FunctionEntry[];
}

export interface FunctionEntry {
  name: string;
  description: string;
  parameters: DescribedParameter[];
  returns: string;
  throws: string[];
  examples: Example[];
  sources: string[];
}

export interface Example {
  formula: string;
  result: string;
}

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
