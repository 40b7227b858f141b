/**
 * The number that a typed fraction is; undefined where the text is none.
 * @example fraction("23 7/16") // 23.4375
 */
export function fraction(typed: string): number | undefined {
  const [, sign, whole = "0", upper, lower] = /^\s*(-?)\s*(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)\s*$/.exec(typed) ?? [];
  if (upper === undefined || Number(lower) === 0) return undefined;
  const size = Number(whole) + Number(upper) / Number(lower);
  return sign === "-" ? -size : size;
}

/**
 * A number as a fraction that says exactly the same; undefined where none with two digits does.
 * @example fractionText(23.4375) // "23 7/16"
 */
export function fractionText(value: number): string | undefined {
  const size = Math.abs(value);
  const whole = Math.floor(size);
  for (let lower = 1; lower <= 99; lower++) {
    const upper = Math.round((size - whole) * lower);
    if (whole + upper / lower !== size) continue;
    const parts = [
      whole > 0 || upper === 0 ? String(whole + (upper === lower ? 1 : 0)) : "",
      upper % lower ? `${upper}/${lower}` : "",
    ];
    return (value < 0 ? "-" : "") + parts.filter(Boolean).join(" ");
  }
  return undefined;
}
