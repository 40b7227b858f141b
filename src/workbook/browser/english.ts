import { mergeLocales } from "@univerjs/core";
import design from "@univerjs/design/locale/en-US";
import docsUI from "@univerjs/docs-ui/locale/en-US";
import sheets from "@univerjs/sheets/locale/en-US";
import formulaUI from "@univerjs/sheets-formula-ui/locale/en-US";
import formatsUI from "@univerjs/sheets-numfmt-ui/locale/en-US";
import sheetsUI from "@univerjs/sheets-ui/locale/en-US";
import ui from "@univerjs/ui/locale/en-US";

/** The grid's own words; those on functions come later, see ./native-functions. */
export const english = mergeLocales(design, docsUI, sheets, formulaUI, formatsUI, sheetsUI, ui);
