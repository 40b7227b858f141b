import "@univerjs/preset-sheets-core/lib/index.css";
// The public face is put together by these; a bundler leaves them out where they are not named.
import "@univerjs/sheets/lib/es/facade.js";
import "@univerjs/ui/lib/es/facade.js";
import "@univerjs/sheets-ui/lib/es/facade.js";
import {
  UniverDocsPlugin,
  UniverDocsUIPlugin,
  UniverFormulaEnginePlugin,
  UniverNetworkPlugin,
  UniverRenderEnginePlugin,
  UniverSheetsFormulaPlugin,
  UniverSheetsFormulaUIPlugin,
  UniverSheetsNumfmtPlugin,
  UniverSheetsNumfmtUIPlugin,
  UniverSheetsPlugin,
  UniverSheetsUIPlugin,
  UniverUIPlugin,
  CalculationMode,
} from "@univerjs/preset-sheets-core";
import english from "@univerjs/preset-sheets-core/lib/es/locales/en-US.js";
import { createUniver, LocaleType, type FUniver, type Univer } from "@univerjs/presets";
import { functionDescriptions } from "./functionDescriptions";
import { GRID_THEME } from "./theme";

/** The grid's library, running. `api` is its public face, `univer` what that cannot do. */
export interface Grid {
  univer: Univer;
  api: FUniver;
}

/**
 * Starts Univer in an element of the page. It shows, edits and undoes; the arithmetic is ours: its own engine is left
 * out, as it is where a worker takes its place, and ours answers instead (see ./calculation).
 */
export function createGrid(container: HTMLElement, darkMode: boolean): Grid {
  const { univer, univerAPI } = createUniver({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: english },
    theme: GRID_THEME,
    darkMode,
    presets: [
      {
        plugins: [
          UniverNetworkPlugin,
          UniverDocsPlugin,
          UniverRenderEnginePlugin,
          [
            UniverUIPlugin,
            { container, header: true, toolbar: false, contextMenu: false, headerMenu: false, disableAutoFocus: true },
          ],
          UniverDocsUIPlugin,
          [UniverFormulaEnginePlugin, { notExecuteFormula: true }],
          UniverSheetsPlugin,
          [
            UniverSheetsUIPlugin,
            {
              formulaBar: true,
              footer: {
                sheetBar: true,
                statisticBar: false,
                menus: false,
                zoomSlider: false,
                addSheetButtonConfig: { show: false },
              },
            },
          ],
          [UniverSheetsNumfmtPlugin, { disableTextFormatAlert: true, disableTextFormatMark: true }],
          UniverSheetsNumfmtUIPlugin,
          [
            UniverSheetsFormulaPlugin,
            { description: functionDescriptions(), initialFormulaComputing: CalculationMode.NO_CALCULATION },
          ],
          UniverSheetsFormulaUIPlugin,
        ],
      },
    ],
  });
  return { univer, api: univerAPI };
}
