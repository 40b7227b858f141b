/** A stream of whole numbers from a fixed seed (xorshift, 32 bits): every host draws the same. */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0 || 0x9e3779b9;
  }

  /** A whole number from 0 up to, but without, `bound`. */
  below(bound: number): number {
    let x = this.state;
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    this.state = x;
    return (x >>> 0) % bound;
  }
}
