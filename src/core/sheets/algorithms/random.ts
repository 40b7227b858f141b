/** A stream of whole numbers from a fixed seed (xorshift, 32 bits): every host draws the same. */
export class Random {
  /** @param state where it starts: a whole number of 32 bits, but 0, from which nothing else comes */
  constructor(private state: number) {}

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
