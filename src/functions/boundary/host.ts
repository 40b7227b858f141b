/**
 * Whoever loads the functions may say what the host can do. The pane of the shared runtime does, once the host has
 * told it (CustomFunctionsRuntime 1.4); where nobody does, results are plain numbers, which every host reads.
 */
declare global {
  var drawerHost: { showsNumberFormats?: boolean } | undefined;
}

export const hostShowsFormats = (): boolean => globalThis.drawerHost?.showsNumberFormats === true;
