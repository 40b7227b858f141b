import { balanceOf } from "../loads";
import type { PlannedOpening } from "../plan/plan";
import { doubtful, wrong, type Found } from "./finding";

/** A cabinet that tips with one drawer out, or with all; the anchor that would hold it. */
export function checkBalance(openings: readonly PlannedOpening[]): Found[] {
  const balance = balanceOf(openings);
  if (!balance) return [];
  const { each, all } = balance;
  const { drawer: worst, one } = each.reduce((a, b) => (b.one.ratio < a.one.ratio ? b : a));
  const data = ({ ratio, pull }: typeof one) => ({ ratio: Number(ratio.toFixed(2)), pull: Math.ceil(pull) });
  if (one.ratio <= 1) return [wrong("cabinet.tipsWithOne", { drawer: worst.label, ...data(one) })];
  return all.ratio <= 1 ? [doubtful("cabinet.tipsWithAll", data(all))] : [];
}
