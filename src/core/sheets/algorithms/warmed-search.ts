import type { Draft, Model } from "../model";
import { RuinAndRecreate } from "./ruin-recreate";

/** How a search settles, and when it is warmed. */
export interface Settling {
  /** Rounds that a state is compared across. */
  memory: number;
  /** So many memories without a gain, and it may get worse again by `heat`, in sheets. */
  patience: number;
  heat: number;
}

/** Ruin and recreate that, once it has settled, may get worse again, so that it settles elsewhere. */
export class WarmedSearch extends RuinAndRecreate {
  /** Since it was warmed last: the least that was come to, and when. */
  private lowest = Infinity;
  private since = 0;

  constructor(
    model: Model,
    start: Draft,
    seed: number,
    private readonly settling: Settling,
  ) {
    super(model, start, seed, settling.memory);
  }

  /** Another search has found an answer of this weight: it goes on below that. */
  lower(below: number): void {
    if (below >= Math.min(this.below, this.best.weight)) return;
    this.below = below;
    if (!Number.isNaN(this.now)) this.begin();
  }

  protected override settled(value: number): void {
    const { patience, heat } = this.settling;
    if (value < this.lowest) {
      this.lowest = value;
      this.since = this.round;
    } else if (this.round - this.since > patience * this.history.length) {
      this.history.fill(this.now + heat);
      this.forget();
    }
  }

  protected override begin(): void {
    super.begin();
    this.forget();
  }

  private forget(): void {
    this.lowest = Infinity;
    this.since = this.round;
  }
}
