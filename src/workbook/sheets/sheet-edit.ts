/** What may be done to the sheets of a workbook. They are known by an id that stays, whatever they are called. */
export type SheetEdit =
  | { kind: "add"; id: string; name: string; before?: string }
  | { kind: "rename"; id: string; name: string }
  | { kind: "move"; id: string; before?: string }
  | { kind: "delete"; id: string };

/** Why sheets were left as they are, in one line for a person. */
export class SheetFault extends Error {}

/** What is wrong with a sheet's name, in one line for a person; undefined where it may be used. */
export function sheetNameFault(name: string, others: readonly string[]): string | undefined {
  if (name.trim() === "") return "A sheet needs a name.";
  if (name.length > 31) return `A sheet's name has at most 31 characters; this one has ${name.length}.`;
  const bad = /[:\\/?*[\]]/.exec(name)?.[0];
  if (bad) return `A sheet's name holds no ${bad}`;
  if (/[\u0000-\u001f\ufffe\uffff]/.test(name)) return "A sheet's name holds no control characters.";
  if (/^'|'$/.test(name)) return "A sheet's name neither begins nor ends with an apostrophe.";
  if (name.toLowerCase() === "history") return "The spreadsheet program keeps the name History for itself.";
  if (others.some((other) => other.toLowerCase() === name.toLowerCase()))
    return `There is a sheet named “${name}” already.`;
  return undefined;
}
