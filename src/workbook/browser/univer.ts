// These put the public face together.
import "@univerjs/sheets/facade";
import "@univerjs/ui/facade";
import "@univerjs/sheets-ui/facade";
import { ICommandService, IConfigService, ILogService, Injector, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { IRenderManagerService, UniverRenderEnginePlugin } from "@univerjs/engine-render";
import { UniverNetworkPlugin } from "@univerjs/network";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsFormulaPlugin, CalculationMode } from "@univerjs/sheets-formula";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import { CellAlertManagerService, CellPopupManagerService, UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import { UniverUIPlugin } from "@univerjs/ui";
import { english } from "./english";
import { GuardedCommands } from "./guarded-commands";
import { functionDescriptions } from "./function-descriptions";
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
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: english },
    theme: GRID_THEME,
    darkMode,
    logLevel: LogLevel.WARN,
    override: [[ICommandService, GUARDED]],
  });
  univer.registerPlugins([
    [UniverNetworkPlugin],
    [UniverDocsPlugin],
    [UniverRenderEnginePlugin],
    [
      UniverUIPlugin,
      {
        container: container.id,
        header: true,
        toolbar: false,
        contextMenu: false,
        headerMenu: false,
        disableAutoFocus: true,
      },
    ],
    [UniverDocsUIPlugin],
    [UniverFormulaEnginePlugin, { notExecuteFormula: true }],
    [UniverSheetsPlugin],
    [
      UniverSheetsUIPlugin,
      {
        override: [[CellAlertManagerService, QUIET]],
        formulaBar: true,
        footer: {
          sheetBar: true,
          statisticBar: false,
          menus: false,
          zoomSlider: false,
        },
      },
    ],
    [UniverSheetsNumfmtPlugin, { disableTextFormatAlert: true, disableTextFormatMark: true }],
    [UniverSheetsNumfmtUIPlugin],
    [
      UniverSheetsFormulaPlugin,
      { description: functionDescriptions(), initialFormulaComputing: CalculationMode.NO_CALCULATION },
    ],
    [UniverSheetsFormulaUIPlugin],
  ]);
  return { univer, api: FUniver.newAPI(univer) };
}

const GUARDED = {
  useFactory: (injector: Injector, log: ILogService, config: IConfigService) =>
    new GuardedCommands(injector, log, config),
  deps: [Injector, ILogService, IConfigService],
};

/** What is wrong in a cell is said once, by the page, which knows more of it than "Error in value". */
class QuietAlerts extends CellAlertManagerService {
  override showAlert(): void {}
}

const QUIET = {
  useFactory: (render: IRenderManagerService, popups: CellPopupManagerService) => new QuietAlerts(render, popups),
  deps: [IRenderManagerService, CellPopupManagerService],
};
