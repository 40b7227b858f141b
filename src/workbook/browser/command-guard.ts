import { EDITOR_ACTIVATED, FORMULA_EDITOR_ACTIVATED, ICommandService, IContextService } from "@univerjs/core";
import { CutCommand } from "@univerjs/ui";
import { GuardedCommands } from "./guarded-commands";
import type { SheetTabs } from "./sheet-tabs";
import type { Grid } from "./univer";

/**
 * The file is written back with everything but its cells' contents as it was, so nothing else is changed here: a row
 * that nobody saves would be lost. A command that would change more is stopped before it begins; where one is missing
 * from this list, or does more than it seems to, its mutations are stopped (see ./mutations).
 * @param tabs does the commands that change sheets
 * @param onRefused called when something was stopped
 */
export function allowCellsOnly(
  { univer }: Grid,
  tabs: Pick<SheetTabs, "takes">,
  onRefused: (what: "cut" | "other") => void,
): void {
  const injector = univer.__getInjector();
  const commands = injector.get(ICommandService) as GuardedCommands;
  const context = injector.get(IContextService);
  const isEditing = (): boolean =>
    [EDITOR_ACTIVATED, FORMULA_EDITOR_ACTIVATED].some((key) => context.getContextValue(key));
  commands.onRefused = () => onRefused("other");
  commands.mayRun = (id, params) => {
    if (tabs.takes(id, params)) return false;
    // A part of the text that is being typed may be cut.
    const isCut = id === CutCommand.id && !isEditing();
    if (!isCut && (ALLOWED.has(id) || !REACHES_SHEETS.test(id))) return true;
    onRefused(isCut ? "cut" : "other");
    return false;
  };
}

/** Other commands work on the text that is being typed. */
const REACHES_SHEETS = /^(?:sheet|formula|sheets-formula)\.command\./;

const ALLOWED = new Set([
  "formula.command.insert-function",
  "sheets-formula.command.quick-sum",
  ...`auto-clear-content auto-fill change-zoom-ratio clear-selection-content copy-down copy-formula-only copy-right
  delta-column-width delta-row-height expand-selection move-selection move-selection-enter-tab optional-paste
  paste-by-short-key paste-formula paste-value refill scroll-to-cell scroll-view select-all select-range
  set-range-values set-row-height set-scroll-relative set-worksheet-activate set-worksheet-col-width set-zoom-ratio`
    .split(/\s+/)
    .map((name) => `sheet.command.${name}`),
]);
