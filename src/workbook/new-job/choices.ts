import type { Unit } from "../../core/length/index";

/** What a person chooses before a new job is laid out. */
export interface Choices {
  unit: Unit;
  construction: "frameless" | "face frame";
  slide: "side-mount" | "center-mount" | "wood runner" | "undermount";
  /** As it is typed, such as 1/2. */
  sideThickness: string;
  /** As it is typed; undermount slides need it. */
  deduction: string;
}

export const DEFAULT_CHOICES: Record<Unit, Choices> = {
  in: { unit: "in", construction: "frameless", slide: "side-mount", sideThickness: "1/2", deduction: "" },
  mm: { unit: "mm", construction: "frameless", slide: "side-mount", sideThickness: "12", deduction: "" },
};
