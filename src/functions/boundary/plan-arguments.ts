import { failed, planJob, type Job, type PlannedOpening } from "../../core/drawer";
import { Fault, isBlank, naming } from "../../core/length";
import { readCell } from "./cell";

/** The whole plan, or the fault of its first opening that cannot be planned. */
export const plannedOrFault = (job: Job): PlannedOpening[] =>
  planJob(job).map((planned) => {
    if (failed(planned)) throw planned.fault;
    return planned;
  });

/** A TRUE or FALSE, which some hosts pass as 1 and 0; blank is the default. */
export const flag = (name: string, raw: unknown, fallback: boolean): boolean =>
  naming(name, () => {
    const { value } = readCell(raw);
    if (isBlank(value)) return fallback;
    if (typeof value === "boolean") return value;
    if (value === 1 || value === 0) return value === 1;
    if (typeof value === "string" && /^(true|false)$/i.test(value.trim())) return /true/i.test(value);
    throw new Fault("flag.wrongType", { received: value });
  });

/** A drawer's label: a text, for a spreadsheet would make a number or a date of 7-1. */
export const drawerLabel = (raw: unknown): string =>
  naming("drawer", () => {
    const { value } = readCell(raw);
    if (isBlank(value)) throw new Fault("argument.blank", { wanted: "drawer's label, such as A1" });
    if (typeof value !== "string") throw new Fault("drawer.notText", { received: value });
    return value;
  });
