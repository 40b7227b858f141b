/**
 * The largest deflection of a plate whose four edges can neither sink nor tilt, under an even pressure of 1, with a
 * short side of 1 and a bending rigidity of 1. Method: the resting plate, and over it the bending moments along the
 * long and the short edges that turn the edges level again, each a series of sines. The coefficients of the one follow
 * from those of the other; they are worked out in turns until they stand. Limits: any aspect ratio; with 20 terms the
 * deflection is within 1e-6 of its limit. A long plate is deepest not at its middle, but about 1.4 short sides from its
 * short edges, and ripples between: the middle line is searched.
 * @param aspect long side over short side, 1 or more
 * @source Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., article 44
 */
export function clampedDeflection(aspect: number): number {
  const b = Math.min(aspect, LONGEST);
  return deepest(middleLine(b, edgeMoments(b)), b / 2);
}

/** From here on the ends no longer feel each other: the deepest place stays as deep, to 1e-7. */
const LONGEST = 6;
const TERMS = 20;
const ODD = Array.from({ length: TERMS }, (_, k) => 2 * k + 1);
const { PI, tanh, cosh } = Math;

interface Moments {
  /** Along the edges that are 1 long. */
  short: readonly number[];
  /** Along the edges that are `b` long. */
  long: readonly number[];
}

function edgeMoments(b: number): Moments {
  const [levelShort, levelLong] = [leveling(1, b), leveling(b, 1)];
  let short: number[] = ODD.map(() => 0);
  let long = short;
  for (let turn = 0; turn < TURNS; turn++) {
    short = levelShort(long);
    long = levelLong(short);
  }
  return { short, long };
}

/** Each turn leaves at most two fifths of the error before. */
const TURNS = 24;

/** Tells the moments along the edges `a` long that level these, from those along the edges `b` long. */
function leveling(a: number, b: number): (others: readonly number[]) => number[] {
  const rows = ODD.map((i) => {
    const alpha = (i * PI * b) / (2 * a);
    const bent = alpha / cosh(alpha) ** 2;
    return {
      load: ((4 * a * a) / (PI ** 3 * i ** 4)) * (bent - tanh(alpha)),
      turned: ODD.map((m) => ((8 * i * a) / (PI * b)) * (m / (((m * a) / b) ** 2 + i * i) ** 2)),
      give: (tanh(alpha) + bent) / i,
    };
  });
  return (others) =>
    rows.map(({ load, turned, give }) => (load - turned.reduce((sum, turn, k) => sum + turn * others[k]!, 0)) / give);
}

/** The deflection along the middle line, at `y` from the middle toward a short edge. */
function middleLine(b: number, { short, long }: Moments): (y: number) => number {
  const terms = ODD.map((m, k) => {
    const [alpha, beta] = [(m * PI * b) / 2, (m * PI) / (2 * b)];
    const sign = k % 2 ? -1 : 1;
    const moment = (sign * short[k]!) / (2 * (PI * m) ** 2);
    const resting = (sign * 4) / (PI * m) ** 5;
    return {
      wave: m * PI,
      alpha,
      flat: resting,
      even: moment * alpha * tanh(alpha) - (resting * (alpha * tanh(alpha) + 2)) / 2,
      odd: resting / 2 - moment,
      across: (((sign * long[k]! * b * b) / (2 * (PI * m) ** 2)) * beta * tanh(beta)) / cosh(beta),
      both: 1 + Math.exp(-2 * alpha),
    };
  });
  return (y) =>
    terms.reduceRight((sum, { wave, alpha, flat, even, odd, across, both }) => {
      const t = wave * y;
      // cosh t / cosh alpha and sinh t / cosh alpha are written so that neither outgrows a number.
      const [rise, fall] = [Math.exp(t - alpha) / both, Math.exp(-t - alpha) / both];
      return sum + flat + even * (rise + fall) + odd * t * (rise - fall) + across * Math.cos(t / b);
    }, 0);
}

/** The greatest value on the way from 0 to `end`: the best of a few places, then between its neighbors by thirds. */
function deepest(at: (y: number) => number, end: number): number {
  const step = end / PLACES;
  const values = Array.from({ length: PLACES }, (_, i) => at(i * step));
  const best = values.indexOf(Math.max(...values));
  let [low, high] = [Math.max(best - 1, 0) * step, (best + 1) * step];
  while (high - low > 1e-4) {
    const third = (high - low) / 3;
    if (at(low + third) < at(high - third)) low += third;
    else high -= third;
  }
  return Math.max(values[best]!, at((low + high) / 2));
}

const PLACES = 24;
