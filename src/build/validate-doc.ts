import type { FunctionDoc } from "./function-doc";
import { GROUPS } from "./groups";

/**
 * What a doc comment lacks, one message a fault; none where it is complete.
 * @param doc a doc comment as it was read
 */
export function validateDoc(doc: FunctionDoc): string[] {
  return [...sentence(doc), ...group(doc), ...parameters(doc), ...results(doc), ...examples(doc)].map(
    (fault) => `${doc.file}: ${doc.name} ${fault}`,
  );
}

/** The host shows all text before the first tag, line breaks and all, in one small box. */
function sentence({ description }: FunctionDoc): string[] {
  if (description === "") return ["has no sentence that says what it gives"];
  if (description.includes("\n")) return ["describes itself on several lines: write one sentence on one line"];
  if (/[.!?]["')]?\s+["'(]?\p{Lu}/u.test(description)) return ["describes itself in several sentences: write one"];
  return /[.!?]$/.test(description) ? [] : ["describes itself in a sentence without an end: close it with a full stop"];
}

function group({ group: named }: FunctionDoc): string[] {
  if (named.length !== 1) return [`has ${named.length} @group tags: write one`];
  return GROUPS.includes(named[0]!) ? [] : [`stands in @group ${named[0]}, which is none of ${GROUPS.join(", ")}`];
}

function parameters({ described, declared }: FunctionDoc): string[] {
  const says = described.map(({ name }) => name).join(", ");
  const takes = declared.map(({ name }) => name).join(", ");
  if (says !== takes) return [`takes (${takes}), but its @param tags describe (${says})`];
  return described.flatMap(({ name, optional, description }, i) => {
    const faults: string[] = [];
    if (description === "") faults.push(`does not describe ${name}: give @param ${name} its text`);
    if (optional !== declared[i]!.optional)
      faults.push(`marks ${name} as optional in one place only: write [${name}] and ${name}?`);
    if (!optional && declared[i - 1]?.optional)
      faults.push(`takes ${name}, which must be given, after an optional one`);
    return faults;
  });
}

function results({ returns, throws, sources }: FunctionDoc): string[] {
  const faults: string[] = [];
  if (returns.length !== 1 || returns[0] === "") faults.push("needs one @returns with its text");
  if (throws.length === 0 || throws.includes("")) faults.push("needs a @throws with its text (@throws nothing, if so)");
  if (sources.length === 0 || sources.includes("")) faults.push("needs a @source with its text");
  return faults;
}

function examples({ name, examples: given }: FunctionDoc): string[] {
  if (given.length === 0) return [`has no example: write @example =DRAWER.${name}(…) // => …`];
  return given
    .filter((example) => !(EXAMPLE.test(example) && example.includes(`DRAWER.${name}(`)))
    .map((example) => `has an example that is not =DRAWER.${name}(…) // => …: ${example}`);
}

/** A formula, and after the arrow what it gives. */
export const EXAMPLE = /^(=\S.*?)\s+\/\/ => (\S.*)$/;
