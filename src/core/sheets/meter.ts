/**
 * Counts the steps of an answer's searches, each of which is a rectangle looked at or as much work, so that no answer
 * takes longer than a host waits, whatever the number of parts. Steps, never time: every host gives the equal answer.
 */
export class Meter {
  /** Whether a search was given fewer steps than its effort asks for. */
  isShort = false;

  /** @param left steps that may still be taken */
  constructor(private steps: number = MOST_STEPS) {}

  /** All the steps that there are, halved so many times. */
  static halved(times: number): Meter {
    return new Meter(MOST_STEPS / 2 ** times);
  }

  get left(): number {
    return Math.max(0, this.steps);
  }

  /** How many of the steps that are wanted may be taken, out of a share of what is left. */
  allow(wanted: number, share = 1): number {
    const given = Math.min(wanted, this.left * share);
    if (given < wanted) this.isShort = true;
    return given;
  }

  /** Leaves a share of what is left. */
  shrink(share: number): void {
    this.steps *= share;
  }

  take(steps: number): void {
    this.steps -= steps;
  }

  /** Runs a search that may take a share of what is left, and no more. */
  within<T>(share: number, search: (meter: Meter) => T): T {
    const part = new Meter(this.left * share);
    const before = part.left;
    const result = search(part);
    this.take(before - part.steps);
    this.isShort ||= part.isShort;
    return result;
  }
}

/** So many that a host does not wait too long for them; `npm run bench -- longest` tells how long that is. */
const MOST_STEPS = 48_000_000;

/** Sums that a knapsack looks at while a rectangle is looked at once. */
export const SUMS = 8;
