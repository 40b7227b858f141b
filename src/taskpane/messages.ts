import { HostFault, type HostFaultCode } from "./host/host";

/** What the pane says, in plain words. */
export const MESSAGES = {
  looking: "Looking for the spreadsheet…",
  noHost:
    "This page is not open in a spreadsheet. You can read the list and copy examples. To insert them, open this pane from the Home tab in Excel.",
  lacking:
    "The functions have not loaded, so cells that use them are waiting. Trying again: check that this computer is online.",
  tooOld:
    "This version of the spreadsheet does not let the pane write cells. Copy an example, and paste it into a cell.",
  unknownCell: "Select an empty cell, then insert an example.",
  selected: (address: string) => `Selected cell: ${address}`,
  inserted: (formula: string, address: string) => `${formula} now stands in ${address}.`,
  occupied: (address: string) =>
    `${address} is not empty and was left as it is. Select an empty cell, then insert again.`,
  copied: (formula: string) => `${formula} is copied.`,
  notCopied: "The browser did not allow copying. Select the formula and copy it by hand.",
  found: (count: number) => (count === 1 ? "1 function" : `${count} functions`),
  nothing: (query: string) => `No function matches “${query}”.`,
} as const;

/** What went wrong between pane and spreadsheet. */
export function faultMessage(thrown: unknown): string {
  if (thrown instanceof HostFault) return FAULTS[thrown.code](thrown.detail);
  return `The pane made a mistake (${String(thrown)}). Please report it.`;
}

const FAULTS: Record<HostFaultCode, (detail: string) => string> = {
  editing: () => "A cell is being edited. Finish it with Enter or Esc, then insert again.",
  protected: () => "The cell may not be changed: its sheet is protected, or the workbook is read-only.",
  refused: (detail) => `The spreadsheet did not take the formula: ${detail}`,
};
