import { NEW_EXCEL_FUNCTIONS } from "@univerjs/engine-formula";

/** Whether a file stores the function, its name in capitals, behind the prefix of those that came after its format. */
export const isNewFunction = (name: string): boolean => NEW_EXCEL_FUNCTIONS.has(name) || ALSO_NEW.has(name);

/** Those that the library's list does not know. */
const ALSO_NEW = new Set(
  "AGGREGATE CONCAT FILTERXML FORECAST.ETS ISOMITTED LAMBDA LET REGEXEXTRACT REGEXREPLACE REGEXTEST TRIMRANGE".split(
    " ",
  ),
);
