/**
 * The number that a typed fraction is; undefined where the text is none.
 * @example fraction("23 7/16") // 23.4375
 * @example fraction("5½") // 5.5
 */
export function fraction(typed: string): number | undefined {
  // Compatibility decomposition makes ½ of 1, a fraction slash and 2; the space keeps them off the whole number.
  const plain = typed.replaceAll(VULGAR, (sign) => ` ${sign.normalize("NFKD")}`).replaceAll("\u2044", "/");
  const [, sign, whole = "0", upper, lower] = FRACTION.exec(plain) ?? [];
  if (upper === undefined || Number(lower) === 0) return undefined;
  const size = Number(whole) + Number(upper) / Number(lower);
  return sign === "-" ? -size : size;
}

const VULGAR = /[¼-¾⅐-⅞↉]/g;
const FRACTION = /^\s*([-+]?)\s*(?:(\d+)(?:\s+|-\s*))?(\d+)\s*\/\s*(\d+)\s*$/;

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
