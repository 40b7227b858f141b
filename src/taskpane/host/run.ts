/** Runs a batch in the spreadsheet program; what that refuses is thrown as a fault of the host. */
export type Run = <T>(batch: (context: Excel.RequestContext) => Promise<T>) => Promise<T>;
