/** Every error value that a cell can hold. */
export const ERROR_CODES = [
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
  "#GETTING_DATA",
  "#SPILL!",
  "#CONNECT!",
  "#BLOCKED!",
  "#UNKNOWN!",
  "#FIELD!",
  "#CALC!",
  "#BUSY!",
] as const;

export type ErrorCode = (typeof ERROR_CODES)[number];

export function isErrorCode(text: string): text is ErrorCode {
  return (ERROR_CODES as readonly string[]).includes(text);
}
