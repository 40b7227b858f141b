import type { Ordinary } from "../kinds";
import { finite } from "../operators";
import { fail, type Scalar } from "../values";
import { tidy } from "./digits";
import { ofNumbers, ofStrictNumbers } from "./reading";

/** The elementary functions of numbers. */
export const arithmetic: Record<string, Ordinary> = {
  ABS: ofNumbers((value) => Math.abs(value)),
  SIGN: ofNumbers((value) => Math.sign(value) + 0),
  SQRT: ofNumbers((value) => (value < 0 ? fail("#NUM!") : Math.sqrt(value))),
  SQRTPI: ofStrictNumbers((value) => (value! < 0 ? fail("#NUM!") : Math.sqrt(value! * Math.PI))),
  PI: { signature: "V", call: () => Math.PI },
  POWER: ofNumbers((base, exponent = 0) => power(base, exponent)),
  MOD: ofNumbers((value, divisor = 0) => (divisor === 0 ? fail("#DIV/0!") : finite(remainder(value, divisor)))),

  // What is too small for a normal double is nothing.
  EXP: ofNumbers((value) => (value < -708 ? 0 : finite(Math.exp(value)))),
  LN: ofNumbers((value) => (value <= 0 ? fail("#NUM!") : Math.log(value))),
  LOG10: ofNumbers((value) => (value <= 0 ? fail("#NUM!") : Math.log10(value))),
  LOG: ofNumbers((value, base = 10) => {
    if (value <= 0 || base <= 0) return fail("#NUM!");
    if (base === 1) return fail("#DIV/0!");
    if (base === 10) return Math.log10(value);
    return base === 2 ? Math.log2(value) : finite(Math.log(value) / Math.log(base));
  }),

  SIN: ofAngle((sine) => sine),
  COS: ofAngle((_, cosine) => cosine),
  TAN: ofAngle((sine, cosine) => sine / cosine),
  ASIN: ofNumbers((value) => finite(Math.asin(value))),
  ACOS: ofNumbers((value) => finite(Math.acos(value))),
  ATAN: ofNumbers((value) => Math.atan(value)),
  ATAN2: ofNumbers((x, y = 0) => (x === 0 && y === 0 ? fail("#DIV/0!") : Math.atan2(y, x) + 0)),
  SINH: ofNumbers((value) => finite(Math.sinh(value))),
  COSH: ofNumbers((value) => finite(Math.cosh(value))),
  TANH: ofNumbers((value) => Math.tanh(value)),
  ASINH: ofNumbers((value) => Math.asinh(value)),
  ACOSH: ofNumbers((value) => finite(Math.acosh(value))),
  ATANH: ofNumbers((value) => finite(Math.atanh(value))),
  DEGREES: ofNumbers((value) => finite((value / Math.PI) * 180)),
  RADIANS: ofNumbers((value) => finite((value / 180) * Math.PI)),

  FACT: ofNumbers((value) => (value < 0 ? fail("#NUM!") : finite(factorial(Math.trunc(value))))),
  COMBIN: ofNumbers((all, chosen = 0) => {
    const [n, k] = [Math.trunc(all), Math.trunc(chosen)];
    return n < 0 || k < 0 || n < k ? fail("#NUM!") : finite(choices(n, Math.min(k, n - k)));
  }),
};

function ofAngle(of: (sine: number, cosine: number) => number): Ordinary {
  return ofNumbers((angle) => {
    // Beyond 2^27 the spreadsheet program gives no sine.
    if (Math.abs(angle) >= 2 ** 27) return fail("#NUM!");
    // It takes away quarter turns with a pi of 66 bits: SIN(PI()) is what that pi exceeds the double by.
    const shift = (Math.round(angle / (Math.PI / 2)) * PI_66_BITS_EXCESS) / 2;
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
    return finite(of(sine - cosine * shift, cosine + sine * shift));
  });
}

const PI_66_BITS_EXCESS = 5.016557612668332e-20;

/** As the operator ^ has it. */
export function power(base: number, exponent: number): Scalar {
  if (base === 0 && exponent === 0) return fail("#NUM!");
  return base === 0 && exponent < 0 ? fail("#DIV/0!") : finite(base ** exponent);
}

function remainder(value: number, divisor: number): number {
  const rest = value - divisor * Math.floor(tidy(value / divisor));
  return Math.abs(rest) < Math.abs(value) * 2 ** -49 ? 0 : rest;
}

function factorial(value: number): number {
  let product = 1;
  for (let i = 2; i <= Math.min(value, 171); i++) product *= i;
  return product;
}

function choices(all: number, chosen: number): number {
  let product = 1;
  for (let i = 1; i <= chosen && product < Infinity; i++) product = (product * (all - chosen + i)) / i;
  return product < 2 ** 53 ? Math.round(product) : product;
}
