/**
 * The deflection at the middle of a plate whose four edges rest, and may tilt, under an even pressure of 1, with a
 * short side of 1 and a bending rigidity of 1. Method: a single series of sines across the short side, of which each
 * solves the plate's equation and the conditions at the short edges exactly. Limits: any aspect ratio; 20 terms
 * leave out less than 1e-7 of the sum. It is the largest deflection: the plate has one hollow.
 * @param aspect long side over short side, 1 or more
 * @source Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., article 30 (M. Levy)
 */
export function heldDeflection(aspect: number): number {
  let sum = 0;
  for (let k = TERMS - 1; k >= 0; k--) {
    const m = 2 * k + 1;
    const alpha = (m * Math.PI * aspect) / 2;
    const edge = (alpha * Math.tanh(alpha) + 2) / (2 * Math.cosh(alpha));
    sum += ((k % 2 ? -1 : 1) * (1 - edge)) / m ** 5;
  }
  return (4 / Math.PI ** 5) * sum;
}

const TERMS = 20;
