/**
 * Univer's functions that do not give what the spreadsheet program gives, or that it does not have at all.
 * A formula that calls one keeps its stored value and is listed.
 */
export const UNFIT = new Set([
  // Not functions of the spreadsheet program.
  "AVERAGE.WEIGHTED",
  "EPOCHTODATE",
  "ISBETWEEN",
  "ISDATE",
  "ISEMAIL",
  "ISURL",
  "MARGINOFERROR",
  "NUMBERSTRING",
  "REGEXMATCH",
  "ROUNDBANK",
  "TO_DATE",
  // Not precise, or not in the form that the spreadsheet program gives.
  "DOLLAR",
  "GAMMA",
  "YIELD",
  // Pictures cannot be stored as a value.
  "IMAGE",
]);
