import type { IFunctionInfo } from "@univerjs/engine-formula";

/** What the grid's library explains of the spreadsheet program's functions: the build puts that list in place of this module. */
export const FUNCTION_LIST: IFunctionInfo[] = [];
