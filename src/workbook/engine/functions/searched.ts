import { spend } from "../budget";
import { compare } from "../operators";
import { firstFrom } from "../first-from";
import { CellError, Unsupported, type Scalar } from "../values";
import { numberKey, textKey } from "./alike";

/**
 * A row or column that values are looked up in. Thousands of formulas search the same one, so that what a search learns
 * of it is kept with it: where each value stands first, and which values are of a kind and whether they are in order.
 */
export class Searched {
  private places: Places | undefined;
  private isKnown = false;
  private turned: readonly Scalar[] | undefined;
  private isNearKnown = false;
  private ranked: readonly number[] | undefined;
  private readonly kinds = new Map<string, Kind>();

  private constructor(private readonly values: readonly Scalar[]) {}

  private static readonly known = new WeakMap<readonly Scalar[], Searched>();

  /** What is known of a list, which must not change from then on. */
  static of(values: readonly Scalar[]): Searched {
    let found = Searched.known.get(values);
    if (!found) Searched.known.set(values, (found = new Searched(values)));
    return found;
  }

  /** Where the first value of the same kind stands that is equal to the wanted one, or -1. */
  first(wanted: Exclude<Scalar, null>): number {
    const key = keyOf(wanted);
    // A list that is searched once is gone through sooner than put in order.
    if (key === undefined || this.values.length < FEW || !this.isKnown) {
      this.isKnown = true;
      return this.scanned(wanted);
    }
    if (!this.places) {
      spend(COST_OF_A_PLACE * this.values.length);
      this.places = placesOf(this.values);
    }
    const found = this.places.first.get(key) ?? -1;
    spend(1);
    if (typeof wanted !== "string") return found;
    for (const at of this.places.odd) {
      if (found >= 0 && at > found) break;
      spend(1);
      if (compare(this.values[at]!, wanted) === 0) return at;
    }
    return found;
  }

  /** The list from its end, likewise kept. */
  get backward(): readonly Scalar[] {
    if (!this.turned) {
      spend(this.values.length);
      this.turned = [...this.values].reverse();
    }
    return this.turned;
  }

  /** Where the nearest value stands that is not below the wanted one, or not beyond it where `sign` is below zero, or -1. */
  nearest(wanted: Scalar, sign: number): number {
    if (this.values.length < FEW || !this.isNearKnown) {
      this.isNearKnown = true;
      return this.nearestScanned(wanted, sign);
    }
    const { values } = this;
    const ranked = (this.ranked ??= this.inOrder());
    const from = (isSo: (order: number) => boolean, other: Scalar): number =>
      firstFrom(ranked.length, (i) => isSo(compare(values[ranked[i]!]!, other)));
    spend(2 * Math.ceil(Math.log2(ranked.length + 2)));
    if (sign > 0) return ranked[from((order) => order >= 0, wanted)] ?? -1;
    const last = ranked[from((order) => order > 0, wanted) - 1];
    // Of equal ones the first counts.
    return last === undefined ? -1 : ranked[from((order) => order >= 0, values[last]!)]!;
  }

  /** The places of what may be compared, by what stands there; equal values keep their order. */
  private inOrder(): readonly number[] {
    const { values } = this;
    spend(COST_OF_ORDER * values.length);
    const at = values.flatMap((value, i) => (value === null || value instanceof CellError ? [] : [i]));
    return at.sort((a, b) => compare(values[a]!, values[b]!) || a - b);
  }

  private nearestScanned(wanted: Scalar, sign: number): number {
    let best = -1;
    spend(this.values.length);
    this.values.forEach((value, i) => {
      if (value === null || value instanceof CellError || compare(value, wanted) * sign < 0) return;
      if (best < 0 || compare(value, this.values[best]!) * sign < 0) best = i;
    });
    return best;
  }

  /** The values of one kind, or of all; blanks are left out. */
  ofKind(kind: "number" | "string" | "boolean" | "any"): Kind {
    let found = this.kinds.get(kind);
    if (!found) {
      spend(this.values.length);
      const isOfKind = (value: Scalar): boolean => value !== null && (kind === "any" || typeof value === kind);
      const at = this.values.flatMap((value, i) => (isOfKind(value) ? [i] : []));
      this.kinds.set(kind, (found = new Kind(this.values, at)));
    }
    return found;
  }

  private scanned(wanted: Scalar): number {
    const end = this.values.length;
    for (let at = 0; at < end; at++) {
      const value = this.values[at]!;
      if (typeof value !== typeof wanted || value === null || compare(value, wanted) !== 0) continue;
      spend(at + 1);
      return at;
    }
    spend(end);
    return -1;
  }
}

/** Values of a list, as a search by halves goes through them. */
class Kind {
  private readonly ordered = new Map<number, boolean>();
  private readonly extremes = new Map<number, Scalar>();
  private errors: boolean | undefined;

  constructor(
    private readonly values: readonly Scalar[],
    /** Their places. */
    readonly at: readonly number[],
  ) {}

  get hasErrors(): boolean {
    return (this.errors ??= this.at.some((place) => this.values[place] instanceof CellError));
  }

  /** @throws Unsupported where they do not rise, or fall where `sign` is below zero */
  requireOrder(sign: number): void {
    let isOrdered = this.ordered.get(sign);
    if (isOrdered === undefined) {
      spend(this.at.length);
      const list = this.at.map((place) => this.values[place]!);
      isOrdered = list.every((value, i) => i === 0 || compare(list[i - 1]!, value) * sign <= 0);
      this.ordered.set(sign, isOrdered);
    }
    if (!isOrdered) throw new Unsupported("searches by halves in a list that is not in order");
  }

  /** Whether one of them lies beyond the wanted one. */
  reachesBeyond(wanted: Scalar, sign: number): boolean {
    if (this.at.length === 0) return false;
    let most = this.extremes.get(sign);
    if (most === undefined) {
      spend(this.at.length);
      most = this.values[this.at[0]!]!;
      for (const place of this.at) if (compare(this.values[place]!, most) * sign > 0) most = this.values[place]!;
      this.extremes.set(sign, most);
    }
    return compare(most, wanted) * sign > 0;
  }
}

/** Shorter lists are not put in order. */
const FEW = 8;
const COST_OF_A_PLACE = 4;
const COST_OF_ORDER = 32;

interface Places {
  first: Map<number | string | boolean, number>;
  /** Texts whose equals are not known by their letters. */
  odd: number[];
}

function placesOf(values: readonly Scalar[]): Places {
  const places: Places = { first: new Map(), odd: [] };
  values.forEach((value, at) => {
    if (value === null) return;
    const key = keyOf(value);
    if (key === undefined && typeof value === "string") places.odd.push(at);
    if (key !== undefined && !places.first.has(key)) places.first.set(key, at);
  });
  return places;
}

/**
 * Two values are equal where this is, as `compare` has it: numbers by their first fifteen digits, texts of the plain
 * letters without regard to case. What other texts are equal to only a comparison can say.
 */
function keyOf(value: Scalar): number | string | boolean | undefined {
  if (typeof value === "number") return numberKey(value);
  if (typeof value === "string") return /^[\x20-\x7e]*$/.test(value) ? textKey(value) : undefined;
  return typeof value === "boolean" ? value : undefined;
}
