import { HostFault, type Host, type PlainCell } from "./host";

/**
 * A page that shows the pane in a frame, beside a grid of its own, puts what the pane stands beside here, before the
 * frame is loaded.
 */
declare global {
  interface Window {
    spreadsheetHost?: Promise<Host>;
  }
}

/** @returns undefined where the page around the pane is none of ours */
export async function connectEmbedded(): Promise<Host | undefined> {
  const host = await around();
  if (!host) return undefined;
  const { ranges, sheets, beginJob, beginCopy } = host;
  return {
    name: host.name,
    can: host.can,
    selection: () => ours(host.selection()),
    insertFormula: (formula) => ours(host.insertFormula(formula)),
    insertCells: (texts) => ours(host.insertCells(texts)),
    ...(host.addSheet && {
      addSheet: (name: string, rows: readonly (readonly PlainCell[])[]) => ours(host.addSheet!(name, rows)),
    }),
    onSelectionChanged: (listener) => ours(host.onSelectionChanged(listener)),
    ...(beginJob && { beginJob: () => ours(beginJob.call(host)) }),
    ...(beginCopy && { beginCopy: () => ours(beginCopy.call(host)) }),
    ...(sheets && {
      sheets: {
        taken: () => ours(sheets.taken()),
        add: (workbook: Parameters<typeof sheets.add>[0]) => ours(sheets.add(workbook)),
        selected: () => ours(sheets.selected()),
      },
    }),
    ...(ranges && {
      ranges: {
        shownBy: () => ours(ranges.shownBy()),
        values: (range: Parameters<typeof ranges.values>[0]) => ours(ranges.values(range)),
        select: (sheet: string, address: string) => ours(ranges.select(sheet, address)),
      },
    }),
  };
}

function around(): Promise<Host> | undefined {
  try {
    return window.parent.spreadsheetHost;
  } catch {
    // The spreadsheet program on the web frames the pane from another origin, whose window says nothing.
    return undefined;
  }
}

/** The page around has classes of its own: its faults are made ours, for the pane to know them. */
async function ours<T>(asked: Promise<T>): Promise<T> {
  try {
    return await asked;
  } catch (thrown) {
    const { name, code, detail } = thrown as HostFault;
    throw name === "HostFault" ? new HostFault(code, detail) : thrown;
  }
}
