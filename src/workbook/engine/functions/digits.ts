/** A number as it reads with the fifteen digits that the spreadsheet program shows. */
export function tidy(value: number): number {
  return Number(value.toPrecision(15));
}

/** Moves the decimal point in the text, which is exact where a product would not be. */
export function shift(value: number, places: number): number {
  const [digits, exponent = "0"] = String(value).split("e");
  return Number(`${digits}e${Number(exponent) + places}`);
}
