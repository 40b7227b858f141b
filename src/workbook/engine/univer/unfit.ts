/** Univer's functions that the spreadsheet program does not have, or whose value cannot be stored. */
export const UNFIT = new Set([
  "AVERAGE.WEIGHTED",
  "EPOCHTODATE",
  "IMAGE",
  "ISBETWEEN",
  "ISDATE",
  "ISEMAIL",
  "ISURL",
  "MARGINOFERROR",
  "NUMBERSTRING",
  "REGEXMATCH",
  "ROUNDBANK",
  "TO_DATE",
]);
