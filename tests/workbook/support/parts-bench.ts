import { writeWorkbook } from "../../../src/workbook/author/index";
import { OWN_FUNCTIONS } from "../../../src/workbook/edit/own-functions";
import { recalculate } from "../../../src/workbook/edit/recalculate";
import { benchJob, newJob } from "../../../src/workbook/new-job/index";

/** The example that the page opens: a new job, filled with the bicycle workshop's bench. */
export const PARTS_BENCH = newJob(benchJob("in"));

/** As a file that nobody has worked out yet. */
export const partsBenchDraft = (): Uint8Array => writeWorkbook(PARTS_BENCH);

/** The same, worked out. */
export const partsBenchFile = (): Uint8Array => recalculate(partsBenchDraft(), { functions: OWN_FUNCTIONS }).bytes;
