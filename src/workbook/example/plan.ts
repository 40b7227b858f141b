import type { SheetDefinition } from "../author/definition";
import { isWhole } from "./cells";
import { OPENINGS, STANDARDS } from "./job";
import { RATES, STOCK } from "./prices";
import { LOOKS, type Style } from "./styles";
import { tableSheet } from "./table-sheet";
import { TABLES } from "./tables";

const JOB = `${OPENINGS},${STANDARDS}`;

export const PLAN: SheetDefinition<Style> = tableSheet({ ...TABLES.plan, formula: `=DRAWER.PLAN(${JOB})`, rows: 18 });

export const CUT_LIST: SheetDefinition<Style> = tableSheet({
  ...TABLES.cutList,
  formula: `=DRAWER.PARTS(${JOB})`,
  rows: 40,
});

export const MOUNTING: SheetDefinition<Style> = tableSheet({
  ...TABLES.mounting,
  formula: `=DRAWER.MOUNTING(${JOB})`,
  rows: 18,
});

export const HARDWARE: SheetDefinition<Style> = tableSheet({
  ...TABLES.hardware,
  formula: `=DRAWER.HARDWARE(${JOB})`,
  rows: 36,
  rules: [{ area: "C6:C41", when: isWhole("$C6"), look: LOOKS.whole }],
});

export const CHECKS: SheetDefinition<Style> = tableSheet({
  ...TABLES.checks,
  formula: `=DRAWER.CHECKS(${JOB},${STOCK},${RATES})`,
  rows: 24,
});

export const WORKINGS: SheetDefinition<Style> = tableSheet({
  ...TABLES.workings,
  ask: ["Drawer", "B1"],
  formula: `=DRAWER.WORKING(${OPENINGS},B4,${STANDARDS})`,
  rows: 36,
});
