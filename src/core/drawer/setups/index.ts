import type { Unit } from "../../length";
import type { PlannedOpening } from "../plan/plan";
import { backs } from "./backs";
import { finishing } from "./finishing";
import { jointing } from "./joints";
import { sawing } from "./sawing";
import type { Step } from "./setup";

export type { Caution, Operation, SetUp, Setting, Step as SetUpStep } from "./setup";

/**
 * Every setting of a job once, in the order to cut: rips, crosscuts, fronts from their strips, grooves, joints, backs
 * for undermount slides, then what is done to finished boxes and fronts. Cautions stand before what they belong to.
 * @throws Fault where a blade cannot cut a groove
 */
export const setUpsOf = (plans: readonly PlannedOpening[], unit: Unit): Step[] => [
  { caution: "general" },
  ...sawing(plans, unit),
  ...jointing(plans, unit),
  ...backs(plans),
  ...finishing(plans),
];
