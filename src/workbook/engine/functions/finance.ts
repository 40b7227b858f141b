import { toNumber } from "../coercion";
import type { Evaluator, Ordinary } from "../kinds";
import { finite } from "../operators";
import { CellError, fail, Unsupported, type Scalar, type Value } from "../values";
import { numbersOf } from "./aggregates";
import { power } from "./arithmetic";
import { ofNumbers, ofStrictNumbers, scalarOf } from "./reading";

/** Loans and savings. Money paid out is below zero; `due` is not 0 where payments stand at the start of a period. */
export const finance: Record<string, Ordinary> = {
  FV: ofNumbers((rate, periods = 0, payment = 0, present = 0, due = 0) =>
    futureValue(rate, periods, payment, present, due),
  ),
  PV: ofNumbers((rate, periods = 0, payment = 0, future = 0, due = 0) => {
    if (rate === 0) return finite(-(future + payment * periods));
    const growth = power(1 + rate, periods);
    if (typeof growth !== "number") return growth;
    return growth === 0 ? fail("#DIV/0!") : finite(-(future + payment * series(rate, growth, due)) / growth);
  }),
  PMT: ofNumbers((rate, periods = 0, present = 0, future = 0, due = 0) =>
    payments(rate, periods, present, future, due),
  ),
  IPMT: ofNumbers((rate, period = 0, periods = 0, present = 0, future = 0, due = 0) =>
    interest(rate, period, periods, present, future, due),
  ),
  PPMT: ofNumbers((rate, period = 0, periods = 0, present = 0, future = 0, due = 0) => {
    const whole = payments(rate, periods, present, future, due);
    const part = interest(rate, period, periods, present, future, due);
    return typeof whole !== "number" ? whole : typeof part !== "number" ? part : finite(whole - part);
  }),
  NPER: ofNumbers((rate, payment = 0, present = 0, future = 0, due = 0) => {
    if (rate === 0) return payment === 0 ? fail("#NUM!") : finite(-(present + future) / payment);
    const paid = payment * (1 + rate * (due ? 1 : 0));
    const ratio = (paid - future * rate) / (present * rate + paid);
    return ratio > 0 && rate > -1 ? finite(Math.log(ratio) / Math.log(1 + rate)) : fail("#NUM!");
  }),
  RATE: ofNumbers((periods, payment = 0, present = 0, future = 0, due = 0, guess = 0.1) => {
    if (periods <= 0) return fail("#NUM!");
    return root((rate) => futureValue(rate, periods, payment, present, due), future, guess, "RATE");
  }),
  NPV: {
    signature: "VR",
    call([rate, ...flows], evaluator) {
      const interest = toNumber(scalarOf(rate));
      if (interest instanceof CellError) return interest;
      const numbers = numbersOf(flows, evaluator);
      if (numbers instanceof CellError) return numbers;
      if (interest === -1) return fail("#DIV/0!");
      return discounted(numbers, interest, 1);
    },
  },
  IRR: {
    signature: "RV",
    call([flows, guess], evaluator) {
      const start = guess === undefined ? 0.1 : toNumber(scalarOf(guess));
      if (start instanceof CellError) return start;
      const numbers = flowsOf(flows, evaluator);
      if (numbers instanceof CellError) return numbers;
      if (!numbers.some((flow) => flow > 0) || !numbers.some((flow) => flow < 0)) return fail("#NUM!");
      return root((rate) => finite(present(numbers, rate, 0)), 0, start, "IRR");
    },
  },
  EFFECT: ofStrictNumbers((rate, periods = 0) => {
    const times = Math.trunc(periods);
    return rate! <= 0 || times < 1 ? fail("#NUM!") : finite((1 + rate! / times) ** times - 1);
  }),
  NOMINAL: ofStrictNumbers((rate, periods = 0) => {
    const times = Math.trunc(periods);
    return rate! <= 0 || times < 1 ? fail("#NUM!") : finite(((1 + rate!) ** (1 / times) - 1) * times);
  }),
  SLN: ofNumbers((cost, salvage = 0, life = 0) => (life === 0 ? fail("#DIV/0!") : finite((cost - salvage) / life))),
  RRI: ofNumbers((periods, from = 0, to = 0) => {
    if (periods <= 0 || from === 0 || to / from < 0) return fail("#NUM!");
    return finite((to / from) ** (1 / periods) - 1);
  }),
  PDURATION: ofNumbers((rate, from = 0, to = 0) =>
    rate <= 0 || from <= 0 || to <= 0 ? fail("#NUM!") : finite((Math.log(to) - Math.log(from)) / Math.log(1 + rate)),
  ),
};

/** What payments of 1 grow to. */
function series(rate: number, growth: number, due: number): number {
  return ((growth - 1) / rate) * (due ? 1 + rate : 1);
}

function futureValue(rate: number, periods: number, payment: number, present: number, due: number): Scalar {
  if (rate === 0) return finite(-(present + payment * periods));
  const growth = power(1 + rate, periods);
  return typeof growth === "number" ? finite(-(present * growth + payment * series(rate, growth, due))) : growth;
}

function payments(rate: number, periods: number, present: number, future: number, due: number): Scalar {
  if (periods === 0) return fail("#NUM!");
  if (rate === 0) return finite(-(present + future) / periods);
  const growth = power(1 + rate, periods);
  if (typeof growth !== "number") return growth;
  return finite(-(future + present * growth) / series(rate, growth, due));
}

function interest(rate: number, period: number, periods: number, present: number, future: number, due: number): Scalar {
  if (period < 1 || period >= periods + 1) return fail("#NUM!");
  const payment = payments(rate, periods, present, future, due);
  if (typeof payment !== "number") return payment;
  if (due && period === 1) return 0;
  const owed = futureValue(rate, period - (due ? 2 : 1), payment, present, due);
  if (typeof owed !== "number") return owed;
  return finite((due ? owed - payment : owed) * rate);
}

function present(flows: readonly number[], rate: number, start: number): number {
  return flows.reduce((total, flow, i) => total + flow / (1 + rate) ** (i + start), 0);
}

/** A sum of which nothing but an error of rounding is left tells nothing. */
function discounted(flows: readonly number[], rate: number, start: number): Scalar {
  const total = present(flows, rate, start);
  const size = present(flows.map(Math.abs), rate, start);
  if (size !== 0 && Math.abs(total) < Math.abs(size) * 1e-10) {
    throw new Unsupported("takes away all but an error of rounding");
  }
  return finite(total);
}

/** Amounts in a range; texts and truth values in it do not count. */
function flowsOf(value: Value, evaluator: Evaluator): number[] | CellError {
  return numbersOf([evaluator.matrix(value)], evaluator);
}

/** The program gives up after twenty steps; where they are not enough, what it then says is not known here. */
const MOST_STEPS = 20;

function root(of: (rate: number) => Scalar, wanted: number, guess: number, name: string): Scalar {
  let rate = guess;
  for (let step = 0; step < MOST_STEPS; step++) {
    const at = of(rate);
    const near = of(rate + NEAR);
    if (typeof at !== "number" || typeof near !== "number" || rate <= -1) break;
    const next = rate - ((at - wanted) / (near - at)) * NEAR;
    if (!Number.isFinite(next)) break;
    const change = Math.abs(next - rate);
    rate = next;
    if (change < 1e-13 * Math.max(1, Math.abs(rate))) {
      if (Math.abs(rate) < 1e-9) break;
      return rate;
    }
  }
  throw new Unsupported(`calls ${name}, whose steps come to no end here`, [name]);
}

const NEAR = 1e-7;
