/**
 * Whoever loads the functions may say what the host can do. The pane of the shared runtime does, once the host has
 * told it; where nobody does, results are plain numbers, which every host reads.
 */
declare global {
  var drawerHost: { showsNumberFormats?: boolean; formattedType?: FormattedType } | undefined;
}

/**
 * What a host calls a number with a format of its own: `Double` from ExcelApi 1.19, before it `FormattedNumber`, which
 * came with CustomFunctionsRuntime 1.4.
 */
export type FormattedType = "Double" | "FormattedNumber";

export const hostShowsFormats = (): boolean => globalThis.drawerHost?.showsNumberFormats === true;

export const formattedType = (): FormattedType => globalThis.drawerHost?.formattedType ?? "Double";
