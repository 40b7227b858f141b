import type { OpenWorkbook } from "../xlsx/open-workbook";
import { readXml } from "../xlsx/xml";
import { mostImportant, readConditions, type Condition } from "./conditions";
import { readSheetLook, type SheetLook } from "./sheet-look";
import { readCellStyles, type CellStyle } from "./cell-styles";
import { readThemeColors } from "./theme-colors";

/** How a workbook looks: its cell styles by number, and each sheet's columns, rows and panes. */
export interface Look {
  styles: CellStyle[];
  sheets: (SheetLook | undefined)[];
  /** Each sheet's rules, the one that counts most first. */
  conditions: Condition[][];
  /** What is not shown of all that, in one line for a person each. */
  unshown: string[];
  /** The sheets that the file hides, by number. */
  hidden: ReadonlySet<number>;
  /** Days are counted from 1904. */
  date1904: boolean;
}

/** Reads the look out of an opened file; what a grid cannot show is passed over. */
export function readLook({ source, workbook, sheets }: OpenWorkbook): Look {
  const textOf = (type: string): { text: string; part: string } | undefined => {
    const part = source.linked(workbook.part, type);
    return part === undefined ? undefined : { text: source.text(part), part };
  };
  const theme = textOf("theme");
  const styles = textOf("styles");
  const colors = theme ? readThemeColors(theme.text, theme.part) : [];
  const read = styles ? readCellStyles(styles.text, styles.part, colors) : { styles: [], changes: [] };
  const conditions = sheets.map((sheet) => (sheet ? readConditions(sheet.text, sheet.part, read.changes, colors) : []));
  const shown = conditions.map(mostImportant);
  return {
    styles: read.styles,
    conditions: shown,
    unshown: shown.flatMap(({ length }, i) => {
      const all = conditions[i]!.length;
      const { name } = workbook.sheets[i]!;
      if (length === all) return [];
      return [
        `The sheet ${name} has ${all} rules about looks; the first ${length} are shown, the others stay in the file.`,
      ];
    }),
    sheets: sheets.map((sheet) => sheet && readSheetLook(sheet.text, sheet.part)),
    hidden: hiddenSheets(source.text(workbook.part), workbook.part),
    date1904: workbook.date1904,
  };
}

function hiddenSheets(text: string, part: string): Set<number> {
  const hidden = new Set<number>();
  let count = 0;
  readXml(text, part, {
    open({ name, attributes }) {
      if (name !== "sheet") return;
      if (attributes.state === "hidden" || attributes.state === "veryHidden") hidden.add(count);
      count++;
    },
  });
  return hidden;
}
