import { Fault, isEmpty, naming } from "../../core/length";
import { readCell } from "../cells";

/** A drawer's label: a text, for a spreadsheet would make a number or a date of 7-1. */
export const drawerLabel = (raw: unknown): string =>
  naming("drawer", () => {
    const { value } = readCell(raw);
    if (isEmpty(value)) throw new Fault("argument.blank", { wanted: "drawer's label, such as A1" });
    if (typeof value !== "string") throw new Fault("drawer.notText", { received: value });
    return value;
  });
