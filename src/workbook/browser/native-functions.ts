import { LocaleService, LocaleType } from "@univerjs/core";
import { ALL_IMPLEMENTED_FUNCTIONS_SET } from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import words from "@univerjs/sheets-formula/locale/en-US";
import { FUNCTION_LIST } from "./native-function-list";
import type { Grid } from "./univer";

/** Offers and explains the spreadsheet program's own functions too, as the grid's library does from its start on. */
export function explainNativeFunctions({ univer }: Grid): void {
  const injector = univer.__getInjector();
  injector.get(LocaleService).load({ [LocaleType.EN_US]: words });
  injector
    .get(IDescriptionService)
    .registerDescriptions(FUNCTION_LIST.filter(({ functionName }) => ALL_IMPLEMENTED_FUNCTIONS_SET.has(functionName)));
}
