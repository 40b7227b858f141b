import { Fault } from "../../core/length";
import { scalar, type Argument } from "./argument";
import { isEmpty } from "../cells";

/** A drawer's label: a text, for a spreadsheet would make a number or a date of 7-1. */
export const drawerLabel = (name: string): Argument<string> =>
  scalar(name, ({ value }) => {
    if (isEmpty(value)) throw new Fault("argument.blank", { wanted: "drawer's label, such as A1" });
    if (typeof value !== "string") throw new Fault("drawer.notText", { received: value });
    return value;
  });
